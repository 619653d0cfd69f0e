// The reminder rows: made equal to the plan in the transaction of the events, claimed one at a time.

import type { Database } from 'better-sqlite3';
import { z } from 'zod';
import type { CrewId, StreamId } from '../ids.ts';
import type { ClaimedReminder } from '../ports.ts';
import { movedMs } from '../ring-log.ts';
import { type EpochMs, epochMs } from '../units.ts';
import { type PlannedReminder, reminderKinds } from '../wanted-reminder.ts';

const Row = z.object({
  crew: z.string(),
  numbered_key: z.string(),
  key: z.string(),
  ring: z.number(),
  kind: z.literal(reminderKinds),
  stream: z.string(),
  due_at: z.number(),
  people: z.string(),
  planned_at: z.number(),
  unsure: z.number(),
  rejections: z.number(),
});
const People = z.array(z.string());

// A post without an answer was for the time it stood at: moved later, the row begins anew.
const putOne = `
  insert into reminder (crew, numbered_key, key, ring, kind, stream, due_at, people, planned_at)
  values (:crew, :numberedKey, :key, :ring, :kind, :stream, :dueAt, :people, :plannedAt)
  on conflict (crew, numbered_key) do update set
    due_at = excluded.due_at,
    people = excluded.people,
    planned_at = iif(abs(excluded.due_at - due_at) > ${movedMs}, excluded.planned_at, planned_at),
    rejections = iif(abs(excluded.due_at - due_at) > ${movedMs}, 0, rejections),
    lease_until = iif(excluded.due_at > due_at + ${movedMs}, 0, lease_until),
    unsure = iif(excluded.due_at > due_at + ${movedMs}, 0, unsure)`;

// One statement picks, marks and returns: two runners never hold the same row. A lease that reaches past the longest
// that could be given now is from before the clock was set back.
const claimFirst = `
  update reminder set lease_until = :leaseUntil, unsure = unsure + 1
  where (crew, numbered_key) = (
    select crew, numbered_key from reminder
    where due_at <= :now and (lease_until <= :now or lease_until > :leaseUntil) and (:crew is null or crew = :crew)
    order by due_at, numbered_key limit 1)
  returning crew, numbered_key, key, ring, kind, stream, due_at, people, planned_at, unsure, rejections`;

export function reminderRows(database: Database) {
  const ofStream = database.prepare<[string, string], { numbered_key: string; due_at: number; people: string }>(
    'select numbered_key, due_at, people from reminder indexed by reminder_stream where crew = ? and stream = ?',
  );
  const remove = database.prepare<[string, string]>('delete from reminder where crew = ? and numbered_key = ?');
  const put = database.prepare(putOne);
  const claimOne = database.prepare<[{ now: number; leaseUntil: number; crew: string | null }]>(claimFirst);
  const rejectOne = database.prepare<[number, string, string]>(`
    update reminder set lease_until = ?, unsure = max(0, unsure - 1), rejections = rejections + 1
    where crew = ? and numbered_key = ?`);
  const next = database
    .prepare<[{ crew: string | null }], number | null>(
      `select min(max(due_at, lease_until)) from
        (select * from reminder where :crew is null or crew = :crew order by due_at limit 100)`,
    )
    .pluck();

  return {
    /** Only what differs is written. */
    reconcile(crew: CrewId, stream: StreamId, planned: readonly PlannedReminder[], now: EpochMs): void {
      const rows = new Map(ofStream.all(crew, stream).map((row) => [row.numbered_key, row]));
      for (const reminder of planned) {
        const people = JSON.stringify(reminder.to);
        const row = rows.get(reminder.numberedKey);
        rows.delete(reminder.numberedKey);
        if (row !== undefined && row.due_at === reminder.dueAt && row.people === people) continue;
        const { numberedKey, key, ring, kind, dueAt } = reminder;
        put.run({ crew, numberedKey, key, ring, kind, stream, dueAt, people, plannedAt: now });
      }
      for (const key of rows.keys()) remove.run(crew, key);
    },
    rang: (crew: CrewId, key: string): void => void remove.run(crew, key),
    claim(now: EpochMs, leaseUntil: EpochMs, crew: CrewId | undefined): ClaimedReminder | undefined {
      const found = claimOne.get({ now, leaseUntil, crew: crew ?? null });
      return found === undefined ? undefined : claimed(Row.parse(found));
    },
    reject: ({ crew, numberedKey }: ClaimedReminder, retryAt: EpochMs): void =>
      void rejectOne.run(retryAt, crew, numberedKey),
    nextDueAt(crew: CrewId | undefined): EpochMs | undefined {
      const at = next.get({ crew: crew ?? null });
      return at === null || at === undefined ? undefined : epochMs(at);
    },
  };
}

const claimed = ({ crew, key, ring, kind, rejections, ...row }: z.infer<typeof Row>): ClaimedReminder => ({
  ...{ crew, key, ring, kind, rejections },
  numberedKey: row.numbered_key,
  stream: row.stream as StreamId,
  dueAt: epochMs(row.due_at),
  to: People.parse(JSON.parse(row.people)),
  plannedAt: epochMs(row.planned_at),
  unsure: row.unsure > 1,
});
