// A line that is said in figures, times, lists and units as people say them, and otherwise in the order that the strict reader knows.

import type { LineContext } from '../reading.ts';
import type { Strictly, StrictReading, Understood } from '../understood.ts';
import { doubtsSettled } from './doubts-settled.ts';
import { figuresJoined } from './figures-joined.ts';
import type { Heard } from './heard.ts';
import { marksSaid } from './marks-said.ts';
import { numbersSaid } from './numbers-said.ts';
import { partsListed } from './parts-listed.ts';
import { potsSaid } from './pots-said.ts';
import { soundsSaid } from './sounds-said.ts';
import { timesSaid } from './times-said.ts';
import { unitsLeftOut, withoutDegrees } from './units-left-out.ts';
import { unitSlipped, unitsSaid } from './units-said.ts';

/** More ways are no speech any more. */
const mostWays = 8;

/** Nobody says more in one breath; a longer line is typed or pasted, and stays as it is. */
const longestSaid = 200;

/** The line, or the ways to put what it says as the readers know it. */
export function saidPlainly(line: string, context: LineContext): readonly Heard[] {
  if (line.length > longestSaid) return [{ line, isSure: true }];
  const steps: readonly ((line: string, context: LineContext) => readonly Heard[])[] = [
    marksSaid,
    potsSaid,
    doubtsSettled,
    unitsSaid,
    soundsSaid,
    timesSaid,
    numbersSaid,
    figuresJoined,
    (each) => partsListed(each, context).map((listed) => ({ ...listed, unlisted: each })),
  ];
  return steps.reduce<readonly Heard[]>(
    (heard, step) =>
      heard
        .flatMap((each) => {
          const ways = step(each.line, context);
          return ways.length === 0 ? [each] : ways.map((way) => ({ ...way, isSure: way.isSure && each.isSure }));
        })
        .slice(0, mostWays),
    [{ line, isSure: true }],
  );
}

/** Made where somebody first wants them. */
export type Plainly = () => readonly Heard[];

export function plainlySaid(line: string, context: LineContext): Plainly {
  let ways: readonly Heard[] | undefined;
  return () => {
    ways ??= saidPlainly(line, context);
    return ways;
  };
}

export function asSaid(
  line: string,
  context: LineContext,
  strictly: Strictly,
  plainly: Plainly,
): Understood | undefined {
  if (line.endsWith('?')) return undefined;
  return oneOrSeveral(
    thatFit(
      plainly().flatMap((heard) => readAs(heard, line, context, strictly)),
      context,
    ),
  );
}

interface Found extends Heard {
  readonly read: Extract<StrictReading, { kind: 'command' | 'question' }>;
}

function readAs({ line, isSure }: Heard, typed: string, context: LineContext, strictly: Strictly): readonly Found[] {
  // A dictated question mark.
  if (line.endsWith('?')) return [];
  const found = (each: string, isUnitSure = true): readonly Found[] => {
    const read = strictly(each);
    const isRead = read.kind === 'command' || read.kind === 'question';
    return isRead ? [{ line: each, isSure: isSure && isUnitSure, read }] : [];
  };
  const said = line === typed ? [] : found(line);
  if (said.length > 0) return said;
  const plain = withoutDegrees(line, context);
  return [line, ...(plain === line ? [] : [plain])].flatMap((each) =>
    [...unitsLeftOut(each, context, strictly), ...unitSlipped(each, strictly)].flatMap((unit) =>
      found(unit.line, unit.isSure),
    ),
  );
}

/** Of numbers that can be cut in several ways, those that are met with here. */
function thatFit(found: readonly Found[], { fits }: LineContext): readonly Found[] {
  if (found.length < 2 || fits === undefined) return found;
  const fitting = found.filter(({ read }) => read.kind === 'question' || fits(read.command));
  return fitting.length > 0 ? fitting : found;
}

/** The same act said in two ways is one. */
export function oneOrSeveral(found: readonly Found[]): Understood | undefined {
  const meaning = ({ read }: Found): string => JSON.stringify({ ...read, line: '' });
  const each = [...new Map(found.map((one) => [meaning(one), one])).values()];
  const [first] = each;
  if (first === undefined) return undefined;
  return each.length === 1 && first.isSure
    ? { is: 'sure', line: first.line }
    : { is: 'likely', lines: each.map(({ line }) => line) };
}
