// Cards of practice: each an ordinary card of its own shop, plainly marked, whose taps say that they are of practice, and which calls
// nobody; and what is said round them.

import { firstShiftStep, isReadyToCountersign } from '../../core/guide/first-shift.ts';
import type { Lesson } from '../../core/guide/lessons.ts';
import type { PersonName } from '../../core/ids.ts';
import { known } from '../../core/known.ts';
import { plannedRings } from '../../core/reminders/plan.ts';
import { alarmNamed } from '../../core/session/session-commands.ts';
import { type EpochMs, minutes, minutesBetween } from '../../core/units.ts';
import { firstUpper } from '../language/first-upper.ts';
import type { Words } from '../language/tongues/tongues.ts';
import type { Board } from './board.ts';
import { type Card, type CardAction, makeCard } from './card.ts';
import { type Telling, tap, withLinesShown } from './card-context.ts';
import { filledStep } from './first-shift-card.ts';

/** Before a tap's line: it is of practice, whoever presses it and whenever. */
const mark = 'practice: ';

/** Before a line that whoever practises says for the shop. */
const shopMark = 'shop: ';

export interface Unmarked {
  readonly text: string;
  readonly of: 'practice' | 'shop' | 'unsaid';
}

/** The line behind its mark, where it has one. */
export function unmarked(line: string): Unmarked {
  const behind = (each: string): string | undefined =>
    line.toLowerCase().startsWith(each.trim()) ? line.slice(each.trim().length).trim() : undefined;
  const [practice, shop] = [behind(mark), behind(shopMark)];
  if (practice !== undefined) return { text: practice, of: 'practice' };
  return shop === undefined ? { text: line, of: 'unsaid' } : { text: shop, of: 'shop' };
}

const marked = (action: CardAction): CardAction => ({
  ...action,
  line: `${mark}${action.line}`,
  shown: action.shown ?? action.line,
});

/** A bell that is farther away is of another day's work. */
const farthestMs = 24 * 60 * 60_000;

/** When the next bell rings for this person. */
export function nextBellFor({ shop, now }: Telling, name: PersonName): EpochMs | undefined {
  const isNear = (dueAt: EpochMs) => dueAt > now && dueAt - now <= farthestMs;
  return plannedRings(shop).find(({ dueAt, to, kind }) => isNear(dueAt) && to.includes(name) && kind !== 'digest')
    ?.dueAt;
}

/** `asks`: its own taps come before those of the step. `more`: what stands first on it. */
export function practiceCard(
  telling: Telling,
  card: Card,
  { name, asks, more = [] }: { readonly name: PersonName; readonly asks: boolean; readonly more?: readonly string[] },
): Card {
  const { words, figures, now } = telling;
  const isThrough = card.leads !== undefined && isReadyToCountersign(telling, name);
  const onward = onwardTaps(telling, name);
  const waits = firstShiftStep(telling, name)?.doing.is === 'wait';
  const filled = filledTaps(telling, name);
  const own = card.actions.filter(isOffered).map((action) => ofPractice(telling, action));
  const first = waits ? [...onward, ...filled] : filled;
  const end = isThrough ? [tap(telling, 'practice-off', 'practice-off')] : [];
  return {
    ...makeCard(words.practice.titled(figures.timeDown(now), card.title), card.tone),
    facts: card.facts,
    lines: [...more, ...card.lines],
    hazards: card.hazards,
    fields: card.fields,
    ...(card.links && { links: card.links }),
    ...(isThrough ? { leads: `${firstUpper(words.practice.lessonDone)}.` } : leading(telling, card, filled)),
    actions: withLinesShown(telling, {
      ...card,
      actions: [...end, ...(asks ? [...own, ...first] : [...first, ...own]), ...(waits ? [] : onward)],
    }).actions.map(marked),
  };
}

/** What is to be typed with one's own figures stands as a tap with invented ones. */
function leading({ words }: Telling, { leads, leadsOn }: Card, filled: readonly CardAction[]): Partial<Card> {
  const { type, tapOrType } = words.firstShift;
  const said = new Map(filled.map(({ line, shown = line }) => [type(shown), tapOrType(shown)]));
  return known({ leads, leadsOn: leadsOn?.map((line) => said.get(line) ?? line) });
}

/** Nobody countersigns it, and none of its taps calls anybody: a cry is typed, and then it is real. */
function isOffered({ id, line }: CardAction): boolean {
  const [verb = ''] = line.split(' ');
  return id !== 'countersign' && alarmNamed(verb) === undefined && verb !== 'hot-pot';
}

