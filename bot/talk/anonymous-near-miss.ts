// A near miss that is told without a name: neither its event nor its answer may keep who told it, nor an id by which the
// chat platform could be asked for it.

import { createHash } from 'node:crypto';
import type { Command } from '../../core/commands.ts';
import { nobody } from '../../core/crew/alarm-decide.ts';
import type { Delivery } from './front-end.ts';

export function withoutTeller<D extends Delivery & { readonly id: string }>(delivery: D, command: Command): D {
  if (command.verb !== 'near-miss' || !command.anonymous) return delivery;
  // The same delivery has still the same id, so that it is one event however often it comes.
  return { ...delivery, as: nobody, in: '', id: createHash('sha256').update(delivery.id).digest('hex') };
}
