import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
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
  return board.items.find((item) => item.id === id)?.clocks ?? [];
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
    const [item] = (await shop.board('Kari')).items;
    expect(item).toMatchObject({ clocks: [], tone: 'stop' });
  });
});

describe('a part on the board', () => {
  beforeEach(async () => {
    await stirAndFilter();
    await shop.say('Kari', 'coat new impeller-7 1 brush');
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

describe('what stands first', () => {
  const order = async () => (await shop.board('Kari')).items.map(({ id }) => id);
  const say = async (...lines: readonly string[]) => {
    for (const line of lines) await shop.say('Kari', line);
  };

  test('of the same moment, by name as people count: plate-2 before plate-10', async () => {
    await stirAndFilter();
    await say(...[10, 2, 1, 11].map((n) => `coat new plate-${n} 1 brush`));
    expect((await order()).slice(0, 4)).toEqual(['part/plate-1', 'part/plate-2', 'part/plate-10', 'part/plate-11']);
    expect((await shop.board('Kari')).rings.slice(0, 4).map(({ key }) => key)).toEqual(
      [1, 2, 10, 11].map((n) => `part/plate-${n}/flash-least`),
    );
  });

  test('over, then about to be, then what waits for somebody, then the rest by its end', async () => {
    await stirAndFilter();
    await say('coat new late-1 1 brush');
    await shop.wait(8);
    await say('coat new soon-1 1 brush', 'coat new dry-1 1 brush', 'coat new dry-2 1 brush');
    await shop.wait(10);
    // late-1 is past its 15 min; soon-1 past its 10; the other two are dry and wait for a cure.
    await say('dry dry-2', 'dry dry-1', 'coat new fresh-1 1 brush', 'mix 1kg');
    expect(await order()).toEqual([
      'part/late-1',
      'part/soon-1',
      'batch/2',
      'part/dry-1',
      'part/dry-2',
      'part/fresh-1',
      'batch/1',
    ]);
  });

  test('a pot that gelled comes before parts that wait, and a pot near its end before both while it lives', async () => {
    await stirAndFilter();
    await say('coat new dry-1 1 brush');
    await shop.wait(11);
    await say('dry dry-1');
    expect(await order()).toEqual(['part/dry-1', 'batch/1']);
    await shop.wait(132);
    expect((await clock('batch/1', 'pot'))?.tone).toBe('warn');
    expect(await order()).toEqual(['batch/1', 'part/dry-1']);
    await say('gel 1');
    expect(await order()).toEqual(['batch/1', 'part/dry-1']);
  });

  test('a prepared surface dies like a pot does: near its end it comes before what waits for somebody (240 min, invented)', async () => {
    await say('mix 6.45kg demo-build', 'prep new bare-1 sa2.5', 'part bare-2');
    expect(await order()).toEqual(['batch/1', 'batch/2', 'part/bare-1', 'part/bare-2']);
    await shop.wait(215);
    expect(await clocks('part/bare-1')).toMatchObject([{ id: 'surface', label: 'Coat before', left: '25 min left' }]);
    expect(await order()).toEqual(['part/bare-1', 'batch/1', 'batch/2', 'part/bare-2']);
    await shop.wait(30);
    expect(await clock('part/bare-1', 'surface')).toMatchObject({ left: 'over for 5 min', tone: 'stop' });
  });

  test('a can without gas rises as its time runs out; under gas again, in doubt, it waits to be looked at', async () => {
    await stirAndFilter();
    await say('coat new late-1 1 brush', 'open A lot 7731 5kg gas');
    // Both are over at once: the can since its 20 minutes, the film since its 15 (common practice, no source).
    await shop.wait(12);
    expect(await order()).toEqual(['part/late-1', 'can/2', 'batch/1']);
    await shop.wait(9);
    expect(await order()).toEqual(['part/late-1', 'can/2', 'batch/1']);
    await say('blanket 2', 'coat new new-1 brush', 'dry late-1');
    await shop.wait(11);
    expect(await order()).toEqual(['part/new-1', 'can/2', 'part/late-1', 'batch/1']);
  });

  test('while the gun runs people are exposed: its session comes before all that only dries, and still it waits', async () => {
    await stirAndFilter();
    await say('coat new soon-1 1 brush', 'brief 1 spray Kari', 'ack 2', 'fan on 0.6m/s', 'supplied yes', 'outside yes');
    await shop.wait(11);
    expect(await order()).toEqual(['part/soon-1', 'session/2', 'batch/1']);
    await say('spray on 2 already');
    expect(await order()).toEqual(['session/2', 'part/soon-1', 'batch/1']);
  });
});

test('what does not fit is counted in either language', () => {
  expect(shipped.wordsIn('en').page.more('37')).toBe('and 37 more');
  expect(shipped.wordsIn('es').page.more('37')).toBe('y 37 más');
});

describe('lists that people read count as people do', () => {
  test.each(['now', 'day', 'trace batch 1'])('%s', async (question) => {
    await stirAndFilter();
    for (const n of [10, 9, 1, 2]) await shop.say('Kari', `coat new plate-${n} 1 brush`);
    const answer = await shop.say('Kari', question);
    const names = JSON.stringify(answer?.card.lines).match(/plate-\d+/g);
    expect([...new Set(names)]).toEqual(['plate-1', 'plate-2', 'plate-9', 'plate-10']);
  });
});
