// `opened both cans`, `A is open, argon on`: cans that stand sealed by the record are opened without their label. Their lot is
// taken only where no other can may be meant: one lot of that part stands there, and no can of it is open.

import type { SealedLot } from '../live-now.ts';
import type { LineContext } from '../reading.ts';
import { onlyAsksOrDenies } from '../slots-heard/slots-heard.ts';
import { isoLocal } from '../times/wall-clock.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import type { Strictly, Understood } from '../understood.ts';
import { isGasThere } from './gas-there.ts';
import type { Label } from './label-read.ts';

/** Before anything is looked at more nearly. */
export const mayBeSealedOpened = (line: string, { hearing, live }: LineContext): boolean =>
  wordsOf(line).some((word) => hearing.labelled.byFirst.get(word)?.some(({ of }) => of === 'asOpen')) &&
  (live?.().sealed ?? []).length > 0;

const wordsOf = (line: string): readonly string[] =>
  withoutAccents(line.toLowerCase())
    .split(/[\s,;:.!]+/)
    .filter((word) => word !== '');

export function sealedOpened(
  line: string,
  label: Label,
  context: LineContext,
  strictly: Strictly,
): Understood | undefined {
  const { components, says, times } = label;
  if (!says.has('asOpen') || says.has('asReceived') || hasFigures(label)) return undefined;
  if (onlyAsksOrDenies(line, context) || !label.rest.every((word) => saysNothing(word, context))) return undefined;
  const cans = components.size > 0 ? ofParts(components, context) : unnamed(line, label, context);
  if (cans === undefined || cans.length === 0 || (components.size > 0 && label.counts.length > 0)) return undefined;
  const [time] = times;
  const when = time === undefined ? '' : ` at ${isoLocal(time, context.zone)}`;
  const isGas = says.has('gas') && isGasThere(label, context);
  const lines = cans.map(({ component, lot }) => {
    const gas = isGas && component === 'A' ? ' gas' : '';
    return `open ${component} lot ${lot}${gas}${when}`;
  });
  if (!lines.every((each) => strictly(each).kind === 'command')) return undefined;
  const [first, ...more] = lines;
  // `no argon`, `where is the gas`: what is said of it was not understood.
  if (first === undefined || (says.has('gas') && !isGas)) return undefined;
  return more.length === 0 ? { is: 'sure', line: first } : { is: 'several', lines };
}

/** Those are of a label. */
const hasFigures = ({ lots, amounts, lastDays, times }: Label): boolean =>
  lots.size + amounts.length + lastDays.size > 0 || times.length > 1;

/** `both`, `the`, `already`; any other word may be what was opened. */
export function saysNothing(word: string, { hearing: { said, labelled } }: LineContext): boolean {
  const typed = withoutAccents(word.toLowerCase());
  const isFiller = said.byFirst
    .get(typed)
    ?.some(({ words, says }) => words.length === 1 && (says.is === 'filler' || says.is === 'many'));
  return said.light.has(typed) || said.joints.has(typed) || labelled.vessels.has(typed) || isFiller === true;
}

function ofParts(components: ReadonlySet<string>, context: LineContext): readonly SealedLot[] | undefined {
  const each = [...components].map((component) => closedCans(context).filter((can) => can.component === component));
  return each.every(({ length }) => length === 1) ? each.flat() : undefined;
}

/** `the cans` are all that stand there, `both` are two. */
function unnamed(line: string, { counts }: Label, context: LineContext): readonly SealedLot[] | undefined {
  const { said, labelled } = context.hearing;
  const isCan = (word: string): boolean => said.cans.has(word) || labelled.vessels.has(word);
  const words = wordsOf(line);
  const cans = closedCans(context);
  const isEachOne =
    cans.every(({ left }) => left === 1) && new Set(cans.map(({ component }) => component)).size === cans.length;
  if (!isEachOne || counts.some((count) => count !== cans.length)) return undefined;
  if (!words.some((word) => isCan(word) || isCan(word.replace(/s$/, '')))) return undefined;
  const areSeveral = words.some((word) => word.endsWith('s') && isCan(word.replace(/s$/, '')));
  return areSeveral === cans.length > 1 ? cans : undefined;
}

/** Of a part of which a can is open its lid may be meant as well. */
function closedCans({ live }: LineContext): readonly SealedLot[] {
  const { sealed = [], cans = [] } = live?.() ?? {};
  return sealed.filter(({ component }) => !cans.some((can) => can.component === component));
}
