// That somebody practises outlives the process, beside the record: after a restart no line of theirs is taken for the shop's.

import { chmodSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { openPractisers } from '../../../bot/run/practisers-file.ts';
import { wire } from '../../../bot/run/wiring.ts';
import type { Answer } from '../../../bot/talk/answer.ts';
import { virtualClock } from '../../../bot/time/clocks.ts';
import { onlyCrew } from '../../../core/ids.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { epochMs } from '../../../core/units.ts';
import { demoCrew, demoShelf } from '../../core/given.ts';
import { isPractice } from './practice-talk.ts';

const silent = { info: () => undefined, error: () => undefined };
const folder = () => mkdtempSync(join(tmpdir(), 'practice-'));

/** A process over what lies in the folder. */
function life(data: string) {
  const store = openSqliteStore(join(data, 'record.sqlite'));
  onTestFinished(store.close);
  const clock = virtualClock(epochMs(Date.UTC(2026, 2, 2, 8)));
  const frontEnd = { tell: async () => 'posted' as const, wasTold: async () => 'no' as const };
  const practisers = openPractisers(data, silent)(onlyCrew);
  const { host } = wire({ store, clock, log: silent, crewFile: demoCrew, shelf: demoShelf, frontEnd, practisers });
  return async (text: string, as = 'kari'): Promise<Answer> => {
    const answer = await host.handle({ text, as, in: text, id: undefined });
    return answer ?? expect.fail(`no answer to "${text}"`);
  };
}

it('given a restart in practice, then the next line is not recorded, and the one after counts', async () => {
  const data = folder();
  const before = life(data);
  await before('practice on');
  expect(isPractice(await before('air 24C 48%'))).toBe(true);

  const after = life(data);
  expect((await after('air 20C 50%', 'omar')).recorded).toBe(true);
  const told = await after('air 24C 48%');
  expect([told.recorded, told.card.title]).toEqual([false, 'Practice is over: nothing was recorded']);
  expect(told.card.lines).toContain('The program was started anew, and practice is not kept.');
  expect((await after('air 24C 48%')).recorded).toBe(true);
});

it('given a restart in practice and a question, then it is answered by the shop, and says that practice is over', async () => {
  const data = folder();
  await life(data)('practice on');
  const { card } = await life(data)('what now');
  expect([card.title, card.lines.at(-1)]).toEqual([
    'What now',
    'The program was started anew, and practice is not kept.',
  ]);
});

it('given a restart in practice and a cry, then it is real', async () => {
  const data = folder();
  await life(data)('practice on');
  expect((await life(data)('fire in the booth')).card.alarm).toBe(true);
});

it('given practice left, then nothing of it outlives the process', async () => {
  const data = folder();
  const before = life(data);
  await before('practice on');
  await before('practice off');
  expect((await life(data)('air 24C 48%')).recorded).toBe(true);
});

it('given a file that does not read, then nobody practises, and practice can begin', async () => {
  const data = folder();
  writeFileSync(join(data, 'practising.json'), '{"crew": 7');
  const say = life(data);
  expect((await say('air 24C 48%')).recorded).toBe(true);
  expect(isPractice(await say('practice on'))).toBe(true);
  expect(JSON.parse(readFileSync(join(data, 'practising.json'), 'utf8'))).toEqual({ [onlyCrew]: ['kari'] });
});

it.skipIf(process.getuid?.() === 0)('given a folder that cannot be written, then practice does not begin', async () => {
  const data = folder();
  const say = life(data);
  chmodSync(data, 0o500);
  onTestFinished(() => chmodSync(data, 0o700));
  expect((await say('practice on')).card.title).toBe('Practice cannot begin now');
  expect((await say('air 24C 48%')).recorded).toBe(true);
});
