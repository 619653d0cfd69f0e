// The words of a can's label in the tongues that are heard together, by what stands behind them.

import { withoutAccents } from '../typed/without-accents.ts';

export interface LabelWords {
  /** Before the letter of its part. */
  readonly component: string;
  readonly lot: string;
  /** The same where no lot is named: a batch of the maker's. */
  readonly lotElse: string;
  /** Before its last day. */
  readonly expiry: string;
  readonly asOpen: string;
  readonly asReceived: string;
  readonly gas: string;
  /** Beside the gas: it is there. */
  readonly gasThere: string;
  /** Round all of it. */
  readonly rounds: string;
  /** Inside a day: `marzo de 2027`. */
  readonly dayJoints: string;
  /** A can in other words. */
  readonly vessels: string;
  /** Of a lot: it is called back. */
  readonly calledBack: string;
  /** And may be used again. */
  readonly calledOver: string;
}

export type LabelKind = Exclude<keyof LabelWords, 'dayJoints' | 'gasThere' | 'vessels' | 'calledBack' | 'calledOver'>;

export interface LabelTable {
  /** Phrases by their first word, the longest first. */
  readonly byFirst: ReadonlyMap<string, readonly LabelPhrase[]>;
  readonly dayJoints: ReadonlySet<string>;
  readonly gasThere: ReadonlySet<string>;
  readonly vessels: ReadonlySet<string>;
  readonly calledBack: readonly string[];
  readonly calledOver: readonly string[];
}

export interface LabelPhrase {
  readonly words: readonly string[];
  readonly of: LabelKind;
}

export function labelTableOf(tongues: readonly { readonly labels: LabelWords }[]): LabelTable {
  const byFirst = new Map<string, LabelPhrase[]>();
  const kinds = ['component', 'lot', 'lotElse', 'expiry', 'asOpen', 'asReceived', 'gas', 'rounds'] as const;
  for (const of of kinds) {
    for (const { labels } of tongues) {
      for (const phrase of withoutAccents(labels[of]).split(', ')) {
        const words = phrase.split(' ');
        const first = words[0] ?? '';
        byFirst.set(first, [...(byFirst.get(first) ?? []), { words, of }]);
      }
    }
  }
  for (const phrases of byFirst.values()) phrases.sort((one, other) => other.words.length - one.words.length);
  const listed = (of: keyof LabelWords): readonly string[] =>
    tongues.flatMap(({ labels }) => withoutAccents(labels[of]).split(', '));
  return {
    byFirst,
    dayJoints: new Set(listed('dayJoints')),
    gasThere: new Set(listed('gasThere')),
    vessels: new Set(listed('vessels')),
    calledBack: listed('calledBack'),
    calledOver: listed('calledOver'),
  };
}
