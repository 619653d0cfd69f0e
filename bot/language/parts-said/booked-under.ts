// Parts by what they are booked under: `serial 4407`, `job 87`.

import { wordIn } from '../typed/token.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import type { PartsAt, PartsInLine } from './parts-in-line.ts';

const numbers: ReadonlySet<string> = new Set(['no', 'number', '#', 'num', 'of']);

export function bookedUnder({ tokens, context }: PartsInLine, token: number): PartsAt | undefined {
  const text = (at: number): string => withoutAccents(tokens[at]?.text.toLowerCase() ?? '');
  const { serials, jobs } = context.hearing.said.lists;
  const isJob = wordIn(tokens[token]) === 'job' || jobs.has(text(token));
  const slot = serials.has(text(token)) ? 'serial' : isJob ? 'job' : undefined;
  if (slot === undefined) return undefined;
  const at = numbers.has(text(token + 1)) ? token + 2 : token + 1;
  const names = (context.live?.().parts ?? []).flatMap((part) =>
    part[slot]?.toLowerCase() === text(at) ? [part.name] : [],
  );
  if (names.length === 0) return undefined;
  const isOne = slot === 'serial' && names.length === 1;
  const is = isOne ? 'named' : slot === 'serial' ? 'one-of' : 'fitting';
  return { names, is, isSure: true, to: at + 1 };
}
