// Where it is not clear which product is meant: one tap for each that is offered.

import type { Command } from '../../core/commands.ts';
import type { SheetId } from '../../core/ids.ts';
import type { SheetUnclear } from '../../core/products/sheet-objections.ts';
import type { CardAction } from './card.ts';
import type { Telling } from './card-context.ts';

/** More would not fit under a card. */
const mostTaps = 4;

/** `line`: says the same by that sheet. */
export function sheetTaps(
  telling: Telling,
  unclear: SheetUnclear,
  line: (sheet: SheetId) => string,
): readonly CardAction[] {
  if (unclear.code === 'sheet-faulty') return [];
  return unclear.known.slice(0, mostTaps).map((id) => ({
    id: `sheet-${id}`,
    label: `${telling.words.buttons.meant} ${id}`,
    line: line(id),
    bare: [id],
  }));
}

/** The same command by that sheet; where it cannot name one, what makes the sheet the usual one. */
export function withSheet(command: Command, sheet: SheetId): Command {
  switch (command.verb) {
    case 'mix':
    case 'open':
      return { ...command, sheet };
    default:
      return { verb: 'set', setting: { name: 'sheet', sheet } };
  }
}
