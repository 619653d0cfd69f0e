// Two cans in one line, `part A lot 7731 5kg, part B lot 8820 5kg, both sealed`: a label each, with what is said of all of them.

import type { LineContext } from '../reading.ts';
import type { Phrase } from '../slots-heard/said-table.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { type Label, labelIn } from './label-read.ts';

/** More is a delivery note. */
const mostLabels = 6;

/** `undefined` where it is one, or where a figure stands ahead of all of them and is no count. */
export function severalIn(line: string, whole: Label, context: LineContext): readonly Label[] | undefined {
  const { starts, lots } = whole;
  const [from] = starts;
  if (from === undefined || starts.length < 2 || lots.size < 2 || starts.length > mostLabels) return undefined;
  const ahead = labelIn(line.slice(0, from), context);
  const each = starts.flatMap((start, i) => labelIn(line.slice(start, starts[i + 1] ?? line.length), context) ?? []);
  if (ahead === undefined || each.length !== starts.length || !isOnlyTalk(ahead, each.length)) return undefined;
  const last = each.at(-1);
  const isOfAll = last !== undefined && saysAll(last, context);
  return each.map((label) => ({
    ...label,
    ...(isOfAll && ofAll(label, last)),
    says: new Set([...ahead.says, ...label.says, ...(last?.says ?? [])]),
    rest: [...ahead.rest, ...label.rest].filter((word) => !isCount(word, each.length)),
  }));
}

/** `both`, `each`, `1 kg tins`: of one can nobody says so. */
function saysAll({ talk }: Label, { hearing: { said, labelled } }: LineContext): boolean {
  const isCan = (word: string): boolean => said.cans.has(word) || labelled.vessels.has(word);
  return talk
    .flatMap(({ typed }) => withoutAccents(typed.toLowerCase()).split(' '))
    .some((word) => said.byFirst.get(word)?.some(isMany) === true || (word.endsWith('s') && isCan(word.slice(0, -1))));
}

const isMany = ({ says }: Phrase): boolean => says.is === 'many';

const isCount = (word: string, many: number): boolean => word === String(many);

const isOnlyTalk = ({ lots, amounts, lastDays, times, counts, rest }: Label, many: number): boolean =>
  lots.size + amounts.length + lastDays.size + times.length === 0 &&
  counts.every((count) => count === many) &&
  rest.every((word) => !/\d/.test(word) || isCount(word, many));

/** `, 5 kg each`, `both exp dec 2026`: said once, behind the last. */
const ofAll = ({ amounts, lastDays }: Label, last: Label): Pick<Label, 'amounts' | 'lastDays'> => ({
  amounts: amounts.length === 0 ? last.amounts : amounts,
  lastDays: lastDays.size === 0 ? last.lastDays : lastDays,
});
