// The instant of a typed day and time of day; a time that the wall clock skips is asked about, never guessed.

import type { EpochMs } from '../../../core/units.ts';
import type { Fault } from '../reading.ts';
import type { Span } from '../typed/token.ts';
import { type CalendarDay, instantOf, type TimeOfDay, typedOn } from './wall-clock.ts';

/** `typed`: how the times either side are offered in place of the token; as times of day unless said otherwise. */
export function instantTyped(
  day: CalendarDay,
  time: TimeOfDay,
  zone: string,
  token: Span | undefined,
  typed = (at: EpochMs, inZone: string): string => typedOn(day, at, inZone),
): EpochMs | Fault {
  const instant = instantOf(day, time, zone);
  if (typeof instant === 'number') return instant;
  return {
    failed: 'impossible',
    ...(token !== undefined && { token }),
    needs: ['time'],
    couldBe: instant.map((at) => typed(at, zone)),
  };
}
