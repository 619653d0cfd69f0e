// A shop with a bell, over a real store in memory: a clock that is moved by hand, a messenger that keeps what it is given
// and behaves as it is told, and a store that can be broken and healed.

import type { Command } from '../../../core/commands.ts';
import type { CrewFile } from '../../../core/crew/crew.ts';
import { createExecutor } from '../../../core/execute.ts';
import type { Envelope } from '../../../core/history.ts';
import type { Messenger, RingingReminder, Store, Told } from '../../../core/ports.ts';
import { readSheet, type SheetShelf } from '../../../core/products/sheet.ts';
import { createRinger, type Ringer } from '../../../core/reminders/run.ts';
import { createShopKeeper } from '../../../core/shop-keeper.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { celsius, type EpochMs, epochMs, grams, minutes, percent } from '../../../core/units.ts';
import { inventedSheet } from './invented-sheet.ts';

export const inventedCrew: CrewFile = {
  name: 'Invented crew',
  zone: 'UTC',
  language: 'en',
  units: 'metric',
  people: [
    { name: 'kari', role: 'crew', language: 'en', units: 'metric' },
    { name: 'ada', role: 'lead', language: 'en', units: 'metric' },
    { name: 'bo', role: 'supervisor', language: 'en', units: 'metric' },
  ],
  digestHour: 17,
  escalationMinutes: minutes(10),
};

const shelf: SheetShelf = new Map([['demo-clear', readSheet('demo-clear.json', JSON.stringify(inventedSheet))]]);

/** What becomes of the next message; may throw, after it may have gone out. */
export interface Weather {
  post: (ringing: RingingReminder) => Told;
  wasPosted: () => 'yes' | 'no' | 'unknown';
  tellLeads: () => Told;
}

export function lineGoesDead(): never {
  throw new Error('the line went dead');
}

export interface Tower {
  readonly weather: Weather;
  readonly posts: RingingReminder[];
  /** Times at which the leads were told of a record that cannot be written. */
  readonly notices: EpochMs[];
  readonly lookUps: string[];
  readonly now: () => EpochMs;
  /** Local to UTC, on 2 March 2026 unless a date is given. May go back. */
  readonly setClock: (time: string) => void;
  /** Moves from due time to due time, as the ticker does. */
  readonly wait: (until: string) => Promise<void>;
  readonly say: (command: Command, by?: string, at?: string) => Promise<void>;
  /** Claims and commits throw from now on; reading goes on. */
  readonly breakStore: (what?: 'everything' | 'commits') => void;
  readonly healStore: () => void;
  readonly ringDue: () => Promise<void>;
  readonly nextDueAt: () => Promise<EpochMs | undefined>;
  /** As after a restart: all memory gone, the store as it is. */
  readonly restart: () => Promise<void>;
  readonly deleteRows: () => Promise<void>;
  readonly record: () => Promise<readonly Envelope[]>;
}

export function at(time: string): EpochMs {
  return epochMs(Date.parse(time.includes('T') ? `${time}Z` : `2026-03-02T${time}${time.length === 5 ? ':00' : ''}Z`));
}

/** 2.4 kg weighed at 08:00 in a room of 24 degC: stirring is done at 09:42 (102 min: 120 at 15 degC, 90 at 30 degC). */
export async function stirredSinceEight(crewFile: CrewFile = inventedCrew): Promise<Tower> {
  const tower = await bellTower(crewFile);
  await tower.say({ verb: 'air', air: { celsius: celsius(24), relativeHumidityPercent: percent(48) } });
  await tower.say({ verb: 'mix', amount: { kind: 'mass', grams: grams(2400) } });
  await tower.say({ verb: 'weigh', partAGrams: grams(1201), partBGrams: grams(1198) });
  return tower;
}

export async function bellTower(crewFile: CrewFile = inventedCrew, start = '08:00'): Promise<Tower> {
  const real = openSqliteStore(':memory:');
  let broken: 'everything' | 'commits' | undefined;
  let time = at(start);
  const clock = { now: () => time };
  const log = { info: () => undefined, error: () => undefined };
  const posts: RingingReminder[] = [];
  const notices: EpochMs[] = [];
  const lookUps: string[] = [];
  const weather: Weather = { post: () => 'posted', wasPosted: () => 'unknown', tellLeads: () => 'posted' };

  function unlessBroken<T>(work: () => Promise<T>, isClaim = false): Promise<T> {
    const fails = broken === 'everything' || (broken === 'commits' && !isClaim);
    return fails ? Promise.reject(new Error('the disk is full')) : work();
  }
  const store: Store = {
    ...real,
    commit: (change) => unlessBroken(() => real.commit(change)),
    claim: (now, until, crew) => unlessBroken(() => real.claim(now, until, crew), true),
    reject: (claimed, retryAt) => unlessBroken(() => real.reject(claimed, retryAt)),
  };

  const messenger: Messenger = {
    post: async (ringing) => {
      posts.push(ringing);
      return weather.post(ringing);
    },
    wasPosted: async (_, numberedKey) => {
      lookUps.push(numberedKey);
      return weather.wasPosted();
    },
    tellLeads: async ({ now }) => {
      notices.push(now);
      return weather.tellLeads();
    },
  };

  function started() {
    const keeper = createShopKeeper(store, 'crew', crewFile, shelf);
    const executor = createExecutor({ store, keeper, crew: 'crew' });
    const ringer: Ringer = createRinger({ store, executor, keeper, messenger, clock, log, crew: 'crew' });
    return { executor, ringer };
  }
  let life = started();
  let said = 0;

  return {
    ...{ weather, posts, notices, lookUps, now: clock.now },
    setClock: (to) => {
      time = at(to);
    },
    wait: async (until) => {
      for (;;) {
        await life.ringer.ringDue();
        const due = await life.ringer.nextDueAt();
        if (due === undefined || due > at(until)) break;
        if (due <= time) throw new Error(`the bell would spin: due ${new Date(due).toISOString()}`);
        time = due;
      }
      time = at(until);
    },
    say: async (command, by = 'kari', when) => {
      said += 1;
      const request = { id: `said-${said}`, by, now: time, at: when === undefined ? time : at(when), command };
      const happened = { ...request, stance: { is: 'happened' as const } };
      await life.executor.execute(
        happened,
        () => happened,
        (_, outcome) => {
          if (outcome.kind !== 'recorded') throw new Error(`${command.verb} was not recorded: ${outcome.kind}`);
          return 'recorded';
        },
      );
    },
    breakStore: (what = 'everything') => {
      broken = what;
    },
    healStore: () => {
      broken = undefined;
    },
    ringDue: () => life.ringer.ringDue(),
    nextDueAt: () => life.ringer.nextDueAt(),
    restart: async () => {
      life = started();
      await life.executor.reconcile(time);
    },
    deleteRows: async () => {
      const plan = new Map([['batch/1', []] as const, ['place/room', []] as const, ['crew/crew', []] as const]);
      const after = await real.head('crew');
      await real.commit({
        ...{ crew: 'crew', after, envelopes: [], plan, live: new Map(), answers: [], now: time },
      });
    },
    record: () => real.eventsAfter('crew', 0),
  };
}
