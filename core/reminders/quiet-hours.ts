// Quiet hours put off what can wait until they are over. What is critical rings through them.

import { DateTime } from 'luxon';
import type { Crew } from '../crew/crew.ts';
import { nextHour } from '../crew/next-hour.ts';
import { standing } from '../settled.ts';
import type { Wish } from './wanted-reminder.ts';

export function withQuietHours(crew: Pick<Crew, 'zone' | 'settled'>, wish: Wish): Wish {
  const { fromHour, toHour } = standing(crew, 'quiet');
  if (wish.critical || fromHour === toHour) return wish;
  const local = DateTime.fromMillis(wish.dueAt, { zone: crew.zone });
  const inside =
    fromHour < toHour ? local.hour >= fromHour && local.hour < toHour : local.hour >= fromHour || local.hour < toHour;
  return inside ? { ...wish, dueAt: nextHour(wish.dueAt, crew.zone, toHour).at } : wish;
}
