// What a sentence tells of parts that come in: their names, what is booked of them, and the talk round it.

import type { Hearing } from '../hearing.ts';
import { mayNamePart } from '../names-typed.ts';
import type { LineContext } from '../reading.ts';
import { canMarks } from '../tongues/english/line-words.ts';
import { isMetalWord, metalNamed } from '../trade-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { tokenize } from '../typed/tokens.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { usualUnits } from './part-columns.ts';

export interface Told {
  /** A line of `part`. */
  readonly line: string;
  /** `four valve bodies`: how many they are said to be. */
  readonly counted: number | undefined;
  /** It is called so in one word, its serial or its job is told, and each figure has its own unit. */
  readonly isCertain: boolean;
  /** Its name with its papers and more, and hardly a word besides. */
  readonly isListed: boolean;
  /** What stands there besides. */
  readonly talk: readonly string[];
  /** All of it without the names. */
  readonly unnamed: string;
}

/** As the strict reader has it. */
const labels = ['serial', 'job', 'max'] as const;
type Label = (typeof labels)[number];

/** `undefined` where it names none, or has a figure that is of nothing that is booked. */
export function toldIn(line: string, context: LineContext): Told | undefined {
  const tokens = tokenize(labelled(line, context.hearing), context.hearing);
  const hasName = tokens.some((token) => isName(token, context));
  const found: Found = { hasName, names: [], details: new Map(), metals: [], talk: [], isCertain: true };
  for (let at = 0; at < tokens.length; ) {
    const to = takenFrom(tokens, at, found, context);
    if (to === undefined) return undefined;
    at = to;
  }
  const { names, details, metals, talk, counted, isCertain } = found;
  if (names.length === 0) return undefined;
  const metal = metalNamed(metals);
  return {
    line: ['part', ...names, ...details.values(), ...(metal === undefined ? [] : [metal])].join(' '),
    counted,
    isListed: details.has('serial') && details.has('job') && details.size + metals.length > 2 && talk.length < 2,
    isCertain:
      isCertain && (details.has('serial') || details.has('job')) && (metals.length === 0 || metal !== undefined),
    talk,
    unnamed: tokens.flatMap((token) => (isName(token, context) ? [] : [token.text])).join(' '),
  };
}

interface Found {
  /** One is called by a name in one word. */
  readonly hasName: boolean;
  readonly names: string[];
  readonly details: Map<string, string>;
  readonly metals: string[];
  readonly talk: string[];
  counted?: number;
  isCertain: boolean;
}

/** Where the next piece begins; `undefined` at a figure that is of nothing here. */
function takenFrom(tokens: readonly Token[], at: number, found: Found, context: LineContext): number | undefined {
  const token = tokens[at];
  const next = tokens[at + 1];
  if (token === undefined) return at + 1;
  const label = labels.find((each) => each === wordIn(token));
  if (label !== undefined) return behindLabel(label, tokens, at, found, context);
  if (token.kind === 'quantity') {
    const of = token.quantity.is;
    return (of === 'length' || of === 'area') && isNoted(of, token.text, found) ? at + 1 : undefined;
  }
  if (token.kind === 'number') return isCount(token, next, found) ? at + 1 : undefined;
  if (token.kind !== 'word') return undefined;
  if (isName(token, context)) {
    found.names.push(token.text.toLowerCase());
  } else if (isJoint(token, tokens, at, context)) {
    found.names.push(token.word === 'and' ? ',' : 'to');
  } else if (isMetalWord(token.word)) {
    found.metals.push(token.word);
  } else if (isNumbered(token, next, found, context)) {
    found.names.push(`${token.text.toLowerCase()}-${next?.text}`);
    found.isCertain = false;
    return at + 2;
  } else if (/\d/.test(token.text) || token.word === 'lot' || canMarks.has(token.word)) {
    return undefined;
  } else {
    found.talk.push(withoutAccents(token.text.toLowerCase()));
  }
  return at + 1;
}

