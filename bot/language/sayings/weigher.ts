// How much a line speaks for each meaning, by the sayings that are known of it: a sign counts the more, the fewer meanings it is
// met with in. What it weighs can be told word by word, and a saying that is added to a list is all that it takes to hear more.

import { isPair, type PassedOver, rootLetters, rootsOf, signsOf } from './signs.ts';
import type { InSayings, SignsCounted } from './signs-counted.ts';

export interface Weighed<Meaning extends string> {
  readonly meaning: Meaning;
  /** Of one for all meanings together: how likely it is meant, if any of them is. */
  readonly share: number;
}

export interface Weigher<Meaning extends string> {
  /** The likeliest first. */
  readonly weigh: (line: string) => readonly Weighed<Meaning>[];
  /** How likely it is one of these. */
  readonly shareOf: (line: string, ...meanings: readonly Meaning[]) => number;
  /** How much one sign speaks for one meaning: above nought for it. */
  readonly speaksFor: (sign: string, meaning: Meaning) => number;
  /** Whether a word is so much of one meaning that hardly another has it. */
  readonly isWordOf: (word: string, meaning: Meaning) => boolean;
  /** Whether any saying has it. */
  readonly knows: (sign: string) => boolean;
  /** A short word that is said of many things: no slip of another. */
  readonly isPlain: (word: string) => boolean;
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

/** Of so many meanings: a slip is met with in fewer. */
const fewestOfPlain = 2;

/** A line's clauses, and the ways to put it. */
const fewLines = 16;

interface Speaks {
  /** Of the meanings that are told apart. */
  readonly at: number;
  readonly much: number;
}

/**
 * `meaningOf`: what sayings of a kind mean here; of those that mean nothing here no sign is known. Each tongue's are counted by
 * themselves: that one has more of them makes the words of another say no less.
 */
export function weigherOf<Kind extends string, Meaning extends string>(
  tongues: readonly SignsCounted<Kind>[],
  meaningOf: (kind: Kind) => Meaning | undefined,
  passedOver: PassedOver,
): Weigher<Meaning> {
  const told = toldApart(tongues, meaningOf);
  const { meanings } = told;
  // Of what people say, a few signs come again and again.
  const met = new Map<string, readonly Speaks[]>();
  const speaks = (sign: string): readonly Speaks[] => {
    const known = met.get(sign);
    if (known !== undefined) return known;
    const inSayings = tongues.map(({ of }) => of(sign));
    if (inSayings.every(({ length }) => length === 0)) return [];
    const made = speaksOf(sign, inSayings, told);
    met.set(sign, made);
    return made;
  };
  const speaksFor = (sign: string, meaning: Meaning): number => {
    const of = speaks(sign);
    return of.find(({ at }) => meanings[at] === meaning)?.much ?? (of.length > 0 ? leastOf(sign) : 0);
  };
  const weighAnew = (line: string): readonly Weighed<Meaning>[] => {
    // What speaks against all alike decides nothing.
    const weights = meanings.map(() => 0);
    for (const sign of signsOf(line, passedOver)) {
      const least = leastOf(sign);
      for (const { at, much } of speaks(sign)) weights[at] = (weights[at] ?? 0) + much - least;
    }
    const most = Math.max(...weights);
    const odds = weights.map((weight) => Math.exp((weight - most) * apart));
    const total = odds.reduce((sum, each) => sum + each, 0);
    return meanings
      .map((meaning, at) => ({ meaning, share: (odds[at] ?? 0) / total }))
      .toSorted((one, other) => other.share - one.share);
  };
  // One reading after the other weighs the same line, and its clauses.
  const lately = new Map<string, readonly Weighed<Meaning>[]>();
  const weigh = (line: string): readonly Weighed<Meaning>[] => {
    const known = lately.get(line);
    if (known !== undefined) return known;
    if (lately.size === fewLines) lately.clear();
    const weighed = weighAnew(line);
    lately.set(line, weighed);
    return weighed;
  };
  return {
    weigh,
    shareOf: (line, ...meant) =>
      weigh(line).reduce((sum, { meaning, share }) => (meant.includes(meaning) ? sum + share : sum), 0),
    knows: (sign) => speaks(sign).length > 0,
    isPlain: (word) => word.length <= rootLetters && speaks(word).length >= fewestOfPlain,
    speaksFor,
    isWordOf: (word, meaning) => rootsOf(word).some((root) => speaksFor(root, meaning) > clearly),
  };
}

const counts = (sign: string): number => (isPair(sign) ? pairCounts : 1);
const leastOf = (sign: string): number => counts(sign) * leastSpeaks;

interface ToldApart<Meaning extends string> {
  /** Only those that there are sayings of. */
  readonly meanings: readonly Meaning[];
  readonly byTongue: readonly {
    readonly sayings: readonly number[];
    /** By the place of a kind: that of its meaning. */
    readonly atOf: readonly (number | undefined)[];
  }[];
}

function toldApart<Kind extends string, Meaning extends string>(
  tongues: readonly SignsCounted<Kind>[],
  meaningOf: (kind: Kind) => Meaning | undefined,
): ToldApart<Meaning> {
  const meanings: Meaning[] = [];
  const byTongue = tongues.map(({ kinds }) => {
    const sayings: number[] = [];
    const atOf = kinds.map(({ kind, sayings: own }) => {
      const meaning = meaningOf(kind);
      if (meaning === undefined || own === 0) return undefined;
      const at = meanings.includes(meaning) ? meanings.indexOf(meaning) : meanings.push(meaning) - 1;
      sayings[at] = (sayings[at] ?? 0) + own;
      return at;
    });
    return { sayings, atOf };
  });
  return { meanings, byTongue };
}

/** No sign of a meaning gains by its having more sayings than another: shares of them are set side by side. */
function speaksOf<Meaning extends string>(
  sign: string,
  inSayings: readonly (readonly InSayings[])[],
  { meanings, byTongue }: ToldApart<Meaning>,
): readonly Speaks[] {
  const shares = new Map<number, number>();
  for (const [tongue, { sayings, atOf }] of byTongue.entries()) {
    for (const { kind, count } of inSayings[tongue] ?? []) {
      const at = atOf[kind];
      if (at === undefined) continue;
      const share = count / ((sayings[at] ?? 0) + fewest) / byTongue.length;
      shares.set(at, (shares.get(at) ?? 0) + share);
    }
  }
  const among = [...shares.values()].reduce((sum, share) => sum + share, unheard);
  const none = unheard / meanings.length;
  return [...shares].map(([at, share]) => {
    const likely = ((share + none) / among) * meanings.length;
    return { at, much: counts(sign) * Math.max(leastSpeaks, Math.log(likely)) };
  });
}
