// Given, when, then over the real thing: typed lines, read by the bot's reader, decided and recorded in a real SQLite
// record, with every bell rung at its own time on the way. Lines carry their time of day: `Tue 07:30 @omar: air 16C 50%`;
// without a day it is the day of the line before, without a speaker it is kari, who is crew.

import { DateTime } from 'luxon';
import { readLine } from '../../bot/language/read-line.ts';
import { shipped } from '../../bot/language/tongues/tongues.ts';
import { lineContext } from '../../bot/talk/line-context.ts';
import { ringUntil } from '../../bot/terminal/script.ts';
import { virtualClock } from '../../bot/time/clocks.ts';
import type { CrewFile } from '../../core/crew/crew.ts';
import { createExecutor, type Outcome } from '../../core/execute.ts';
import type { Envelope, EventType } from '../../core/history.ts';
import type { StreamId } from '../../core/ids.ts';
import type { Objection, ObjectionCode, Unclear } from '../../core/objections.ts';
import type { Log, Messenger, Store } from '../../core/ports.ts';
import type { SheetShelf } from '../../core/products/sheet.ts';
import { deviationsIn } from '../../core/records/deviations.ts';
import { planReminders } from '../../core/reminders/plan.ts';
import { createRinger } from '../../core/reminders/run.ts';
import type { Shop } from '../../core/shop.ts';
import { createShopKeeper } from '../../core/shop-keeper.ts';
import { readSheetFolders } from '../../core/store/sheet-files.ts';
import { openSqliteStore } from '../../core/store/sqlite-store.ts';
import { type EpochMs, epochMs, minutes } from '../../core/units.ts';

/** Invented: kari sprays, omar leads, rosa supervises. */
export const demoCrew: CrewFile = {
  name: 'Demo crew',
  zone: 'UTC',
  language: 'en',
  units: 'metric',
  people: [
    { name: 'kari', role: 'crew', language: 'en', units: 'metric' },
    { name: 'omar', role: 'lead', language: 'en', units: 'metric' },
    { name: 'rosa', role: 'supervisor', language: 'en', units: 'metric' },
  ],
  digestHour: 17,
  escalationMinutes: minutes(10),
};

export const demoShelf: SheetShelf = readSheetFolders(['core/products/sheets']);

/** What came of a line, short enough to stand in an assertion. */
export type Heard =
  | { readonly recorded: readonly EventType[] }
  | { readonly objected: readonly ObjectionCode[] }
  | { readonly unclear: Unclear['code'] }
  | { readonly misread: string };

export interface Rung {
  readonly at: string;
  readonly key: string;
  readonly to: readonly string[];
}

export interface Shift {
  /** Moves to the line's time, ringing on the way, and says it. */
  readonly when: (line: string) => Promise<Heard>;
  /** Lets the time pass: `until('Tue 07:30')`. */
  readonly until: (time: string) => Promise<void>;
  /** What stands to ring: when, by numbered key. */
  readonly plan: () => Promise<Readonly<Record<string, string>>>;
  readonly rung: () => readonly Rung[];
  /** `CoatApplied 12:40 past-pot-life`, in the order in which they were recorded. */
  readonly deviations: () => Promise<readonly string[]>;
  /** Why not, with its figures: of the last line. */
  readonly objections: () => readonly Objection[];
  /** What the last line was asked back. */
  readonly asked: () => Unclear | undefined;
  /** Everything ever recorded, loaded. */
  readonly shop: () => Promise<Shop>;
  readonly events: () => Promise<readonly Envelope[]>;
  /** An instant as the lines say it. */
  readonly time: (spoken: string) => EpochMs;
  readonly spoken: (at: EpochMs) => string;
}

export interface Setting {
  readonly crew?: CrewFile;
  readonly shelf?: SheetShelf;
  /** The Monday that the days of the lines belong to. */
  readonly week?: string;
  /** A record that goes on; an empty one in memory where none is given. */
  readonly store?: Store;
}

const weekdays = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const spokenLine = /^(?:(\w{3}) )?(\d\d:\d\d(?::\d\d)?)(?: (?:@(\w+): )?(.*))?$/;
/** No two lines are one delivery, not even of two shifts over one record. */
let requests = 0;
const silence: Log = { info: () => undefined, error: () => undefined };

/** A shift so far: each line must have been recorded. */
export async function given(lines: readonly string[], setting: Setting = {}): Promise<Shift> {
  const shift = startShift(setting);
  for (const line of lines) {
    const heard = await shift.when(line);
    if (!('recorded' in heard)) throw new Error(`given "${line}", but it was not recorded: ${JSON.stringify(heard)}`);
  }
  return shift;
}

