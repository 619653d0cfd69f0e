// What a bare answer never says: it vouches for nothing that can hurt somebody, decides nothing, and goes on against no advice.

import { verbRows } from '../../../core/commands.ts';
import { stepRows } from '../../../core/steps/step-rows.ts';
import type { Reading } from '../reading.ts';

/** `isMarked`: the card itself says that this word alone answers it. */
export function mayBeBare(read: Extract<Reading, { kind: 'command' | 'question' }>, isMarked: boolean): boolean {
  if (read.kind === 'question') return true;
  const { command, stance } = read;
  const { options } = verbRows[command.verb];
  if (options?.vouches === true || options?.decision === true || options?.calls === true) return false;
  if (command.verb === 'confirm' && stepRows[command.step].vouches === true) return false;
  // An act that a rule objected to and that went ahead is told as one that has happened.
  return stance.is === 'asked' || (stance.is === 'happened' && isMarked);
}
