// How much a line speaks for each meaning, by the sayings that are known of it: a sign counts the more, the fewer meanings it is
// met with in. What it weighs can be told word by word, and a saying that is added to a list is all that it takes to hear more.

import { isPair, type PassedOver, rootsOf, signsOf } from './signs.ts';

/** By meaning: how people say it, parted by line ends or by ` / `. */
export type Sayings<Meaning extends string> = Readonly<Partial<Record<Meaning, string>>>;

export interface Weighed<Meaning extends string> {
  readonly meaning: Meaning;
  /** Of one for all meanings together: how likely it is meant, if any of them is. */
  readonly share: number;
}

export interface Weigher<Meaning extends string> {
  /** The likeliest first. */
  readonly weigh: (line: string) => readonly Weighed<Meaning>[];
  /** How much one sign speaks for one meaning: above nought for it. */
  readonly speaksFor: (sign: string, meaning: Meaning) => number;
  /** Whether a word is so much of one meaning that hardly another has it. */
  readonly isWordOf: (word: string, meaning: Meaning) => boolean;
  /** Whether any saying has it. */
  readonly knows: (sign: string) => boolean;
}

/** A sign that no saying of a meaning has speaks against it no more than this: there are never sayings enough. */
const leastSpeaks = -0.7;
/** Two words together hold what each says already. */
const pairCounts = 0.7;
/** Signs that stand in one line mostly say the same once more: together they tell meanings less far apart than each by itself would. */
const apart = 0.6;
/** So much speaks for it that hardly another meaning has it. */
export const clearly = 1;
/** So small a part of its sayings may have a sign that none has. */
const unheard = 0.005;

/** A sign of one saying among few says less than of one among many of its kind. */
const fewest = 8;

interface Speaks {
  /** Of the meanings that are known. */
  readonly at: number;
  readonly much: number;
}

export function weigherOf<Meaning extends string>(
  all: readonly Sayings<Meaning>[],
  meanings: readonly Meaning[],
  passedOver: PassedOver,
): Weigher<Meaning> {
  const known = meanings.flatMap((meaning) => {
    const said = all.flatMap((sayings) => sayingsIn(sayings[meaning] ?? ''));
    return said.length === 0 ? [] : [{ meaning, said }];
  });
  const signs = speaksOf(known.map(({ said }) => said.map((saying) => signsOfSaying(saying, passedOver))));
  const speaksFor = (sign: string, meaning: Meaning): number => {
    const speaks = signs.get(sign)?.find(({ at }) => known[at]?.meaning === meaning);
    return speaks?.much ?? (signs.has(sign) ? leastOf(sign) : 0);
  };
  return {
    weigh: (line) => {
      // What speaks against all alike decides nothing.
      const weights = known.map(() => 0);
      for (const sign of signsOf(line, passedOver)) {
        const least = leastOf(sign);
        for (const { at, much } of signs.get(sign) ?? []) weights[at] = (weights[at] ?? 0) + much - least;
      }
      const most = Math.max(...weights);
      const odds = weights.map((weight) => Math.exp((weight - most) * apart));
      const total = odds.reduce((sum, each) => sum + each, 0);
      return known
        .map(({ meaning }, at) => ({ meaning, share: (odds[at] ?? 0) / total }))
        .toSorted((one, other) => other.share - one.share);
    },
    knows: (sign) => signs.has(sign),
    speaksFor,
    isWordOf: (word, meaning) => rootsOf(word).some((root) => speaksFor(root, meaning) > clearly),
  };
}

const counts = (sign: string): number => (isPair(sign) ? pairCounts : 1);
const leastOf = (sign: string): number => counts(sign) * leastSpeaks;

/** Several weighers are made of the same sayings: each is read once, and a sign is one string for all. */
const readOnce = new WeakMap<
  PassedOver,
  { readonly sayings: Map<string, readonly string[]>; readonly signs: Map<string, string> }
>();

function signsOfSaying(saying: string, passedOver: PassedOver): readonly string[] {
  const once = readOnce.get(passedOver) ?? { sayings: new Map(), signs: new Map() };
  readOnce.set(passedOver, once);
  const read = once.sayings.get(saying);
  if (read !== undefined) return read;
  const signs = signsOf(saying, passedOver).map((sign) => {
    const own = once.signs.get(sign) ?? sign;
    once.signs.set(own, own);
    return own;
  });
  once.sayings.set(saying, signs);
  return signs;
}

/** By meaning the signs of each of its sayings. */
function speaksOf(said: readonly (readonly (readonly string[])[])[]): ReadonlyMap<string, readonly Speaks[]> {
  const shares = new Map<string, Map<number, number>>();
  for (const [at, sayings] of said.entries()) {
    for (const sign of sayings.flat()) {
      const own = shares.get(sign) ?? new Map<number, number>();
      own.set(at, (own.get(at) ?? 0) + 1 / (sayings.length + fewest));
      shares.set(sign, own);
    }
  }
  const none = unheard / said.length;
  return new Map(
    [...shares].map(([sign, own]) => {
      const among = [...own.values()].reduce((sum, share) => sum + share, unheard);
      const speaks = [...own].map(([at, share]) => {
        const likely = ((share + none) / among) * said.length;
        return { at, much: counts(sign) * Math.max(leastSpeaks, Math.log(likely)) };
      });
      return [sign, speaks] as const;
    }),
  );
}

export const sayingsIn = (text: string): readonly string[] =>
  text
    .split('\n')
    .flatMap((row) => row.split(' / '))
    .map((saying) => saying.trim())
    .filter((saying) => saying !== '');
