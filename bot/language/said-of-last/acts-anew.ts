// The latest act's line with what was wrong in it put right: another figure, part, batch or way.

import { takesBatch, verbRows, withBatch } from '../../../core/commands.ts';
import { ownValue } from '../../../core/own-key.ts';
import { ownUnits } from '../own-units.ts';
import type { LineContext } from '../reading.ts';
import { wordOf } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { batchMarks, fillers } from '../tongues/english/line-words.ts';
import { methodsByWord } from '../trade-words.ts';
import { type QuantityToken, type Token, wordIn } from '../typed/token.ts';
import { tokenize } from '../typed/tokens.ts';
import type { Strictly } from '../understood.ts';
import { writeLine } from '../write-line.ts';

interface Anew {
  readonly line: string;
  /** As a correction in place would say it. */
  readonly figure?: string;
}

export interface Change {
  readonly to: string;
  readonly from: string | undefined;
}

export function actsAnew(
  { to, from }: Change,
  /** Of the act. */
  line: string,
  context: LineContext,
  strictly: Strictly,
): readonly Anew[] {
  const tokens = sayingIn(to, context);
  const [first, second, ...more] = tokens;
  if (first === undefined || more.length > 0) return ofPartSaid(to, from, line, context);
  if (second !== undefined) {
    if (isLetter(first)) return ofFigure(second, from, line, context, wordIn(first));
    if (second.kind === 'number' && batchMarks.has(wordIn(first))) return ofBatch(second.text, line, context, strictly);
    return ofPartSaid(to, from, line, context);
  }
  switch (first.kind) {
    case 'quantity':
      return ofFigure(first, from, line, context);
    case 'number':
      return ofFigureOrPart(first, from, line, context);
    case 'word':
      if (methodsByWord.has(first.word)) return ofWay(first.word, line, context);
      return ofThing(first.text, { to, from }, line, context, strictly);
    case 'quoted':
    case 'doubt':
    case 'impossible':
      return [];
    default: {
      const never: never = first;
      return never;
    }
  }
}

/** What says something: the words round a figure do not. A letter does beside one. */
function sayingIn(to: string, { hearing }: LineContext): readonly Token[] {
  const tokens = tokenize(to, hearing);
  const isRound = (token: Token): boolean => {
    const word = wordIn(token);
    return token.kind === 'word' && (fillers.has(word) || hearing.otherwise.rounds.has(token.text.toLowerCase()));
  };
  return tokens.filter((token, i) => {
    const next = tokens.slice(i + 1).find((each) => !isRound(each));
    if (isLetter(token) && (next?.kind === 'number' || next?.kind === 'quantity')) return true;
    if (wordIn(token) === 'a') return false;
    return !isRound(token) || (batchMarks.has(wordIn(token)) && next?.kind === 'number');
  });
}

const isLetter = (token: Token): boolean => token.kind === 'word' && (token.word === 'a' || token.word === 'b');

const put = (line: string, { start, end }: Token, text: string): string =>
  line.slice(0, start) + text + line.slice(end);

/** Those that it was not, where that was said: in whichever of the crew's units. */
function quantitiesIn(line: string, from: string | undefined, context: LineContext): readonly QuantityToken[] {
  const was = from === undefined ? undefined : Number.parseFloat(from.replace(',', '.'));
  const isIt = (token: QuantityToken): boolean =>
    was === undefined ||
    token.value === was ||
    inUnitsOf(token, `${was}`, context).some(({ quantity: { value } }) => isNear(value, token.quantity.value));
  return tokenize(line, context.hearing).filter(
    (token): token is QuantityToken => token.kind === 'quantity' && isIt(token),
  );
}

/** But for what a sum in doubles loses. */
const isNear = (one: number, other: number): boolean => Math.abs(one - other) <= Math.abs(other) * 1e-9;

