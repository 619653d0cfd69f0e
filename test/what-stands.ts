// What an old record comes to: the state of each noun, the bells that stand, what is marked, and each day as it is told.
// Written down beside the record (`stands.json`), so that no change of it goes unseen.

import { wire } from '../bot/run/wiring.ts';
import { virtualClock } from '../bot/time/clocks.ts';
import type { CrewFile } from '../core/crew/crew.ts';
import { localDay } from '../core/crew/local-day.ts';
import type { StreamId } from '../core/ids.ts';
import type { Store } from '../core/ports.ts';
import { deviationsIn } from '../core/records/deviations.ts';
import { planReminders } from '../core/reminders/plan.ts';
import { nounsIn } from '../core/shop.ts';
import type { EpochMs } from '../core/units.ts';
import { demoShelf } from './core/given.ts';

const silence = { info: () => undefined, error: () => undefined };

export async function whatStands(store: Store, crewFile: CrewFile, now: EpochMs): Promise<string> {
  const { executor, host } = wire({
    store,
    clock: virtualClock(now),
    log: silence,
    crewFile,
    shelf: demoShelf,
    frontEnd: { tell: async () => 'posted', wasTold: async () => 'no' },
  });
  const events = await store.eventsAfter('crew', 0);
  const streams = new Set<StreamId>(events.flatMap(({ stream, alsoUnder }) => [stream, ...alsoUnder]));
  const shop = await executor.look([...streams]);
  const days: Record<string, string | undefined> = {};
  for (const { happenedAt } of events) {
    const date = localDay(shop.crew.zone, happenedAt);
    days[date] ??= (
      await host.handle({ text: `day ${date}`, as: crewFile.people[0]?.name ?? '', in: '', id: undefined })
    )?.text;
  }
  return written({
    states: Object.fromEntries(nounsIn(shop).map(({ stream, noun }) => [stream, noun])),
    bells: Object.fromEntries(
      [...planReminders(shop).values()].flat().map(({ numberedKey, dueAt, to }) => [numberedKey, { dueAt, to }]),
    ),
    deviations: deviationsIn(shop).map(({ entry, objection }) => `${entry.seq} ${entry.fact.type}: ${objection.code}`),
    days: Object.fromEntries(Object.entries(days).map(([date, text = '']) => [date, text.split('\n')])),
  });
}

/** Read by people: instants as a calendar has them, a frozen sheet by its name, entries by their numbers. */
function written(whole: unknown): string {
  const readable = (key: string, value: unknown): unknown => {
    if (value instanceof Map) return Object.fromEntries(value);
    if (value instanceof Set) return [...value];
    if (typeof value === 'number' && value > 1e12) return new Date(value).toISOString();
    if (key === 'sheet' && isSheet(value)) return `${value.id} rev. ${value.revision}`;
    if (key === 'entries' && Array.isArray(value)) return value.map(({ seq }: { seq: number }) => seq).join(' ');
    return value;
  };
  return `${JSON.stringify(whole, readable, 1)}\n`;
}

function isSheet(value: unknown): value is { readonly id: string; readonly revision: string } {
  return typeof value === 'object' && value !== null && 'id' in value && 'revision' in value;
}