function startShift({
  crew: file = demoCrew,
  shelf = demoShelf,
  week = '2026-03-02',
  store = openSqliteStore(':memory:'),
}: Setting): Shift {
  const crew = 'crew';
  const monday = DateTime.fromISO(week, { zone: file.zone });
  const clock = virtualClock(epochMs(monday.toMillis()));
  const keeper = createShopKeeper(store, crew, file, shelf);
  const executor = createExecutor({ store, keeper, crew });
  const rung: Rung[] = [];
  const messenger: Messenger = {
    post: async ({ reminder, now }) => {
      rung.push({ at: spoken(now), key: reminder.numberedKey, to: reminder.to });
      return 'posted';
    },
    wasPosted: async () => 'no',
    tellLeads: async () => 'posted',
  };
  const ringer = createRinger({ store, executor, keeper, messenger, clock, log: silence, crew });
  let day = 0;
  let last: Outcome | undefined;

  function spoken(at: EpochMs): string {
    const local = DateTime.fromMillis(at, { zone: file.zone });
    const days = Math.floor(local.startOf('day').diff(monday, 'days').days);
    const date = days === 0 ? '' : `${weekdays[days] ?? local.toISODate()} `;
    const whole = Math.round(at / 1000) * 1000;
    return date + DateTime.fromMillis(whole, { zone: file.zone }).toFormat(whole % 60_000 === 0 ? 'HH:mm' : 'HH:mm:ss');
  }

  function parse(line: string): { readonly at: EpochMs; readonly by: string; readonly text: string } {
    const [, weekday, clockTime, by = 'kari', text = ''] = spokenLine.exec(line) ?? [];
    if (clockTime === undefined) throw new Error(`a line says its time first: "${line}"`);
    if (weekday !== undefined) day = weekdays.indexOf(weekday);
    const [hour = 0, minute = 0, second = 0] = clockTime.split(':').map(Number);
    return { at: epochMs(monday.plus({ days: day }).set({ hour, minute, second }).toMillis()), by, text };
  }

  async function moveTo(at: EpochMs): Promise<void> {
    if (at < clock.now()) throw new Error(`${spoken(at)} is before ${spoken(clock.now())}: say it as "... at 09:40"`);
    await ringUntil(at, ringer, clock);
  }

  async function when(line: string): Promise<Heard> {
    const { at: now, by, text } = parse(line);
    await moveTo(now);
    const shop = await executor.look();
    const reading = readLine(text, lineContext(shipped, shop, by, now));
    if (reading.kind === 'misread') return { misread: reading.misread.code };
    if (reading.kind !== 'command') throw new Error(`"${text}" is no act`);
    requests += 1;
    const { command, stance } = reading;
    const request = { id: `line-${requests}`, by, now, command, at: reading.at ?? now, stance };
    let heard: Heard = { recorded: [] };
    await executor.execute(
      request,
      () => request,
      (_, outcome) => {
        last = outcome;
        heard = heardOf(outcome);
        return '';
      },
    );
    await ringer.ringDue();
    return heard;
  }

  const events = () => store.eventsAfter(crew, 0);
  const everything = async () => {
    const streams = new Set<StreamId>();
    for (const { stream, alsoUnder } of await events()) for (const each of [stream, ...alsoUnder]) streams.add(each);
    return executor.look([...streams]);
  };

  return {
    when,
    until: (time) => moveTo(parse(time).at),
    plan: async () => {
      const planned = [...planReminders(await executor.look()).values()].flat();
      return Object.fromEntries(planned.map(({ numberedKey, dueAt }) => [numberedKey, spoken(dueAt)]));
    },
    rung: () => rung,
    deviations: async () =>
      deviationsIn(await everything()).map(
        ({ entry, objection, permitted }) =>
          `${entry.fact.type} ${spoken(entry.happenedAt)} ${objection.code}` +
          (permitted === undefined ? '' : ` permitted: ${permitted}`),
      ),
    objections: () => (last?.kind === 'objected' ? last.objections : []),
    asked: () => (last?.kind === 'unclear' ? last.unclear : undefined),
    shop: everything,
    events,
    time: (text) => parse(text).at,
    spoken,
  };
}

function heardOf(outcome: Outcome): Heard {
  switch (outcome.kind) {
    case 'recorded':
      return { recorded: outcome.envelopes.map(({ body }) => body.type) };
    case 'objected':
      return { objected: outcome.objections.map(({ code }) => code) };
    case 'unclear':
      return { unclear: outcome.unclear.code };
    default: {
      const never: never = outcome;
      return never;
    }
  }
}
