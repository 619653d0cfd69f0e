// What an English speaker types. Every line may be typed so, whatever its speaker's language.

import type { Typed } from '../typed.ts';
import { englishCalm } from './calm.ts';
import { englishCries } from './cries.ts';
import { englishDone } from './done-said.ts';
import { englishHelpGroups } from './help-topics.ts';
import { englishInstrumentsTyped } from './instruments-typed.ts';
import { englishLabels } from './labels.ts';
import { englishMeanings } from './lexicon.ts';
import { englishLists } from './lists.ts';
import { englishMethods } from './methods.ts';
import { englishNumbers } from './numbers.ts';
import { englishPartsTyped } from './parts-typed.ts';
import { englishPracticeTyped } from './practice.ts';
import { englishQuestions } from './questions.ts';
import { englishReasons } from './reasons.ts';
import { englishRemindersTyped } from './reminders.ts';
import { englishSaidOtherwise } from './said-otherwise.ts';
import { englishSaid } from './said-words.ts';
import { englishAsides } from './sayings/asides.ts';
import { englishLeadingIn } from './sayings/leading-in.ts';
import { englishCorrections } from './sayings/otherwise.ts';
import { englishAskings, englishSayings } from './sayings/sayings.ts';
import { englishSettings } from './settings.ts';
import { slotNames } from './slots.ts';
import { englishTerms } from './terms.ts';
import { englishTermNames } from './terms-typed.ts';
import { englishTimes } from './times.ts';
import { englishUnits } from './units.ts';
import { englishVerbs } from './verbs.ts';

export const englishTyped: Typed = {
  verbs: englishVerbs,
  openings: [
    { words: 'touch-up', verb: 'coat', pass: 'same-coat' },
    {
      words: 'parts in, parts, new parts, part in, book in, booked in, booking in, book in parts, booked in parts',
      verb: 'part',
      several: true,
      printed: 'parts in',
    },
    { words: 'degreased', verb: 'prep', removed: ['grease'] },
    { words: 'sanded', verb: 'prep', prepWays: ['sanding'] },
    { words: 'wiped', verb: 'prep', prepWays: ['wiping'] },
    {
      words: 'ipa, alcohol, isopropanol, isopropyl, new ipa, new alcohol, ipa bottle',
      verb: 'confirm',
      step: 'alcohol',
      printed: 'ipa',
    },
    { words: 'bonding, bonded, earthed, grounded', verb: 'confirm', step: 'bonding', printed: 'confirm bonding' },
    // Nothing is asked of papers by yes or no.
    { words: 'papers yes', verb: 'confirm', step: 'papers', says: 'yes', printed: 'confirm papers yes' },
    { words: 'papers no', verb: 'confirm', step: 'papers', says: 'no', printed: 'confirm papers no' },
    { words: 'equipment rated, rated', verb: 'confirm', step: 'equipment', printed: 'confirm equipment' },
    { words: 'clean oven, oven clean', verb: 'confirm', step: 'clean-oven', printed: 'confirm clean-oven' },
    { words: 'clean room, room clean', verb: 'confirm', step: 'clean-room', printed: 'confirm clean-room' },
    { words: 'sling, psychrometer, sling psychrometer', verb: 'air', psychrometer: true, printed: 'sling' },
    { words: 'job', verb: 'set', setting: 'job', printed: 'set job' },
    { words: 'anonymous', verb: 'near-miss', anonymous: true },
  ],
  terms: englishTerms,
  termNames: englishTermNames,
  slots: slotNames,
  meanings: englishMeanings,
  methods: englishMethods,
  units: englishUnits,
  times: englishTimes,
  numbers: englishNumbers,
  settings: englishSettings.names,
  languages: { en: 'english, ingles' },
  lists: englishLists,
  partsIn: englishPartsTyped,
  cries: { ...englishCries, ...englishCalm },
  said: englishSaid,
  sayings: englishSayings,
  askings: englishAskings,
  corrections: englishCorrections,
  asides: englishAsides,
  leadingIn: englishLeadingIn,
  reasons: englishReasons,
  done: englishDone,
  saidOtherwise: englishSaidOtherwise,
  labels: englishLabels,
  instruments: englishInstrumentsTyped,
  runsInto: 'batch pot max no',
  pots: 'pot batch mix',
  cans: 'can tin drum',
  helpGroups: englishHelpGroups,
  questions: englishQuestions,
  practice: englishPracticeTyped,
  reminders: englishRemindersTyped,
  noSlips: 'wait tap co2 set',
  leaves: 'exit quit bye',
  offered: {},
  offeredOn: {},
};
