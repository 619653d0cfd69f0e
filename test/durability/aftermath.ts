// What must hold in the file once a life that was killed again and again has come to its end, held against what the
// witness saw. Each finding is a sentence; none is well.

import { join } from 'node:path';
import Database from 'better-sqlite3';
import type { Envelope } from '../../core/history.ts';
import { planReminders } from '../../core/reminders/plan.ts';
import { firstHash, hashOf } from '../../core/seal-sums.ts';
import { createShopKeeper } from '../../core/shop-keeper.ts';
import { readSheetFolders } from '../../core/store/sheet-files.ts';
import { openSqliteStore } from '../../core/store/sqlite-store.ts';
import type { PlannedReminder } from '../../core/wanted-reminder.ts';
import { inventedCrew } from './two-batches.ts';
import type { Post, Witnessed } from './witness.ts';

const onTimeMs = 60_000;
const movedMs = 1_000;
const leaseMs = 30_000;

export interface Aftermath {
  readonly findings: readonly string[];
  readonly events: number;
  readonly lateRings: number;
  readonly markedRepeats: number;
  readonly answeredTwice: number;
}

export async function aftermath(folder: string, seen: Witnessed, askable: boolean): Promise<Aftermath> {
  const file = join(folder, 'batchbell.sqlite');
  const store = openSqliteStore(file);
  const envelopes = await store.eventsAfter('crew', 0);
  store.close();
  const findings = [
    ...(seen.ended ? [] : ['the script did not come to its end']),
    ...chainFaults(envelopes),
    ...answerFaults(envelopes, seen),
    ...ringFaults(envelopes),
    ...postFaults(seen.posts, askable),
    ...bellsMissing(envelopes, seen),
    ...rowFaults(file, envelopes),
  ];
  const ids = seen.answers.map(({ id }) => id);
  return {
    findings,
    events: envelopes.length,
    lateRings: seen.posts.filter(({ saysLate }) => saysLate).length,
    markedRepeats: seen.posts.filter(({ saysRepeat }) => saysRepeat).length,
    answeredTwice: ids.length - new Set(ids).size,
  };
}

function chainFaults(envelopes: readonly Envelope[]): readonly string[] {
  return envelopes.flatMap((envelope, i) => {
    const { hash, ...unsealed } = envelope;
    const previous = envelopes[i - 1]?.hash ?? firstHash;
    const whole = envelope.seq === i + 1 && envelope.previousHash === previous && hashOf(unsealed) === hash;
    return whole ? [] : [`the chain breaks at event ${envelope.seq}`];
  });
}

/** Nothing answered as recorded is lost; the same delivery is one event (or one act's events) and one answer. */
function answerFaults(envelopes: readonly Envelope[], { answers }: Witnessed): readonly string[] {
  const texts = new Map<string, string>();
  return answers.flatMap(({ id, recorded, text }) => {
    const own = envelopes.filter(({ request }) => request === id);
    const first = texts.get(id) ?? text;
    texts.set(id, first);
    const together = own.every(({ seq, recordedAt }, i) => {
      return seq === (own[0]?.seq ?? 0) + i && recordedAt === own[0]?.recordedAt;
    });
    return [
      ...(recorded === own.length > 0 ? [] : [`${id}: answered recorded=${recorded}, ${own.length} events`]),
      ...(together ? [] : [`${id}: recorded more than once`]),
      ...(first === text ? [] : [`${id}: another answer to the same delivery`]),
    ];
  });
}

function ringFaults(envelopes: readonly Envelope[]): readonly string[] {
  const rung = envelopes.flatMap(({ body }) => (body.type === 'Rang' ? [`${body.key} ring ${body.ring}`] : []));
  return rung.filter((ring, i) => rung.indexOf(ring) !== i).map((ring) => `${ring}: twice in the record`);
}

/** A ring that may be a repeat says so; a late one says how late. */
function postFaults(posts: readonly Post[], askable: boolean): readonly string[] {
  return posts.flatMap((post, i) => {
    const lateMs = post.at - post.dueAt;
    const late = lateMs > onTimeMs;
    const told = post.saysLate && Math.abs((post.lateMinutes ?? 0) * 60_000 - lateMs) < 1;
    const before = posts.slice(0, i).some((other) => other.arrives && isSameRing(other, post));
    return [
      ...(late === told && late === post.saysLate
        ? []
        : [`${post.key}: late by ${lateMs} ms, says ${post.lateMinutes}`]),
      ...(before && !post.saysRepeat ? [`${post.key}: posted twice without saying so`] : []),
      ...(before && askable ? [`${post.key}: posted twice though it could be looked for`] : []),
    ];
  });
}

const isSameRing = (a: { key: string; dueAt: number }, b: { key: string; dueAt: number }): boolean =>
  a.key === b.key && Math.abs(a.dueAt - b.dueAt) <= movedMs;

/**
 * The record read again event by event: what stood due when the next act was recorded must have reached its people, or
 * have been lost by the platform less than a lease before.
 */
function bellsMissing(envelopes: readonly Envelope[], { posts, at }: Witnessed): readonly string[] {
  return envelopes.flatMap((_, i) => {
    const until = envelopes[i + 1]?.recordedAt ?? at;
    const rang = posts.filter((post) => post.arrives || until - post.at <= leaseMs);
    return planAfter(envelopes.slice(0, i + 1))
      .filter(({ dueAt }) => dueAt <= until)
      .filter(({ numberedKey, dueAt }) => !rang.some((post) => isSameRing(post, { key: numberedKey, dueAt })))
      .map(({ numberedKey }) => `${numberedKey}: due before event ${i + 2}, and never rang`);
  });
}

const shelf = readSheetFolders([new URL('../../core/products/sheets', import.meta.url).pathname]);
const blank = createShopKeeper(openSqliteStore(':memory:'), 'crew', inventedCrew, shelf);

function planAfter(envelopes: readonly Envelope[]): readonly PlannedReminder[] {
  return [...planReminders(blank.preview(envelopes)).values()].flat();
}

/** The rows are the plan, to the millisecond. */
function rowFaults(file: string, envelopes: readonly Envelope[]): readonly string[] {
  const database = new Database(file, { readonly: true });
  const rows = database.prepare<[], string>("select numbered_key || ' ' || due_at from reminder").pluck().all();
  const whole = database.pragma('integrity_check', { simple: true });
  database.close();
  const planned = planAfter(envelopes).map(({ numberedKey, dueAt }) => `${numberedKey} ${dueAt}`);
  const same = rows.toSorted().join() === planned.toSorted().join();
  return [
    ...(whole === 'ok' ? [] : [`the file is damaged: ${String(whole)}`]),
    ...(same ? [] : [`rows ${rows.join()} are not the plan ${planned.join()}`]),
  ];
}
