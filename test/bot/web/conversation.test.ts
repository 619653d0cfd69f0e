import { appendFileSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { makeCard } from '../../../bot/cards/card.ts';
import { makeAnswer } from '../../../bot/talk/answer.ts';
import { openConversation } from '../../../bot/web/conversation.ts';
import { silentLog } from './shop-page.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'page-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const ring = (key: string) =>
  makeAnswer({
    ...{ at: '2026-03-02T09:42:00Z', kind: 'reminder', in: null, as: null, to: ['Kari'], key, code: null },
    ...{ recorded: true, card: makeCard('Batch 1: stirring done', 'good') },
  });

describe('the conversation on disk', () => {
  test('a ring is in the file before it counts as posted', async () => {
    const conversation = openConversation(folder, silentLog);
    expect(await conversation.tell(ring('batch/1/stir-done'))).toBe('posted');
    expect(readFileSync(join(folder, 'page.jsonl'), 'utf8')).toContain('batch/1/stir-done');
    conversation.close();
  });

  test('a last line torn by a power cut is left out, and all before it is there', async () => {
    const before = openConversation(folder, silentLog);
    await before.tell(ring('batch/1/stir-done'));
    before.close();
    appendFileSync(join(folder, 'page.jsonl'), '{"n":2,"said":null,"deliv');
    const after = openConversation(folder, silentLog);
    expect(after.id).toBe(before.id);
    expect(after.newest(10, 'Kari').map(({ answer }) => answer.key)).toEqual(['batch/1/stir-done']);
    after.close();
  });

  test('a folder that is not there silences nothing: it rings from memory and says so in the log', async () => {
    const errors: string[] = [];
    const log = { ...silentLog, error: (event: string) => errors.push(event) };
    const conversation = openConversation(join(folder, 'gone'), log);
    expect(await conversation.tell(ring('batch/1/pot-end'))).toBe('posted');
    expect(errors).toEqual(['page-file-not-opened']);
    expect(conversation.newest(1, 'Kari')).toHaveLength(1);
  });

  test('a page that was away longer than is kept is told so', async () => {
    const conversation = openConversation(undefined, silentLog);
    for (let i = 0; i < 1100; i += 1) await conversation.tell(ring(`batch/${i}/stir-done`));
    expect(conversation.after(50, 'Kari')).toBe('gone');
    expect(conversation.after(1050, 'Kari')).toHaveLength(50);
  });
});
