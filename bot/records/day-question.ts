// The day, asked for or by itself: loads the streams of the day, then words the record.

import type { DayAsked } from '../../core/commands.ts';
import type { Executor } from '../../core/execute.ts';
import type { Store } from '../../core/ports.ts';
import { dayRecord, daySpan, localDate } from '../../core/records/day.ts';
import type { Card } from '../cards/card.ts';
import type { Telling } from '../cards/card-context.ts';
import { dayCard } from '../cards/day-card.ts';

export interface DayNeeds {
  readonly executor: Executor;
  readonly store: Store;
  readonly crew: string;
}

export async function tellingDay(needs: DayNeeds, t: Telling, asked: DayAsked): Promise<Card> {
  const { zone } = t.shop.crew;
  const date = asked.kind === 'date' ? asked.date : localDate(t.now, zone, asked.kind === 'yesterday' ? 1 : 0);
  const span = daySpan(date, zone);
  if (span === undefined) throw new RangeError(`the reader let a date through that is none: ${date}`);
  const streams = await needs.store.streamsBetween(needs.crew, span.from, span.to);
  const shop = await needs.executor.look(streams);
  return dayCard({ ...t, shop }, dayRecord(shop, span, t.now));
}
