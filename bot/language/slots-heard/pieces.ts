// A line in pieces: what is known here stands out wherever it stands, the rest are words.

import { solventIds } from '../../../core/calc/solvents.ts';
import { isFailed } from '../../../core/failed.ts';
import { adhesionRatings, type SurfaceGrade, surfaceGrades } from '../../../core/grades.ts';
import type { CanNumber, PartName } from '../../../core/ids.ts';
import type { LiveNow } from '../live-now.ts';
import { onceALine } from '../once-a-line.ts';
import { partsAt } from '../parts-said/parts-at.ts';
import { type PartsAt, partsInLine } from '../parts-said/parts-in-line.ts';
import { partsKnown } from '../parts-said/parts-known.ts';
import { potRanked } from '../pots-ranked.ts';
import type { LineContext } from '../reading.ts';
import { nearest } from '../suggestions.ts';
import { saidTimeFrom } from '../times/said-time.ts';
import { englishChoices } from '../tongues/english/choices.ts';
import { isPlaceRoot, methodsByWord } from '../trade-words.ts';
import { speedFrom } from '../typed/rare-figures.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { tokenize } from '../typed/tokens.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { meaningOn } from '../verbs-typed.ts';
import { leftOutIn } from './all-but.ts';
import { isLetter } from './letters.ts';
import { withoutNeighbours } from './neighbours.ts';
import { oneOfThem, type Piece, type Slot } from './piece.ts';

interface Found {
  readonly piece: Slot;
  readonly to: number;
}

/** `undefined`: it holds what cannot be, or a time to come: nothing is made of such a line. */
export const piecesOf = onceALine(piecesAnew);

function piecesAnew(line: string, context: LineContext): readonly Piece[] | undefined {
  const tokens = tokenize(line, context.hearing);
  const inLine = partsInLine(line, tokens, context);
  const pieces: Piece[] = [];
  for (let at = 0; at < tokens.length; ) {
    const time = timeAt(tokens, at, context);
    if (time === 'not-yet') return undefined;
    const parts = time === undefined ? partsAt(inLine, at) : undefined;
    const found: Found | undefined =
      time ??
      oneCounted(tokens, at, context) ??
      (parts && { piece: partsPiece(parts), to: parts.to }) ??
      numberedAt(tokens, at, context) ??
      rankedAt(tokens, at, context) ??
      gradeAt(tokens, at) ??
      singleAt(tokens, at, context);
    if (found === undefined) return undefined;
    const [start, end] = [tokens[at]?.start ?? 0, tokens[found.to - 1]?.end ?? line.length];
    const isBreak = /[,;:.!]/.test(line.slice(end, tokens[found.to]?.start ?? line.length));
    pieces.push({ ...found.piece, typed: line.slice(start, end), isBreak });
    at = found.to;
  }
  return leftOutIn(withoutNeighbours(pieces, context), context);
}

/** `7, one thin coat each`, `three readings`: it counts what was put on or read, and says no more than `a`. */
function oneCounted(tokens: readonly Token[], at: number, { hearing: { said } }: LineContext): Found | undefined {
  const token = tokens[at];
  const next = wordIn(tokens[at + 1]);
  const counts = token?.text === oneOfThem ? said.lists.counted : said.lists.readings;
  return token?.kind === 'number' && counts.has(next)
    ? { piece: { is: 'word', word: oneOfThem }, to: at + 1 }
    : undefined;
}

function partsPiece({ names, is, isSure, isOfFamily }: PartsAt): Slot {
  if (is === 'named')
    return { is: 'parts', names, ...(!isSure && { isSlip: true }), ...(isOfFamily && { isOfFamily }) };
  return { is: 'one-of', names, ...(is === 'fitting' && { isSome: true }) };
}

