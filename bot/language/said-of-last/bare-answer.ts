// An answer that says no more than what the last card asked: `1201 1198`, `gas`, `yes`, a button's own words. Put into the line
// that the card would have said with its tap; where several are open that it may answer, each is a tap.

import type { Hearing } from '../hearing.ts';
import { fieldsOf, fillInOrder } from '../line-fields.ts';
import type { LineContext } from '../reading.ts';
import { fillers } from '../tongues/english/line-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { tokenize } from '../typed/tokens.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import type { Strictly, Understands } from '../understood.ts';
import type { Open } from './last.ts';
import { mayBeBare } from './may-be-bare.ts';

interface Answered {
  readonly line: string;
  readonly isAsked: boolean;
  readonly mayBeBare: boolean;
}

/** More is no answer to what was asked. */
const longestAnswer = 80;

export const bareAnswer: Understands = (line, context, reads) => {
  if (line.endsWith('?') || line.length > longestAnswer) return undefined;
  const open = context.last?.().open ?? [];
  if (open.length === 0) return undefined;
  const said = saidIn(line, context);
  const answered = open.flatMap((each) => answersTo(each, said, context, reads) ?? []);
  const each = answered.filter((one, i) => answered.findIndex((other) => other.line === one.line) === i);
  // What is asked comes before what is only offered.
  const asked = each.filter(({ isAsked }) => isAsked);
  const [only, ...others] = asked.length > 0 ? asked : each;
  if (only === undefined) return undefined;
  return only.isAsked && only.mayBeBare && others.length === 0
    ? { is: 'sure', line: only.line }
    : { is: 'likely', lines: [only, ...others].map((one) => one.line) };
};

interface Said {
  readonly typed: string;
  readonly tokens: readonly Token[];
  /** Those that say something. */
  readonly values: readonly Token[];
  /** Its words as the readers spell them, without those that only round it off. */
  readonly core: string;
}

function saidIn(line: string, { hearing }: LineContext): Said {
  const typed = line.replace(/[ .!,]+$/, '');
  const tokens = tokenize(typed, hearing);
  const values = valuesIn(tokens, hearing);
  return { typed, tokens, values, core: plain(values.map((token) => wordIn(token) || token.text).join(' ')) };
}

/** `with a brush`: no article; beside a figure `a` may be Part A. */
function valuesIn(tokens: readonly Token[], hearing: Hearing): readonly Token[] {
  const values = tokens.filter((token) => !isRound(token, hearing));
  return values.every(({ kind }) => kind === 'word') ? values.filter((token) => wordIn(token) !== 'a') : values;
}

const isRound = (token: Token, { tongues }: Hearing): boolean =>
  fillers.has(wordIn(token)) || tongues.some(({ saidOtherwise }) => saidOtherwise.rounds.includes(wordIn(token)));

/** As it is compared: without capitals, accents and marks. */
const plain = (text: string): string =>
  withoutAccents(text.toLowerCase())
    .replaceAll(/[^\p{L}\p{N}.,%]+/gu, ' ')
    .trim();

function answersTo(open: Open, said: Said, context: LineContext, reads: Strictly): Answered | undefined {
  const isMarked = open.bare.some((each) => plain(each) === said.core) || isOfNumber(open, said, context);
  const isNamed = plain(open.label) === plain(said.typed) && fieldsOf(open.line).length === 0;
  return isMarked || isNamed
    ? answeredBy([open.line], true, isMarked, reads)
    : answeredBy(filledIn(open, said, context), open.isAsked, false, reads);
}

/** `the 8 one`, of a card that asks which part: that of this number. */
function isOfNumber({ line, bare }: Open, { core }: Said, { parts }: LineContext): boolean {
  if (bare.length === 0 || !/^\d{1,4}$/.test(core) || fieldsOf(line).length > 0) return false;
  return line.split(' ').some((word) => parts.includes(word) && /(?<!\d)0*(\d+)$/.exec(word)?.[1] === core);
}

/** The first of them that reads as an act. */
function answeredBy(
  lines: readonly string[],
  isAsked: boolean,
  isMarked: boolean,
  reads: Strictly,
): Answered | undefined {
  for (const line of lines) {
    const read = reads(line);
    if (read.kind !== 'command' && read.kind !== 'question') continue;
    return { line, isAsked, mayBeBare: mayBeBare(read, isMarked) };
  }
  return undefined;
}

/** In nobody's own words a field is filled: they would take whatever is typed. */
const ownWords: ReadonlySet<string> = new Set(['why', 'reason', 'told', 'lot', 'people', 'person', 'numbers']);

/** The line with what was typed in its fields, or behind what stands before the first of them. */
function filledIn(open: Open, { tokens, values }: Said, { hearing, parts }: LineContext): readonly string[] {
  const fields = fieldsOf(open.line);
  if (fields.length === 0 || fields.some(({ id, holds }) => holds === 'words' && ownWords.has(id))) return [];
  const names = fields.some(({ id }) => id === 'part' || id === 'parts');
  if (names && !tokens.some((token) => parts.includes(wordIn(token)))) return [];
  const figures = fields.every(({ holds }) => holds === 'number' || holds === 'figures');
  if (figures && !values.some(({ kind }) => kind === 'number' || kind === 'quantity')) return [];
  const inOrder = isOneEach(open.line, values)
    ? [
        fillInOrder(
          open.line,
          values.map(({ text }) => text),
          hearing,
        ),
      ]
    : [];
  return [...inOrder, ...behind(open.line, tokens, hearing)];
}

/** A value for each field; the last may take several. */
function isOneEach(line: string, values: readonly Token[]): boolean {
  const fields = fieldsOf(line);
  return fields.at(-1)?.holds === 'figures' ? values.length >= fields.length : values.length === fields.length;
}

/** `b 1198 a 1201`, `1201 g and 1198 g`: it says itself which is which. */
function behind(line: string, tokens: readonly Token[], hearing: Hearing): readonly string[] {
  const [before = '', ...rest] = line.split(/\{[\w-]+\}[A-Za-z%]*/);
  const [unit, ...units] = new Set(fieldsOf(line).map((field) => field.unit));
  const isLast = rest.every((each) => each.trim() === '');
  const isFigures = tokens.every(
    (token) => token.kind !== 'word' || isRound(token, hearing) || 'ab'.includes(token.word),
  );
  if (!isLast || !isFigures || unit === undefined || units.length > 0) return [];
  const said = tokens.map((token) => (token.kind === 'number' ? `${token.text}${unit}` : token.text));
  return [`${before.trim()} ${said.join(' ')}`];
}
