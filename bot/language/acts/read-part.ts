// `part impeller-7 serial 4411 job 88 customer x cast-iron 12mm 0.8m2 max 120C`: a part and what is known of it, or a row of parts
// and what is known of all. What follows a label is taken as typed; a metal needs no label. No fields are read off it: it is one
// value of many.

import type { CommandOf } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { known } from '../../../core/known.ts';
import { celsius, millimetres, squareMetres } from '../../../core/units.ts';
import type { PartDetails } from '../../../core/verbs/said.ts';
import { isNumberWord } from '../as-said/number-words.ts';
import { mayNamePart } from '../names-typed.ts';
import type { Fault, LineContext } from '../reading.ts';
import type { Slot } from '../slots.ts';
import { isMetalWord, metalNamed } from '../trade-words.ts';
import { withUnit } from '../typed/numeric-chunk.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { inch } from '../typed/units-typed.ts';
import { isIgnoredOn } from '../verbs-typed.ts';
import { type ActLine, leftOver } from './act-line.ts';
import { rangesJoined } from './part-ranges.ts';
import { partsFrom, wordOf } from './read-names.ts';
import { type NameToken, type SortedPieces, sortPieces } from './sort-pieces.ts';

type Label = Extract<Slot, 'serial' | 'job' | 'customer' | 'metal'>;

const labels: ReadonlyMap<string, Label> = new Map([
  ['serial', 'serial'],
  ['job', 'job'],
  ['customer', 'customer'],
  ['metal', 'metal'],
]);

type Labelled = { -readonly [Name in Label]?: string };

export function readPart(typed: ActLine): CommandOf<'part'> | Fault {
  const act = { ...typed, tokens: rangesJoined(typed.tokens, typed.context) };
  const apart = labelsApart(act);
  if (isFailed(apart)) return apart;
  const numbered = nameWithNumber(act, apart.rest);
  if (numbered !== undefined) return numbered;
  const strange = strangersApart(apart.rest, act.context);
  const gathered = sortPieces({
    ...act,
    tokens: strange.rest.flatMap((token, i, all) => inchesAfterSpace(token, i, all, act.line)),
  });
  if (isFailed(gathered)) return gathered;
  const read = readingSaid(act.tokens);
  if (read !== undefined) return { ...leftOver(read), tries: [`temp ${act.line.replace(/^\S+ /, '')}`] };
  const metals = gathered.words.filter((token) => isMetalWord(wordOf(token)));
  const others = gathered.words.filter((token) => !metals.includes(token));
  if (others.length === 0) return { failed: 'incomplete', needs: ['part'] };
  const parts = partsFrom(others, act.context);
  if (isFailed(parts)) return parts;
  const [part = '', ...more] = parts;
  const metal = metalNamed(metals.map(wordOf));
  const [stray] = metals;
  if (stray !== undefined && (metal === undefined || apart.labelled.metal !== undefined)) return leftOver(stray);
  const details = { ...apart.labelled, ...known({ metal }), ...measures(gathered) };
  const [only] = others;
  const isNone = act.verb.several === true && more.length === 0 && !/\d/.test(part);
  if (isNone && only !== undefined && Object.keys(details).length === 0) return leftOver(only);
  const [first] = strange.words;
  // With nothing known beside it, it may be a name of two words.
  if (first !== undefined && Object.keys(details).length === 0) return leftOver(first);
  // `serial fifty five ten`: what was dictated is not noted by half.
  const { tongues } = act.context.hearing;
  const spoken = strange.words.find(({ text }) =>
    tongues.some(({ numbers }) => isNumberWord(text.toLowerCase(), numbers.spoken)),
  );
  if (spoken !== undefined) return leftOver(spoken);
  // One serial is of one part.
  const serial = act.tokens.find((token) => labels.get(wordIn(token)) === 'serial');
  if (more.length > 0 && serial !== undefined && details.serial !== undefined) return leftOver(serial);
  const unread = strange.words.map(({ text }) => text);
  return {
    ...{ verb: 'part', part, details, ...(unread.length > 0 && { unread }) },
    ...(more.length > 0 && { more: more.map((each) => ({ part: each, details })) }),
    ...(more.length > 0 && !isOneList(others, act) && { isAsked: true }),
  };
}

