// The tap that takes an act back: it names its act, so that pressed later, or by somebody else, it takes back no other.

import type { CommandOf } from '../../core/commands.ts';
import type { CardAction } from './card.ts';
import { lineOf, type Telling, tap } from './card-context.ts';

export function undoTap(telling: Telling, entry: number): CardAction {
  return tap(telling, 'undo', undoLine(telling, { entry }));
}

export function undoLine(telling: Telling, named: Omit<CommandOf<'undo'>, 'verb'>): string {
  return lineOf(telling, { command: { verb: 'undo', ...named }, stance: { is: 'asked' } });
}
