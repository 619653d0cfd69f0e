// Numbers without a name: `1, 2 y 3`, `7-9`, `the 7 and the 8`. At least two of them joined, each the number of one part alone, or all of
// one family.

import type { PartName } from '../../../core/ids.ts';
import { isMark } from '../as-said/marks.ts';
import { mayNamePart } from '../names-typed.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { articlesFrom, isOfParts, numbersListed, wholeAt } from './numbers-listed.ts';
import { oneOf } from './one-of-many.ts';
import type { PartsAt, PartsInLine } from './parts-in-line.ts';

export function numbersOfOneFamily(line: PartsInLine, token: number, at: number): PartsAt | undefined {
  const { all } = line.atoms;
  const { lists } = line.context.hearing.said;
  const from = articlesFrom(all, at, lists, false);
  const isDecimal = all[from]?.ends === undefined && all[from + 1]?.text === ',' && all[from + 2]?.ends !== undefined;
  if (wholeAt(all, from) === undefined || isDecimal || isOfAnother(line, token)) return undefined;
  const told = numbersListed(all, { at: from, isPlural: false }, lists);
  const to = told && all[told.to - 1]?.ends;
  if (told === undefined || told.numbers.length < 2 || to === undefined) return inARow(line, from);
  const [first, ...behind] = told.numbers;
  // `las 2, la 7 y la 8`: the first says how many; `2, 4 and 6` are three, and so are `la 2, la 7 y la 8`.
  const isOfMany = lists.articlesOfMany.has(all[from - 1]?.text ?? '');
  const isArticled = articlesFrom(all, from + 1, lists, false) > from + 1;
  const isCount = behind.length === first && all[from]?.gap.startsWith(',') === true && isOfMany && isArticled;
  const numbers = isCount ? behind : told.numbers;
  const each = numbers.map((number) => line.known.numbers.get(number) ?? []);
  const isOnlyOne = each.every(({ length }) => length === 1);
  const names = isOnlyOne ? each.flat() : ofOneFamily(numbers, line);
  if (names === undefined) return undefined;
  return {
    names,
    is: 'named',
    isSure: isOfParts(told, line) && !isCount && (isOnlyOne || told.isStretch),
    ...(!isOnlyOne && isOfParts(told, line) && { isOfFamily: true }),
    to,
  };
}

/** `blasted 1 2 3`: without a joint at least three, each above the one before. */
function inARow(line: PartsInLine, from: number): PartsAt | undefined {
  const { all } = line.atoms;
  const numbers: number[] = [];
  for (let at = from; ; at++) {
    const number = wholeAt(all, at);
    if (number === undefined || number <= (numbers.at(-1) ?? 0)) break;
    numbers.push(number);
    if (all[at]?.gap !== ' ') break;
  }
  const to = all[from + numbers.length - 1]?.ends;
  const names = numbers.length < fewestInARow ? undefined : ofOneFamily(numbers, line);
  return names === undefined || to === undefined ? undefined : { names, is: 'named', isSure: false, to };
}

const fewestInARow = 3;

/** `batch 1 and 2`; `valves 1 to 4`, where no part here is called so. */
function isOfAnother({ tokens, context }: PartsInLine, token: number): boolean {
  const before = tokens[token - 1];
  if (before === undefined) return false;
  const word = withoutAccents(before.text.toLowerCase());
  return isMark(word, context) || (before.kind === 'word' && isOfOthers(word, context));
}

function isOfOthers(word: string, context: PartsInLine['context']): boolean {
  const { said } = context.hearing;
  const one = oneOf(word, context);
  if (one === word || said.byFirst.has(word) || said.light.has(word)) return false;
  const isNoun = said.lists.nouns.has(one) || (mayNamePart(word, context.hearing) && mayNamePart(one, context.hearing));
  return isNoun && !said.lists.ones.has(word);
}

function ofOneFamily(numbers: readonly number[], { known }: PartsInLine): readonly PartName[] | undefined {
  const found = [...known.families.values()].flatMap((family) => {
    const named = numbers.map((number) => family.get(number) ?? []);
    return named.every(({ length }) => length === 1) ? [named.flat()] : [];
  });
  return found.length === 1 ? found[0] : undefined;
}
