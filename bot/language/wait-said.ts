// What sends the clock of practice on: `wait 20m`, `20 minutes later`, `wait until 9:40`, `next bell`. Nobody else's clock is moved
// by a line, so that only practice reads it.

import { DateTime } from 'luxon';
import { type EpochMs, epochMs, minutes, minutesAfter } from '../../core/units.ts';
import type { Hearing } from './hearing.ts';
import { readTimeOfDay } from './times/time-typed.ts';
import { cleanLine } from './typed/clean-line.ts';
import { tokenize } from './typed/tokens.ts';
import { withoutAccents } from './typed/without-accents.ts';

export type Wait = { readonly to: 'next-bell' } | { readonly to: 'time'; readonly at: EpochMs };

/** Longer than any bell of a lesson is away. */
const longestMinutes = 3 * 24 * 60;

export interface WaitingIn {
  readonly hearing: Hearing;
  readonly now: EpochMs;
  readonly zone: string;
}

/** `undefined`: it asks for no wait. */
export function waitSaid(text: string, at: WaitingIn): Wait | undefined {
  const line = withoutAccents(cleanLine(text).toLowerCase());
  for (const { practice } of at.hearing.tongues) {
    const said = practice.waits.exec(line);
    if (said === null) continue;
    const { rest, later } = said.groups ?? {};
    const until = (rest ?? later ?? '').trim();
    if (until === '') return { to: 'next-bell' };
    const time = timeOf(until, at);
    if (time !== undefined) return { to: 'time', at: time };
  }
  return undefined;
}

function timeOf(said: string, at: WaitingIn): EpochMs | undefined {
  const tokens = tokenize(said, at.hearing).filter((token) => token.kind !== 'word' || token.word !== 'and');
  const lengths = tokens.map((token) =>
    token.kind === 'quantity' && token.quantity.is === 'duration' ? token.quantity.value : undefined,
  );
  if (tokens.length > 0 && lengths.every((length) => length !== undefined)) {
    const length = lengths.reduce((sum, each) => sum + each, 0);
    return length > 0 && length <= longestMinutes ? minutesAfter(at.now, minutes(length)) : undefined;
  }
  return clockTime(said, at);
}

/** Its next one. */
function clockTime(said: string, { now, zone }: WaitingIn): EpochMs | undefined {
  const time = readTimeOfDay(said);
  if (time === undefined || time === 'no-such-time') return undefined;
  const { hour, minute } = time;
  const today = DateTime.fromMillis(now, { zone }).startOf('day').set({ hour, minute });
  if (!today.isValid) return undefined;
  return epochMs((today.toMillis() > now ? today : today.plus({ days: 1 })).toMillis());
}
