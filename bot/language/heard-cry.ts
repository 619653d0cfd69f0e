// Where a cry meets the reading of a line. What does not read as anything and cries out calls at once, wherever its word
// stands (`kari is down`); what begins with such a word and does not cry out calls nobody, and is asked about.

import { type Alarm, alarms } from '../../core/session/session-commands.ts';
import { criesIn } from './cry.ts';
import { isAboutAlarms } from './misread-line.ts';
import type { Read } from './read-line.ts';
import { type Fault, isFault, type LineContext } from './reading.ts';
import { mannerOf } from './time-and-permission.ts';
import type { Token } from './typed/tokens.ts';
import type { VerbNamed } from './verbs-typed.ts';

/** `fire extinguisher checked`; not `fire`, `spill at 9:50`, nor what a tap wrote in quotes. */
export function isOnlySpokenOf(
  { row }: VerbNamed,
  line: string,
  first: Token,
  after: readonly Token[],
  context: LineContext,
): boolean {
  const alarm = alarms.find((each) => each === row.name);
  if (alarm === undefined || after[0]?.kind === 'quoted') return false;
  const manner = mannerOf(after, line, context);
  if (!isFault(manner) && manner.tokens.length === 0) return false;
  return !criesIn(line.slice(first.start), context.people ?? []).includes(alarm);
}

export const onlySpokenOf = (verb: VerbNamed, token: Token): Fault => ({
  code: 'no-cry',
  token,
  tries: [verb.printed],
});

/** The reading as it is, or the alarm that a line cries out which nothing else reads. */
export function orCried(read: Read, line: string, context: LineContext): Read {
  const isAsk = 'question' in read && read.question.ask === 'help';
  const isAbout = 'fault' in read && isAboutAlarms.has(read.verb?.row.name ?? 'mix') && read.verb?.row.name !== 'help';
  if (!(isAsk || 'fault' in read) || isAbout) return read;
  const [alarm]: readonly Alarm[] = criesIn(line, context.people ?? []);
  return alarm === undefined ? read : { act: { command: { verb: alarm, note: line } }, line };
}
