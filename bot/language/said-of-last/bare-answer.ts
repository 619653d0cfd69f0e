// An answer that says no more than what the last card asked: `1201 1198`, `gas`, `yes`, a button's own words. Put into the line
// that the card would have said with its tap; where several are open that it may answer, each is a tap.

import { takesBatch } from '../../../core/commands.ts';
import { saidPlainly } from '../as-said/as-said.ts';
import { unitsLeftOut, withoutDegrees } from '../as-said/units-left-out.ts';
import { type Hearing, meaningOf } from '../hearing.ts';
import { fieldsOf, fillInOrder, type LineField } from '../line-fields.ts';
import { linesApart } from '../lines-apart.ts';
import type { LineContext } from '../reading.ts';
import { batchMarks, fillers } from '../tongues/english/line-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { tokenize } from '../typed/tokens.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import type { Strictly, StrictReading, Understands, Understood } from '../understood.ts';
import { verbNamed } from '../verbs-typed.ts';
import { figuresInTalk, withoutNumberOf } from './figures-in-talk.ts';
import type { Open } from './last.ts';
import { mayBeBare } from './may-be-bare.ts';
import { otherPart, otherWay } from './other-than-shown.ts';
import { isOfPot, placeIn, potIn } from './which-of-several.ts';

interface Answered {
  readonly line: string;
  readonly isAsked: boolean;
  readonly mayBeBare: boolean;
}

/** More is no answer to what was asked. */
export const longestAnswer = 80;

export const bareAnswer: Understands = (line, context, reads) => {
  if (line.endsWith('?') || line.length > longestAnswer) return undefined;
  const open = context.last?.().open ?? [];
  if (open.length === 0) return undefined;
  const answered = answersIn(line, open, context, reads);
  const spoken = answered.length > 0 ? answered : asSpoken(line, open, context, reads);
  const each = spoken.length > 0 ? spoken : inTalk(line, open, context, reads);
  // What is asked comes before what is only offered.
  const asked = each.filter(({ isAsked }) => isAsked);
  const [only, ...others] = asked.length > 0 ? asked : each;
  if (only === undefined) return undefined;
  return only.isAsked && only.mayBeBare && others.length === 0
    ? taken(only.line, reads)
    : { is: 'likely', lines: [only, ...others].map((one) => one.line) };
};

type Act = Extract<StrictReading, { kind: 'command' | 'question' }>;

/** One tap may say several acts; `prep pump-1 sa2.5; 60um` is one. */
function readActs(line: string, reads: Strictly): readonly Act[] | undefined {
  for (const lines of [[line], linesApart(line)]) {
    const acts = lines.map(reads).filter((act): act is Act => act.kind === 'command' || act.kind === 'question');
    if (acts.length === lines.length && acts.length > 0) return acts;
  }
  return undefined;
}

const taken = (line: string, reads: Strictly): Understood =>
  (readActs(line, reads)?.length ?? 0) > 1 ? { is: 'several', lines: linesApart(line) } : { is: 'sure', line };

function answersIn(line: string, open: readonly Open[], context: LineContext, reads: Strictly): readonly Answered[] {
  const said = saidIn(line, context);
  const answered = open.flatMap((each) => answersTo(each, said, context, reads) ?? []);
  return answered.filter(
    (one, i) => !saysTwice(one.line, context) && answered.findIndex((other) => other.line === one.line) === i,
  );
}

/** `impeller-7 blasted sa2.5`, where the card named it already, and `coat hub 1 3 brush`, where it asked for a coat: its own act, and no answer. */
function saysTwice(line: string, { parts, hearing }: LineContext): boolean {
  const [verb, next, ...words] = line.split(' ');
  const named = [next, ...words].filter((word) => word !== undefined && parts.includes(word));
  return verbNamed(next ?? '', hearing)?.row.name === verb || new Set(named).size < named.length;
}

/** `twelve oh one and eleven ninety eight`, `91 degrees`: of several ways to put it in figures those that are met with here. */
function asSpoken(line: string, open: readonly Open[], context: LineContext, reads: Strictly): readonly Answered[] {
  const ways = saidPlainly(line, context).map((heard) => withoutDegrees(heard.line, context));
  const answered = new Map(
    ways
      .filter((way) => way !== line)
      .flatMap((way) => answersIn(way, open, context, reads))
      .map((each) => [each.line, each]),
  );
  const all = [...answered.values()];
  const fitting = all.filter(({ line: each }) => {
    const read = reads(each);
    return read.kind === 'command' && context.fits?.(read.command) !== false;
  });
  return fitting.length > 0 ? fitting : all;
}

