// `a las 4 de la tarde`: Spanish says the half of the day with its part, and without it four would be four in the morning.

import { isOwnKey } from '../../../core/own-key.ts';
import { withoutAccents } from '../tongues/spanish/lexicon.ts';
import type { Token } from '../typed/tokens.ts';
import type { NoSuchTime } from './time-typed.ts';
import type { TimeOfDay } from './wall-clock.ts';

/** The hours of the twelve-hour clock that each part has, from memory of how people speak, no source. */
const parts = {
  madrugada: { hours: [12, 1, 2, 3, 4, 5, 6], afterNoon: false },
  manana: { hours: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11], afterNoon: false },
  mediodia: { hours: [12, 1, 2, 3], afterNoon: true },
  tarde: { hours: [12, 1, 2, 3, 4, 5, 6, 7, 8, 9], afterNoon: true },
  noche: { hours: [7, 8, 9, 10, 11], afterNoon: true },
};
export type PartOfDay = keyof typeof parts;

export interface PartOfDayAt {
  readonly name: PartOfDay;
  /** Index of the token after it. */
  readonly to: number;
}

/** `de la tarde`, `del mediodia`, `h de la tarde` from token `from`. */
export function partOfDayAt(tokens: readonly Token[], from: number): PartOfDayAt | undefined {
  let index = /^(?:h|hrs?)$/.test(textAt(tokens, from)) ? from + 1 : from;
  if (!['de', 'del', 'por'].includes(textAt(tokens, index))) return undefined;
  index += textAt(tokens, index + 1) === 'la' ? 2 : 1;
  const name = textAt(tokens, index);
  return isPart(name) ? { name, to: index + 1 } : undefined;
}

/** A time of the whole day, `16:00 de la tarde`, stays what it is where the part agrees. */
export function inPartOfDay(time: TimeOfDay, name: PartOfDay): TimeOfDay | NoSuchTime {
  const { hours, afterNoon } = parts[name];
  if (time.hour > 12) return afterNoon && hours.includes(time.hour - 12) ? time : 'no-such-time';
  // Midnight is `las 12 de la noche`, of a day that the speaker would have to name.
  if (!hours.includes(time.hour)) return 'no-such-time';
  return { ...time, hour: (time.hour % 12) + (afterNoon ? 12 : 0) };
}

const isPart = (name: string): name is PartOfDay => isOwnKey(parts, name);

function textAt(tokens: readonly Token[], index: number): string {
  const token = tokens[index];
  return token?.kind === 'word' ? withoutAccents(token.text.toLowerCase()) : '';
}
