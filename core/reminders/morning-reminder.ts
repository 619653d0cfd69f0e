// The morning's list, at the crew's hour, on days when something of the stock needs somebody or a part is in cure in the
// room. What comes later (an expiry) has its own morning; idle mornings ring nothing.

import { type Need, stockNeeds } from '../can/can-stock.ts';
import { peopleLeading } from '../crew/crew.ts';
import { nextHour } from '../crew/local-day.ts';
import { crewStream } from '../ids.ts';
import { standing } from '../settled.ts';
import { liveParts, type Shop } from '../shop.ts';
import { type EpochMs, epochMs } from '../units.ts';
import { type Reminder, remind } from '../wanted-reminder.ts';

export function morningReminders(shop: Shop): readonly Reminder[] {
  const to = peopleLeading(shop.crew);
  const mornings = new Map(morningNeeds(shop).map(({ date, at }) => [date, at]));
  return [...mornings].map(([date, dueAt]) =>
    remind(crewStream, 'morning', dueAt, to, { key: `crew/morning/${date}` }),
  );
}

/** What needs somebody on a morning, and on which first. */
export interface MorningNeed {
  readonly date: string;
  readonly at: EpochMs;
  readonly need: Need | { readonly is: 'cure' };
}

export function morningNeeds(shop: Shop): readonly MorningNeed[] {
  const { crew } = shop;
  const { lastActedAt } = crew;
  if (lastActedAt === undefined) return [];
  const { hour } = standing(crew, 'morning');
  return [...stockNeeds(shop, lastActedAt), ...curesOvernight(shop, lastActedAt)].map((need) => ({
    ...nextHour(epochMs(Math.max(need.from, lastActedAt)), crew.zone, hour),
    need,
  }));
}

/** A cure in the room lives on what somebody reads in the morning. */
function curesOvernight(shop: Shop, from: EpochMs): readonly { readonly is: 'cure'; readonly from: EpochMs }[] {
  const curing = liveParts(shop).some(({ cure }) => cure?.way === 'room' && cure.run.to === undefined);
  return curing ? [{ is: 'cure', from }] : [];
}
