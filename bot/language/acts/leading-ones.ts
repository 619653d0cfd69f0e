// `l201g` and `I201g` are 1201g where no name can stand (mix, weigh, empty); elsewhere they may be a part's name.

import type { Hearing } from '../hearing.ts';
import type { Token } from '../typed/token.ts';
import { tokensAt } from '../typed/tokens.ts';
import type { ActLine } from './act-line.ts';

const oneAsLetter = /^[lI](?=\d)/;
const labelled = /^[ab](?=\d)/i;

export function withLeadingOnes(act: ActLine): ActLine {
  return act.tokens.some(isSlip)
    ? { ...act, tokens: act.tokens.flatMap((token) => repaired(token, act.context.hearing)) }
    : act;
}

/** `a1201g`: the part's letter run into its weight. */
export function withLabelsApart(act: ActLine): ActLine {
  const { hearing } = act.context;
  const isGlued = (token: Token): boolean => token.kind === 'word' && labelled.test(token.text);
  if (!act.tokens.some(isGlued)) return act;
  const apart = (token: Token): readonly Token[] =>
    isGlued(token)
      ? [
          ...tokensAt(token.text.slice(0, 1), token.start, hearing),
          ...tokensAt(token.text.slice(1), token.start + 1, hearing),
        ]
      : [token];
  return { ...act, tokens: act.tokens.flatMap(apart) };
}

function isSlip(token: Token): boolean {
  return token.kind === 'word' && oneAsLetter.test(token.text);
}

function repaired(token: Token, hearing: Hearing): readonly Token[] {
  if (!isSlip(token)) return [token];
  const tokens = tokensAt(token.text.replace(oneAsLetter, '1'), token.start, hearing);
  const [only] = tokens;
  const isMass = tokens.length === 1 && only?.kind === 'quantity' && only.unit.is === 'mass';
  // What cannot be is shown as it was typed.
  return isMass ? [{ ...only, text: token.text }] : [token];
}
