// The taps that a question about cans and weights offers: what may be meant.

import type { Command } from '../../core/commands.ts';
import type { Component } from '../../core/components.ts';
import type { Request } from '../../core/execute.ts';
import type { Unclear } from '../../core/objections.ts';
import { type Grams, grams } from '../../core/units.ts';
import type { CardAction } from './card.ts';
import { lineOf, type Telling, tap } from './card-context.ts';

/** More would not fit under a card. */
const mostTaps = 4;

/** `line`: what a command is typed as. */
export function materialMeant(
  telling: Telling,
  { command, at }: Request,
  unclear: Unclear,
  line: (changed: Command) => string,
): readonly CardAction[] {
  switch (unclear.code) {
    case 'which-can':
    case 'no-such-can':
      return unclear.live.slice(0, mostTaps).flatMap((can) => {
        const meant = withCan(command, can, unclear.code === 'no-such-can' ? unclear.can : undefined);
        return meant === undefined
          ? []
          : [
              {
                id: `can-${can}`,
                label: `${telling.words.buttons.meant} ${can}`,
                line: line(meant),
                bare: [`${can}`, `can ${can}`],
              },
            ];
      });
    case 'can-size-needed':
      if (command.verb !== 'open') return [];
      if (unclear.sizes.length === 0) return [tap(telling, 'open-one', `${line(command)} {can-mass}kg`)];
      return unclear.sizes.slice(0, mostTaps).map((each, i) => ({
        id: `size-${i + 1}`,
        label: telling.figures.mass(each),
        line: line({ ...command, grams: each }),
      }));
    case 'other-unit':
      if (command.verb !== 'weigh') return [];
      return [
        unclear.readings.every(({ otherGrams }) => otherGrams !== undefined)
          ? { id: 'other-unit', label: otherLabel(telling, unclear), line: line(inOtherUnit(command, unclear)) }
          : tap(telling, 'weigh', readAgain(line(command), unclear)),
        tap(telling, 'as-said', lineOf(telling, { command, at, stance: { is: 'happened' } })),
      ];
    default:
      return [];
  }
}

/** The same act from or on this can; `wrong`: the number that it stands in place of. */
function withCan(command: Command, can: number, wrong: number | undefined): Command | undefined {
  switch (command.verb) {
    case 'weigh':
    case 'drawn':
    case 'add':
      return { ...command, cans: [...(command.cans ?? []).filter((named) => named !== wrong), can] };
    case 'lid':
    case 'shut':
    case 'blanket':
    case 'check':
    case 'prestir':
    case 'discard':
      return { ...command, can };
    default:
      return undefined;
  }
}

type OtherUnit = Extract<Unclear, { code: 'other-unit' }>;
type Weigh = Extract<Command, { verb: 'weigh' }>;

function otherLabel(telling: Telling, { readings }: OtherUnit): string {
  const meant = readings.flatMap(({ otherGrams }) =>
    otherGrams === undefined ? [] : [telling.figures.mass(otherGrams)],
  );
  return `${telling.words.buttons.meant} ${telling.figures.list(meant)}`;
}

/** With a field for each reading that is in doubt. */
const readAgain = (line: string, { readings }: OtherUnit): string =>
  readings.reduce((asked, { component, grams }) => asked.replace(` ${grams}g`, ` {${component}}g`), line);

/** To a hundredth of a gram: no scale of a shop shows more. */
function inOtherUnit(command: Weigh, { readings }: OtherUnit): Weigh {
  const meant = (component: Component, said: Grams): Grams => {
    const other = readings.find((reading) => reading.component === component)?.otherGrams;
    return other === undefined ? said : grams(Math.round(other * 100) / 100);
  };
  const { partAGrams, partBGrams } = command;
  if (partAGrams !== undefined && partBGrams !== undefined) {
    return { ...command, partAGrams: meant('part-a', partAGrams), partBGrams: meant('part-b', partBGrams) };
  }
  if (partAGrams !== undefined) return { ...command, partAGrams: meant('part-a', partAGrams) };
  return partBGrams === undefined ? command : { ...command, partBGrams: meant('part-b', partBGrams) };
}
