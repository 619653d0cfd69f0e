// A pot or a can that reacts, told in ordinary words: `pot 2 is gelled and hot`, `can 1 is warm and hissing`. Where it says what
// reacts and nothing else it rings; else nobody is called yet and what it may be stands there, one tap each. Our own choice, no source.

import { criedWords, saysNow } from './cry.ts';
import type { CryTable } from './cry-words.ts';
import type { LineContext } from './reading.ts';
import { isPlaceRoot } from './trade-words.ts';

export type Reacting = { readonly is: 'certain'; readonly batch?: number } | { readonly is: 'bare' };

const around = [
  'articles',
  'between',
  'endings',
  'gels',
  'heats',
  'openings',
  'pots',
  'reacts',
  'rounding',
  'sizes',
  'swells',
  'whereabouts',
] as const satisfies readonly (keyof CryTable)[];

export function reactingIn(line: string, { hearing: { cries } }: LineContext): Reacting | undefined {
  const said = criedWords(line, cries);
  const has = (set: ReadonlySet<string>): boolean => said.some((word) => set.has(word));
  const isHot = has(cries.reacts) || (has(cries.heats) && (has(cries.gels) || has(cries.swells)));
  if (!isHot || !saysNow(line, cries) || [cries.denials, cries.harmless, cries.supposed].some(has)) return undefined;
  const isOnlyThat = said.every(
    (word) => /^\d+$/.test(word) || isPlaceRoot(word) || around.some((set) => cries[set].has(word)),
  );
  if (has(cries.pots)) return { is: isOnlyThat ? 'certain' : 'bare' };
  if (!isOnlyThat) return undefined;
  const batch = gelledNumber(said, cries);
  return batch === undefined ? { is: 'bare' } : { is: 'certain', batch };
}

/** `gelled 2 hot`; of two numbers one may be a time. */
function gelledNumber(said: readonly string[], cries: CryTable): number | undefined {
  const [at, other] = said.flatMap((word, i) => (/^\d+$/.test(word) ? [i] : []));
  if (at === undefined || other !== undefined || !cries.gels.has(said[at - 1] ?? '')) return undefined;
  const number = Number(said[at]);
  return number >= 1 ? number : undefined;
}
