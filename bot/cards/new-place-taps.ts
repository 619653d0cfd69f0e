// A place that nobody has named: the known ones that may have been meant, each as the same line said there, then the new one as such.

import type { Command, CommandOf } from '../../core/commands.ts';
import type { Unclear } from '../../core/objections.ts';
import type { CardAction } from './card.ts';
import type { Telling } from './card-context.ts';

/** The readings that are taken in a place. */
type Placed = CommandOf<'air' | 'surface' | 'night'>;

const isPlaced = (command: Command): command is Placed =>
  command.verb === 'air' || command.verb === 'surface' || command.verb === 'night';

/** `line`: what a command is typed as. */
export function placeTaps(
  { words }: Telling,
  command: Command,
  { place, near }: Extract<Unclear, { code: 'new-place' }>,
  line: (changed: Command) => string,
): readonly CardAction[] {
  if (!isPlaced(command)) return [];
  return [
    ...near.map((known, i) => ({
      id: `place-${i + 1}`,
      label: `${words.buttons.meant} ${words.names.place(known)}`,
      line: line({ ...command, place: known }),
      bare: [known],
    })),
    {
      id: 'new-place',
      label: words.parts.meant.newPlace(place),
      line: line({ ...command, asNew: true }),
      bare: ['yes', 'new'],
    },
  ];
}
