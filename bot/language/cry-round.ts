// The words that call, and what may stand round them: how a cry opens and how it ends.

import { type Alarm, alarmNamed } from '../../core/session/session-commands.ts';
import {
  anybody,
  articles,
  boiling,
  burningOf,
  compounds,
  endings,
  falling,
  heard,
  heardPhrases,
  liquids,
  of,
  oh,
  openings,
  pots,
  sizes,
  smoke,
  things,
  whereabouts,
} from './cry-words.ts';
import { everyTongue } from './every-tongue.ts';
import { isPlaceRoot } from './trade-words.ts';
import { verbNamed } from './verbs-typed.ts';

/** What no verb of the vocabulary says and cries all the same. */
const alsoCries: ReadonlyMap<string, Alarm> = new Map([
  ...[...falling].map((word) => [word, 'down'] as const),
  ...[...burningOf].map((word) => [word, 'fire'] as const),
  ...[...boiling].map((word) => [word, 'hot'] as const),
  ...[...smoke].map((word) => [word, 'fire'] as const),
]);

const dropped = heardPhrases('dropped');
const no = heard('no');
/** `le entró en los ojos a kari`. */
const toSomebody = heard('toSomebody');

/** A word that calls, with what stands round it. */
export interface Called {
  readonly alarm: Alarm;
  readonly word: string;
  /** Nearest first. */
  readonly before: readonly string[];
  readonly after: readonly string[];
}

/** Whom the line may name. */
export interface People {
  /** The crew's. */
  readonly names: ReadonlySet<string>;
  /** Those of several words, word by word. */
  readonly whole: readonly (readonly string[])[];
  /** Typed with a capital, where not all of the line is. */
  readonly capitals: ReadonlySet<string>;
}

export type Names = ReadonlySet<string>;

/** The words of a clause that call, each with what stands round it. */
export function calledIn(clause: readonly string[]): readonly Called[] {
  const found: Called[] = [];
  for (let i = 0; i < clause.length; i++) {
    const [word = '', next = ''] = clause.slice(i, i + 2);
    const two = `${word} ${next}`;
    const pair = alarmOf(two) ?? alsoCries.get(two);
    const called = pair === undefined ? word : two;
    const to = i + (pair === undefined ? 1 : 2);
    const after = clause.slice(to);
    const named = pair ?? alarmOf(word) ?? alsoCries.get(word);
    // `se cayó el bote de endurecedor`: what fell is a can, and nobody.
    const isLiquid = isDropped(called, after) || (named === 'down' && isCanOf(after));
    const alarm = isLiquid ? 'spill' : named;
    if (alarm === undefined) continue;
    found.push({ alarm, word: called, before: clause.slice(0, i).reverse(), after });
    i = to - 1;
  }
  return found;
}

/** `vertido de acetona`, `se me cayó el thinner`: a liquid. */
export function isDropped(word: string, after: readonly string[]): boolean {
  const [what = ''] = after.filter((each) => !(of.has(each) || articles.has(each)));
  return dropped.has(word) && liquids.has(what);
}

export function alarmOf(word: string): Alarm | undefined {
  return alarmNamed(verbNamed(word, everyTongue)?.row.name);
}

export function isCanOf(after: readonly string[]): boolean {
  const [can = '', its = '', what = ''] = without(after, articles);
  return pots.has(can) && of.has(its) && liquids.has(what);
}

export const isPlace = (word: string): boolean => things.has(word) || isPlaceRoot(word);
export const isPerson = (word: string, names: Names): boolean => names.has(word) || anybody.has(word);
export const without = (list: readonly string[], dropped: ReadonlySet<string>): readonly string[] => {
  const first = list.findIndex((word) => !dropped.has(word));
  return first === -1 ? [] : list.slice(first);
};

export function opens(before: readonly string[], names: Names): boolean {
  const [word] = without(before, sizes);
  if (word === undefined || openings.has(word) || alarmOf(word) !== undefined) return true;
  return (no.has(word) && before.some((each) => oh.has(each))) || names.has(word) || isPlace(word);
}

/** Nothing more, who, where, or that help is wanted. `where`: what a place after `in` must look like. */
export function endsWell(after: readonly string[], names: Names, where: (word: string) => boolean): boolean {
  const [word] = after;
  if (word === undefined || endings.has(word) || names.has(word) || (isPlace(word) && !compounds.has(word)))
    return true;
  if (alarmOf(word) !== undefined) return true;
  if (toSomebody.has(word) && names.has(after[1] ?? '')) return true;
  if (whereabouts.has(word)) return after.slice(1, 5).some(where);
  // `arde la cabina`, `se quema el horno`.
  return articles.has(word) && isPlace(without(after, articles)[0] ?? '');
}
