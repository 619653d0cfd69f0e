import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openShop, type ShopPage } from './shop-page.ts';

let shop: ShopPage;
beforeEach(async () => {
  shop = await openShop();
  await shop.say('Kari', 'air 24C 48%');
  await shop.say('Kari', 'mix 2.4kg');
});
afterEach(() => shop.stop());

const clocks = async (id: string) => {
  const board = await shop.board('Kari');
  return [...board.batches, ...board.parts].find((item) => item.id === id)?.clocks ?? [];
};
const clock = async (item: string, id: string) => (await clocks(item)).find((one) => one.id === id);
const weigh = () => shop.say('Kari', 'weigh 1 1201g 1198g');
const stirAndFilter = async () => {
  await weigh();
  await shop.wait(103);
  await shop.say('Kari', 'filter 1');
};

describe('a batch on the board', () => {
  test('to be weighed, it has no clock yet', async () => {
    expect(await clocks('batch/1')).toEqual([]);
  });

  test('half its stirring given, its bar is half full (102 min at 24 °C on the demo sheet: common practice, no source)', async () => {
    await weigh();
    await shop.wait(51);
    expect(await clock('batch/1', 'stir')).toMatchObject({ at: '09:42', left: '51 min left', tone: 'plain' });
    expect((await clock('batch/1', 'stir'))?.progress).toBeCloseTo(0.5, 6);
  });

  test('the bar is full when the time is proved, and never before', async () => {
    await weigh();
    await shop.wait(101.99);
    expect((await clock('batch/1', 'stir'))?.progress).toBeLessThan(1);
    await shop.wait(0.02);
    expect(await clock('batch/1', 'stir')).toMatchObject({ progress: 1, left: 'given', tone: 'good' });
  });

  test('with the stirrer off its stirring stands still, and is to be looked at', async () => {
    await weigh();
    await shop.wait(30);
    await shop.say('Kari', 'stop 1');
    await shop.wait(5);
    expect(await clock('batch/1', 'stir')).toMatchObject({ left: 'stands still', at: undefined, tone: 'warn' });
    expect((await clock('batch/1', 'stir'))?.progress).toBeCloseTo(30 / 102, 6);
  });

  test('pot life: urgent from the margin on, and over says for how long', async () => {
    await weigh();
    const ends = (await clock('batch/1', 'pot'))?.at;
    expect(ends).toBe('12:33');
    await shop.wait(244);
    expect(await clock('batch/1', 'pot')).toMatchObject({ left: '29 min left', tone: 'warn' });
    await shop.wait(39);
    expect(await clock('batch/1', 'pot')).toMatchObject({ progress: 1, left: 'over for 9 min', tone: 'stop' });
  });

  test('filtered, only its pot life counts; thick, none does', async () => {
    await stirAndFilter();
    expect((await clocks('batch/1')).map(({ id }) => id)).toEqual(['pot']);
    await shop.say('Kari', 'thick 1');
    const [item] = (await shop.board('Kari')).batches;
    expect(item).toMatchObject({ clocks: [], tone: 'stop' });
  });
});

describe('a part on the board', () => {
  beforeEach(async () => {
    await stirAndFilter();
    await shop.say('Kari', 'coat new impeller-7 1 spray');
  });

  test('flash-off by plain minutes, 10 at the least and 15 at the most (common practice, no source)', async () => {
    await shop.wait(5);
    expect(await clocks('part/impeller-7')).toMatchObject([{ id: 'flash', left: '5 min left', progress: 0.5 }]);
    await shop.wait(6);
    expect(await clocks('part/impeller-7')).toMatchObject([
      { id: 'flash', left: 'given', tone: 'good' },
      { id: 'flash-most', left: '4 min left', tone: 'warn' },
    ]);
  });

  test('in the oven it earns nothing until the part itself was read', async () => {
    await shop.wait(11);
    await shop.say('Kari', 'dry impeller-7');
    await shop.say('Kari', 'cure impeller-7 oven 90C');
    await shop.wait(20);
    expect(await clock('part/impeller-7', 'cure')).toMatchObject({ progress: 0, tone: 'warn' });
    await shop.say('Kari', 'temp impeller-7 91C');
    await shop.wait(30);
    expect(await clock('part/impeller-7', 'cure')).toMatchObject({ left: '30 min left', tone: 'plain' });
  });
});

describe('the air and the bells on the board', () => {
  test('the air carries its age, and past the limit says first that it is too old', async () => {
    await shop.wait(30);
    expect((await shop.board('Kari')).air).toMatchObject([
      { place: 'room', figures: ['24 °C', '48 %'], tone: 'plain' },
    ]);
    expect((await shop.board('Kari')).air[0]?.lines[0]).toBe('read 08:00, 30 min ago');
    await shop.wait(211);
    const [room] = (await shop.board('Kari')).air;
    expect(room).toMatchObject({ tone: 'warn' });
    expect(room?.lines).toContain('too old: read it again');
  });

  test('what rings next stands first, at the cautious minute, and the nightly summary is left out', async () => {
    await weigh();
    const { rings } = await shop.board('Kari');
    expect(rings[0]).toMatchObject({ key: 'batch/1/stir-done', at: '09:42', left: 'in 1 h 42 min', late: false });
    expect(rings.map(({ key }) => key)).not.toContain('crew/digest/2026-03-02');
  });
});
