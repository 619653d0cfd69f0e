// The day, asked for or by itself: loads the streams of the day, then words the record.

import type { DayAsked } from '../../core/commands.ts';
import { localDay } from '../../core/crew/local-day.ts';
import type { Executor } from '../../core/execute.ts';
import type { Store } from '../../core/ports.ts';
import { type DayRecord, dayRecord, daySpan } from '../../core/records/day.ts';
import { wrongCard } from '../cards/asked/wrong-card.ts';
import type { Card } from '../cards/card.ts';
import type { Telling } from '../cards/card-context.ts';
import { dayCard } from '../cards/day-card.ts';

export interface DayDeps {
  readonly executor: Executor;
  readonly store: Store;
  readonly crew: string;
}

export const tellingDay = (deps: DayDeps, telling: Telling, asked: DayAsked): Promise<Card> =>
  onDay(deps, telling, asked, dayCard);

/** Of today. */
export const tellingWrong = (deps: DayDeps, telling: Telling): Promise<Card> =>
  onDay(deps, telling, { kind: 'today' }, wrongCard);

async function onDay(
  deps: DayDeps,
  telling: Telling,
  asked: DayAsked,
  card: (telling: Telling, day: DayRecord) => Card,
): Promise<Card> {
  const { zone } = telling.shop.crew;
  const date = asked.kind === 'date' ? asked.date : localDay(zone, telling.now, asked.kind === 'yesterday' ? 1 : 0);
  const span = daySpan(date, zone);
  if (span === undefined) throw new RangeError(`the reader let a date through that is none: ${date}`);
  const streams = await deps.store.streamsBetween(deps.crew, span.from, span.to);
  const shop = await deps.executor.look(streams);
  return card({ ...telling, shop }, dayRecord(shop, span, telling.now));
}
