// What an earlier build kept of its messages, in its own shape: nothing breaks on it, and a batch goes on with its message.

import { expect, test } from 'vitest';
import type { KeptPost } from '../../../core/ports.ts';
import { openSqlitePostbox } from '../../../core/store/sqlite-postbox.ts';
import { beginLife, entry, type World } from './faulty-life.ts';
import { plainText } from './plain-text-platform.ts';

test('given rows of an earlier build, then a batch’s message is brought up to date and an entry is left as it was', async () => {
  const world: World = {
    ...{ plain: plainText(), postbox: openSqlitePostbox(':memory:'), faults: [], blind: 0, now: 0 },
    truth: new Map([['batch/1', { acts: 3, live: true }]]),
  };
  const { plain, postbox } = world;
  const at = { team: 'T', channel: 'bay', crew: 'crew', subject: 'batch/1', version: 1, open: true } as const;
  for (const [role, key, shown] of [
    ['standing', 'standing/batch/1/1', '["Batch 1",["stop 1"]]'],
    ['said', 'line-1', '{"text":"Batch 1: stirrer off","blocks":[]}'],
  ] as const) {
    const sent = await plain.platform.post({ channel: 'bay', thread: undefined }, entry('as it was'), key);
    if (sent.kind !== 'done') throw new Error('not posted');
    const post: KeptPost = { ...at, ts: sent.result, role, thread: undefined, shown };
    postbox.keep(post);
  }
  const { desk } = beginLife(world);

  await desk.messages.settle(['batch/1']);
  await desk.messages.refresh(['batch/1']);

  expect(plain.messages.map(({ changes }) => changes)).toEqual([1, 0]);
  expect(plain.messages[0]?.text).toContain('batch/1 after 3');
  expect(postbox.openPosts('crew').map(({ role }) => role)).toEqual(['standing']);
  postbox.close();
});
