// Numbers that are spoken or dictated, put in figures. Where words can be cut into numbers in several ways (`eleven ninety eight`)
// each way is a line of its own; which of them is meant shows when they are read.

import type { Hearing } from '../hearing.ts';
import type { LineContext } from '../reading.ts';
import type { NumberWords } from '../tongues/typed.ts';
import type { Unit } from '../typed/units-typed.ts';
import { notAfterSpace } from '../typed/units-typed.ts';
import type { Heard } from './heard.ts';
import { withLettersApart } from './letters-apart.ts';
import { isManyToDo } from './many-to-do.ts';
import { isMark, isOfParts } from './marks.ts';
import { cuts, mostWays, type NumberInRun, ofNamed } from './number-run.ts';
import { digitSaid, isNumberWord, type NumberSaid, numberSaid, partBefore, partMore } from './number-words.ts';
import { type Change, changed, type Said } from './words.ts';

/** Each way to put the line's numbers in figures; none where it has no number in words. */
export function numbersSaid(line: string, context: LineContext): readonly Heard[] {
  for (const tongue of [...context.hearing.tongues].reverse()) {
    const words = tongue.numbers.spoken;
    const said = withLettersApart(line, words);
    const ways = waysIn({ said, words, context });
    if (ways !== undefined) return ways.map(({ changes, isSure }) => ({ line: changed(line, said, changes), isSure }));
  }
  return [];
}

interface Line {
  readonly said: readonly Said[];
  readonly words: NumberWords;
  readonly context: LineContext;
}

interface Way {
  readonly changes: readonly Change[];
  readonly isSure: boolean;
}

function waysIn(line: Line): readonly Way[] | undefined {
  let ways: readonly Way[] = [{ changes: [], isSure: true }];
  for (let at = 0; at < line.said.length; ) {
    const found = isUnitsOwn(line, at) ? undefined : (amountAt(line, at) ?? runAt(line, at));
    if (found === undefined) at += 1;
    else {
      at = found.to;
      ways = ways
        .flatMap((way) =>
          found.texts.map((changes) => ({
            changes: [...way.changes, ...changes],
            isSure: way.isSure && found.isSure,
          })),
        )
        .slice(0, mostWays);
    }
  }
  return ways.some(({ changes }) => changes.length > 0) ? ways : undefined;
}

/** `por ciento`, which is no hundred. */
const isUnitsOwn = ({ said, context }: Line, at: number): boolean =>
  context.hearing.units.has(`${said[at - 1]?.word} ${said[at]?.word}`);

interface Found {
  readonly to: number;
  /** What is said instead, each way of it. */
  readonly texts: readonly (readonly Change[])[];
  readonly isSure: boolean;
}

/** A number with its unit and what is more or less than a whole of it: `half a kilo`, `dos kilos cuatrocientos`. */
function amountAt(line: Line, at: number): Found | undefined {
  const { said, words, context } = line;
  const part = partBefore(said, at, words);
  if (part !== undefined && unitAt(said, part.to, context.hearing) !== undefined) {
    return one({ from: at, to: part.to, text: `${part.value}` }, part.to);
  }
  const heard = soundsLikeAt(line, at);
  const number = heard ?? numberAt(line, at) ?? unitAloneAt(line, at);
  const half = number === undefined ? undefined : halfDegreeAt(line, number.to);
  if (number !== undefined && half !== undefined)
    return one({ from: at, to: half.to, text: `${number.value + half.value} ${said[number.to]?.text ?? ''}` }, half.to);
  const unit = number === undefined ? undefined : unitAt(said, number.to, context.hearing);
  if (number === undefined || unit === undefined)
    return heard && one({ from: at, to: heard.to, text: heard.figures }, heard.to, soundsOnly(line, at));
  const after = number.to + 1;
  const minor = minorAt(line, after, unit);
  const more = partMore(said, after, words) ?? minor;
  if (more === undefined && /^\d/.test(said[at]?.word ?? '') && number.to === at + 1) return undefined;
  const figures = more === undefined ? number.figures : `${Math.round((number.value + more.value) * 1000) / 1000}`;
  const text = `${figures} ${said[number.to]?.text ?? ''}`;
  const to = more?.to ?? after;
  return one({ from: at, to, text }, to, heard === undefined && (more !== minor || minor?.isAssumed !== true));
}