/** `probe shows 86`, where the part's temperature was asked. */
function inTalk(line: string, open: readonly Open[], context: LineContext, reads: Strictly): readonly Answered[] {
  const strict = reads(line);
  return open.flatMap((each) => {
    const fields = fieldsOf(each.line);
    if (!each.isAsked || fields.length === 0 || !fields.every(isOfFigures)) return [];
    const [act = ''] = each.line.split(' ');
    // `weigh 1 1201g`: the act's own line, which lacks something.
    const isOwn = strict.kind === 'unread' && strict.read.verb?.row.name === act;
    if (isOwn && strict.read.failed.failed === 'incomplete') return [];
    const told = withoutNumberOf(each.line, figuresInTalk(line, act, context), context);
    const answered = told && answersTo(each, saidIn(told.line, context), context, reads);
    return answered === undefined ? [] : [{ ...answered, mayBeBare: answered.mayBeBare && told?.isCertain === true }];
  });
}

const isOfFigures = ({ holds }: LineField): boolean => holds === 'number' || holds === 'figures';

interface Said {
  readonly typed: string;
  readonly tokens: readonly Token[];
  /** Those that say something. */
  readonly values: readonly Token[];
  /** Its words as the readers spell them, without those that only round it off. */
  readonly core: string;
  /** The same as typed. */
  readonly words: string;
  /** Which of several it says. */
  readonly place: number | undefined;
  /** Which of several pots, `the first batch`. */
  readonly ofPot: number | undefined;
}

function saidIn(line: string, { hearing }: LineContext): Said {
  const typed = line.replace(/[ .!,]+$/, '');
  const tokens = tokenize(typed, hearing);
  const values = valuesIn(tokens, hearing);
  const core = isYes(typed, hearing) ? 'yes' : plain(values.map((token) => wordIn(token) || token.text).join(' '));
  const words = plain(values.map(({ text }) => text).join(' '));
  return { typed, tokens, values, core, words, place: placeIn(words, hearing), ofPot: potIn(words, hearing) };
}

/** `yep do it`: nothing but words that agree, and such as round them off. */
function isYes(typed: string, hearing: Hearing): boolean {
  const words = plain(typed.replaceAll("'", '')).split(' ');
  let agreed = false;
  for (let at = 0; at < words.length; ) {
    const agrees = [3, 2, 1].find((count) => hearing.otherwise.agrees.has(words.slice(at, at + count).join(' ')));
    const word = words[at] ?? '';
    if (agrees === undefined && !fillers.has(meaningOf(word, hearing)) && !hearing.otherwise.rounds.has(word))
      return false;
    agreed ||= agrees !== undefined;
    at += agrees ?? 1;
  }
  return agreed;
}

/** `with a brush`: no article; beside a figure `a` may be Part A. */
function valuesIn(tokens: readonly Token[], hearing: Hearing): readonly Token[] {
  const values = tokens.filter((token) => !isRound(token, hearing));
  return values.every(({ kind }) => kind === 'word') ? values.filter((token) => wordIn(token) !== 'a') : values;
}

const isRound = (token: Token, hearing: Hearing): boolean =>
  fillers.has(wordIn(token)) ||
  [wordIn(token), plain(token.text.replaceAll("'", ''))].some((word) => hearing.otherwise.rounds.has(word));

/** As it is compared: without capitals, accents and marks. */
const plain = (text: string): string =>
  withoutAccents(text.toLowerCase())
    .replaceAll(/[^\p{L}\p{N}.,%]+/gu, ' ')
    .trim();