/** `part flange 2 job 91`: the number is the name's, and no area or wall without its unit. */
function nameWithNumber({ line, context }: ActLine, rest: readonly Token[]): Fault | undefined {
  const at = rest.findIndex((token) => token.kind === 'word' && mayNamePart(token.word, context.hearing));
  const [name, number] = rest.slice(at, at + 2);
  if (at === -1 || name?.kind !== 'word' || number?.kind !== 'number') return undefined;
  if (/\d/.test(name.text) || !/^\d{1,4}$/.test(number.text) || line.slice(name.end, number.start).trim() !== '')
    return undefined;
  return leftOver(number, [`${line.slice(0, name.start)}${name.word}-${number.text}${line.slice(number.end)}`]);
}

/** A row, names apart by commas, or all under the same letters: else the second of two names may have been no part. */
function isOneList(names: readonly NameToken[], { line, tokens }: ActLine): boolean {
  const [first] = names;
  return names.every((name, i) => {
    const before = names[i - 1];
    if (before === undefined || (first !== undefined && lettersOf(name) === lettersOf(first))) return true;
    const between = tokens.filter(({ start }) => start >= before.end && start < name.start);
    return line.slice(before.end, name.start).includes(',') || between.some((token) => wordIn(token) === 'and');
  });
}

const lettersOf = (name: NameToken): string => wordOf(name).replaceAll(/[\d.]+/g, '');

/**
 * `zamak`, `wo 88`: plain words that mean nothing here, each with the bare number behind it, do not cost the rest of the line. The
 * name of the part is the one that the shop knows or that holds a figure, else the first.
 */
function strangersApart(
  tokens: readonly Token[],
  { hearing, parts }: LineContext,
): { readonly rest: readonly Token[]; readonly words: readonly Token[] } {
  const mayName = tokens.filter(
    (token) => token.kind === 'word' && mayNamePart(token.word, hearing) && !isIgnoredOn('part', token.word, hearing),
  );
  const isNamed = ({ text }: Token): boolean => parts.includes(text.toLowerCase()) || /\d/.test(text);
  const name = mayName.find(isNamed) ?? mayName[0];
  const words = mayName.filter((token) => token !== name && !isNamed(token));
  const isStrange = (token: Token, i: number): boolean => {
    const before = tokens[i - 1];
    return words.includes(token) || (token.kind === 'number' && before !== undefined && words.includes(before));
  };
  return {
    rest: tokens.filter((token, i) => !isStrange(token, i)),
    words: tokens.filter((token, i) => isStrange(token, i)),
  };
}

/** `pieza impulsor-7 a 88C`, `part impeller-7 at 88C`: what it reads now is not what it bears. */
function readingSaid(tokens: readonly Token[]): Token | undefined {
  return tokens.find((token, i) => {
    const before = tokens[i - 1];
    return (
      token.kind === 'quantity' &&
      token.quantity.is === 'temperature' &&
      before?.kind === 'word' &&
      (before.word === 'a' || before.word === 'at')
    );
  });
}

function measures({ figures }: SortedPieces): PartDetails {
  const wall = figures.get('wall');
  const area = figures.get('area');
  const highest = figures.get('highest-temperature');
  return known({
    wallMillimetres: wall && millimetres(wall.value),
    areaSquareMetres: area && squareMetres(area.value),
    highestCelsius: highest && celsius(highest.value),
  });
}

function labelsApart({ tokens, verb }: ActLine): { labelled: Labelled; rest: readonly Token[] } | Fault {
  const labelled: Labelled = {};
  const rest: Token[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i];
    if (token === undefined) continue;
    // `parts in job 88 rail-1..rail-4`; alone it may be what a part is called.
    const mayLabel = rest.length > 0 || verb.several === true || i + 2 < tokens.length;
    const label = token.kind === 'word' && mayLabel ? labels.get(token.word) : undefined;
    if (label === undefined) {
      rest.push(token);
      continue;
    }
    i += 1;
    const value = tokens[i];
    if (value === undefined || labels.has(wordIn(value))) {
      return { failed: 'incomplete', token, needs: [label] };
    }
    if (labelled[label] !== undefined) return leftOver(token);
    labelled[label] = value.kind === 'quoted' ? value.words : value.text;
  }
  return { labelled, rest };
}

/** `0.5 in`: elsewhere `in` after a space is the preposition, here it can only be the wall. */
function inchesAfterSpace(token: Token, index: number, tokens: readonly Token[], line: string): readonly Token[] {
  const isInch = (each: Token | undefined): boolean => wordIn(each) === 'in';
  const before = tokens[index - 1];
  const after = tokens[index + 1];
  if (token.kind === 'number' && after !== undefined && isInch(after)) {
    const span = { text: line.slice(token.start, after.end), start: token.start, end: after.end };
    return [withUnit(span, token.number, inch)];
  }
  return isInch(token) && before?.kind === 'number' ? [] : [token];
}