/** It is begun already. */
const ofPractice = (telling: Telling, action: CardAction): CardAction =>
  action.id === 'practice' || action.id === 'first-shift' ? tap(telling, 'practice-off', 'practice-off') : action;

function onwardTaps(telling: Telling, name: PersonName): readonly CardAction[] {
  const { words, figures, now } = telling;
  const bell = nextBellFor(telling, name);
  if (bell === undefined) return [];
  const left = figures.minutesUp(minutes(minutesBetween(now, bell)));
  return [
    {
      id: 'onward',
      label: words.practice.onward(figures.timeUp(bell), left),
      line: 'wait',
      shown: words.practice.wait,
    },
  ];
}

/** There is nothing to read off here: figures are given. */
function filledTaps(telling: Telling, name: PersonName): readonly CardAction[] {
  const { words, figures } = telling;
  const line = filledStep(telling, name);
  return line === undefined
    ? []
    : [
        {
          id: 'invented',
          label: words.practice.invented(words.lineShown(line, figures)),
          line,
          shown: words.lineShown(line, figures),
        },
      ];
}

/** What it begins with: the same step as its own shop's first card. */
export function practiceBegunCard(telling: Telling, card: Card, isNew: boolean): Card {
  const { practice } = telling.words;
  const lines = isNew ? practice.begunLines : practice.begunLines.slice(-1);
  return { ...card, title: isNew ? practice.begun : practice.goesOn, lines };
}

export interface Practised {
  readonly lines: number;
  readonly batches: number;
  readonly inCure: number;
  readonly objections: number;
  readonly shopMinutes: number;
  /** The weightiest first. */
  readonly lessons: readonly Lesson[];
}

/** As many as are kept in mind. */
const keptInMind = 4;

export function practiceOverCard({ words, figures }: Pick<Telling, 'words' | 'figures'>, done: Practised): Card {
  const { practice, firstShift } = words;
  const kept = done.lessons.slice(0, keptInMind).map((lesson) => {
    const { how, why } = firstShift.lessons[lesson];
    return `– ${firstUpper(how)} ${firstUpper(why)}`;
  });
  return makeCard(practice.over, 'good', {
    lines: [
      firstUpper(practice.done({ ...done, shopMinutes: figures.minutesDown(minutes(done.shopMinutes)) }, figures)),
      ...(kept.length === 0 ? [] : [practice.keepInMind, ...kept]),
      practice.counts,
    ],
  });
}

export type EndedWhy = 'idle' | 'restarted' | 'crowded' | 'left';

/** What was said when practice was over without its person's knowing: nothing is recorded on a guess. */
export function practiceEndedCard(telling: Telling, why: EndedWhy, said: string | undefined): Card {
  const { practice } = telling.words;
  const again = tap(telling, 'practice', 'practice');
  return makeCard(practice.ended, 'warn', {
    lines: [practice.endedWhy[why], ...(said === undefined ? [] : [practice.endedLine(said)]), practice.noneLine],
    actions: said === undefined ? [again] : [forShop(telling, said), again],
  });
}

export function whichRecordCard(telling: Telling, said: string): Card {
  const { practice } = telling.words;
  const forPractice = { id: 'for-practice', label: practice.forPractice(said), line: `${mark}${said}`, shown: said };
  return makeCard(practice.which, 'warn', {
    lines: [practice.whichLine],
    actions: [forShop(telling, said), forPractice],
  });
}

const forShop = ({ words }: Telling, said: string): CardAction => ({
  id: 'for-shop',
  label: words.practice.forShop(said),
  line: `${shopMark}${said}`,
  shown: said,
});

export type PracticeSaid = 'noPapers' | 'notNow' | 'noMark' | 'none';

/** Told in a line, with nothing done. */
export function practiceSaidCard(telling: Telling, what: PracticeSaid): Card {
  const { practice } = telling.words;
  const begin = [tap(telling, 'practice', 'practice')];
  switch (what) {
    case 'noPapers':
      return makeCard(practice.noPapers, 'warn', { lines: [practice.noPapersLine, practice.askedOfShop] });
    case 'notNow':
      return makeCard(practice.notNow, 'warn');
    case 'noMark':
      return makeCard(practice.noMark, 'warn', { lines: [practice.noMarkLine] });
    case 'none':
      return makeCard(practice.none, 'plain', { lines: [practice.noneLine], actions: begin });
  }
}

/** Its tiles say that they are of practice; what can be started is said as if typed, and what calls people is real. */
export function boardOfPractice(board: Board, { practice }: Pick<Words, 'practice'>): Board {
  return {
    ...board,
    practice: practice.onPage,
    items: board.items.map((item) => ({ ...item, taps: item.taps.filter(isOffered).map(marked) })),
  };
}
