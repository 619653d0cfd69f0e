// For acts whose values may stand in quotes: the manner comes off, the quotes stay.

import type { Command } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import type { Hearing } from '../hearing.ts';
import type { Fault } from '../reading.ts';
import { mannerOf } from '../time-and-permission.ts';
import type { Token } from '../typed/token.ts';
import { tokensAt } from '../typed/tokens.ts';
import type { ActLine, ActRead, ReaderToTheEnd } from './act-line.ts';

export function withManner(
  read: (act: ActLine, tokens: readonly Token[]) => Command | Fault,
  bareTimes = true,
): ReaderToTheEnd {
  return (act): ActRead | Fault => {
    const manner = mannerOf(act.tokens, act.line, act.context, bareTimes);
    if (isFailed(manner)) return manner;
    const command = read({ ...act, tokens: manner.tokens }, manner.tokens);
    if (isFailed(command)) return command;
    const { said, stance } = manner;
    return { command, ...(said !== undefined && { at: said.at }), ...(stance !== undefined && { stance }) };
  };
}

/** Only words of one's own need their quotes: “1201g” is a weight all the same. */
export function withoutQuotes(token: Token, hearing: Hearing): readonly Token[] {
  return token.kind === 'quoted' ? tokensAt(token.words, token.start + 1, hearing) : [token];
}
