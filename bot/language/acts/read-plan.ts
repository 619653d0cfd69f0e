// `plan 6x0.8m2 spray 12um ready 13:00`, `plan impeller-7 valve-3 flow`: what is to be coated, how, how thick, and when the
// first batch is wanted.

import type { PlannedParts, Question } from '../../../core/commands.ts';
import { known } from '../../../core/known.ts';
import { type Method, methodRows, offeredMethods } from '../../../core/methods.ts';
import { type EpochMs, type Micrometres, micrometres, squareMetres } from '../../../core/units.ts';
import { looksLikePart } from '../names-typed.ts';
import type { Fault } from '../reading.ts';
import { instantTyped } from '../times/instant-typed.ts';
import { readTimeOfDay } from '../times/time-typed.ts';
import { dayAfter, dayOf } from '../times/wall-clock.ts';
import { fillers } from '../tongues/english/line-words.ts';
import { methodsByWord } from '../trade-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { tokensAt } from '../typed/tokens.ts';
import { type ActLine, leftOver } from './act-line.ts';
import { commasApart } from './commas-apart.ts';
import { doubtful, impossible, outside } from './figure-of-slot.ts';
import { sheetFrom } from './read-names.ts';
import type { NameToken } from './sort-pieces.ts';

type Filling = {
  readonly parts: PlannedParts[];
  readonly words: NameToken[];
  method?: Method;
  film?: Micrometres;
  readyAt?: EpochMs;
};

/** Most of what is planned is sprayed: that loses the most. */
const sprayedFirst = offeredMethods.toSorted((a, b) => Number(methodRows[b].atomised) - Number(methodRows[a].atomised));

/** `6x0.8m2` in one piece. */
const timesShape = /^(\d{1,4})x(?=[\d.,])/i;

export function readPlan(typed: ActLine): Question | Fault {
  const act = { ...typed, tokens: typed.tokens.flatMap(commasApart) };
  const filled: Filling = { parts: [], words: [] };
  const { tokens } = act;
  for (let i = 0; i < tokens.length; i++) {
    const took = take(act, filled, i);
    if (typeof took !== 'number') return took;
    i = took - 1;
  }
  const sheet = sheetFrom(act, filled.words);
  if (typeof sheet === 'object') return sheet;
  const { parts, method, film, readyAt } = filled;
  if (parts.length === 0) return { failed: 'incomplete', needs: ['area'] };
  if (method === undefined) {
    const tries = sprayedFirst.map((way) => `${act.line} ${way}`);
    return { failed: 'incomplete', needs: ['method'], tries };
  }
  return { ask: 'plan', parts, method, ...known({ dryFilmMicrometres: film, sheet, readyAt }) };
}

/** The index after what was taken. */
function take(act: ActLine, filled: Filling, index: number): number | Fault {
  const token = act.tokens[index];
  if (token === undefined) return index + 1;
  switch (token.kind) {
    case 'word':
      return takeWord(act, filled, token, index);
    case 'quoted':
      filled.words.push(token);
      return index + 1;
    case 'number':
      return takeCount(act, filled, index);
    case 'quantity':
      return takeQuantity(filled, token, index);
    case 'doubt':
      return doubtful(token, act.line, token.is === 'area' ? 'area' : 'dry-film');
    case 'impossible':
      return leftOver(token);
    default: {
      const never: never = token;
      return never;
    }
  }
}

function takeWord(
  act: ActLine,
  filled: Filling,
  token: Extract<Token, { kind: 'word' }>,
  index: number,
): number | Fault {
  const { word } = token;
  const glued = timesShape.exec(token.text);
  if (glued !== null) {
    const [area] = tokensAt(token.text.slice(glued[0].length), token.start + glued[0].length, act.context.hearing);
    return area?.kind === 'quantity' && area.quantity.is === 'area'
      ? addParts(filled, token, Number(glued[1]), area.quantity.value, index + 1)
      : { ...leftOver(token), needs: ['area'] };
  }
  const method = methodsByWord.get(word);
  if (method !== undefined) {
    if (filled.method !== undefined && filled.method !== method) return leftOver(token);
    filled.method = method;
    return index + 1;
  }
  if (word === 'ready' || isForTime(act, index)) return takeReady(act, filled, index);
  if (act.context.parts.includes(word) || looksLikePart(word)) filled.parts.push({ part: word });
  else if (!fillers.has(word)) filled.words.push(token);
  return index + 1;
}

/** `6 x 0.8m2`, `6 impeller of 0.8m2` is not read. */
function takeCount(act: ActLine, filled: Filling, index: number): number | Fault {
  // `6 piezas de 0,8m2`
  const named = act.tokens[index + 1];
  const skip = wordIn(named) === 'parts' ? 1 : 0;
  const count = act.tokens[index];
  const [times, area] = act.tokens.slice(index + 1 + skip, index + 3 + skip);
  if (count?.kind !== 'number') return index + 1;
  const isTimes = ['x', 'of'].includes(wordIn(times));
  if (isTimes && area?.kind === 'quantity' && area.quantity.is === 'area' && count.number.whole) {
    return addParts(filled, count, count.number.value, area.quantity.value, index + 3 + skip);
  }
  return { ...leftOver(count), needs: ['area'] };
}

function takeQuantity(filled: Filling, token: Extract<Token, { kind: 'quantity' }>, index: number): number | Fault {
  const { quantity } = token;
  if (quantity.is === 'area') return addParts(filled, token, 1, quantity.value, index + 1);
  const isFilm = quantity.is === 'film' || quantity.is === 'length';
  if (!isFilm || filled.film !== undefined) return leftOver(token);
  const film = micrometres(quantity.is === 'film' ? quantity.value : quantity.value * 1000);
  const fault = outside('dry-film', token, film);
  if (fault !== undefined) return fault;
  filled.film = film;
  return index + 1;
}

/** No shop has ten thousand parts in one plan. */
const mostParts = 10_000;

function addParts(filled: Filling, token: Token, count: number, area: number, next: number): number | Fault {
  const fault = count < 1 || count > mostParts ? impossible('area', token) : outside('area', token, area);
  if (fault !== undefined) return fault;
  filled.parts.push({ count, eachSquareMetres: squareMetres(area) });
  return next;
}

/** `para las 13:00`. */
function isForTime({ tokens }: ActLine, index: number): boolean {
  const [first, second, third] = tokens.slice(index, index + 3).map(wordIn);
  return first === 'for' && second === 'the' && /^\d/.test(third ?? '');
}

/** A time of day to come: today's, or tomorrow's once today's is past. */
function takeReady(act: ActLine, filled: Filling, index: number): number | Fault {
  const skip = act.tokens[index + 1];
  const at = skip?.kind === 'word' && ['at', 'by', 'the', 'for'].includes(skip.word) ? index + 2 : index + 1;
  const token = act.tokens[at];
  if (token === undefined || filled.readyAt !== undefined) return { failed: 'incomplete', needs: ['ready-time'] };
  const time = readTimeOfDay(token.text);
  if (time === undefined || time === 'no-such-time') return { failed: 'impossible', token, needs: ['ready-time'] };
  const { now, zone } = act.context;
  const today = dayOf(now, zone);
  const next = instantTyped(today, time, zone, token);
  const readyAt = typeof next === 'number' && next <= now ? instantTyped(dayAfter(today), time, zone, token) : next;
  if (typeof readyAt !== 'number') return readyAt;
  filled.readyAt = readyAt;
  return at + 1;
}
