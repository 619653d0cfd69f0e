// A list of parts in place of those of the latest act: `wait, only 1 to 3`, of a coat of four.

import { partsListed } from '../as-said/parts-listed.ts';
import type { LineContext } from '../reading.ts';

/** The act of the parts that the line lists; `undefined` where it lists no two. */
export function listInstead(said: string, act: string, context: LineContext): string | undefined {
  const [listed] = partsListed(said, context);
  const isPart = (word: string): boolean => context.parts.includes(word) || word.includes('..');
  const named = (listed?.line ?? '').split(/[\s,]+/).filter((word) => context.parts.includes(word));
  const words = act.split(' ');
  const at = words.findIndex(isPart);
  if (named.length < 2 || at === -1) return undefined;
  return [...words.slice(0, at), ...named, ...words.slice(at).filter((word) => !isPart(word))].join(' ');
}
