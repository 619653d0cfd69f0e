// The air must be read again before the last reading is too old to serve the clocks that live on it.

import { type PersonName, placeStream } from '../ids.ts';
import { type Minutes, minutesAfter } from '../units.ts';
import { type Reminder, remind } from '../wanted-reminder.ts';
import type { Place } from './place.ts';

/** `concerned`: whose batches and parts run by this place's air. Nobody concerned, nothing rings. */
export function placeReminders(place: Place, limit: Minutes, concerned: readonly PersonName[]): readonly Reminder[] {
  const last = place.air.findLast((reading) => reading.celsius !== undefined);
  if (last === undefined || concerned.length === 0) return [];
  return [remind(placeStream(place.name), 'air-due', minutesAfter(last.at, limit), concerned)];
}