/** `at 90`, and `had a look at 9`, are no hour. */
function timeAt(tokens: readonly Token[], at: number, context: LineContext): Found | 'not-yet' | undefined {
  const next = tokens[at + 1];
  const isHour = next?.kind === 'number' && wordIn(tokens[at]) === 'at';
  if (isHour && next.text.length < 3 && next.number.value > 12) return undefined;
  // `at 3 spots`
  if (isHour && context.hearing.said.lists.readings.has(wordIn(tokens[at + 2]))) return undefined;
  if (isHour && context.hearing.said.looks.has(wordIn(tokens[at - 1]))) return undefined;
  // `hace 24 grados`: a number in degrees is no span.
  if (next?.kind === 'number' && /\p{L}$/u.test(next.text)) return undefined;
  const time = saidTimeFrom(tokens, at, context);
  if (time === undefined) return undefined;
  if (isFailed(time)) return time.failed === 'in-the-future' ? 'not-yet' : undefined;
  return { piece: { is: 'time', at: time.at }, to: time.to };
}

const marks: ReadonlySet<string> = new Set(['#', 'no', 'number', 'num']);

const grades: ReadonlySet<string> = new Set(surfaceGrades);
const isGrade = (text: string): text is SurfaceGrade => grades.has(text);

/** `sa2.5`, `SP 10`. */
function gradeAt(tokens: readonly Token[], at: number): Found | undefined {
  const [first = '', second = '', third, fourth] = tokens
    .slice(at, at + 4)
    .map(({ text }) => text.toLowerCase().replace(',', '.'));
  if (!/^s[apt]/.test(first)) return undefined;
  const one = first.replace(/[-_ ]/, '');
  if (isGrade(one)) return { piece: { is: 'grade', grade: one }, to: at + 1 };
  // `Sa 2 1/2`, as the standard prints it.
  if (first === 'sa' && second === '2' && third === '1' && fourth === '2')
    return { piece: { is: 'grade', grade: 'sa2.5' }, to: at + 4 };
  const two = `${one}${second}`;
  return isGrade(two) ? { piece: { is: 'grade', grade: two }, to: at + 2 } : undefined;
}

/** `batch 1`, `b1`, `m1`, `pot #2`, `can 3`. */
function numberedAt(tokens: readonly Token[], at: number, { hearing, batches, live }: LineContext): Found | undefined {
  const token = tokens[at];
  if (token?.kind !== 'word') return undefined;
  const typed = withoutAccents(token.text.toLowerCase());
  const glued = /^[bm](\d{1,4})$/.exec(typed)?.[1];
  if (glued !== undefined && batches.includes(Number(glued)))
    return { piece: { is: 'batch', number: Number(glued) }, to: at + 1 };
  const isPot = hearing.said.pots.has(typed) || typed === 'b';
  if (!isPot && !hearing.said.cans.has(typed)) return undefined;
  let to = at + 1;
  while (marks.has(wordIn(tokens[to]))) to += 1;
  const lettered = isPot ? undefined : canOfComponent(tokens, to, hearing, live?.().cans ?? []);
  if (lettered !== undefined) return { piece: { is: 'can', number: lettered.number }, to: lettered.to };
  const value = numberOf(tokens[to]);
  if (value === undefined) return undefined;
  // `mix 2`: of a pot that there is; else it may be an amount. `b 1197`: an amount of B.
  const isNoCan = !isPot && batches.includes(value) && live?.().cans.every((can) => can.number !== value) === true;
  // `del bote 2`: a pot, where no can has this number.
  // A pot that there is none of is told all the same: which there are is answered. `mix 9` is an amount,
  // `lote 7745` what a can says.
  const isOnlyPot = isPot && typed !== 'b' && !hearing.verbs.has(typed) && wordIn(token) !== 'lot';
  if (isPot || isNoCan)
    return batches.includes(value) || isOnlyPot ? { piece: { is: 'batch', number: value }, to: to + 1 } : undefined;
  return { piece: { is: 'can', number: value }, to: to + 1 };
}

