// Where a cry meets the reading of a line. What does not read as anything and cries out calls at once, wherever its word
// stands (`kari is down`); what begins with such a word and does not cry out calls nobody, and is asked about.

import { isFailed } from '../../core/failed.ts';
import { type Alarm, alarmNamed } from '../../core/session/session-commands.ts';
import { criesIn } from './cry.ts';
import type { Hearing } from './hearing.ts';
import { aboutAlarms, type Read } from './misread-line.ts';
import type { Fault, LineContext } from './reading.ts';
import { mannerOf } from './time-and-permission.ts';
import type { Token } from './typed/token.ts';
import { asksForHelp, whichCry } from './unnamed-cry.ts';
import type { VerbNamed } from './verbs-of-tongues.ts';

/** `fire extinguisher checked`; not `fire`, `spill at 9:50`, nor what a tap wrote in quotes. */
export function isOnlySpokenOf(
  { row }: VerbNamed,
  line: string,
  first: Token,
  after: readonly Token[],
  context: LineContext,
): boolean {
  const alarm = alarmNamed(row.name);
  // `hot 1 permit "why?"`: a number after it is the pot.
  const own = alarm === 'hot' && after[0]?.kind === 'number' ? after.slice(1) : after;
  if (alarm === undefined || own[0]?.kind === 'quoted') return false;
  const manner = mannerOf(own, line, context);
  if (!isFailed(manner) && manner.tokens.length === 0)
    return context.hearing.cries.onlyOfLiquid.has(first.text.toLowerCase());
  return !criesIn(line.slice(first.start), context).includes(alarm);
}

export const onlySpokenOf = (verb: VerbNamed, token: Token): Fault => ({
  failed: 'no-cry',
  token,
  tries: [verb.printed],
});

/** The reading as it is, or the alarm that a line cries out which nothing else reads, or what it may cry out. */
export function orCried(read: Read, line: string, context: LineContext): Read {
  if ('act' in read) return withPot(read, line, context.hearing);
  const isAsk = 'question' in read && read.question.ask === 'help';
  const verb = isFailed(read) ? read.verb?.row.name : undefined;
  const isAbout = verb !== undefined && verb !== 'help' && aboutAlarms.has(verb);
  if (!(isAsk || isFailed(read)) || isAbout) return read;
  const [alarm]: readonly Alarm[] = criesIn(line, context);
  if (alarm !== undefined)
    return withPot({ act: { command: { verb: alarm, note: line } }, line }, line, context.hearing);
  if (!isFailed(read) || read.failed.failed !== 'unknown-verb' || !asksForHelp(line, context)) return read;
  return { ...whichCry(line, read.failed, context.hearing), line };
}

/** `fire in booth???` calls: a cry in words of its own asks nothing. */
export const isCried = ({ act: { command } }: Extract<Read, { act: unknown }>): boolean =>
  alarmNamed(command.verb) !== undefined && 'note' in command && command.note !== undefined;

/** `pot 1 is hot`, `mezcla 1 caliente`: the number beside the pot is the batch, wherever it stands. */
function withPot(read: Extract<Read, { act: unknown }>, line: string, hearing: Hearing): Read {
  const { command } = read.act;
  if (command.verb !== 'hot' || command.batch !== undefined) return read;
  const number = hearing.potNumbered.exec(line)?.[1];
  if (number === undefined || Number(number) < 1) return read;
  return { ...read, act: { ...read.act, command: { ...command, batch: Number(number) } } };
}
