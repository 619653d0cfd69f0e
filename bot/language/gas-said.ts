// A gas monitor's reading as people say it: the number alone, since of each gas it shows one unit (`o2 19.1`, `LEL at 12`), and
// the gas behind the number or the monitor (`monitor 12% lel booth`). Put as its reader takes it.

import { type Gas, gases, unitOfGas } from '../../core/calc/monitor-limits.ts';
import type { Hearing } from './hearing.ts';
import { fillers, places } from './tongues/english/line-words.ts';
import { type Token, wordIn } from './typed/token.ts';
import { isIgnoredOn, verbOfWord } from './verbs-typed.ts';

/** The line put so; `undefined` where it stands so already, or says anything else. */
export function gasSaid(line: string, tokens: readonly Token[], hearing: Hearing): string | undefined {
  const index = tokens.findIndex((token) => gasOf(token, hearing) !== undefined);
  const token = tokens[index];
  const gas = token && gasOf(token, hearing);
  if (token === undefined || gas === undefined) return undefined;
  if (index === 0) return withUnit(line, tokens.slice(1), unitOfGas[gas]);
  const rounds = (each: Token): boolean =>
    each.kind !== 'word' || /\d/.test(each.word) || fillers.has(each.word) || isIgnoredOn(gas, each.word, hearing);
  const isReading = tokens.every((each, i) => i === index || rounds(each) || (i > index && places.has(wordIn(each))));
  return isReading ? `${token.text} ${line.slice(0, token.start)}${line.slice(token.end)}` : undefined;
}

function gasOf(token: Token, hearing: Hearing): Gas | undefined {
  const name = token.kind === 'word' ? verbOfWord(token, hearing)?.row.name : undefined;
  return gases.find((gas) => gas === name);
}

/** Its one bare number with the unit. `LEL at 12` is no noon: without it nothing would be left of what was read. */
function withUnit(line: string, tokens: readonly Token[], unit: string): string | undefined {
  const hasUnit = tokens.some(({ text }) => /\d\s?(?:%|ppm)$|^(?:%|ppm)$/i.test(text));
  const index = tokens.findIndex(({ kind }) => kind === 'number');
  const token = tokens[index];
  if (hasUnit || token?.kind !== 'number' || token.number.other !== undefined) return undefined;
  const before = tokens[index - 1];
  const from = before !== undefined && wordIn(before) === 'at' ? before : token;
  return `${line.slice(0, from.start)}${token.text}${unit}${line.slice(token.end)}`;
}
