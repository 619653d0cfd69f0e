// The taps under a figure that is far from the usual or from the reading before: as read, or what may have been meant.

import type { Command } from '../../core/commands.ts';
import type { Request } from '../../core/execute.ts';
import type { Unclear } from '../../core/objections.ts';
import { figureIn } from '../language/noted-figures.ts';
import { type Slot, slots } from '../language/slots.ts';
import type { CardAction } from './card.ts';
import { lineOf, type Telling, tap } from './card-context.ts';

type Far = Extract<Unclear, { code: 'far-reading' }>;

/** `line`: what a command is typed as. What is tapped as read has happened, and so is not asked about again. */
export function farTaps(
  telling: Telling,
  { command, at }: Request,
  unclear: Far,
  line: (changed: Command) => string,
): readonly CardAction[] {
  const asRead = (label: string): CardAction => ({
    ...{ id: 'as-read', label, line: lineOf(telling, { command, at, stance: { is: 'happened' } }) },
  });
  if (unclear.from === 'before') {
    const { part, celsius } = unclear;
    return [
      asRead(`${part}: ${telling.figures.temperature(celsius)}`),
      tap(telling, 'temp', `temp ${part} {part-temperature}C`),
      tap(telling, 'out', lineOf(telling, { command: { verb: 'out', parts: [part] }, stance: { is: 'asked' } })),
    ];
  }
  const shown = (slot: Slot, values: readonly number[]): string =>
    telling.figures.list(values.map((value) => figureIn(slots[slot].unit, value, telling.figures)));
  const read = unclear.figures.map(({ slot, values }) => shown(slot, values));
  const meant = unclear.figures.flatMap(({ slot, meant }) =>
    meant.map((each) => ({ label: `${shown(slot, each.values)}?`, line: line(each.command) })),
  );
  const cannotBe = unclear.figures.some(
    ({ slot, values }) => slot === 'gas-share' && values.some((value) => value > 100),
  );
  return [
    ...meant.map((each, i) => ({ id: `meant-${i + 1}`, ...each })),
    // No air is more than all oxygen.
    ...(cannotBe ? [] : [asRead(`${telling.words.replies.asRead}: ${telling.figures.list(read)}`)]),
  ];
}
