// The English catalogue. Every other language has this shape: a missing sentence does not compile.

import type { BatchPhase } from '../../../core/batch/batch.ts';
import type { PartPhase } from '../../../core/part/part.ts';
import type { FactId } from '../../cards/fact-ids.ts';
import { englishChat } from './english-chat.ts';
import { englishFact } from './english-facts.ts';
import { englishMisread } from './english-misreads.ts';
import {
  englishHeldBack,
  englishHoldReason,
  englishNoFigure,
  englishObjection,
  englishRuleSources,
  englishUnclear,
} from './english-objections.ts';
import { englishPage } from './english-page.ts';
import { englishReplies } from './english-replies.ts';
import { englishLate, englishRings, englishUnproved } from './english-rings.ts';

const facts: Readonly<Record<FactId, string>> = {
  'part-a': 'Part A',
  'part-b': 'Part B',
  'ratio-error': 'Ratio off by',
  'ratio-tolerance': 'Ratio may be off by',
  'stir-wanted': 'Stirring wanted',
  'stir-given': 'Stirred',
  'stir-done-at': 'Stirring done at',
  'pot-life-ends': 'Pot life ends',
  'pot-margin-at': 'Finish by',
  'air-temperature': 'Air',
  'air-read-at': 'Read at',
  humidity: 'Humidity',
  'dew-point': 'Dew point',
  'surface-temperature': 'Surface',
  spread: 'Above the dew point by',
  'night-lowest': 'Lowest',
  'flash-least-at': 'Flash-off, least until',
  'flash-most-at': 'Flash-off, most until',
  'recoat-opens-at': 'Recoat from',
  'recoat-closes-at': 'Recoat until',
  'part-temperature': 'Part',
  'cure-given': 'Cure time given',
  'cure-done-at': 'Cure time given at',
  'film-mean': 'Mean',
  'film-lowest': 'Lowest',
  'film-highest': 'Highest',
  'left-over': 'Left over',
  'happened-at': 'Happened at',
  'late-minutes': 'Late by',
  'due-at': 'Due at',
  batches: 'Batches',
  'part-a-total': 'Part A weighed',
  'part-b-total': 'Part B weighed',
  parts: 'Parts coated',
  'air-lowest': 'Air, lowest',
  'air-highest': 'Air, highest',
  'humidity-lowest': 'Humidity, lowest',
  'humidity-highest': 'Humidity, highest',
  rings: 'Rings',
  'rings-late': 'Rings late',
  'rings-unanswered': 'Rings unanswered',
  deviations: 'Deviations',
};

const buttons = {
  happened: 'It already happened',
  'minus-5': '5 min earlier',
  'minus-10': '10 min earlier',
  weigh: 'Weighed…',
  stop: 'Stirrer off',
  stir: 'Stirrer on',
  filter: 'Filtered',
  coat: 'Coated…',
  thick: 'Thick',
  empty: 'Pot empty',
  dry: 'Dry',
  'cure-oven': 'Into the oven',
  'cure-room': 'Cure in the room',
  temp: 'Part reads…',
  out: 'Out',
  release: 'Release',
  hold: 'Hold…',
  ok: 'Heard',
  undo: 'Undo',
  air: 'Air…',
  night: 'Night lowest…',
  day: 'The day',
  meant: 'You meant',
  again: 'Say it again',
};

const phases: Readonly<Record<BatchPhase['is'] | PartPhase['is'], string>> = {
  'to-weigh': 'to be weighed',
  blending: 'mixing time runs',
  paused: 'stirrer off',
  filtered: 'in use',
  dead: 'thick or gelled, to be emptied',
  emptied: 'empty',
  bare: 'bare',
  flashing: 'flash-off',
  dry: 'dry, waits for its cure',
  curing: 'in cure',
  cured: 'out of cure',
  released: 'released',
};

const blend = {
  stir: { wanted: 'Stirring wanted', given: 'Stirred', doneAt: 'Stirring done at' },
  induction: { wanted: 'Induction wanted', given: 'Stood', doneAt: 'Induction over at' },
};

/** The ids of taps, with their labels. */
export type ButtonId = keyof typeof buttons;

export const english = {
  facts,
  phases,
  blend,
  buttons,
  page: englishPage,
  chat: englishChat,
  replies: englishReplies,
  objection: englishObjection,
  unclear: englishUnclear,
  ruleSources: englishRuleSources,
  noFigure: englishNoFigure,
  heldBack: englishHeldBack,
  holdReason: englishHoldReason,
  misread: englishMisread,
  fact: englishFact,
  rings: englishRings,
  unproved: englishUnproved,
  late: englishLate,
};

export type Words = typeof english;
