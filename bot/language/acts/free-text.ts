// Free text at the end of a line, in somebody's own words: a reason to hold, why an entry was wrong. As typed, or in
// quotes; after quotes the line may still say when and how it is meant.

import { isFailed } from '../../../core/failed.ts';
import type { Hearing } from '../hearing.ts';
import type { Fault } from '../reading.ts';
import { type How, mannerOf } from '../time-and-permission.ts';
import type { Token } from '../typed/token.ts';
import { tokensAt } from '../typed/tokens.ts';
import type { ActLine } from './act-line.ts';

export interface FreeText {
  readonly words: string;
  readonly quoted: boolean;
  readonly how: How;
}

/** The words from token `from` to the end of the line. */
export function freeTextFrom(act: ActLine, from: number): FreeText | Fault {
  const first = act.tokens[from];
  const last = act.tokens.at(-1);
  if (first === undefined || last === undefined) return { words: '', quoted: false, how: {} };
  const asTyped = { words: act.line.slice(first.start, last.end), quoted: false, how: {} };
  if (first.kind !== 'quoted') return asTyped;
  const manner = mannerOf(act.tokens.slice(from + 1), act.line, act.context);
  if (isFailed(manner)) return manner;
  // Words that only begin with a name in quotes: `"Jo Invented" slipped on the hose`.
  return manner.tokens.length > 0 ? asTyped : { words: first.words, quoted: true, how: manner.how };
}

/** Only words of one's own need their quotes: “1201g” is a weight all the same. */
export function withoutQuotes(token: Token, hearing: Hearing): readonly Token[] {
  return token.kind === 'quoted' ? tokensAt(token.words, token.start + 1, hearing) : [token];
}
