// A monitor of several gases read off in one line: `o2 20.9 lel 0 co 0 h2s 0`, `o2 20,9% lie 0% in booth`. Each gas with the number behind
// it, in the unit that it alone has; put as one line of all of them.

import { type Gas, unitOfGas } from '../../core/calc/monitor-limits.ts';
import { isOwnKey } from '../../core/own-key.ts';
import type { Hearing } from './hearing.ts';
import { fillers } from './tongues/english/line-words.ts';
import { type Token, wordIn } from './typed/token.ts';
import { isIgnoredOn, verbAt, verbOfWord } from './verbs-typed.ts';

interface Shown {
  readonly gas: Gas;
  readonly told: string;
  /** What is taken off the line. */
  readonly from: number;
  readonly to: number;
}

/** `undefined` where fewer than two gases are told, one has no number, or one is told twice. */
export function gasesSaid(line: string, tokens: readonly Token[], hearing: Hearing): string | undefined {
  const named = tokens.flatMap((token, index) => {
    const gas = gasOf(token, hearing);
    return gas === undefined ? [] : [{ gas, index }];
  });
  if (named.length < 2 || new Set(named.map(({ gas }) => gas)).size < named.length) return undefined;
  const begins = named[0]?.index ?? 0;
  // A verb of two words, `four gas`, before them.
  const verb = verbAt(tokens, 0, hearing);
  const from = verb?.row.name === 'gases' ? verb.to : 0;
  if (!tokens.slice(from, begins).every((token) => isIgnoredOn('lel', wordIn(token), hearing))) return undefined;
  const shown = named.flatMap(({ gas, index }, i) => {
    const found = shownOf(gas, tokens.slice(index, named[i + 1]?.index), hearing);
    return found === undefined ? [] : [found];
  });
  if (shown.length < named.length) return undefined;
  const rest = line.slice(shown.at(-1)?.to ?? line.length).replace(/^[ ,;]+/, '');
  const put = `gases ${shown.map(({ gas, told }) => `${gas} ${told}`).join(' ')} ${rest}`.trim();
  return put === line ? undefined : put;
}

/** `pieces`: from its name up to the next one. */
function shownOf(gas: Gas, pieces: readonly Token[], hearing: Hearing): Shown | undefined {
  const [name] = pieces;
  const at = pieces.findIndex(
    (piece) => piece.kind === 'number' || piece.kind === 'quantity' || ppmShape.test(piece.text),
  );
  const figure = pieces[at];
  if (name === undefined || figure === undefined) return undefined;
  const isRound = (piece: Token) =>
    wordIn(piece) === 'at' || fillers.has(wordIn(piece)) || isIgnoredOn(gas, wordIn(piece), hearing);
  if (!pieces.slice(1, at).every(isRound)) return undefined;
  const next = pieces[at + 1];
  const unit = unitOfGas[gas];
  const hasUnit = figure.kind !== 'number';
  const isApart = !hasUnit && next?.text.toLowerCase() === unit;
  const told = hasUnit ? figure.text : `${figure.text}${unit}`;
  return { gas, told, from: name.start, to: isApart && next !== undefined ? next.end : figure.end };
}

const ppmShape = /^\d+(?:[.,]\d+)?ppm$/i;

function gasOf(token: Token, hearing: Hearing): Gas | undefined {
  const name = token.kind === 'word' ? verbOfWord(token, hearing)?.row.name : undefined;
  return name !== undefined && isOwnKey(unitOfGas, name) ? name : undefined;
}
