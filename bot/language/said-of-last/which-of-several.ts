// Which of several that a card offers an answer says, by its order: `the second one`, `the first batch`.

import { takesBatch } from '../../../core/commands.ts';
import type { Hearing } from '../hearing.ts';
import type { Strictly } from '../understood.ts';

/** `the second one`; a number alone may be of something else. */
export const placeIn = (words: string, { ordinals }: Hearing): number | undefined =>
  ordinals.get(words) ?? (/^[1-9]$/.test(words) ? Number(words) : undefined);

export function potIn(words: string, { ordinals, said }: Hearing): number | undefined {
  const [nth = '', pot = '', ...more] = words.split(' ');
  return said.pots.has(pot) && more.length === 0 ? ordinals.get(nth) : undefined;
}

export function isOfPot(line: string, reads: Strictly): boolean {
  const read = reads(line);
  return read.kind === 'command' && takesBatch(read.command) && read.command.batch !== undefined;
}
