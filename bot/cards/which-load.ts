// The oven's door or the way out, said of no part while several loads are in an oven: each load for one tap, and all of them.

import type { CommandOf } from '../../core/commands.ts';
import type { PartName } from '../../core/ids.ts';

export function loadsMeant<Of extends CommandOf<'door' | 'out'>>(
  command: Of,
  loads: readonly (readonly PartName[])[],
): readonly Of[] {
  const meant = loads.length > 1 ? [...loads, loads.flat()] : loads;
  return meant.map((parts) => ({ ...command, parts }));
}
