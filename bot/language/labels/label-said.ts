// What is printed on a can, read off or pasted: `COMPONENT B / LOT 8820-B / NET 5 KG / EXP 12.2026`. It opens the can where that is
// said, else it may be opened or booked in: a tap each. Which of A and B it is stands on it, or nothing is made of it.

import type { Plainly } from '../as-said/as-said.ts';
import { actsJoint } from '../lines-apart.ts';
import type { LineContext } from '../reading.ts';
import { onlyAsksOrDenies } from '../slots-heard/slots-heard.ts';
import { isoLocal } from '../times/wall-clock.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { asTaps, type Strictly, type Understood } from '../understood.ts';
import { isGasThere, spoken } from './gas-there.ts';
import { type Label, labelIn } from './label-read.ts';
import { mayBeSealedOpened, saysNothing, sealedOpened } from './sealed-opened.ts';
import { severalIn } from './several-labels.ts';

export function labelSaid(
  line: string,
  context: LineContext,
  strictly: Strictly,
  plainly: Plainly,
): Understood | undefined {
  if (line.endsWith('?')) return undefined;
  if (!mayBeLabel(line, context)) return undefined;
  const ways = plainly().filter((heard) => heard.line !== line);
  const [only, ...others] = ways;
  // `two tins`, `five kilos`: a figure that was said in words is never left out.
  if (only === undefined) return ofLabel(line, context, strictly);
  if (others.length === 0 && only.isSure) return ofLabel(only.line, context, strictly);
  const typed = ofLabel(line, context, strictly);
  if (typed !== undefined || !namesLot(line, context)) return typed;
  // `lot seven seven four zero`: of several ways the longest lot.
  const lines = ways.flatMap((heard) => linesOf(ofLabel(heard.line, context, strictly)));
  const longest = lines.toSorted((one, other) => other.length - one.length).slice(0, 1);
  return longest.length === 0 ? undefined : { is: 'likely', lines: longest };
}

const linesOf = (said: Understood | undefined): readonly string[] => (said === undefined ? [] : asTaps(said).lines);

