// What may be taken of a line that was made of other words.

import { alarmNamed } from '../../core/session/session-commands.ts';
import type { Reading } from './reading.ts';
import type { StrictReading } from './understood.ts';

/** Nothing that calls people is ever made of other words. */
export function isTaken(read: StrictReading): read is Extract<Reading, { kind: 'command' | 'question' }> {
  return read.kind === 'question' || (read.kind === 'command' && alarmNamed(read.command.verb) === undefined);
}
