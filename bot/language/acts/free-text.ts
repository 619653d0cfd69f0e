// Free text at the end of a line, in somebody's own words: a reason to hold, why an entry was wrong. As typed, or in
// quotes; after quotes the line may still say when and how it is meant.

import type { Stance } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import type { EpochMs } from '../../../core/units.ts';
import type { Fault } from '../reading.ts';
import { mannerOf } from '../time-and-permission.ts';
import type { ActLine } from './act-line.ts';

export interface FreeText {
  readonly words: string;
  readonly quoted: boolean;
  readonly at?: EpochMs;
  readonly stance?: Stance;
}

/** The words from token `from` to the end of the line. */
export function freeTextFrom(act: ActLine, from: number): FreeText | Fault {
  const first = act.tokens[from];
  const last = act.tokens.at(-1);
  if (first === undefined || last === undefined) return { words: '', quoted: false };
  if (first.kind !== 'quoted') return { words: act.line.slice(first.start, last.end), quoted: false };
  const manner = mannerOf(act.tokens.slice(from + 1), act.line, act.context);
  if (isFailed(manner)) return manner;
  // Words that only begin with a name in quotes: `"Jo Invented" slipped on the hose`.
  if (manner.tokens.length > 0) return { words: act.line.slice(first.start, last.end), quoted: false };
  return {
    words: first.words,
    quoted: true,
    ...(manner.said !== undefined && { at: manner.said.at }),
    ...(manner.stance !== undefined && { stance: manner.stance }),
  };
}