function rankedAt(tokens: readonly Token[], at: number, context: LineContext): Found | undefined {
  const pot = potRanked(tokens, at, context);
  return pot && { piece: { is: 'batch', number: pot.number }, to: pot.to };
}

/** `can A`, `la lata de la parte A`, where one such stands open. */
function canOfComponent(
  tokens: readonly Token[],
  from: number,
  { labelled, said }: LineContext['hearing'],
  cans: LiveNow['cans'],
): { readonly number: CanNumber; readonly to: number } | undefined {
  const isComponent = (at: number): boolean =>
    labelled.byFirst.get(plain(tokens[at]))?.some(({ words, of }) => of === 'component' && words.length === 1) === true;
  let at = from;
  while (said.light.has(plain(tokens[at])) && !isComponent(at) && at - from < mostBetween) at += 1;
  if (isComponent(at)) at += 1;
  else at = from;
  const letter = tokens[at];
  const named = cans.filter(({ component }) => letter?.kind === 'word' && letter.text.toUpperCase() === component);
  const [only] = named;
  return named.length === 1 && only !== undefined ? { number: only.number, to: at + 1 } : undefined;
}

/** `de la`. */
const mostBetween = 2;

const plain = (token: Token | undefined): string => withoutAccents(token?.text.toLowerCase() ?? '');

