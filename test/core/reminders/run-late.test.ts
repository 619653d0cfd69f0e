import { describe, expect, test } from 'vitest';
import { celsius, grams } from '../../../core/units.ts';
import { at, bellTower, inventedCrew, stirredSinceEight, type Tower } from './bell-tower.ts';

const stirDone = 'batch/1/stir-done';
const ringOf = ({ posts }: Tower, key = stirDone) => posts.find(({ reminder }) => reminder.numberedKey === key);

describe('why a bell is late', () => {
  test('given nothing ran at its time: the bell was not running', async () => {
    const tower = await stirredSinceEight();
    tower.setClock('10:00');
    await tower.restart();
    await tower.ringDue();
    expect(ringOf(tower)).toMatchObject({ now: at('10:00'), late: 'was-not-running' });
  });

  test('given the rows were deleted while nothing ran: the same bells stand there, for the same reason', async () => {
    const tower = await stirredSinceEight();
    const due = await tower.nextDueAt();
    await tower.deleteRows();
    expect(await tower.nextDueAt()).toBeUndefined();
    tower.setClock('10:00');
    await tower.restart();
    expect(await tower.nextDueAt()).toBe(due);
    await tower.ringDue();
    expect(ringOf(tower)).toMatchObject({ late: 'was-not-running' });
  });

  test('given the weighing was said when stirring was over already: told late', async () => {
    const tower = await bellTower(inventedCrew, '07:00');
    await tower.say({ verb: 'air', air: { celsius: celsius(24) } });
    await tower.say({ verb: 'mix', amount: { kind: 'mass', grams: grams(2400) } });
    tower.setClock('10:00');
    await tower.say({ verb: 'weigh', partAGrams: grams(1201), partBGrams: grams(1198) }, 'kari', '08:00');
    await tower.ringDue();
    expect(ringOf(tower)).toMatchObject({ now: at('10:00'), late: 'was-told-late' });
  });

  test('given it was told late, and then nothing ran for an hour more: the bell was not running', async () => {
    const tower = await bellTower(inventedCrew, '07:00');
    await tower.say({ verb: 'air', air: { celsius: celsius(24) } });
    await tower.say({ verb: 'mix', amount: { kind: 'mass', grams: grams(2400) } });
    tower.setClock('10:00');
    await tower.say({ verb: 'weigh', partAGrams: grams(1201), partBGrams: grams(1198) }, 'kari', '08:00');
    tower.setClock('11:00');
    await tower.restart();
    await tower.ringDue();
    expect(ringOf(tower)).toMatchObject({ late: 'was-not-running' });
  });

  test('within a minute of its time a bell is on time', async () => {
    const tower = await stirredSinceEight();
    tower.setClock('09:43');
    await tower.restart();
    await tower.ringDue();
    expect(ringOf(tower)?.late).toBeUndefined();
  });
});

describe('a clock that jumps', () => {
  test('given the laptop sleeps through the time, it rings at the first look after it and says so', async () => {
    const tower = await stirredSinceEight();
    await tower.wait('09:00');
    tower.setClock('11:30');
    await tower.ringDue();
    expect(ringOf(tower)).toMatchObject({ now: at('11:30'), late: 'was-asleep' });
  });

  test('set forward an hour over the time, it rings at once and says so', async () => {
    const tower = await stirredSinceEight();
    await tower.wait('09:30');
    tower.setClock('10:30');
    await tower.ringDue();
    expect(ringOf(tower)).toMatchObject({ now: at('10:30'), late: 'was-asleep' });
  });

  test('set back an hour before the time, it rings at the time, once', async () => {
    const tower = await stirredSinceEight();
    await tower.wait('09:30');
    tower.setClock('08:30');
    await tower.wait('09:50');
    const rings = tower.posts.filter(({ reminder }) => reminder.numberedKey === stirDone);
    expect(rings).toMatchObject([{ now: at('09:42'), late: undefined }]);
  });

  test('set back an hour just after a message was turned away, it does not wait for that hour', async () => {
    const tower = await stirredSinceEight();
    tower.weather.post = () => 'rejected';
    tower.setClock('11:00');
    await tower.ringDue();
    tower.setClock('10:00');
    tower.weather.post = () => 'posted';
    await tower.ringDue();
    expect(tower.posts.filter(({ reminder }) => reminder.numberedKey === stirDone)).toHaveLength(2);
  });

  test('set back an hour after it rang, it does not ring a second time', async () => {
    const tower = await stirredSinceEight();
    await tower.wait('09:45');
    tower.setClock('08:45');
    await tower.wait('09:50');
    expect(tower.posts.filter(({ reminder }) => reminder.numberedKey === stirDone)).toHaveLength(1);
  });
});

describe('an hour of daylight saving', () => {
  // Madrid: 29 March 2026, 02:00 becomes 03:00 (01:00 UTC); 25 October 2026, 03:00 becomes 02:00 (01:00 UTC).
  const madrid = { ...inventedCrew, zone: 'Europe/Madrid' };

  async function stirredSince(start: string): Promise<Tower> {
    const tower = await bellTower(madrid, start);
    await tower.say({ verb: 'air', air: { celsius: celsius(24) } });
    await tower.say({ verb: 'mix', amount: { kind: 'mass', grams: grams(2400) } });
    await tower.say({ verb: 'weigh', partAGrams: grams(1201), partBGrams: grams(1198) });
    return tower;
  }

  test.each([
    ['in spring', '2026-03-29T00:00:00', '2026-03-29T01:42:00'],
    ['in autumn', '2026-10-25T00:00:00', '2026-10-25T01:42:00'],
  ])('%s, 102 minutes of stirring are 102 minutes', async (_, start, due) => {
    const tower = await stirredSince(start);
    await tower.wait(due);
    expect(ringOf(tower)).toMatchObject({ now: at(due), late: undefined });
  });

  test.each([
    ['the day before it, at 16:00 UTC', '2026-03-28T08:00:00', '2026-03-28', '2026-03-28T16:00:00'],
    ['on the day of spring, at 15:00 UTC', '2026-03-29T08:00:00', '2026-03-29', '2026-03-29T15:00:00'],
    ['on the day of autumn, at 16:00 UTC', '2026-10-25T00:30:00', '2026-10-25', '2026-10-25T16:00:00'],
  ])("the day comes by itself at the crew's 17:00: %s", async (_, start, date, due) => {
    const tower = await stirredSince(start);
    await tower.wait(due);
    expect(ringOf(tower, `crew/digest/${date}`)).toMatchObject({ now: at(due), late: undefined });
  });
});
