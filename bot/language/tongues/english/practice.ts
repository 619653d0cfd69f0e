// Practice in English: on a record apart, in fast time. What its cards say, and what is typed for it.

import type { Figures } from '../../figures.ts';
import type { PracticeTyped } from '../typed.ts';
import { verbWords } from '../typed.ts';

/** What came of it, in figures. */
export interface PracticeDone {
  readonly lines: number;
  readonly batches: number;
  readonly inCure: number;
  readonly objections: number;
  readonly shopMinutes: string;
}

export const englishPractice = {
  titled: (clock: string, title: string) => `PRACTICE ${clock} · ${title}`,
  begun: 'begun',
  begunLines: [
    'Nothing counts here: all is invented, nobody else is rung, nothing is kept.',
    'The clock stands until you send it on: a tap, or wait 20m.',
    'A cry is real here too: fire, down, eyes and their like call people. To leave: practice off.',
  ],
  goesOn: 'it goes on',
  onward: (clock: string, left: string) => `On to ${clock} (${left})`,
  wait: 'wait',
  invented: (line: string) => `Invented: ${line}`,
  lessonDone: 'that was the whole way, from sealed cans to parts in cure. Try more, or: practice off',
  nothingRings: 'Nothing rings for you as things stand. To let time pass: wait 20m.',
  askedOfShop: 'This is practice: it knows nothing of the shop. For the shop’s record: practice off.',
  rangMeanwhile: (title: string) => `In the shop, for you: ${title}. Answer it on its own card, or: practice off.`,
  noPapers: 'no papers',
  noPapersLine: 'Practice writes no papers and no pictures: somebody might take them for the shop’s.',
  over: 'Practice over',
  done: ({ lines, batches, inCure, objections, shopMinutes }: PracticeDone, figures: Figures) =>
    `${figures.count(lines)} lines, ${shopMinutes} of shop time: batches ${figures.count(batches)}, parts in cure ${figures.count(inCure)}, objections ${figures.count(objections)}.`,
  keepInMind: 'Keep in mind:',
  counts: 'From here on, what you say counts.',
  ended: 'Practice is over: nothing was recorded',
  endedWhy: {
    idle: 'Nobody had said anything in it for 2 h.',
    restarted: 'The program was started anew, and practice is not kept.',
    crowded: 'Others began to practise, and yours had been quiet the longest.',
    left: 'What you tapped was a card of practice.',
  },
  endedLine: (said: string) => `You said: ${said}. If it was meant for the shop, say it again, or tap it.`,
  forShop: (line: string) => `For the shop: ${line}`,
  forPractice: (line: string) => `For practice: ${line}`,
  which: 'For the shop, or for practice?',
  whichLine: 'You practise, and said it under a message of the shop. Nothing is recorded yet.',
  real: 'This is the shop’s own record, not practice.',
  cried: 'This is real: people are called, practice is over. If it was only practised, tell them, and: undo.',
  alarmOn: 'An alarm is on: practice is over, and this went to the shop.',
  notNow: 'No practice while an alarm is on',
  noMark: 'Practice cannot begin now',
  noMarkLine: 'That you practise cannot be written down, and after a restart your lines would count.',
  none: 'You are not practising',
  noneLine: 'To begin: practice on.',
  onPage: 'PRACTICE: not the shop. To leave: practice off',
};

export const englishPracticeTyped: PracticeTyped = {
  waits:
    /^(?:ok(?:ay)? |then |and |please )*(?:(?:wait|go on|move on|skip|fast forward|on)(?: (?:for|till|until|to|a|the|next|bell|ring|more|another|it|rings))*(?<rest> .+)?|(?:the )?next (?:bell|ring)|(?<later>.+) later)(?: please)?$/,
};

export const englishPracticeVerbs = {
  practice: verbWords(
    'practice, practise, practicing, practising, let me practise, let me practice, i want to practise, i want to practice, can i practise, can i practice, begin practice, start practice',
    'practice on',
    'on, begin, start, i, please, to',
  ),
  'practice-off': verbWords(
    'practice-off, practice off, practise off, end practice, stop practice, leave practice, practice over, end practise, stop practising, stop practicing',
    'practice off',
    'please, the',
  ),
};
