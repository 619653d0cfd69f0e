import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { expect, onTestFinished, test } from 'vitest';
import { chat, factsOf, folder, repliesIn, ringsIn } from './chat.ts';

const weighed = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1201g 1198g'];

test('a restart in the middle of a batch: what came due meanwhile rings at once, says how late and why', async () => {
  const data = folder();
  await chat(weighed, { flags: ['--data', data] });
  const ran = await chat(['now'], { flags: ['--data', data], clock: '2026-03-02T10:30' });
  // Due at 09:42 and 10:24 (102 min of stirring, half of 288 min of pot life at 24 degC: the demo sheet).
  expect(ringsIn(ran)).toEqual(['10:30 batch/1/stir-done', '10:30 batch/1/pot-half']);
  const [stirDone, potHalf] = ran.answers;
  expect(factsOf(stirDone)).toMatchObject({ 'due-at': '2026-03-02T09:42:00Z', 'late-minutes': 48 });
  expect(factsOf(potHalf)).toMatchObject({ 'due-at': '2026-03-02T10:24:00Z', 'late-minutes': 6 });
  expect(stirDone?.text).toMatch(/48 min.*not running/);
  const again = await chat(['now'], { flags: ['--data', data], clock: '2026-03-02T10:31' });
  expect(ringsIn(again)).toEqual([]);
});

test('what came due rings even where the script says nothing more', async () => {
  const data = folder();
  await chat(weighed, { flags: ['--data', data] });
  const ran = await chat([], { flags: ['--data', data], clock: '2026-03-02T10:00' });
  expect(ringsIn(ran)).toEqual(['10:00 batch/1/stir-done']);
});

test('the day that should have come by itself comes late and says so', async () => {
  const data = folder();
  await chat(['air 24C 48%'], { flags: ['--data', data] });
  const ran = await chat(['now'], { flags: ['--data', data], clock: '2026-03-02T18:30' });
  const digest = ran.answers.find(({ kind }) => kind === 'digest');
  expect(factsOf(digest)).toMatchObject({ 'late-minutes': 90, 'due-at': '2026-03-02T17:00:00Z' });
});

test('said late: a weighing typed after its stirring was over rings at once as told late', async () => {
  const { answers } = await chat([
    'air 24C 48% at 07:00',
    'mix 2.4kg at 7:00',
    'wait 3h',
    'weigh 1 1201g 1198g at 8:00',
  ]);
  const stirDone = answers.find(({ key }) => key === 'batch/1/stir-done');
  expect(stirDone?.at).toBe('2026-03-02T11:00:00Z');
  expect(factsOf(stirDone)).toMatchObject({ 'due-at': '2026-03-02T09:42:00Z', 'late-minutes': 78 });
  expect(stirDone?.text).toMatch(/told late/);
});

test('the same delivery twice is one event and the same answer, also in another run', async () => {
  const data = folder();
  const mix = '{"id":"d2","as":"kari","text":"mix 2.4kg"}';
  const first = await chat(['air 24C 48%', mix, mix, 'wait 10m', mix, 'now'], { flags: ['--data', data] });
  const second = await chat([mix, 'day'], { flags: ['--data', data], clock: '2026-03-02T09:00' });
  const mixes = [...first.answers, ...second.answers].filter((answer) => answer.in === 'd2');
  expect(mixes).toHaveLength(4);
  expect(new Set(mixes.map((answer) => JSON.stringify(answer))).size).toBe(1);
  expect(mixes[0]).toMatchObject({ as: 'kari', recorded: true });
  expect(second.answers.at(-1)?.text).toContain('Batch 1');
  expect(second.answers.at(-1)?.text).not.toContain('Batch 2');
});

test('the same delivery twice, objected to the first time, is objected to again; a tap too has one answer', async () => {
  const filter = '{"id":"d4","text":"filter 1"}';
  const stop = '{"id":"d5","text":"tap stop"}';
  const { answers } = await chat([...weighed, stop, stop, 'stir 1', filter, 'wait 2h', filter, 'filter 1']);
  const of = (id: string) => answers.filter((answer) => answer.in === id);
  expect(of('d5').map(({ recorded }) => recorded)).toEqual([true, true]);
  expect(of('d5')[0]).toEqual(of('d5')[1]);
  expect(of('d4')[0]).toMatchObject({ kind: 'objection', recorded: false });
  expect(of('d4')[0]).toEqual(of('d4')[1]);
  expect(answers.at(-1)).toMatchObject({ kind: 'reply', recorded: true });
});

test('nothing is lost when the same batch goes on in the next run', async () => {
  const data = folder();
  await chat(weighed, { flags: ['--data', data] });
  const lines = ['stop 1', 'filter 1', 'coat new impeller-7 1 brush', 'day'];
  const ran = await chat(lines, { flags: ['--data', data], clock: '2026-03-02T09:50' });
  expect(repliesIn(ran).map(({ kind }) => kind)).toEqual(['reply', 'reply', 'reply', 'reply']);
  expect(factsOf(ran.answers.at(-1))).toMatchObject({ batches: 1, 'part-a-total': 1201, parts: 1 });
});

test('in memory, where no folder is named, the next run knows nothing', async () => {
  await chat(weighed);
  const ran = await chat(['filter 1']);
  expect(repliesIn(ran)).toMatchObject([{ kind: 'misread', code: 'no-such-batch' }]);
});

/** Answers its first line and then waits for more. */
async function waiting(data: string): Promise<ChildProcessWithoutNullStreams> {
  const main = new URL('../../../dist/bot/main.js', import.meta.url).pathname;
  const child = spawn(process.execPath, [main, '--json', '--clock', '2026-03-02T08:00', '--data', data]);
  onTestFinished(() => {
    child.kill('SIGKILL');
  });
  child.stdin.write('air 24C 48%\n');
  await new Promise((resolve) => createInterface({ input: child.stdout }).once('line', resolve));
  return child;
}

test('two processes on one folder: the second is refused and the first goes on; killed, it leaves the folder free', async () => {
  const data = folder();
  const first = await waiting(data);
  const second = await chat(['day'], { flags: ['--data', data] });
  expect(second.code).toBe(3);
  expect(second.out).toBe('');
  expect(second.err).toContain('another Batchbell works on this data');
  const gone = new Promise((resolve) => first.once('close', resolve));
  first.kill('SIGKILL');
  await gone;
  const third = await chat(['day'], { flags: ['--data', data] });
  expect(third.code).toBe(0);
  expect(factsOf(third.answers.at(-1))['air-highest']).toBe(24);
});
