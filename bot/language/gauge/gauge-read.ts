// What a line of gauge readings comes to: taken where one reading fits, tapped where several do.

import { whichActOf } from '../acts-meant.ts';
import { unitsLeftOut } from '../as-said/units-left-out.ts';
import type { LineContext, Reading } from '../reading.ts';
import { misreadAs, readMade } from '../strict-line.ts';
import { isTaken } from '../taken.ts';
import { cleanLine } from '../typed/clean-line.ts';
import { asTaps, type StrictReading, type Unread } from '../understood.ts';
import { gaugePasted, numbersSpots, spotsBehind } from './gauge-pasted.ts';

/** Readings in rows, or in answer to what was asked of a film. */
export function gaugeRead(text: string, context: LineContext): Reading | undefined {
  const found = gaugePasted(text, context);
  return found && gaugeTaken(asTaps(found).lines, text, context);
}

/** The only one of them is taken, with its unit where one alone would do. */
export function gaugeTaken(lines: readonly string[], text: string, context: LineContext): Reading | undefined {
  const line = cleanLine(text);
  const strictly = (each: string): StrictReading => readMade(each, context);
  const [first, ...more] = lines.flatMap((each) => {
    const read = strictly(each);
    const taken = isTaken(read) ? read : undefined;
    if (taken !== undefined) return [{ line: each, acts: [taken] }];
    // A unit that alone would do was meant.
    return unitsLeftOut(each, context, strictly).flatMap((unit) => {
      const act = strictly(unit.line);
      return isTaken(act) ? [{ line: unit.line, acts: [act] }] : [];
    });
  });
  const [act] = first?.acts ?? [];
  if (first === undefined || act === undefined) return undefined;
  if (lines.length > 1 || more.length > 0)
    return { kind: 'misread', misread: whichActOf([first, ...more].slice(0, 3)), line };
  return { ...act, line, takenAs: first.line };
}

/** A film whose line numbers its spots is read by them, or not at all. */
export function withoutSpotNumbers(read: Reading, unread: Unread, text: string, context: LineContext): Reading {
  const acts = read.kind === 'misread' ? (read.misread.meant ?? []).flatMap(({ acts }) => acts) : [read];
  const [part] = acts.flatMap((act) => ('command' in act && act.command.verb === 'film' ? [act.command.part] : []));
  if (part === undefined || !numbersSpots(text, part)) return read;
  const spots = spotsBehind(text, part, context);
  return (spots === undefined ? undefined : gaugeTaken([spots], text, context)) ?? misreadAs(unread, context);
}