/** `veintidós grados y medio`: degrees alone are no unit, since the figure tells them. */
const halfDegreeAt = ({ said, words, context }: Line, at: number) =>
  context.hearing.units.get(said[at]?.word ?? '') === 'degree' ? partMore(said, at + 1, words) : undefined;

const one = (change: Change, to: number, isSure = true): Found => ({ to, texts: [[change]], isSure });

const soundsOnly = ({ said, words }: Line, at: number): boolean => words.soundsOnlyLike.includes(said[at]?.word ?? '');

/** `kilo and a half`: of one. */
function unitAloneAt({ said, words, context }: Line, at: number): NumberSaid | undefined {
  const isAlone = unitAt(said, at, context.hearing) !== undefined && partMore(said, at + 1, words) !== undefined;
  return isAlone && !/\d$/.test(said[at - 1]?.word ?? '') ? { figures: '1', value: 1, to: at } : undefined;
}

interface Minor {
  readonly value: number;
  readonly to: number;
  /** Nobody said of what they are. */
  readonly isAssumed?: true;
}

/** `cuatrocientos`, `400 gramos` behind kilograms or litres; `two pounds eight`. */
function minorAt(line: Line, at: number, { name }: Unit): Minor | undefined {
  const { said, context } = line;
  if (name === 'lb') return ouncesAt(line, at);
  if (name !== 'kg' && name !== 'L') return undefined;
  const from = ['con', 'and', 'y'].includes(said[at]?.word ?? '') ? at + 1 : at;
  const number = numberAt(line, from);
  if (number === undefined || !Number.isInteger(number.value) || number.value < 100 || number.value > 999)
    return undefined;
  const unit = unitAt(said, number.to, context.hearing);
  if (unit === undefined) return { value: number.value / 1000, to: number.to };
  return unit.name === (name === 'kg' ? 'g' : 'mL') ? { value: number.value / 1000, to: number.to + 1 } : undefined;
}

const ouncesInPound = 16;

/** `two pounds eight`, `3 pounds four ounces`; a figure without its unit is of something else. */
function ouncesAt(line: Line, at: number): Minor | undefined {
  const { said, words, context } = line;
  const isArticle = words.articles.includes(said[at]?.word ?? '');
  const number = isArticle ? undefined : numberAt(line, at);
  if (number === undefined || !Number.isInteger(number.value) || number.value < 1 || number.value >= ouncesInPound)
    return undefined;
  const value = number.value / ouncesInPound;
  if (unitAt(said, number.to, context.hearing)?.name === 'oz') return { value, to: number.to + 1 };
  return numberSaid(said, at, words) === undefined || unitAt(said, number.to, context.hearing) !== undefined
    ? undefined
    : { value, to: number.to, isAssumed: true };
}

/** In words or in figures. */
function numberAt({ said, words }: Line, at: number): NumberSaid | undefined {
  const number = numberSaid(said, at, words);
  if (number !== undefined) return number;
  const typed = said[at]?.word ?? '';
  return /^\d{1,5}(?:[.,]\d{1,2})?$/.test(typed)
    ? { figures: typed, value: Number(typed.replace(',', '.')), to: at + 1 }
    : undefined;
}

/** `batch`, `impeller`: a number follows. `number` is one of many things. */
const isNamed = (word: string | undefined, context: LineContext): boolean =>
  word !== undefined &&
  !/\d$/.test(word) &&
  (context.hearing.said.pots.has(word) || context.hearing.said.cans.has(word) || isOfParts(word, context));

function soundsLikeAt({ said, words, context }: Line, at: number): NumberSaid | undefined {
  const word = said[at]?.word ?? '';
  const value = Object.hasOwn(words.soundsLike, word) ? words.soundsLike[word] : undefined;
  const next = said[at + 1];
  if (value === undefined) return undefined;
  // `six impellers to do`: only of one a number stands behind its name, or several are listed.
  if (isManyToDo(said, at, words, context)) return undefined;
  // `for three brackets`, `mix for the flanges`: before what it is for it is none.
  const { lasting, articles } = context.hearing.said;
  const after = next?.word ?? '';
  const isFor = numberAt({ said, words, context }, at + 1) || articles.has(after) || isOfParts(after, context);
  if (lasting.has(word) && isFor) return undefined;
  if (next === undefined)
    return isNamed(said[at - 1]?.word, context) ? { figures: `${value}`, value, to: at + 1 } : undefined;
  const instead = [{ ...next, word: `${value}` }, ...said.slice(at + 1)];
  const decimal = words.point.includes(next.word) ? numberSaid(instead, 0, words) : undefined;
  if (decimal !== undefined) return { ...decimal, to: at + decimal.to };
  if (isNamed(said[at - 1]?.word, context)) return { figures: `${value}`, value, to: at + 1 };
  return unitAt(said, at + 1, context.hearing) === undefined || next.word.length < 3
    ? undefined
    : { figures: `${value}`, value, to: at + 1 };
}