function answersTo(open: Open, said: Said, context: LineContext, reads: Strictly): Answered | undefined {
  const isMarked = open.bare.some((each) => plain(each) === said.core) || isOfNumber(open, said, context);
  const isWhole = fieldsOf(open.line).length === 0;
  // Of several taps the name says which; of one alone it only asks how that part stands.
  if (isWhole && open.isOnly === true && context.parts.includes(said.words)) return undefined;
  const isNamed =
    isWhole && ([plain(said.typed), said.words].includes(plain(open.label)) || isAlone(open, said, context, reads));
  if (isMarked || isNamed) return answeredBy([open.line], true, isMarked, reads);
  // Of one that alone is asked about.
  if (isWhole && open.isOnly === true && said.core === 'yes') return answeredBy([open.line], true, false, reads);
  const more = isWhole && open.place !== undefined ? withMore(open.line, said, context, reads) : undefined;
  if (more !== undefined) return answeredBy([more], true, false, reads);
  const inOtherWay = isWhole && open.isOnly === true ? otherWay(open.line, said.values, context) : undefined;
  // What else it says was shown, and stands.
  if (inOtherWay !== undefined) return answeredBy([inOtherWay], true, false, reads);
  const ofOther = isWhole ? otherPart(open, said.core, context) : undefined;
  if (ofOther !== undefined) return answeredBy([ofOther], true, false, reads);
  const isPot = said.ofPot !== undefined && said.ofPot === open.place && isOfPot(open.line, reads);
  const isInPlace = isWhole && open.place !== undefined && (open.place === said.place || isPot);
  // A number may be of a pot or a part as well.
  if (isInPlace) return answeredBy([open.line], !/\d/.test(said.words), false, reads);
  if (isWhole && said.words.length > 2 && plain(open.label).startsWith(`${said.words} `)) {
    return answeredBy([open.line], false, false, reads);
  }
  return answeredBy(filledIn(open, said, context), open.isAsked, false, reads);
}

/** `brush`, `batch 2`, of a card that asks which is meant: what alone tells one from the others, or stands in the only one. */
function isAlone({ line, place, bare }: Open, { values }: Said, context: LineContext, reads: Strictly): boolean {
  if (values.length === 0 || (place === undefined && !bare.includes('yes'))) return false;
  const [mark, number, ...more] = values;
  if (number?.kind === 'number' && batchMarks.has(wordIn(mark)) && more.length === 0) {
    const read = reads(line);
    return read.kind === 'command' && takesBatch(read.command) && read.command.batch === number.number.value;
  }
  const shown = tokenize(line, context.hearing);
  const words = new Set(shown.map((token) => wordIn(token)));
  const numbers = new Set(shown.map((token) => (token.kind === 'number' ? token.number.value : undefined)));
  // `brush, from 1`: all of it stands in the line.
  const stands = (token: Token): boolean =>
    (token.kind === 'word' && (words.has(token.word) || batchMarks.has(token.word))) ||
    (token.kind === 'number' && numbers.has(token.number.value));
  return values.some(({ kind }) => kind === 'word') && values.every(stands);
}

/** `oven, 90`, where oven or room was asked: what is chosen, and more of the same act. */
function withMore(line: string, { values }: Said, context: LineContext, reads: Strictly): string | undefined {
  const [first, ...more] = values;
  const last = tokenize(line, context.hearing).at(-1);
  if (more.length === 0 || first?.kind !== 'word' || wordIn(last) !== first.word) return undefined;
  const whole = `${line} ${more.map(({ text }) => text).join(' ')}`;
  if (reads(whole).kind === 'command') return whole;
  const [unit, ...units] = unitsLeftOut(whole, context, reads);
  return units.length === 0 && unit?.isSure === true ? unit.line : undefined;
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
    const acts = readActs(line, reads);
    if (acts === undefined) continue;
    return { line, isAsked, mayBeBare: acts.every((act) => mayBeBare(act, isMarked)) };
  }
  return undefined;
}

/** In nobody's own words a field is filled: they would take whatever is typed. */
const ownWords: ReadonlySet<string> = new Set([
  ...(['why', 'reason', 'told', 'lot', 'people', 'person', 'numbers'] as const),
  ...(['owner', 'customer-person', 'document', 'concession-date'] as const),
]);

/** The line with what was typed in its fields, or behind what stands before the first of them. */
function filledIn(open: Open, { typed, tokens, values }: Said, context: LineContext): readonly string[] {
  const { hearing, parts, people = [] } = context;
  const fields = fieldsOf(open.line);
  const isPerson = values.length === 1 && people.some((name) => plain(name) === plain(values[0]?.text ?? ''));
  const isOwn = fields.some(
    ({ id, holds }) => holds === 'words' && ownWords.has(id) && !((id === 'person' || id === 'owner') && isPerson),
  );
  if (fields.length === 0 || values.length === 0 || isOwn) return [];
  const names = fields.some(({ id }) => id === 'part' || id === 'parts');
  if (names && !tokens.some((token) => parts.includes(wordIn(token)))) return [];
  const figures = fields.every(isOfFigures);
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
  return [
    ...inOrder,
    ...behind(open.line, tokens, hearing),
    ...(figures ? [] : [`${beforeFields(open.line)} ${typed}`]),
  ];
}

export const beforeFields = (line: string): string => line.slice(0, line.indexOf('{')).trim();

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
