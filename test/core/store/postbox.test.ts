// What a chat front end remembers of its messages: few are open, many pile up behind them.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { KeptPost } from '../../../core/ports.ts';
import { openDatabase } from '../../../core/store/database.ts';
import { openSqlitePostbox } from '../../../core/store/sqlite-postbox.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'postbox-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const post = (ts: string, change: Partial<KeptPost> = {}): KeptPost => ({
  ...{ team: 'T1', channel: 'C1', ts, crew: 'crew', subject: 'batch/1', role: 'said', thread: '1.1', version: 1 },
  ...{ shown: '{"text":"Stirring done"}', open: true },
  ...change,
});

describe('messages that were posted', () => {
  it('given one that is closed, then its place is known for ever and its words are let go', () => {
    const postbox = openSqlitePostbox(join(folder, 'shop.sqlite'));
    postbox.keep(post('1.2'));
    expect(postbox.postAt('T1', 'C1', '1.2')?.shown).toContain('Stirring done');
    postbox.keep(post('1.2', { open: false }));
    expect(postbox.postAt('T1', 'C1', '1.2')).toEqual(post('1.2', { open: false, shown: '' }));
    postbox.close();
  });

  it('given many that are closed, then the open ones are found without looking at those', () => {
    const file = join(folder, 'shop.sqlite');
    const postbox = openSqlitePostbox(file);
    for (let i = 0; i < 40; i += 1) postbox.keep(post(`2.${i}`, { open: false }));
    postbox.keep(post('3.1'));
    expect(postbox.openPosts('crew').map(({ ts }) => ts)).toEqual(['3.1']);
    postbox.close();
    const database = openDatabase(file);
    const plan = database
      .prepare<[string], { detail: string }>('explain query plan select * from post where crew = ? and open = 1')
      .all('crew')
      .map(({ detail }) => detail)
      .join('; ');
    database.close();
    expect(plan).toContain('post_open');
  });

  it('given a file of an earlier version, then what is closed in it loses its words at the next opening', () => {
    const file = join(folder, 'shop.sqlite');
    openSqlitePostbox(file).close();
    const before = openDatabase(file);
    before.exec(`drop index post_open; alter table event drop column edition; alter table event drop column shape;
      alter table event drop column seal; drop table known; drop table last_answer;
      drop index can_lot_corrected; pragma user_version = 4`);
    before
      .prepare("insert into post values ('T1', 'C1', '1.2', 'crew', 'batch/1', 'said', '1.1', 1, 'words', ?)")
      .run(0);
    before.close();
    const postbox = openSqlitePostbox(file);
    expect(postbox.postAt('T1', 'C1', '1.2')?.shown).toBe('');
    postbox.close();
  });
});
