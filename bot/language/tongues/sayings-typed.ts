// What a saying may mean: an act, something that is asked for, a question, or nothing that is recorded; of a question what it asks.

import { topics } from '../../../core/verbs/topics.ts';
import { saidActs } from './said-words.ts';

/** They show something, or set how it is shown. */
export const askedForMeanings = [
  'card',
  'traveller',
  'export',
  'now',
  'handover',
  'find',
  'papers',
  'set units us',
  'set units metric',
  'set language es',
  'set language en',
  'set rings direct',
  'undo',
  'help',
  'practice on',
  /** Readings are to come: they are asked for. */
  'measure film',
] as const;
export type AskedForMeaning = (typeof askedForMeanings)[number];

export const saidMeanings = [
  ...saidActs,
  ...(['open', 'received', 'part', 'used', 'waste'] as const),
  ...askedForMeanings,
  'greeting',
  /** Any question. */
  'asking',
  /** It is not so, or not yet, or speaks of something else. */
  'nothing',
] as const;
export type SaidMeaning = (typeof saidMeanings)[number];

/** What a question asks; `trace`: what went on it. */
export const askedMeanings = [
  ...(['can-i', 'how-long', 'who-did', 'where-is', 'how-hot', 'how-much', 'to-do'] as const),
  ...(['what-late', 'went-wrong', 'at-risk', 'trace', 'why', 'what-is', 'stock', 'day'] as const),
  ...topics.filter((topic) => topic !== 'standing'),
] as const;
export type AskedMeaning = (typeof askedMeanings)[number];

/** Of any line: whether it asks, and what. */
export const asksMeaning = <Meaning extends AskedMeaning>(meaning: Meaning): `asks ${Meaning}` => `asks ${meaning}`;
export type SaidOrAsked = Exclude<SaidMeaning, 'asking'> | `asks ${AskedMeaning}`;
export const saidOrAsked: readonly SaidOrAsked[] = [
  ...saidMeanings.filter((meaning) => meaning !== 'asking'),
  ...askedMeanings.map(asksMeaning),
];
export const isAsks = (meaning: string): meaning is `asks ${AskedMeaning}` => meaning.startsWith('asks ');
