// What a question in words names, wherever it stands: parts with or without their dash, pots by number or order, places,
// people, the act it is asked of, a way of applying, and the figures with their units.

import { isVerb, type Verb } from '../../../core/commands.ts';
import type { Method } from '../../../core/methods.ts';
import { alarmNamed } from '../../../core/session/session-commands.ts';
import { looksLikePart } from '../names-typed.ts';
import { potRanked } from '../pots-ranked.ts';
import type { LineContext } from '../reading.ts';
import { termNamed } from '../terms-asked.ts';
import { batchMarks, canMarks, fillers, notNames, places, sessionMarks } from '../tongues/english/line-words.ts';
import type { QuestionsTyped } from '../tongues/questions-typed.ts';
import { methodsByWord } from '../trade-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { verbAt } from '../verbs-typed.ts';
import { bareName } from './parts-gone.ts';

export interface ThingsSaid {
  /** As a strict line names them, in the order in which they stand. */
  readonly things: readonly string[];
  readonly places: readonly string[];
  readonly acts: readonly Verb[];
  readonly method: Method | undefined;
  readonly figures: readonly string[];
  /** The first word is one of an act. */
  readonly beginsInAct: boolean;
}

interface Found {
  readonly thing?: string;
  /** `the brackets`: all of that name. */
  readonly all?: readonly string[];
  readonly place?: string;
  readonly act?: Verb;
  readonly figure?: string;
  /** Index after what was taken. */
  readonly to: number;
}

export function thingsSaid(tokens: readonly Token[], typed: QuestionsTyped, context: LineContext): ThingsSaid {
  const found: Found[] = [];
  for (let i = 0; i < tokens.length; ) {
    const next = thingAt(tokens, i, typed, context);
    found.push(next);
    i = next.to;
  }
  return {
    things: [...new Set(found.flatMap(({ thing, all = [] }) => thing ?? all))],
    places: found.flatMap(({ place }) => place ?? []),
    acts: found.flatMap(({ act }) => act ?? []),
    method: tokens.flatMap((token) => methodsByWord.get(wordIn(token)) ?? [])[0],
    figures: found.flatMap(({ figure }) => figure ?? []),
    beginsInAct: found[0]?.act !== undefined,
  };
}

function thingAt(tokens: readonly Token[], i: number, typed: QuestionsTyped, context: LineContext): Found {
  const token = tokens[i];
  if (token === undefined || token.kind === 'quoted') return { to: i + 1 };
  if (token.kind === 'quantity') return { figure: token.text, to: i + 1 };
  const number = numberAt(token);
  const counted = number === undefined ? undefined : countedAt(number, tokens, i, typed, context);
  if (counted !== undefined) return counted;
  if (number !== undefined) return numberFirst(number, tokens, i, context) ?? { thing: `${number}`, to: i + 1 };
  if (token.kind !== 'word') return { to: i + 1 };
  return (
    partAt(tokens, i, context) ??
    markedAt(tokens, i, context) ??
    placeOrPerson(tokens, i, context, typed) ??
    actAt(tokens, i, typed, context) ?? { to: i + 1 }
  );
}

const numberAt = (token: Token | undefined): number | undefined =>
  token?.kind === 'number' && token.number.whole && token.number.value > 0 ? token.number.value : undefined;

/** `the three brackets`, `tres placas`: how many they are names no thing. */
function countedAt(
  number: number,
  tokens: readonly Token[],
  i: number,
  { countedNouns }: QuestionsTyped,
  { parts, hearing }: LineContext,
): Found | undefined {
  const next = plain(tokens[i + 1]?.text ?? '');
  if (number < fewestCounted) return undefined;
  const { articlesOfMany } = hearing.said.lists;
  const named = rootAt(tokens, i + 1, parts);
  if (named?.all !== undefined) return named;
  // `pasa las tres`
  return countedNouns.test(next) || articlesOfMany.has(plain(tokens[i - 1]?.text ?? '')) ? { to: i + 1 } : undefined;
}

