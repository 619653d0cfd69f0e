import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { openDatabase } from '../../../core/store/database.ts';
import { chat, file, folder, repliesIn } from './chat.ts';

test('0: done, objections and misreads included', async () => {
  const { code } = await chat(['filter 1', 'mix 2.4kg', 'nonsense']);
  expect(code).toBe(0);
});

test.each([
  ['an unknown flag', ['--nope'], '--nope'],
  ['something that is no flag', ['extra'], 'extra'],
  ['a day that does not exist', ['--clock', '2026-02-30T08:00'], '--clock'],
  ['a clock without a date', ['--clock', '08:00'], '--clock'],
  ['an hour that the clocks skip', ['--clock', '2026-03-29T02:30', '--zone', 'Europe/Madrid'], '2026-03-29T02:30'],
  ['a zone that does not exist', ['--zone', 'Mars/Base'], '--zone'],
  ['a language that is not there', ['--lang', 'xx'], '--lang'],
  ['a speed with a script', ['--speed', '60'], '--speed'],
  ['a folder of sheets that is not there', ['--sheets', '/nowhere-at-all'], '--sheets'],
  ['a crew file that is not there', ['--crew', '/nowhere-at-all.json'], '--crew'],
])('2: %s, named', async (_, flags, named) => {
  const { code, out, err } = await chat(['air 24C 48%'], { flags });
  expect(code).toBe(2);
  expect(out).toBe('');
  expect(err).toContain(named);
});

test('0: --help says every flag in a line and runs nothing', async () => {
  const { code, out, err } = await chat(['air 24C 48%'], { flags: ['--help'], json: false });
  expect(code).toBe(0);
  expect(err).toBe('');
  const flags = ['help', 'json', 'clock', 'speed', 'zone', 'data', 'as', 'crew', 'sheets', 'lang'];
  for (const flag of [...flags, 'serve', 'port', 'lan', 'demo', 'terminal']) expect(out).toMatch(`\n  --${flag}`);
  expect(out).not.toContain('Air');
});

test('2: a crew file with faults, every one listed at once by file and field', async () => {
  const crew = file('crew.json', {
    name: 'Invented crew',
    people: [{ name: '', role: 'boss' }],
    digestHour: 25,
    motto: 'x',
  });
  const { code, err } = await chat(['air 24C 48%'], { flags: ['--crew', crew] });
  expect(code).toBe(2);
  for (const named of [crew, 'people.0.name', 'people.0.role', 'digestHour', 'motto']) expect(err).toContain(named);
});

/** The demo sheet with four faults. */
function faultySheet(): unknown {
  const demo = join(import.meta.dirname, '../../../core/products/sheets/demo-clear.json');
  const sheet = JSON.parse(readFileSync(demo, 'utf8'));
  const { air: _, ...rest } = sheet;
  return {
    ...rest,
    id: 'faulty-one',
    ratio: { ...sheet.ratio, partsB: -1 },
    flashOff: { ...sheet.flashOff, leastMinutes: 0 },
    colour: 'blue',
  };
}

test('2: a faulty sheet, every fault listed at once by file and field; it blocks its mixes, the others work', async () => {
  const sheets = dirname(file('faulty-one.json', faultySheet()));
  file('not-json.json', '{ no', sheets);
  const lines = ['air 24C 48%', 'mix 1kg faulty-one', 'mix 1kg not-json', 'mix 1kg', 'mix 1kg Demo Clear'];
  const ran = await chat(lines, { flags: ['--sheets', sheets] });
  expect(ran.code).toBe(2);
  for (const named of ['faulty-one.json', 'ratio.partsB', 'flashOff.leastMinutes', 'air', 'colour', 'not-json.json']) {
    expect(ran.err).toContain(named);
  }
  const [, faulty, unreadable, unnamed, good] = repliesIn(ran);
  for (const answer of [faulty, unreadable]) {
    expect(answer).toMatchObject({ kind: 'misread', code: 'sheet-faulty', recorded: false });
  }
  expect(faulty?.text).toContain('ratio.partsB');
  expect(faulty?.text).toContain('flashOff.leastMinutes');
  // The demo's product does not stand in for them; by its full name it is mixed, and said to be invented.
  expect(unnamed).toMatchObject({ kind: 'misread', code: 'which-sheet', recorded: false });
  for (const named of ['faulty-one.json ratio.partsB', 'not-json.json']) expect(unnamed?.text).toContain(named);
  expect(good).toMatchObject({ kind: 'reply', recorded: true });
  expect(good?.text).toContain('An invented product, for practice only.');
});

