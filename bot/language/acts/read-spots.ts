// Readings told by their spots, `film hub-1 spot 1 95 100 105 spot 2 98 99 97um`: the number behind `spot` is never one of them.
// `beside 2`: near the spot of that number; behind `drop` stands what was read and left out.

import { isFailed } from '../../../core/failed.ts';
import { known } from '../../../core/known.ts';
import type { Micrometres } from '../../../core/units.ts';
import type { SpotSaid } from '../../../core/verbs/said.ts';
import { numberedEvery } from '../gauge/column-numbers.ts';
import type { Fault } from '../reading.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { type ActLine, leftOver, lineWith, type Reader } from './act-line.ts';
import { countFrom } from './figure-of-slot.ts';
import { fieldsReader } from './read-fields.ts';
import { filmsFrom } from './read-films.ts';

const readLinear = fieldsReader('film', 'spots');
const marks: ReadonlySet<string> = new Set(['spot', 'beside', 'drop']);

/** Of one spot, as typed. */
interface Piece {
  readonly spot?: number;
  readonly near?: number;
  readonly read: Token[];
  readonly dropped: Token[];
}

export const readFilm: Reader = (typed, labelled) => {
  const act = { ...typed, tokens: withMarks(typed) };
  const doubt = numbersOrReadings(act);
  if (doubt !== undefined) return doubt;
  const at = act.tokens.findIndex((token) => marks.has(wordIn(token)));
  if (at < 0) return readLinear(act, labelled);
  const end = act.tokens.findIndex((token, i) => i > at && token.kind === 'word' && !marks.has(token.word));
  const told = act.tokens.slice(at, end < 0 ? undefined : end);
  const pieces = piecesIn(told);
  if (isFailed(pieces)) return pieces;
  const [first] = pieces;
  // Readings ahead of the mark are of no spot that it names.
  const head = [...act.tokens.slice(0, at), ...(end < 0 ? [] : act.tokens.slice(end))];
  const stray = head.find(({ kind }) => kind !== 'word' && kind !== 'quoted');
  const isDropOnly = first !== undefined && first.spot === undefined && first.near === undefined;
  if (stray !== undefined && !isDropOnly) return leftOver(stray);
  const own = isDropOnly ? head.filter(({ kind }) => kind !== 'word' && kind !== 'quoted') : [];
  if (isDropOnly) first.read.unshift(...own);
  const spots = spotsFrom(pieces, act.line);
  if (isFailed(spots)) return spots;
  const lacking = spots.find(({ micrometres, dropped, near }) => micrometres.length === 0 && (dropped ?? near));
  if (lacking !== undefined) return { failed: 'incomplete', needs: ['dry-film'] };
  return readLinear({ ...act, tokens: head.filter((token) => !own.includes(token)) }, { ...labelled, spots });
};

/** `1: 95 100 105`, `2) 98`, `#3 97`: what is so marked numbers a spot. */
function withMarks({ tokens, line }: ActLine): readonly Token[] {
  return tokens.flatMap((token, i): readonly Token[] => {
    const { start, end } = token;
    const before = tokens[i - 1];
    // `#` alone rounds a number off.
    if (wordIn(token) === '#' && tokens[i + 1]?.kind === 'number') return [];
    const isMarked = token.kind === 'number' && (/[:)]/.test(line[end] ?? '') || wordIn(before) === '#');
    const isNamed = marks.has(wordIn(before));
    return isMarked && !isNamed ? [{ kind: 'word', word: 'spot', text: '', start, end: start }, token] : [token];
  });
}

/** `1 95 100 105 2 98 99 97um`: numbers of spots, or readings. Each with its unit they are readings. */
function numbersOrReadings({ tokens, line }: ActLine): Fault | undefined {
  if (tokens.some((token) => marks.has(wordIn(token)))) return undefined;
  const figures = tokens.filter(({ kind }) => kind === 'number' || kind === 'quantity');
  const [first] = figures;
  const last = figures.at(-1);
  const values = figures.map((token) => (token.kind === 'number' ? token.number.value : Number.NaN));
  const bare = last?.kind === 'quantity' ? [...values.slice(0, -1), last.value] : values;
  const every = numberedEvery(bare);
  if (every === undefined || first === undefined || last === undefined) return undefined;
  const unit = last.kind === 'quantity' ? last.text.replace(/^[-+\d.,\s]+/, '') : 'um';
  const span = { start: first.start, end: last.end };
  const spots = bare.map((value, i) => (i % every === 0 ? `spot ${value}` : `${value}`)).join(' ');
  const readings = bare.map((value) => `${value}${unit}`).join(' ');
  const tries = [`${spots}${unit}`, readings].map((text) => lineWith(line, span, text));
  return { failed: 'ambiguous-number', token: first, couldBe: [`spot ${first.text}`, `${first.text}${unit}`], tries };
}

function piecesIn(tokens: readonly Token[]): readonly Piece[] | Fault {
  const pieces: Piece[] = [];
  let into: Token[] | undefined;
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i];
    if (token === undefined) continue;
    const mark = wordIn(token);
    if (!marks.has(mark)) {
      into?.push(token);
      continue;
    }
    const before = pieces.at(-1);
    if (mark === 'drop') {
      const piece = before ?? { read: [], dropped: [] };
      if (before === undefined) pieces.push(piece);
      into = piece.dropped;
      continue;
    }
    const next = tokens[i + 1];
    const number = next?.kind === 'number' ? countFrom(next) : leftOver(token);
    if (isFailed(number)) return number;
    i += 1;
    // `spot 6 beside 2`
    const isSame =
      mark === 'beside' && before?.spot !== undefined && before.read.length === 0 && before.near === undefined;
    if (isSame) pieces.pop();
    const piece =
      mark === 'spot' ? { spot: number } : { near: number, ...known({ spot: isSame ? before.spot : undefined }) };
    const whole = { ...piece, read: [], dropped: [] };
    pieces.push(whole);
    into = whole.read;
  }
  return pieces;
}

/** The last unit covers all before it, of whichever spot. */
function spotsFrom(pieces: readonly Piece[], line: string): readonly SpotSaid[] | Fault {
  const films = filmsFrom(
    pieces.flatMap(({ read, dropped }) => [...read, ...dropped]),
    line,
    'dry-film',
  );
  if (isFailed(films)) return films;
  let from = 0;
  const take = (count: number): readonly Micrometres[] => {
    from += count;
    return films.slice(from - count, from);
  };
  return pieces.map(({ spot, near, read, dropped }) => ({
    ...known({ spot, near }),
    micrometres: take(read.length),
    ...(dropped.length > 0 && { dropped: take(dropped.length) }),
  }));
}
