// What is printed on a can, read off or pasted: `COMPONENT B / LOT 8820-B / NET 5 KG / EXP 12.2026`. It opens the can where that is
// said, else it may be opened or booked in: a tap each. Which of A and B it is stands on it, or nothing is made of it.

import type { Plainly } from '../as-said/as-said.ts';
import type { LineContext } from '../reading.ts';
import { onlyAsksOrDenies } from '../slots-heard/slots-heard.ts';
import type { Strictly, Understood } from '../understood.ts';
import { type Label, labelIn } from './label-read.ts';

export function labelSaid(
  line: string,
  context: LineContext,
  strictly: Strictly,
  plainly: Plainly,
): Understood | undefined {
  if (line.endsWith('?')) return undefined;
  const typed = ofLabel(line, context, strictly);
  // `lot seven seven four zero`.
  if (typed !== undefined || !namesLot(line, context)) return typed;
  const ways = plainly().flatMap((heard) => linesOf(ofLabel(heard.line, context, strictly)));
  // Digit by digit: of several ways the longest lot.
  const longest = ways.toSorted((one, other) => other.length - one.length).slice(0, 1);
  return longest.length === 0 ? undefined : { is: 'likely', lines: longest };
}

const linesOf = (said: Understood | undefined): readonly string[] =>
  said === undefined ? [] : said.is === 'sure' ? [said.line] : said.lines;

/** Before anything is looked at more nearly. */
const namesLot = (line: string, { hearing }: LineContext): boolean =>
  line
    .split(/[\s:#./]+/)
    .some((word) => hearing.labelled.byFirst.get(word.toLowerCase())?.some(({ of }) => of === 'lot'));

function ofLabel(line: string, context: LineContext, strictly: Strictly): Understood | undefined {
  if (!namesLot(line, context) && !/\b[AB]-\w*\d|\d\s?(?:kg|lb|g)\b/i.test(line)) return undefined;
  const label = labelIn(line, context);
  if (label === undefined || !isWhole(label) || onlyAsksOrDenies(label.rest.join(' '), context)) return undefined;
  const { rest, says } = label;
  const sheet = context.sheetIds.find((id) => rest.join('-').toLowerCase().includes(id));
  const others = sheet === undefined ? rest : rest.filter((word) => !sheet.split('-').includes(word.toLowerCase()));
  const acts = says.has('asOpen') ? ['open'] : says.has('asReceived') ? ['received'] : ['open', 'received'];
  const lines = acts.map((act) => lineOf(act, label, sheet)).filter((each) => strictly(each).kind === 'command');
  const [first, ...more] = lines;
  if (first === undefined) return undefined;
  return more.length === 0 && others.length === 0 && says.has('asOpen')
    ? { is: 'sure', line: first }
    : { is: 'likely', lines };
}

/** A lot, its part, and how much or how long: else it is no label. */
const isWhole = ({ components, lots, amounts, lastDays, rest, says }: Label): boolean =>
  components.size === 1 &&
  lots.size === 1 &&
  amounts.length <= 1 &&
  lastDays.size <= 1 &&
  amounts.length + lastDays.size > 0 &&
  // A figure that nobody could read, or a day that may be two, is never left out.
  !rest.some((piece) => /\d/.test(piece)) &&
  !(says.has('expiry') && lastDays.size === 0);

function lineOf(act: string, { components, lots, amounts, lastDays, says }: Label, sheet: string | undefined): string {
  const [day] = lastDays;
  return [
    ...[act, ...amounts.filter(() => act === 'received'), ...components, 'lot', ...lots],
    ...amounts.filter(() => act === 'open'),
    ...(day === undefined ? [] : ['exp', day]),
    ...(sheet === undefined ? [] : [sheet]),
    ...(says.has('gas') && act === 'open' ? ['gas'] : []),
  ].join(' ');
}
