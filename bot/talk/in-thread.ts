// A line said in a batch's or a session's own thread need not name it, nor a part where only one waits: the thread names
// them.

import { type Command, takesBatch, withBatch } from '../../core/commands.ts';
import { nounOf, numberIn, type PartName, partStream, type StreamId } from '../../core/ids.ts';
import { liveParts, type Shop } from '../../core/shop.ts';
import type { Reading } from '../language/reading.ts';
import { subjectOf, takesSession } from './message-subject.ts';

/** The command with the thread's session where it takes one and names none. */
export function withSessionOf(about: StreamId | undefined, command: Command): Command {
  if (about === undefined || nounOf(about) !== 'session' || !takesSession(command)) return command;
  return command.session === undefined ? { ...command, session: numberIn(about) } : command;
}

/** The command with the thread's batch where it takes one and names none. */
export function withBatchOf(about: StreamId | undefined, command: Command): Command {
  if (about === undefined || nounOf(about) !== 'batch' || !takesBatch(command)) return command;
  return command.batch === undefined ? withBatch(command, numberIn(about)) : command;
}

/** `dry` in the thread of a batch from which one part waits: the line with that part in it, where the line lacks one. */
export function lineWithPart(
  text: string,
  reading: Reading,
  about: StreamId | undefined,
  shop: Shop,
): string | undefined {
  if (about === undefined || reading.kind !== 'misread') return undefined;
  const { code, needs } = reading.misread;
  const wantsPart = needs.some(({ slot }) => slot === 'part' || slot === 'parts');
  if (!wantsPart || (code !== 'incomplete' && code !== 'left-over')) return undefined;
  const waiting: readonly PartName[] = liveParts(shop)
    .map((part) => part.name)
    .filter((name) => subjectOf(shop, partStream(name)) === about);
  const [only] = waiting;
  if (only === undefined || waiting.length > 1) return undefined;
  const [, verb = '', rest = ''] = /^\s*(\S+)(.*)$/su.exec(text) ?? [];
  return `${verb} ${only}${rest}`;
}
