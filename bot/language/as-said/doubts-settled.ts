// `1,202 kg`, where nobody can tell a thousand from one and some: of what is told in kilograms or pounds nobody here has a thousand,
// of grams nobody reads a thousandth. It is only ever offered. Our own judgement, no source.

import type { LineContext } from '../reading.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { tokenize } from '../typed/tokens.ts';
import type { Heard } from './heard.ts';

const large: ReadonlySet<string> = new Set(['kg', 'lb', 'L', 'gal']);
const small: ReadonlySet<string> = new Set(['g', 'mL']);

/** The line with each such figure as it is likely meant; none where it has none, or where an act asks about it itself. */
export function doubtsSettled(line: string, { hearing }: LineContext): readonly Heard[] {
  if (!/\d[.,]\d{3}/.test(line)) return [];
  const tokens = tokenize(line, hearing);
  if (hearing.verbs.has(wordIn(tokens[0]))) return [];
  let [settled, from] = ['', 0];
  for (const [at, token] of tokens.entries()) {
    const meant =
      token.kind === 'doubt'
        ? token.couldBe.find(isLikely)
        : token.kind === 'number' && /^\d{1,2}[.,]\d{3}$/.test(token.text) && isOfLetter(tokens, at)
          ? token.text.replace(/[.,]/, '')
          : undefined;
    if (meant === undefined) continue;
    settled += line.slice(from, token.start) + meant;
    from = token.end;
  }
  return from === 0 ? [] : [{ line: settled + line.slice(from), isSure: false }];
}

/** `1,204 de A`: what is weighed in of a part, where no unit is told, is in grams. */
function isOfLetter(tokens: readonly Token[], at: number): boolean {
  const isLetter = (token: Token | undefined): boolean => token?.kind === 'word' && /^[AaBb]$/.test(token.text);
  return isLetter(tokens[at - 1]) || (wordIn(tokens[at + 1]) === 'of' && isLetter(tokens[at + 2]));
}

function isLikely(figure: string): boolean {
  const [, decimals, unit = ''] = /^\d+(\.\d+)?\s?(\p{L}+)$/u.exec(figure) ?? [];
  return decimals === undefined ? small.has(unit) : large.has(unit);
}
