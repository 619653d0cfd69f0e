import { describe, expect, test } from 'vitest';
import { at, lineGoesDead, stirredSinceEight, type Tower, type Weather } from './bell-tower.ts';

const stirDone = 'batch/1/stir-done';

/** Tries at the stir-done bell: when, and what the card would say of it. */
function tries({ posts }: Tower, key = stirDone) {
  return posts
    .filter(({ reminder }) => reminder.numberedKey === key)
    .map(({ now, late, possibleRepeat, unrecorded }) => ({ now, late, possibleRepeat, unrecorded }));
}

const onTime = (now: number) => ({ now, late: undefined, possibleRepeat: false, unrecorded: false });

async function rangIn(tower: Tower, key = stirDone) {
  return (await tower.record()).filter(({ body }) => body.type === 'Rang' && body.key === key);
}

describe('a bell whose message gets through', () => {
  test('rings at its time, once, and is recorded once under its batch', async () => {
    const tower = await stirredSinceEight();
    await tower.wait('09:45');
    await tower.ringDue();
    expect(tries(tower)).toEqual([onTime(at('09:42'))]);
    const [rang, ...more] = await rangIn(tower);
    expect(rang).toMatchObject({ stream: 'batch/1', happenedAt: at('09:42'), by: 'batchbell' });
    expect(rang?.body).toMatchObject({ ring: 1, dueAt: at('09:42'), to: ['kari'], possibleRepeat: false });
    expect(more).toEqual([]);
  });

  test('two bells of the same minute ring by due time, then key', async () => {
    const tower = await stirredSinceEight();
    tower.setClock('23:00');
    await tower.ringDue();
    const order = tower.posts.map(({ reminder }) => `${reminder.dueAt} ${reminder.numberedKey}`);
    expect(order).toEqual(order.toSorted());
    expect(order.length).toBeGreaterThan(3);
  });
});

describe('a message that is turned away', () => {
  test('is tried again after 1, 2, 5, 10 and 20 seconds, then every 20, until it gets through', async () => {
    const tower = await stirredSinceEight();
    tower.weather.post = ({ now }) => (now < at('09:43:20') ? 'rejected' : 'posted');
    await tower.wait('09:45');
    const seconds = tries(tower).map(({ now }) => (now - at('09:42')) / 1000);
    expect(seconds).toEqual([0, 1, 3, 8, 18, 38, 58, 78, 98]);
    expect(await rangIn(tower)).toHaveLength(1);
  });

  test('says, once it gets through late, that the message did not get through before; nobody heard it twice', async () => {
    const tower = await stirredSinceEight();
    tower.weather.post = ({ now }) => (now < at('09:44') ? 'rejected' : 'posted');
    await tower.wait('09:45');
    expect(tries(tower).at(-1)).toMatchObject({ late: 'post-failed', possibleRepeat: false });
    expect(tower.lookUps).toEqual([]);
  });

  test('holds no other bell back', async () => {
    const tower = await stirredSinceEight();
    tower.weather.post = ({ reminder }) => (reminder.numberedKey === stirDone ? 'rejected' : 'posted');
    await tower.wait('12:30');
    expect(tries(tower, 'place/room/air-due')).toEqual([onTime(at('12:00'))]);
  });
});

describe('a message without an answer', () => {
  test('given it is found by its key, it is recorded and not posted again', async () => {
    const tower = await stirredSinceEight();
    tower.weather.post = () => 'unknown';
    tower.weather.wasPosted = () => 'yes';
    await tower.wait('09:43');
    expect(tries(tower)).toHaveLength(1);
    expect(tower.lookUps).toEqual([stirDone]);
    const rang = await rangIn(tower);
    expect(rang.map(({ body }) => body)).toMatchObject([{ ring: 1, possibleRepeat: false }]);
  });

  test.each<[string, Weather['wasPosted']]>([
    ['no', () => 'no'],
    ['unknown', () => 'unknown'],
    ['nothing, because it breaks off', lineGoesDead],
  ])(
    'given the look-up says %s, it is posted once more when the lease is over, as perhaps told before',
    async (_, wasPosted) => {
      const tower = await stirredSinceEight();
      tower.weather.post = ({ now }) => (now === at('09:42') ? 'unknown' : 'posted');
      tower.weather.wasPosted = wasPosted;
      await tower.wait('09:45');
      expect(tries(tower)).toEqual([onTime(at('09:42')), { ...onTime(at('09:42:30')), possibleRepeat: true }]);
      expect((await rangIn(tower)).map(({ body }) => body)).toMatchObject([{ possibleRepeat: true }]);
    },
  );

  test('given the post breaks off, it counts as without an answer, and no other bell waits', async () => {
    const tower = await stirredSinceEight();
    tower.weather.post = ({ reminder }) => (reminder.numberedKey === stirDone ? lineGoesDead() : 'posted');
    await tower.wait('12:30');
    expect(
      tries(tower)
        .slice(1)
        .every(({ possibleRepeat }) => possibleRepeat),
    ).toBe(true);
    expect(tries(tower, 'place/room/air-due')).toEqual([onTime(at('12:00'))]);
    expect(tower.notices).toEqual([]);
  });

  test('given the process ends before the answer, the next one looks for it first', async () => {
    const tower = await stirredSinceEight();
    tower.weather.post = () => 'unknown';
    await tower.wait('09:42:01');
    await tower.restart();
    tower.setClock('09:42:31');
    tower.weather.post = () => 'posted';
    await tower.ringDue();
    expect(tower.lookUps).toEqual([stirDone]);
    expect(tries(tower).at(-1)).toEqual({ ...onTime(at('09:42:31')), possibleRepeat: true });
  });
});
