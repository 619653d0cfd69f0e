// `1,202 kg`, where nobody can tell a thousand from one and some: of what is told in kilograms or pounds nobody here has a thousand,
// of grams nobody reads a thousandth. It is only ever offered. Our own judgement, no source.

import type { LineContext } from '../reading.ts';
import { wordIn } from '../typed/token.ts';
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
  for (const token of tokens) {
    const meant = token.kind === 'doubt' ? token.couldBe.find(isLikely) : undefined;
    if (meant === undefined) continue;
    settled += line.slice(from, token.start) + meant;
    from = token.end;
  }
  return from === 0 ? [] : [{ line: settled + line.slice(from), isSure: false }];
}

function isLikely(figure: string): boolean {
  const [, decimals, unit = ''] = /^\d+(\.\d+)?\s?(\p{L}+)$/u.exec(figure) ?? [];
  return decimals === undefined ? small.has(unit) : large.has(unit);
}