function isNoted(detail: string, text: string, { details }: Found): boolean {
  const isFirst = !details.has(detail);
  if (isFirst) details.set(detail, text);
  return isFirst;
}

/** What stands behind its label; a temperature may stand before it, `250F max`. */
function behindLabel(
  label: Label,
  tokens: readonly Token[],
  at: number,
  found: Found,
  { units = 'metric' }: LineContext,
): number | undefined {
  const value = tokens[at + 1];
  switch (label) {
    case 'serial':
    case 'job':
      return value !== undefined && /\d/.test(value.text) && isNoted(label, `${label} ${value.text}`, found)
        ? at + 2
        : undefined;
    case 'max': {
      if (value?.kind === 'quantity' && value.quantity.is === 'temperature')
        return isNoted(label, `max ${value.text}`, found) ? at + 2 : undefined;
      if (value?.kind !== 'number') return at + 1;
      found.isCertain = false;
      return isNoted(label, `max ${value.text}${usualUnits.highest?.[units]}`, found) ? at + 2 : undefined;
    }
    default: {
      const never: never = label;
      return never;
    }
  }
}

const isName = (token: Token, { hearing }: LineContext): boolean =>
  token.kind === 'word' && /\d/.test(token.word) && /^\p{L}/u.test(token.word) && mayNamePart(token.word, hearing);

/** `valve-1 to valve-4`, `plate-1 and plate-2`. */
function isJoint(token: Token, tokens: readonly Token[], at: number, context: LineContext): boolean {
  const isBetween = [tokens[at - 1], tokens[at + 1]].every((each) => each !== undefined && isName(each, context));
  return isBetween && ['and', 'to', 'a', 'until', '-'].includes(wordIn(token));
}

/** `flange 2`, where no other name stands; `came 2` is none. */
function isNumbered(token: Token, next: Token | undefined, found: Found, { hearing }: LineContext): boolean {
  const isNumber = next?.kind === 'number' && /^\d{1,4}$/.test(next.text);
  if (found.hasName || found.names.length > 0 || !isNumber || token.kind !== 'word') return false;
  const isArrival = hearing.tongues.some(({ partsIn }) => partsIn.arrived.split(/,? /).includes(token.word));
  return mayNamePart(token.word, hearing) && !hearing.said.light.has(token.word) && !isArrival;
}

/** `four valve bodies`. */
function isCount(token: Token, next: Token | undefined, found: Found): boolean {
  if (found.counted !== undefined || found.names.length > 0 || next?.kind !== 'word' || !/^\d{1,3}$/.test(token.text))
    return false;
  found.counted = Number(token.text);
  return true;
}

/** The line with the readers' own words in place of what people call a serial, a job, and the heat that a part bears. */
function labelled(line: string, hearing: Hearing): string {
  let put = line;
  for (const { label, said } of labelsOf(hearing)) {
    const plain = withoutAccents(put.toLowerCase());
    const at = plain.length === put.length ? [...plain.matchAll(said)] : [];
    for (const { index, 0: phrase } of at.toReversed())
      put = `${put.slice(0, index)} ${label} ${put.slice(index + phrase.length)}`;
  }
  return put;
}

interface LabelSaid {
  readonly label: Label;
  readonly said: RegExp;
}
const made = new WeakMap<Hearing, readonly LabelSaid[]>();

function labelsOf(hearing: Hearing): readonly LabelSaid[] {
  const before = made.get(hearing);
  if (before !== undefined) return before;
  const all = labels.map((label) => {
    const phrases = hearing.tongues
      .flatMap(({ partsIn }) => partsIn.told[label].split(', '))
      .toSorted((one, other) => other.length - one.length)
      .map((phrase) => phrase.replaceAll('.', '\\.'));
    return { label, said: new RegExp(`(?<![\\p{L}\\d-])(?:${phrases.join('|')})[:.#]?(?![\\p{L}-])`, 'gu') };
  });
  made.set(hearing, all);
  return all;
}