function unitAt(said: readonly Said[], at: number, { units, tongues }: Hearing): Unit | undefined {
  const word = said[at]?.text.toLowerCase() ?? '';
  // `mil` is a thousand in the one tongue and a unit in the other.
  const counts = tongues.some(({ numbers: { spoken } }) => spoken.hundred === undefined && spoken.thousand === word);
  const unit = word.length < 2 || counts || notAfterSpace.has(word) ? undefined : units.get(word);
  return unit === 'degree' ? undefined : unit;
}

/** Numbers one after the other, in every way that they can be cut. */
function runAt(line: Line, at: number): Found | undefined {
  const found = cutFrom(line, at);
  if (found === undefined) return undefined;
  return { ...found, texts: [...found.texts, ...apartAtJoint(line, at, found.to)].slice(0, mostWays) };
}

/** `six hundred and five ninety nine`: 605 and 99, or 600 and 599. */
function apartAtJoint(line: Line, at: number, to: number): readonly (readonly Change[])[] {
  const { hundredJoint, ...words } = line.words;
  const first = numberSaid(line.said, at, words);
  if (hundredJoint === undefined || first === undefined || line.said[first.to]?.word !== hundredJoint) return [];
  const rest = first.to + 1 < to ? cutFrom(line, first.to + 1) : undefined;
  const isOne = numberSaid(line.said, first.to + 1, words)?.to === to;
  if (rest?.to !== to || isOne) return [];
  return rest.texts.map((more) => [{ from: at, to: first.to, text: first.figures }, ...more]);
}

function cutFrom(line: Line, at: number): Found | undefined {
  const { said, words } = line;
  const run: NumberInRun[] = [];
  for (let next = at; run.length < mostWays; ) {
    const number = numberSaid(said, next, words);
    const nought = run.length > 0 && number === undefined && words.nought.includes(said[next]?.word ?? '');
    const to = number?.to ?? (nought ? next + 1 : undefined);
    if (to === undefined || (number !== undefined && isArticle(line, next, number, run.length))) break;
    run.push({ from: next, to, figures: number?.figures ?? '0', nought, digit: digitSaid(said[next]?.word, words) });
    next = to;
  }
  const last = run.at(-1);
  if (last === undefined) return undefined;
  const texts = isNamed(said[at - 1]?.word, line.context) ? ofNamed(run) : cuts(run);
  return { to: last.to, texts, isSure: true };
}

/** `a mix`, `una mezcla`: no number, unless it goes on a mark or a list, or its unit follows. */
function isArticle({ said, words, context }: Line, at: number, { to }: NumberSaid, ofRun: number): boolean {
  const typed = said[at]?.word ?? '';
  if (to !== at + 1 || !words.articles.includes(typed)) return false;
  if (unitAt(said, to, context.hearing) !== undefined) return false;
  if (typed === 'a') return true;
  const before = said[at - 1]?.word ?? '';
  return (
    ofRun === 0 &&
    !words.numbersBehind.includes(before) &&
    !goesOnAsList(said, to, words, context) &&
    !isMark(before, context) &&
    !isOfParts(before, context) &&
    !/\d$/.test(before) &&
    (words.onlyArticles.includes(typed) || !isNumberWord(said[at + 1]?.word ?? '', words))
  );
}

/** `one thru four`. */
function goesOnAsList(said: readonly Said[], at: number, words: NumberWords, { hearing }: LineContext): boolean {
  const isTo = hearing.said.lists.to.some((phrase) => phrase.length === 1 && phrase[0] === said[at]?.word);
  return isTo && isNumberWord(said[at + 1]?.word ?? '', words);
}
