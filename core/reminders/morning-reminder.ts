// The morning's list, at the crew's hour, on days when something of the stock needs somebody or a part is in cure in the
// room. What comes later (an expiry) has its own morning; idle mornings ring nothing.

import { stockNeeds } from '../can/can-stock.ts';
import { peopleLeading } from '../crew/crew.ts';
import { nextHour } from '../crew/local-day.ts';
import { crewStream } from '../ids.ts';
import { standing } from '../settled.ts';
import { liveParts, type Shop } from '../shop.ts';
import { type EpochMs, epochMs } from '../units.ts';
import { type Reminder, remind } from '../wanted-reminder.ts';

export function morningReminders(shop: Shop): readonly Reminder[] {
  const { crew } = shop;
  const { lastActedAt } = crew;
  if (lastActedAt === undefined) return [];
  const to = peopleLeading(crew);
  const mornings = new Map(
    [...stockNeeds(shop, lastActedAt), ...curesOvernight(shop, lastActedAt)].map(({ from }) => {
      const { at, date } = nextHour(epochMs(Math.max(from, lastActedAt)), crew.zone, standing(crew, 'morning').hour);
      return [date, at] as const;
    }),
  );
  return [...mornings].map(([date, dueAt]) =>
    remind(crewStream, 'morning', dueAt, to, { key: `crew/morning/${date}` }),
  );
}

/** A cure in the room lives on what somebody reads in the morning. */
function curesOvernight(shop: Shop, from: EpochMs): readonly { readonly from: EpochMs }[] {
  const curing = liveParts(shop).some(({ cure }) => cure?.way === 'room' && cure.run.to === undefined);
  return curing ? [{ from }] : [];
}