test.each([
  ['a file that is no record', () => file('shopping.txt', 'two brushes, one bucket')],
  ['a folder under a file', () => join(file('taken', ''), 'data')],
  ['a file system that takes no folders', () => '/proc/batchbell'],
])('3: a record that cannot be opened: %s', async (_, data) => {
  const { code, out, err } = await chat(['air 24C 48%'], { flags: ['--data', data()] });
  expect(code).toBe(3);
  expect(out).toBe('');
  expect(err).toContain('store-not-opened');
  expect(err).toMatch(/^batchbell: /m);
});

test('3: a disk that is full from the start', async () => {
  const { code } = await chat(['air 24C 48%'], { flags: ['--data', folder()], fileLimitKib: 8 });
  expect(code).toBe(3);
});

/** Air after air, until the file may grow no further. */
const untilFull = Array.from({ length: 60 }, (_, i) => `air 24C ${40 + (i % 9)}%`);

test('3 at the end: a disk that fills up midway; what was recorded stays, the rest says not recorded, the bells ring', async () => {
  const data = folder();
  const begun = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1201g 1198g'];
  const ran = await chat([...begun, ...untilFull, 'wait 2h', 'day'], { flags: ['--data', data], fileLimitKib: 700 });
  expect(ran.code).toBe(3);
  const replies = repliesIn(ran);
  expect(replies).toHaveLength(begun.length + untilFull.length + 2);
  const acts = replies.slice(0, -2);
  expect(acts.slice(0, begun.length).every(({ recorded }) => recorded)).toBe(true);
  const failed = acts.filter(({ recorded }) => !recorded);
  for (const answer of failed) {
    expect(answer).toMatchObject({ kind: 'error', code: 'not-recorded' });
    // It can be said again by one tap, and the lead is among those it goes to.
    expect(answer.card.actions.map(({ line }) => line)).toEqual([untilFull[Number(answer.in) - 1 - begun.length]]);
    expect(answer.to).toContain('lead');
  }
  // In what little room is left a smaller act may still land, but at last none does.
  expect(acts.slice(-5).map(({ recorded }) => recorded)).toEqual([false, false, false, false, false]);

  // From memory, at its time, once; and one notice to the lead each time that it begins to fail.
  const stirDone = ran.answers.filter(({ key }) => key === 'batch/1/stir-done');
  expect(stirDone.map(({ at, recorded }) => [at.slice(11, 16), recorded])).toEqual([['09:42', false]]);
  const notices = ran.answers.filter(({ code }) => code === 'store-failed');
  const begins = acts.filter(({ recorded }, i) => !recorded && acts[i - 1]?.recorded === true);
  expect(notices).toHaveLength(begins.length);
  expect(notices[0]).toMatchObject({ kind: 'error', in: null, key: null, to: ['lead'], recorded: false });

  // With room again: everything that said recorded is there, and nothing that did not.
  const after = await chat(['now'], { flags: ['--data', data], clock: '2026-03-02T10:05' });
  expect(after.code).toBe(0);
  const database = new Database(join(data, 'batchbell.sqlite'), { readonly: true });
  const inRecord = database.prepare("select count(*) from event where type <> 'Rang'").pluck().get();
  database.close();
  expect(inRecord).toBe(acts.length - failed.length);
});

test('3: a record that a newer program has written is said in plain words, and left as it is', async () => {
  const data = folder();
  const record = openDatabase(join(data, 'batchbell.sqlite'));
  record.pragma('user_version = 1000');
  record.close();
  const { code, out, err } = await chat(['air 24C 48%'], { flags: ['--data', data] });
  expect(code).toBe(3);
  expect(out).toBe('');
  expect(err).toMatch(/^batchbell: .*a newer Batchbell has written here .*Nothing was changed\.$/m);
});
