import Database from 'better-sqlite3';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';

const { prepare } = Database.prototype;
let prepared: { readonly sql: string; readonly database: Database.Database }[] = [];

beforeEach(() => {
  prepared = [];
  Database.prototype.prepare = function noted(this: Database.Database, sql: string) {
    prepared.push({ sql, database: this });
    return prepare.call(this, sql);
  } as typeof prepare;
});
afterEach(() => {
  Database.prototype.prepare = prepare;
});

/** What may read on from one end of a crew's rows: it stops at the first that serves, or is asked for all of them. */
const fromOneEnd = [/order by seq desc limit 1$/, /seq > \?/, /max\(seq\) from filed/, /from live/];

test('every statement finds its rows by an index: none reads through a record that grows', () => {
  const store = openSqliteStore(':memory:');
  const statements = prepared.filter(({ sql }) => /^\s*(select|update|delete)\b/i.test(sql));
  expect(statements.length).toBeGreaterThan(15);
  Database.prototype.prepare = prepare;
  const slow = statements.flatMap(({ sql, database }) => {
    const values = sql.includes(':crew') || sql.includes(':now') ? [{ crew: 'crew', now: 1, leaseUntil: 2 }] : [];
    const unnamed = values.length === 0 ? Array.from({ length: sql.split('?').length - 1 }, () => '1') : values;
    const explain = database.prepare<unknown[], { detail: string }>(`explain query plan ${sql}`);
    const ways = explain.all(...unnamed).map(({ detail }) => detail);
    // By the crew alone, or by nothing at all, is all that the crew ever recorded.
    const through = ways.filter((way) =>
      /^SCAN (event|filed|answer)\b|\b(event|filed|reminder) .*\(crew=\?\)$/.test(way),
    );
    return through.length === 0 || fromOneEnd.some((end) => end.test(sql.trim())) ? [] : [`${sql}: ${through.join()}`];
  });
  store.close();
  expect(slow).toEqual([]);
});