/** One is named by its number: `7 bracket`. */
const fewestCounted = 2;

/** `the 7 impeller` */
function numberFirst(number: number, tokens: readonly Token[], i: number, { parts }: LineContext): Found | undefined {
  const name = bareName(`${plain(tokens[i + 1]?.text ?? '')}-${number}`);
  const [only, second] = parts.filter((part) => bareName(part) === name);
  return only === undefined || second !== undefined ? undefined : { thing: only, to: i + 2 };
}

/** `impeller-7`, `impeller 7`, `gear cover 12`, `impeller7`; the only valve that there is. */
function partAt(tokens: readonly Token[], i: number, { parts, gone }: LineContext): Found | undefined {
  for (let to = Math.min(tokens.length, i + 3); to > i; to--) {
    const joined = tokens
      .slice(i, to)
      .map((token) => plain(token.text))
      .join('-');
    if (!/\p{L}/u.test(joined)) continue;
    const [only, second] = parts.filter((part) => bareName(part) === bareName(joined));
    if (only !== undefined && second === undefined) return { thing: only, to };
  }
  return goneAt(tokens, i, gone) ?? rootAt(tokens, i, parts);
}

/** A word with its number: of a word alone the record is not searched. */
function goneAt(tokens: readonly Token[], i: number, gone: LineContext['gone']): Found | undefined {
  for (const to of [i + 3, i + 2, i + 1]) {
    const joined = tokens.slice(i, to).map((token) => plain(token.text));
    if (to > tokens.length || !/^\p{L}.*\d$/u.test(joined.join('-'))) continue;
    const [only, second] = gone?.called(joined.join('-')) ?? [];
    if (only !== undefined && second === undefined) return { thing: only, to };
  }
  return undefined;
}

/** Its name without the number: of several that have it the answer asks which. */
function rootAt(tokens: readonly Token[], i: number, parts: LineContext['parts']): Found | undefined {
  const words = tokens.slice(i, i + 2).map((token) => plain(token.text));
  const [word = '', second = ''] = words;
  for (const [root, to] of [
    [`${word}-${second}`, i + 2],
    [word, i + 1],
    [word.replace(/s$/, ''), i + 1],
  ] as const) {
    const [only, other] = root.length < 3 ? [] : parts.filter((part) => rootOf(part) === root);
    if (only === undefined) continue;
    const number = numberAt(tokens[to]);
    if (number !== undefined) return { thing: `${root}-${number}`, to: to + 1 };
    const all = parts.filter((part) => rootOf(part) === root);
    if (other !== undefined && root !== word && all.length <= mostAtOnce) return { all, to };
    return { thing: other === undefined ? only : root, to };
  }
  // `the housing`: the only part that has the word in its name.
  const [only, other] =
    word.length < longEnough ? [] : parts.filter((part) => rootOf(part).split(/[-_.]/).includes(word));
  if (only !== undefined && other === undefined) return { thing: only, to: i + 1 };
  return looksLikePart(word) && word.length > 2 ? { thing: word, to: i + 1 } : undefined;
}

const longEnough = 5;

/** More of one name are asked which. */
export const mostAtOnce = 8;

const plain = (text: string): string => withoutAccents(text.toLowerCase());
const rootOf = (part: string): string => part.replace(/[-_. ]?\d+$/, '');

const marks = [
  { noun: 'batch', said: batchMarks },
  { noun: 'can', said: canMarks },
  { noun: 'session', said: sessionMarks },
] as const;