/** A figure in each unit that a figure of the kind is told in. */
function inUnitsOf({ text: old }: Token, figure: string, { hearing, units: system }: LineContext) {
  const written = /[A-Za-z%]+$/.exec(old)?.[0] ?? '';
  return ownUnits(ownValue(alike, written) ?? [written], system).flatMap((unit) => {
    const [token] = tokenize(`${figure}${unit}`, hearing);
    return token?.kind === 'quantity' ? [token] : [];
  });
}

/** `letter`: of two weights, whose. */
function ofFigure(
  to: Token,
  from: string | undefined,
  line: string,
  context: LineContext,
  letter?: string,
): readonly Anew[] {
  if (to.kind !== 'quantity') return to.kind === 'number' ? ofNumber(to, from, line, context, letter) : [];
  const same = quantitiesIn(line, undefined, context).filter(({ quantity }) => quantity.is === to.quantity.is);
  const among = same.length > 1 && from !== undefined ? quantitiesIn(line, from, context) : same;
  const meant = letter === undefined ? among : same.filter((old) => letterOf(old, line, context) === `${letter} `);
  const text = to.quantity.is === 'percent' ? `${to.value}%` : to.text.replace(/(?<=\d) (?=\p{L})/u, '');
  const figures = meant.map((old) => ({
    line: put(line, old, text),
    figure: `${letterOf(old, line, context)}${text}`,
  }));
  return figures.length === 0 ? [{ line: '', figure: text }] : figures;
}

/** Of two weights each has its letter. */
function letterOf(old: QuantityToken, line: string, context: LineContext): string {
  const masses = quantitiesIn(line, undefined, context).filter(({ quantity }) => quantity.is === 'mass');
  const at = masses.findIndex(({ start }) => start === old.start);
  return masses.length === 2 && at !== -1 ? `${['a', 'b'][at] ?? ''} ` : '';
}

/** In which of these units it is nearest to what it was. */
const alike: Readonly<Record<string, readonly string[]>> = {
  g: ['g', 'kg', 'lb', 'oz'],
  kg: ['kg', 'g', 'lb', 'oz'],
  C: ['C', 'F'],
  F: ['F', 'C'],
  um: ['um', 'mil'],
};

function ofNumber(
  { text }: Token,
  from: string | undefined,
  line: string,
  context: LineContext,
  letter: string | undefined,
): readonly Anew[] {
  return quantitiesIn(line, from, context).flatMap((old) => {
    if (letter !== undefined && letterOf(old, line, context) !== `${letter} `) return [];
    const said = inUnitsOf(old, text, context);
    const far = (token: QuantityToken): number =>
      Math.abs(Math.log(Math.abs(token.quantity.value || 1e-9) / Math.abs(old.quantity.value || 1e-9)));
    const [nearest] = said.toSorted((a, b) => far(a) - far(b));
    return nearest === undefined
      ? []
      : [{ line: put(line, old, nearest.text), figure: `${letterOf(old, line, context)}${nearest.text}` }];
  });
}

/** `the 8`, where the part before was `impeller-7`. */
function numberedPart(number: string, from: string | undefined, line: string, context: LineContext): readonly Anew[] {
  return partsIn(line, from, context).flatMap((old) => {
    const part = old.text.replace(/\d+$/, number);
    return context.parts.includes(part) && part !== old.text ? [{ line: put(line, old, part) }] : [];
  });
}

/** Further from what it was no figure is misread: `that was for 7`, of 91 degrees, is the part. Our own figure, no source. */
const farthest = 5;

function ofFigureOrPart(
  to: Extract<Token, { kind: 'number' }>,
  from: string | undefined,
  line: string,
  context: LineContext,
): readonly Anew[] {
  const parts = numberedPart(to.text, from, line, context);
  const isFar = quantitiesIn(line, from, context).every(
    ({ value }) => value > to.number.value * farthest || value * farthest < to.number.value,
  );
  return parts.length > 0 && isFar ? parts : [...ofFigure(to, from, line, context), ...parts];
}

