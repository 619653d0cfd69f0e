// What the sheet promises after the cure rings to whoever leads, a part that was released long before included; and is then
// forgotten. An hour to service, a week until it improves no more: invented.

import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, it, onTestFinished } from 'vitest';
import { createExecutor } from '../../../core/execute.ts';
import { createShopKeeper } from '../../../core/shop-keeper.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { demoCrew, demoShelf, given } from '../given.ts';

const coated = [
  ...['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:43 filter 1'],
  ...[
    '09:43 part hub-1 cast-iron 12mm',
    '09:43 part hub-2 cast-iron 12mm',
    '09:43 coat hub-1 hub-2 1 brush',
    '09:43 empty 1',
    '09:43 clean brush',
  ],
  ...['10:00 dry hub-1 hub-2', '10:00 cure hub-1 hub-2 oven 90C'],
];
const proved = ['10:00 temp 90C', '11:00 temp 90C', '11:00 out hub-1 hub-2'];
const releasedAll = [...coated, ...proved, '11:05 @omar: release hub-1 hub-2'];
const isAfter = ({ key }: { readonly key: string }) => key.includes('/after-');

it('given a part was released at 11:05, then it rings to the lead from when it may serve and when it improves no more', async () => {
  const shift = await given(releasedAll);
  await shift.until('Sun 23:00');
  expect(shift.rung().filter(isAfter)).toEqual([
    { at: '12:00', key: 'part/hub-1/after-service', to: ['omar'] },
    { at: '12:00', key: 'part/hub-2/after-service', to: ['omar'] },
  ]);
  expect(await shift.plan()).toMatchObject({ 'part/hub-1/after-improves': '2026-03-09 11:00' });
});

it('given a reading of the cure is corrected after the release, then what follows moves with it', async () => {
  const shift = await given([...releasedAll.slice(0, -3), '11:10 temp 90C', '11:10 out hub-1 hub-2']);
  expect(await shift.plan()).toMatchObject({ 'part/hub-1/after-service': '12:00' });
  await shift.when('11:20 amend hub-1 temp at 10:55 read sooner');
  expect(await shift.plan()).not.toHaveProperty('part/hub-1/after-service');
});

it('given the cure is not proved, then nothing is promised and the part is forgotten with its release', async () => {
  const shift = await given([
    ...coated,
    '11:00 out hub-1 already',
    '11:00 @rosa: release hub-1 permit customer agreed',
  ]);
  expect(Object.keys(await shift.plan()).filter((key) => key.includes('hub-1/after'))).toEqual([]);
});

it('given it was over before it was taken out, then it stands on that card and rings no more', async () => {
  const shift = await given([...coated, ...proved.slice(0, 2), '12:30 out hub-1 hub-2']);
  await shift.until('13:00');
  expect(shift.rung().filter(isAfter)).toEqual([]);
});

it('given the program and its bells are gone after the release, then the same bells stand; after the last the part is no more in what is live', async () => {
  const folder = mkdtempSync('/tmp/batchbell-after-');
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const file = join(folder, 'record.sqlite');
  const store = openSqliteStore(file);
  onTestFinished(() => store.close());
  const shift = await given(releasedAll, { store });
  const database = new Database(file);
  onTestFinished(() => void database.close());
  const bells = () => database.prepare('select key, due_at, people from reminder order by key').all();
  const before = bells();
  expect(before).toContainEqual(expect.objectContaining({ key: 'part/hub-2/after-improves' }));
  database.exec('delete from reminder');
  const again = createExecutor({ store, keeper: createShopKeeper(store, 'crew', demoCrew, demoShelf), crew: 'crew' });
  await again.reconcile(shift.time('11:30'));
  expect(bells()).toEqual(before);

  const live = () => database.prepare("select stream from live where stream like 'part/%'").pluck().all();
  expect(live()).toEqual(['part/hub-1', 'part/hub-2']);
  const later = await given(['Mon 08:00 air 24C 48%'], { store, week: '2026-03-09' });
  expect((await later.shop()).parts.has('hub-1')).toBe(true);
  await later.until('Mon 12:00');
  expect(
    later
      .rung()
      .filter(isAfter)
      .map(({ key }) => key),
  ).toEqual(['service', 'improves'].flatMap((stage) => ['hub-1', 'hub-2'].map((hub) => `part/${hub}/after-${stage}`)));
  expect(live()).toEqual([]);
});

it('given its last bell has rung and it is forgotten, then it is still heard by name', async () => {
  const shift = await given(releasedAll);
  await shift.until('12:30');
  expect(await shift.when('12:30 @omar: ok part/hub-1/after-service')).toEqual({ recorded: ['RingAnswered'] });
  const over = await given([...releasedAll, 'Sun 23:00 air 24C 48%']);
  await over.until('Sun 23:30');
  expect(await over.when('Sun 23:30 @omar: ok part/hub-1/after-service')).toEqual({ recorded: ['RingAnswered'] });
});

it('given it may serve before anybody hears another bell, then what rang before its release is past', async () => {
  const shift = await given(releasedAll);
  expect(await shift.when('11:10 @kari: ok part/hub-1/cure-done')).toMatchObject({ unclear: 'nothing-rang' });
});