/** `3`, and `3's`, which says that it is. */
function numberOf(token: Token | undefined): number | undefined {
  const text = token?.kind === 'number' || token?.kind === 'word' ? token.text : '';
  const [, number] = /^(\d{1,6})(?:'s)?$/.exec(text) ?? [];
  return number === undefined ? undefined : Number(number);
}

const inert: ReadonlySet<string> = new Set(['gas', 'argon', 'nitrogen']);
/** `ipa` is isopropyl alcohol. */
const solvents: ReadonlyMap<string, string> = new Map(
  solventIds.flatMap((id) => [id, ...(englishChoices.solvent?.[id]?.split(' ') ?? [])].map((word) => [word, id])),
);

function singleAt(tokens: readonly Token[], at: number, context: LineContext): Found | undefined {
  const token = tokens[at];
  const to = at + 1;
  switch (token?.kind) {
    case 'quantity':
      // `temp 23 humidity 47`: the word belongs to the figure behind it.
      if (belongsBehind(token, tokens[to])) {
        return { piece: { is: 'number', value: token.value, text: String(token.value), isDegrees: false }, to };
      }
      return { piece: { is: 'figure', of: token.quantity.is, text: token.text, value: token.quantity.value }, to };
    case 'number': {
      const { text, number } = token;
      const speed = speedFrom(tokens, at);
      if (speed !== undefined) return speedPiece(tokens, at, speed.to);
      if (belongsBehind(tokens[at - 1], token))
        return { piece: { is: 'figure', of: 'percent', text: `${text}%`, value: number.value }, to };
      const figure = /^[\d.,]+/.exec(text)?.[0] ?? text;
      const humid =
        figure === text
          ? (isHumidity(tokens, at) ?? (isBehindHumidity(tokens, at, context) ? to : undefined))
          : undefined;
      if (humid !== undefined)
        return { piece: { is: 'figure', of: 'percent', text: `${text}%`, value: number.value }, to: humid };
      return { piece: { is: 'number', value: number.value, text: figure, isDegrees: figure !== text }, to };
    }
    case 'word': {
      const speed = speedFrom(tokens, at);
      if (speed !== undefined) return speedPiece(tokens, at, speed.to);
      const rating = adhesionRatings.find((each) => each === token.text.toUpperCase());
      if (rating !== undefined)
        return { piece: { is: 'figure', of: 'rating', text: rating, value: Number.parseInt(rating, 10) }, to };
      const typed = spelt(withoutAccents(token.text.toLowerCase())).replace(/n't$/, 'nt');
      const word = withoutIs(typed, context);
      const many = /^(\d{1,4})'?s$/.exec(typed)?.[1];
      // `8s at 196`: 8 is.
      if (many !== undefined && partsKnown(context.parts).numbers.has(Number(many))) {
        return { piece: { is: 'number', value: Number(many), text: many, isDegrees: false }, to };
      }
      return { piece: wordPiece(tokens, at, spelt(token.word), word, context), to };
    }
    default:
      return undefined;
  }
}

/** `the hood's on`, `power's out`: of what is no word of its own, `it's`. */
const withoutIs = (word: string, { hearing: { said } }: LineContext): string =>
  !word.endsWith("'s") || said.light.has(word) || said.byFirst.has(word) ? word : word.slice(0, -2);

/** `gooo`, `siii`: said at length. */
const spelt = (word: string): string => (/(\p{L})\1\1/u.test(word) ? word.replaceAll(/(\p{L})\1{2,}/gu, '$1') : word);

/** `45 de humedad`: the index behind it. */
function isHumidity(tokens: readonly Token[], at: number): number | undefined {
  const to = wordIn(tokens[at + 1]) === 'of' ? at + 2 : at + 1;
  return wordIn(tokens[to]) === 'humidity' ? to + 1 : undefined;
}

/** `74 deg, humidity 51`, `humidity was 58`: the word was of no number before it. */
function isBehindHumidity(tokens: readonly Token[], at: number, { hearing }: LineContext): boolean {
  const word = hearing.said.light.has(tokens[at - 1]?.text.toLowerCase() ?? '') ? at - 2 : at - 1;
  const before = tokens[wordIn(tokens[word - 1]) === 'of' ? word - 2 : word - 1];
  return (
    wordIn(tokens[word]).replace(/'s$/, '') === 'humidity' &&
    !(before?.kind === 'number' && /^[\d.,]+$/.test(before.text))
  );
}

const belongsBehind = (humidity: Token | undefined, token: Token | undefined): boolean =>
  humidity?.kind === 'quantity' &&
  humidity.quantity.is === 'percent' &&
  / \p{L}+$/u.test(humidity.text) &&
  token?.kind === 'number' &&
  /^\d+$/.test(token.text);

function speedPiece(tokens: readonly Token[], at: number, to: number): Found {
  const text = tokens
    .slice(at, to)
    .map((token) => token.text)
    .join('');
  return { piece: { is: 'figure', of: 'speed', text, value: 0 }, to };
}

function wordPiece(tokens: readonly Token[], at: number, meaning: string, word: string, context: LineContext): Slot {
  if (isLetter(tokens, at, word, context)) return { is: 'letter', letter: word === 'a' ? 'a' : 'b' };
  // `por vertido`: what else may be a spill.
  const way = wordIn(tokens[at - 1]) === 'by' ? meaningOn('coat', word, context.hearing) : meaning;
  const method = methodsByWord.get(way);
  if (method !== undefined) return { is: 'method', method, word };
  if (inert.has(meaning)) return { is: 'gas', word };
  const solvent = solvents.get(meaning);
  if (solvent !== undefined) return { is: 'solvent', word: solvent };
  const place =
    context.places.find((each) => each === meaning || each === word) ?? (isPlaceRoot(meaning) ? meaning : undefined);
  if (place !== undefined) return { is: 'place', place, word };
  const [near] = nearest(word, alike(word, context.parts));
  if (near !== undefined) return { is: 'parts', names: [near], isSlip: true };
  const person = context.people?.find((name) => name.toLowerCase() === word);
  return person === undefined ? { is: 'word', word } : { is: 'person', name: person };
}

/** Of the same number: `a-9` is no slip of `a-7`. */
function alike(word: string, parts: readonly PartName[]): readonly PartName[] {
  const number = /\p{L}.*?(\d+)$/u.exec(word)?.[1];
  return number === undefined ? [] : parts.filter((name) => /\d+$/.exec(name)?.[0] === number);
}
