// Quiet hours put off what can wait until they are over. What is critical rings through them.

import { DateTime } from 'luxon';
import type { Crew } from '../crew/crew.ts';
import { nextHour } from '../crew/local-day.ts';
import { standing } from '../settled.ts';
import type { Reminder } from '../wanted-reminder.ts';

export function withQuietHours(crew: Pick<Crew, 'zone' | 'settled'>, reminder: Reminder): Reminder {
  if (reminder.critical) return reminder;
  const { fromHour, toHour } = standing(crew, 'quiet');
  if (fromHour === toHour) return reminder;
  const local = DateTime.fromMillis(reminder.dueAt, { zone: crew.zone });
  const inside =
    fromHour < toHour ? local.hour >= fromHour && local.hour < toHour : local.hour >= fromHour || local.hour < toHour;
  return inside ? { ...reminder, dueAt: nextHour(reminder.dueAt, crew.zone, toHour).at } : reminder;
}
