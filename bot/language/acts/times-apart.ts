// `4x5kg` in one piece: how many, and how much in each.

import { tokensAt } from '../typed/tokens.ts';
import type { ActLine } from './act-line.ts';

const times = /^(\d{1,4})[x×](?=[\d.,])/i;

export function timesApart(act: ActLine): ActLine {
  const { hearing } = act.context;
  const tokens = act.tokens.flatMap((token) => {
    const glued = token.kind === 'word' ? times.exec(token.text) : null;
    if (glued === null) return [token];
    const [front, count = ''] = glued;
    const each = tokensAt(token.text.slice(front.length), token.start + front.length, hearing);
    return [...tokensAt(count, token.start, hearing), ...each];
  });
  return { ...act, tokens };
}
