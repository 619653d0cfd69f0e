import { describe, expect, test } from 'vitest';
import { at, inventedCrew, lineGoesDead, stirredSinceEight, type Tower, type Weather } from './bell-tower.ts';

const stirDone = 'batch/1/stir-done';
const tries = ({ posts }: Tower) => posts.filter(({ reminder }) => reminder.numberedKey === stirDone);

async function rangIn(tower: Tower) {
  return (await tower.record()).filter(({ body }) => body.type === 'Rang' && body.key === stirDone);
}

describe('given a store that cannot write', () => {
  test('the bell rings from memory at its time and says that it is not in the record', async () => {
    const tower = await stirredSinceEight();
    tower.breakStore();
    await tower.wait('09:45');
    expect(tries(tower)).toMatchObject([
      { now: at('09:42'), unrecorded: true, possibleRepeat: false, late: undefined },
    ]);
    expect(await rangIn(tower)).toEqual([]);
  });

  test('the leads are told once, however often the bell looks', async () => {
    const tower = await stirredSinceEight();
    tower.breakStore();
    await tower.wait('09:42');
    for (let i = 0; i < 5; i++) await tower.ringDue();
    expect(tower.notices).toHaveLength(1);
  });

  test.each<[string, Weather['tellLeads'], number]>([
    ['was turned away', () => 'rejected', 2],
    ['broke off', lineGoesDead, 2],
    ['had no answer', () => 'unknown', 1],
  ] as const)(
    'leads whose message %s are told at the next look, until it may have gone out',
    async (_, told, times) => {
      const tower = await stirredSinceEight();
      tower.breakStore();
      tower.weather.tellLeads = told;
      await tower.ringDue();
      tower.weather.tellLeads = () => 'posted';
      await tower.ringDue();
      await tower.ringDue();
      expect(tower.notices).toHaveLength(times);
    },
  );

  test('once it is healed, what rang is recorded with the time at which it rang, and not posted again', async () => {
    const tower = await stirredSinceEight();
    tower.breakStore();
    await tower.wait('09:50');
    tower.healStore();
    await tower.ringDue();
    expect(await rangIn(tower)).toMatchObject([{ happenedAt: at('09:42'), recordedAt: at('09:50') }]);
    await tower.wait('09:51');
    expect(tries(tower)).toHaveLength(1);
  });

  test('an act that could not be recorded tells the leads at the next look, though no bell is due', async () => {
    const tower = await stirredSinceEight();
    tower.breakStore('commits');
    await tower.ringDue();
    expect(tower.notices).toEqual([]);
    await expect(tower.say({ verb: 'stop' })).rejects.toThrow('the disk is full');
    await tower.ringDue();
    expect(tower.notices).toEqual([at('08:00')]);
    tower.healStore();
    await tower.say({ verb: 'stop' });
    await tower.wait('08:15');
    expect(tower.posts.map(({ reminder, unrecorded }) => [reminder.kind, unrecorded])).toEqual([
      ['stir-paused', false],
    ]);
  });

  test('a second failure tells the leads again', async () => {
    const tower = await stirredSinceEight();
    tower.breakStore();
    await tower.ringDue();
    tower.healStore();
    await tower.ringDue();
    tower.breakStore();
    await tower.ringDue();
    expect(tower.notices).toHaveLength(2);
  });

  test('a bell that was claimed and posted before the record failed is recorded once it can be, and posted once', async () => {
    const tower = await stirredSinceEight();
    tower.breakStore('commits');
    await tower.wait('09:50');
    expect(tries(tower)).toHaveLength(1);
    expect(tries(tower)[0]?.unrecorded).toBe(false);
    tower.healStore();
    await tower.wait('09:51');
    expect(tries(tower)).toHaveLength(1);
    expect(await rangIn(tower)).toMatchObject([{ happenedAt: at('09:42'), recordedAt: at('09:50') }]);
  });

  test('healed after more than a minute, a bell that nobody heard says that the record could not be written', async () => {
    const tower = await stirredSinceEight();
    tower.weather.post = ({ unrecorded }) => (unrecorded ? 'rejected' : 'posted');
    tower.breakStore();
    await tower.wait('09:44');
    tower.healStore();
    await tower.ringDue();
    expect(tries(tower).at(-1)).toMatchObject({ late: 'store-failed', unrecorded: false });
  });

  test('a message turned away is tried again from memory with the same short waits', async () => {
    const tower = await stirredSinceEight();
    tower.breakStore();
    tower.weather.post = ({ now }) => (now < at('09:42:10') ? 'rejected' : 'posted');
    await tower.wait('09:43');
    expect(tries(tower).map(({ now }) => (now - at('09:42')) / 1000)).toEqual([0, 1, 3, 8, 18]);
  });

  test('a message without an answer is looked for, then posted once more as perhaps told before', async () => {
    const tower = await stirredSinceEight();
    tower.breakStore();
    tower.weather.post = ({ now }) => (now === at('09:42') ? 'unknown' : 'posted');
    await tower.wait('09:43');
    expect(tower.lookUps).toEqual([stirDone]);
    expect(tries(tower).map(({ possibleRepeat }) => possibleRepeat)).toEqual([false, true]);
  });

  test('without an answer just before the record failed, it is looked for all the same', async () => {
    const tower = await stirredSinceEight();
    tower.weather.post = ({ now }) => (now === at('09:42') ? 'unknown' : 'posted');
    await tower.wait('09:42:10');
    tower.breakStore();
    await tower.wait('09:43');
    expect(tries(tower).map(({ possibleRepeat }) => possibleRepeat)).toEqual([false, true]);
  });

  test('the next bell is never in the past, so that nothing spins', async () => {
    const tower = await stirredSinceEight();
    tower.breakStore();
    tower.weather.post = () => 'rejected';
    for (let minute = 42; minute < 50; minute++) {
      tower.setClock(`09:${minute}`);
      await tower.ringDue();
      expect(await tower.nextDueAt()).toBeGreaterThan(tower.now());
    }
  });

  test('an act cannot be recorded meanwhile, and the bell goes on with what stands', async () => {
    const tower = await stirredSinceEight();
    tower.breakStore();
    await expect(tower.say({ verb: 'stop' })).rejects.toThrow('the disk is full');
    await tower.wait('09:45');
    expect(tries(tower)).toHaveLength(1);
  });

  test('a crew without a lead still has its bells', async () => {
    const people = inventedCrew.people.filter(({ role }) => role !== 'lead');
    const tower = await stirredSinceEight({ ...inventedCrew, people });
    tower.breakStore();
    await tower.wait('09:45');
    expect(tries(tower)).toHaveLength(1);
    expect(tower.notices).toHaveLength(1);
  });
});