/** `pot 1`, `can 3`; `the second pot`, `both pots` by the pots that there are. */
function markedAt(tokens: readonly Token[], i: number, context: LineContext): Found | undefined {
  const ranked = potRanked(tokens, i, context);
  if (ranked !== undefined) return { thing: `batch ${ranked.number}`, to: ranked.to };
  const { batches, hearing, live } = context;
  const token = tokens[i];
  const word = wordIn(token);
  const text = plain(token?.text ?? '');
  const number = numberAt(tokens[i + 1]);
  const isPot = (each: Token | undefined): boolean =>
    batchMarks.has(wordIn(each)) ||
    hearing.tongues.some(({ pots }) => pots.split(' ').includes(plain(each?.text ?? '')));
  const lot = tokens[i + 1];
  // Spanish speakers call a pot `lote` too.
  if (word === 'lot' && number !== undefined && batches.some((batch) => batch === number))
    return { thing: `batch ${number}`, to: i + 2 };
  const isJob = word === 'job' || hearing.said.lists.jobs.has(text);
  if (isJob && lot !== undefined && /\d/.test(lot.text)) return { thing: `job ${plain(lot.text)}`, to: i + 2 };
  if (word === 'lot' && lot !== undefined && /\d/.test(lot.text)) return { thing: `lot ${plain(lot.text)}`, to: i + 2 };
  // `number 8` is any thing that has it.
  const noun = word === 'number' ? undefined : isPot(token) ? 'batch' : marks.find(({ said }) => said.has(word))?.noun;
  if (noun !== undefined && number !== undefined) return { thing: `${noun} ${number}`, to: i + 2 };
  const nth = hearing.ordinals.get(text);
  const inOrder = [...batches].sort((one, other) => one - other);
  // `how much hardener for the first`: it ends in what it asks of.
  const isLast = tokens[i + 1] === undefined && hearing.said.articles.has(wordIn(tokens[i - 1]));
  const batch = nth === undefined || !(isPot(tokens[i + 1]) || isLast) ? undefined : inOrder[nth - 1];
  if (batch !== undefined) return { thing: `batch ${batch}`, to: i + 2 };
  const [only, other] = inOrder;
  if (isPot(token) && only !== undefined && other === undefined) return { thing: `batch ${only}`, to: i + 1 };
  // `how long has that can been open`: the one whose lid is off.
  const [off, second] = noun === 'can' ? (live?.().cans.filter(({ isLidOff }) => isLidOff) ?? []) : [];
  if (off !== undefined && second === undefined) return { thing: `can ${off.number}`, to: i + 1 };
  return undefined;
}

/** Whoever asks whether all are well, or for a word of leave, asks of no act of the work. */
const noWork: ReadonlySet<string> = new Set(['ok', 'snooze', 'undo', 'amend', 'set', 'part', 'confirm', 'judge']);

function actAt(tokens: readonly Token[], i: number, { notActs }: QuestionsTyped, { hearing }: LineContext) {
  const verb = verbAt(tokens, i, hearing);
  if (verb === undefined || !isVerb(verb.row.name) || noWork.has(verb.row.name)) return undefined;
  if (alarmNamed(verb.row.name) !== undefined || notActs.split(' ').includes(plain(tokens[i]?.text ?? '')))
    return undefined;
  return { act: verb.row.name, to: verb.to };
}

function placeOrPerson(
  tokens: readonly Token[],
  i: number,
  { places: known, people = [], hearing }: LineContext,
  { notPlaces }: QuestionsTyped,
): Found | undefined {
  const [word, text] = [wordIn(tokens[i]), plain(tokens[i]?.text ?? '')];
  const person = people.find((name) => plain(name) === text);
  // `el punto de rocío`, where somebody is called Rocío.
  const term = tokens.slice(Math.max(0, i - 2), i + 1).map((token) => plain(token.text));
  const isTerm = term.length > 1 && termNamed(term.join(' '), hearing) !== undefined;
  if (person !== undefined && !/\s/.test(person) && !isTerm) return { thing: person, to: i + 1 };
  const isPlace = known.includes(word) || (places.has(word) && !whole.has(word));
  return isPlace && !notPlaces.split(' ').includes(word) && !fillers.has(word) && !notNames.has(word)
    ? { place: word, to: i + 1 }
    : undefined;
}

/** Where nobody has named it, all that is under this roof. */
const whole: ReadonlySet<string> = new Set(['shop', 'hall']);