/** Before anything is looked at more nearly. */
const namesLot = (line: string, { hearing }: LineContext): boolean =>
  line
    .split(/[\s:#./]+/)
    .some((word) => hearing.labelled.byFirst.get(word.toLowerCase())?.some(({ of }) => of === 'lot'));

const mayBeLabel = (line: string, context: LineContext): boolean =>
  namesLot(line, context) || mayBeSealedOpened(line, context) || /\b[AB]-\w*\d|\d\s?(?:kg|lb|g)\b/i.test(line);

function ofLabel(line: string, context: LineContext, strictly: Strictly): Understood | undefined {
  const label = labelIn(line, context);
  if (label === undefined || onlyAsksOrDenies(spokenBeside(label), context)) return undefined;
  const each = severalIn(line, label, context);
  if (each !== undefined) return ofSeveral(line, each, context, strictly);
  return ofOne(line, label, context, strictly) ?? sealedOpened(line, label, context, strictly);
}

/** `sin abrir` denies no more than that it is open. */
const spokenBeside = ({ talk }: Label): string => spoken(talk.filter(({ of }) => of !== 'asReceived'));

function ofOne(line: string, label: Label, context: LineContext, strictly: Strictly): Understood | undefined {
  const { rest, says } = label;
  const told = toldIn(label) ?? goneOn(line, context);
  if (!isLabel(label, told)) return undefined;
  // `is A lot 7731 open`: what is no whole label may be asked.
  if (!isWhole(label) && (told === undefined || onlyAsksOrDenies(line, context))) return undefined;
  const sheet = context.sheetIds.find((id) => rest.join('-').toLowerCase().includes(id));
  const others = sheet === undefined ? rest : rest.filter((word) => !sheet.split('-').includes(word.toLowerCase()));
  const acts = told === undefined ? (['open', 'received'] as const) : [told];
  // `we are out of gas`
  const isGasUnclear = says.has('gas') && !isGasThere(label, context);
  const read = isGasUnclear ? { ...label, says: new Set([...says].filter((each) => each !== 'gas')) } : label;
  const lines = acts
    .map((act) => lineOf(act, read, sheet, context.zone))
    .filter((each) => strictly(each).kind === 'command');
  const [first, ...more] = lines;
  if (first === undefined) return undefined;
  const isGoneOn =
    told !== undefined && goneOn(line, context) === told && others.every((word) => saysNothing(word, context));
  const isSaid = says.has(told === 'received' ? 'asReceived' : 'asOpen');
  return more.length === 0 && !isGasUnclear && (isGoneOn || (isSaid && isTalkOf(told, line, others, context)))
    ? { is: 'sure', line: first }
    : { is: 'likely', lines };
}

/** What is told of one is told of all, or they are taps: all opened, or all booked in. */
function ofSeveral(
  line: string,
  labels: readonly Label[],
  context: LineContext,
  strictly: Strictly,
): Understood | undefined {
  const each = labels.map((label) => ofOne(line, label, context, strictly));
  const lines = each.flatMap((one) => (one?.is === 'sure' ? [one.line] : []));
  if (lines.length === each.length) return { is: 'several', lines };
  const taps = each.map(linesOf);
  const ways = (['open', 'received'] as const).flatMap((act) => {
    const all = taps.flatMap((one) => one.find((way) => way.startsWith(act)) ?? []);
    return all.length === each.length ? [all.join(actsJoint)] : [];
  });
  return ways.length === 0 ? undefined : { is: 'likely', lines: ways };
}

/** `and B lot 8820 too`: as the can before it. */
function goneOn(line: string, { last, hearing: { said } }: LineContext): Act | undefined {
  const words = withoutAccents(line.toLowerCase()).split(/[\s,.!]+/);
  const goesOn =
    said.joints.has(words[0] ?? '') || said.lists.sameFor.ends.has(words.findLast((word) => word !== '') ?? '');
  const before = goesOn ? last?.().said()?.line?.split(' ')[0] : undefined;
  return before === 'open' || before === 'received' ? before : undefined;
}

/** Which of them was done, where it was said; nobody opens several at once. */
function toldIn({ says, counts }: Label): Act | undefined {
  if (says.has('asOpen')) return 'open';
  return says.has('asReceived') || counts.some((count) => count > 1) ? 'received' : undefined;
}

type Act = 'open' | 'received';

/** What stands round the label is of the act as well: `just cracked it, argon's right here`. */
const surely = 0.6;
const mostOthers = 3;

function isTalkOf(act: Act | undefined, line: string, rest: readonly string[], context: LineContext): boolean {
  const others = rest.filter((word) => !saysNothing(word, context));
  if (others.length === 0) return true;
  const [top] = context.hearing.weighed.weigh(line);
  return others.length <= mostOthers && top !== undefined && top.meaning === act && top.share >= surely;
}

/** A lot and its part, and nothing twice. */
const isLabel = (
  { components, lots, amounts, counts, lastDays, times, rest, says }: Label,
  told: Act | undefined,
): boolean =>
  components.size === 1 &&
  lots.size === 1 &&
  amounts.length <= 1 &&
  lastDays.size <= 1 &&
  times.length <= 1 &&
  counts.length <= 1 &&
  (counts.length === 0 || (told === 'received' && amounts.length === 1)) &&
  // A figure that nobody could read, or a day that may be two, is never left out.
  !rest.some((piece) => /\d/.test(piece)) &&
  !(says.has('expiry') && lastDays.size === 0);

/** How much is in it, or how long it lasts: what a can has on it. */
const isWhole = ({ amounts, lastDays }: Label): boolean => amounts.length + lastDays.size > 0;

function lineOf(
  act: Act,
  { components, lots, amounts, counts, lastDays, times, says }: Label,
  sheet: string | undefined,
  zone: string,
): string {
  const [day] = lastDays;
  const [time] = times;
  return [
    ...[
      act,
      ...counts.flatMap((count) => [count, 'x']),
      ...amounts.filter(() => act === 'received'),
      ...components,
      'lot',
      ...lots,
    ],
    ...amounts.filter(() => act === 'open'),
    ...(day === undefined ? [] : ['exp', day]),
    ...(sheet === undefined ? [] : [sheet]),
    ...(says.has('gas') && act === 'open' ? ['gas'] : []),
    ...(time === undefined ? [] : [`at ${isoLocal(time, zone)}`]),
  ].join(' ');
}