/** Those that it was not, where that was said: `not 7`, `not imp 7`. */
function partsIn(line: string, from: string | undefined, { hearing, parts }: LineContext): readonly Token[] {
  const all = tokenize(line, hearing).filter((token) => parts.includes(wordIn(token)));
  const was = from?.toLowerCase().replaceAll(' ', '-');
  const number = /(?<!\d)\d+$/.exec(was ?? '')?.[0];
  return was === undefined || all.length < 2
    ? all
    : all.filter(({ text }) => text === was || (number !== undefined && text.endsWith(`-${number}`)));
}

/** `the impeller 8`, `imp 8`. */
function ofPartSaid(to: string, from: string | undefined, line: string, context: LineContext): readonly Anew[] {
  const pieces = piecesOf(to, context) ?? [];
  const named = pieces.flatMap((piece) => (piece.is === 'parts' ? piece.names : []));
  const [part] = named;
  const others = pieces.filter((piece) => piece.is !== 'parts' && !isRoundPiece(wordOf(piece), context));
  if (part === undefined || named.length > 1 || others.length > 0) return [];
  return partsIn(line, from, context).flatMap((old) => (old.text === part ? [] : [{ line: put(line, old, part) }]));
}

const isRoundPiece = (word: string | undefined, { hearing }: LineContext): boolean =>
  word !== undefined && (hearing.otherwise.rounds.has(word) || fillers.has(word));

function ofThing(
  word: string,
  { to, from }: Change,
  line: string,
  context: LineContext,
  strictly: Strictly,
): readonly Anew[] {
  const named = [...ofPartSaid(to, from, line, context), ...ofPerson(word, line, context)];
  return named.length > 0 ? named : ofWord(word, line, context, strictly);
}

/** `it was omar`: whoever did it. */
function ofPerson(word: string, line: string, { people = [], hearing }: LineContext): readonly Anew[] {
  const person = people.find((name) => name.toLowerCase() === word.toLowerCase());
  if (person === undefined) return [];
  const old = tokenize(line, hearing).find((token, i, all) => wordIn(all[i - 1]) === 'by' && token.kind === 'word');
  return [{ line: old === undefined ? `${line} by ${person}` : put(line, old, person) }];
}

/** `i blasted it`: a word that the act takes in place of another; in the speaker's own any would do. */
function ofWord(word: string, line: string, { hearing, parts }: LineContext, strictly: Strictly): readonly Anew[] {
  const was = strictly(line);
  const [verb, ...tokens] = tokenize(line, hearing);
  if (was.kind !== 'command' || verb === undefined || verbRows[was.command.verb].options?.endsInWords === true)
    return [];
  return tokens
    .filter((token) => token.kind === 'word' && !parts.includes(token.word))
    .flatMap((old) => {
      const anew = put(line, old, word);
      const read = strictly(anew);
      const isSame = read.kind === 'command' && read.command.verb === was.command.verb;
      return isSame && JSON.stringify(read.command) !== JSON.stringify(was.command) ? [{ line: anew }] : [];
    })
    .slice(0, 1);
}

function ofBatch(number: string, line: string, context: LineContext, strictly: Strictly): readonly Anew[] {
  const read = strictly(line);
  const batch = Number(number);
  if (read.kind !== 'command' || !takesBatch(read.command) || !context.batches.includes(batch)) return [];
  if (read.command.batch === batch) return [];
  return [{ line: writeLine({ command: withBatch(read.command, batch), stance: { is: 'asked' } }, context) }];
}

function ofWay(way: string, line: string, { hearing }: LineContext): readonly Anew[] {
  const method = methodsByWord.get(way.toLowerCase()) ?? way;
  const old = tokenize(line, hearing).find((token) => methodsByWord.has(wordIn(token)));
  if (old === undefined || methodsByWord.get(wordIn(old)) === method) return [];
  return [{ line: put(line, old, method), figure: method }];
}
