// The words that call, and what may stand round them: how a cry opens and how it ends.

import type { Alarm } from '../../core/session/session-commands.ts';
import type { CryTable } from './cry-words.ts';
import { isPlaceRoot } from './trade-words.ts';
import { withoutAccents } from './typed/without-accents.ts';

/** A word that calls, with what stands round it. */
export interface Called {
  readonly alarm: Alarm;
  readonly word: string;
  /** Nearest first. */
  readonly before: readonly string[];
  readonly after: readonly string[];
}

/** Whether it has to begin as a cry, or only to stand as one. */
export type HeardAs = 'begun' | 'standing';

/** What a line is heard against: the words of every tongue, and whom it may name. */
export interface CryContext {
  readonly cries: CryTable;
  /** `begun`: what begins with an alarm's word cries out, unless it is calm. */
  readonly heard: HeardAs;
  /** The crew's. */
  readonly names: ReadonlySet<string>;
  /** Those of several words, word by word. */
  readonly whole: readonly (readonly string[])[];
  /** Typed with a capital, where not all of the line is. */
  readonly capitals: ReadonlySet<string>;
}

/** The words of a clause that call, each with what stands round it. */
export function calledIn(clause: readonly string[], context: CryContext): readonly Called[] {
  const { alsoCries } = context.cries;
  const found: Called[] = [];
  for (let i = 0; i < clause.length; i++) {
    const word = clause[i] ?? '';
    const next = clause[i + 1] ?? '';
    const two = `${word} ${next}`;
    const pair = alarmOf(two, context) ?? alsoCries.get(two);
    const called = pair === undefined ? word : two;
    const to = i + (pair === undefined ? 1 : 2);
    const named = pair ?? alarmOf(word, context) ?? alsoCries.get(word);
    if (named === undefined && !context.cries.dropped.has(called)) continue;
    const after = clause.slice(to);
    // `se cayó el bote de endurecedor`: what fell is a can, and nobody.
    const isLiquid = isDropped(called, after, context) || (named === 'down' && isCanOf(after, context));
    const alarm = isLiquid ? 'spill' : named === 'fire' && isOfPot(called, after, context) ? 'hot' : named;
    if (alarm === undefined) continue;
    found.push({ alarm, word: called, before: clause.slice(0, i).reverse(), after });
    i = to - 1;
  }
  return found;
}

/** `vertido de acetona`, `se me cayó el thinner`: a liquid. */
export function isDropped(word: string, after: readonly string[], { cries }: CryContext): boolean {
  if (!cries.dropped.has(word)) return false;
  return cries.liquids.has(after.find((each) => !(cries.of.has(each) || cries.articles.has(each))) ?? '');
}

/** `smoke from pot 1`, `humo de la mezcla`: what reacts, and no fire yet. */
export const isOfPot = (word: string, after: readonly string[], { cries }: CryContext): boolean =>
  cries.fumesOf.has(word) &&
  after
    .slice(0, 6)
    .some(
      (each, i) =>
        cries.pots.has(each) &&
        [cries.of, cries.articles, cries.whereabouts].some((set) => set.has(after[i - 1] ?? '')),
    );

export function alarmOf(word: string, { cries }: CryContext): Alarm | undefined {
  return cries.alarms.get(word) ?? cries.alarms.get(withoutAccents(word));
}

export function isCanOf(after: readonly string[], { cries }: CryContext): boolean {
  const [can = '', its = '', what = ''] = without(after, cries.articles);
  return cries.pots.has(can) && cries.of.has(its) && cries.liquids.has(what);
}

export const isPlace = (word: string, { cries }: CryContext): boolean => cries.things.has(word) || isPlaceRoot(word);
export const isPerson = (word: string, { names, cries }: CryContext): boolean =>
  names.has(word) || cries.anybody.has(word);
export const without = (list: readonly string[], dropped: ReadonlySet<string>): readonly string[] => {
  const first = list.findIndex((word) => !dropped.has(word));
  return first === -1 ? [] : list.slice(first);
};

export function opens(before: readonly string[], context: CryContext): boolean {
  const { cries, names } = context;
  const [word] = without(before, cries.sizes);
  if (word === undefined || cries.openings.has(word) || alarmOf(word, context) !== undefined) return true;
  return (cries.no.has(word) && before.some((each) => cries.oh.has(each))) || names.has(word) || isPlace(word, context);
}

/** Nothing more, who, where, or that help is wanted. `where`: what a place after `in` must look like. */
export function endsWell(
  after: readonly string[],
  context: CryContext,
  where: (word: string) => boolean = (word) => isPlace(word, context),
): boolean {
  const { cries, names } = context;
  const [word] = after;
  if (
    word === undefined ||
    cries.endings.has(word) ||
    names.has(word) ||
    (isPlace(word, context) && !cries.compounds.has(word))
  )
    return true;
  if (alarmOf(word, context) !== undefined) return true;
  if (cries.toSomebody.has(word) && names.has(after[1] ?? '')) return true;
  if (cries.whereabouts.has(word)) return after.slice(1, 5).some(where);
  // `arde la cabina`, `se quema el horno`.
  return cries.articles.has(word) && isPlace(without(after, cries.articles)[0] ?? '', context);
}
