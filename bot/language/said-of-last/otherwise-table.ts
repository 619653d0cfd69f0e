// The phrases of the tongues that are heard together with which a line answers or puts right what was said before, for quick finding.

import type { SaidOtherwise } from '../tongues/english/said-otherwise.ts';

type Kind = Exclude<keyof SaidOtherwise, 'setsRight' | 'midLine' | 'midLineMarked'>;

export interface OtherwiseTable {
  /** By the first word, the longest first. */
  readonly byFirst: Readonly<Record<Kind, ReadonlyMap<string, readonly string[]>>>;
  readonly closesByLast: ReadonlyMap<string, readonly string[]>;
  readonly besides: ReadonlySet<string>;
  readonly rounds: ReadonlySet<string>;
  readonly agrees: ReadonlySet<string>;
  readonly setsRight: readonly string[];
  readonly midLine: readonly string[];
  readonly midLineMarked: readonly string[];
}

export function otherwiseTableOf(tongues: readonly { readonly saidOtherwise: SaidOtherwise }[]): OtherwiseTable {
  const all = (kind: keyof SaidOtherwise): readonly string[] =>
    tongues.flatMap(({ saidOtherwise }) => saidOtherwise[kind]);
  const byFirst = (kind: Kind) => grouped(all(kind), (words) => words[0]);
  return {
    byFirst: {
      ...{ takesBack: byFirst('takesBack'), wrongs: byFirst('wrongs'), opens: byFirst('opens') },
      ...{ goesOn: byFirst('goesOn'), closes: byFirst('closes'), nots: byFirst('nots'), instead: byFirst('instead') },
      ...{
        explains: byFirst('explains'),
        swaps: byFirst('swaps'),
        beforeLetter: byFirst('beforeLetter'),
        rounds: byFirst('rounds'),
        agrees: byFirst('agrees'),
        besides: byFirst('besides'),
      },
    },
    closesByLast: grouped(all('closes'), (words) => words.at(-1)),
    besides: new Set(all('besides')),
    rounds: new Set(all('rounds')),
    agrees: new Set(all('agrees')),
    setsRight: all('setsRight'),
    midLine: all('midLine'),
    midLineMarked: all('midLineMarked'),
  };
}

function grouped(
  phrases: readonly string[],
  key: (words: readonly string[]) => string | undefined,
): ReadonlyMap<string, readonly string[]> {
  const groups = new Map<string, string[]>();
  for (const phrase of phrases.toSorted((one, other) => other.length - one.length)) {
    const word = key(phrase.split(' ')) ?? '';
    groups.set(word, [...(groups.get(word) ?? []), phrase]);
  }
  return groups;
}
