// `a las 4 de la tarde`, `at 4 in the afternoon`: the half of the day said with its part.

import { ownValue } from '../../../core/own-key.ts';
import type { Hearing } from '../hearing.ts';
import type { PartOfDay } from '../tongues/typed.ts';
import type { Token } from '../typed/token.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import type { NoSuchTime } from './time-typed.ts';
import type { TimeOfDay } from './wall-clock.ts';

export interface PartOfDayAt {
  readonly part: PartOfDay;
  /** Index of the token after it. */
  readonly to: number;
}

/** `de la tarde`, `del mediodia`, `h de la tarde` from token `from`. */
export function partOfDayAt(tokens: readonly Token[], from: number, { tongues }: Hearing): PartOfDayAt | undefined {
  const lead = /^(?:h|hrs?)$/.test(textAt(tokens, from)) ? from + 1 : from;
  for (const { times } of tongues) {
    if (!times.partLeads.split(' ').includes(textAt(tokens, lead))) continue;
    const at = textAt(tokens, lead + 1) === times.partArticle ? lead + 2 : lead + 1;
    const part = ownValue(times.partsOfDay, textAt(tokens, at));
    if (part !== undefined) return { part, to: at + 1 };
  }
  return undefined;
}

/** A time of the whole day, `16:00 de la tarde`, stays what it is where the part agrees. */
export function inPartOfDay(time: TimeOfDay, { hours, afterNoon }: PartOfDay): TimeOfDay | NoSuchTime {
  if (time.hour > 12) return afterNoon && hours.includes(time.hour - 12) ? time : 'no-such-time';
  // Midnight is `las 12 de la noche`, of a day that the speaker would have to name.
  if (!hours.includes(time.hour)) return 'no-such-time';
  return { ...time, hour: (time.hour % 12) + (afterNoon ? 12 : 0) };
}

function textAt(tokens: readonly Token[], index: number): string {
  const token = tokens[index];
  return token?.kind === 'word' ? withoutAccents(token.text.toLowerCase()) : '';
}
