// In how many sayings of each kind a sign stands. Counted once for all that weigh by them: each of these tells its own meanings apart.

import { type Sayings, sayingsIn } from './sayings.ts';
import { type PassedOver, signsOf } from './signs.ts';

export interface InSayings {
  /** The place of the kind among all. */
  readonly kind: number;
  /** How many of its sayings have the sign. */
  readonly count: number;
}

export interface SignsCounted<Kind extends string> {
  readonly kinds: readonly { readonly kind: Kind; readonly sayings: number }[];
  readonly of: (sign: string) => readonly InSayings[];
}

export function signsCounted<Kind extends string>(
  all: readonly Sayings<Kind>[],
  kinds: readonly Kind[],
  passedOver: PassedOver,
): SignsCounted<Kind> {
  const counts = new Map<string, { readonly kind: number; count: number }[]>();
  const counted = kinds.map((kind, at) => {
    const said = all.flatMap((sayings) => sayingsIn(sayings[kind] ?? ''));
    for (const saying of said) {
      for (const sign of signsOf(saying, passedOver)) {
        const own = counts.get(sign) ?? [];
        if (own.length === 0) counts.set(sign, own);
        // One kind is counted after another.
        const last = own.at(-1);
        if (last?.kind === at) last.count += 1;
        else own.push({ kind: at, count: 1 });
      }
    }
    return { kind, sayings: said.length };
  });
  return { kinds: counted, of: (sign) => counts.get(sign) ?? [] };
}
