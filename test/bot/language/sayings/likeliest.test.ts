// Lines that no phrase accounts for, read by what their words speak for (invented lines; common practice, no source).

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../../bot/language/read-line.ts';
import { shopAtTen, tallerALasDiez } from '../shop-at-ten.ts';

const shop = {
  ...shopAtTen,
  batches: [1, 2],
  parts: ['flange-1', 'flange-2', 'flange-3', 'flange-4'],
  live: () => ({
    parts: [
      { name: 'flange-1', phase: 'bare' as const },
      { name: 'flange-2', phase: 'flashing' as const },
      { name: 'flange-3', phase: 'curing' as const },
      { name: 'flange-4', phase: 'cured' as const },
    ],
    batches: [
      { number: 1, phase: 'filtered' as const, method: 'brush' as const },
      { number: 2, phase: 'to-weigh' as const },
    ],
    cans: [
      { number: 3, isLidOff: true, component: 'A' as const },
      { number: 4, isLidOff: false, component: 'B' as const },
    ],
  }),
};

function offered(line: string): readonly string[] {
  const read = readLine(line, shop);
  return read.kind === 'misread' ? read.misread.suggestions : [`${read.kind}`];
}

describe('a line that no phrase accounts for', () => {
  it.each([
    ['gonna need 900 gram of that, set me up', 'mix 900 gram'],
    ['the pyrometer trained on 3 crawled its merry way to 88C', 'temp flange-3 88C'],
    ['four is a beauty, stamp it and let it go', 'release flange-4'],
    ['scooped the last dribble of 1 into the waste drum', 'empty 1'],
    ['le doy por seca la 2 aunque el dedo brille', 'dry flange-2'],
    ['had 90 on number 3 at twenty to ten', 'temp flange-3 90C at 2026-03-02T09:40'],
    ['Keep number four back, there is a run down the side', 'hold flange-4 "run down the side"'],
    ['keeping 4 back, gel specks near the hub', 'hold flange-4 "gel specks near the hub"'],
  ])('given %s, then %s is a tap', (line, tap) => {
    expect(offered(line)).toContain(tap);
  });

  it.each([
    'nice work on the flanges today',
    'we will scoop the last dribble of 1 into the drum',
    'touched 2, it still isnt dry at all',
    'somebody should tape the thermocouple to 3',
    'the thermocouple on 3 is broken, isnt it?',
    'can 3 is empty',
    'oven is at 90C',
    'my phone is dead',
  ])('given %s, then no act is offered', (line) => {
    expect(offered(line).filter((each) => !/^(?:how|where|who|what|card|why)/.test(each))).toEqual([]);
  });

  it('given an act that is done to other things than it names, then nothing else is made of it', () => {
    expect(offered('three came to 88C on the thermocouple')).not.toContain('surface flange-1 88C');
  });
});

describe('an act whose words are its own all through', () => {
  it.each([
    ['echados 1203 de A y 1199 de B en la mezcla 2', 'weigh 2 1203g 1199g'],
    ['4 has fisheyes all over the hub, park it', 'hold flange-4 "fisheyes all over the hub"'],
    ['2 is bone dry 👍 cheers', 'dry flange-2'],
  ])('given %s, then it is %s', (line, takenAs) => {
    expect(readLine(line, shop)).toMatchObject({ kind: 'command', takenAs });
  });

  it('given a word in the place of a product that nobody knows, then it is asked which', () => {
    expect(readLine('mix glopp 2kg', shop).kind).toBe('misread');
  });
});

describe('an act that is said of a thing behind its word', () => {
  it.each([
    ['the lid on 3 is off', 'lid'],
    ['the lid on the 3 can is off', 'lid'],
    ['the lid on can 3 is back on', 'shut'],
  ])('given %s, then it is %s and never the other', (line, verb) => {
    expect(readLine(line, shop)).toMatchObject({ kind: 'command', command: { verb } });
  });

  it('given a stirrer on a pot that is off, then no stirrer is said to run', () => {
    const read = readLine('the stirrer on 1 is off', shop);
    expect(read).not.toMatchObject({ command: { verb: 'stir' } });
    expect(JSON.stringify(read)).not.toContain('"stir 1"');
  });
});

describe('what is taken without a tap', () => {
  const taken = (line: string): string | undefined => {
    const read = readLine(line, shop);
    return read.kind === 'command' ? read.takenAs : undefined;
  };

  it.each([
    ['thermocouple on 3 says 91 degrees', 'temp flange-3 91C'],
    ['touched 2, it leaves no mark on the glove', 'dry flange-2'],
    ['touched 2 everywhere, it doesnt grab the mitt anymore', 'dry flange-2'],
    ['just checked the wall meter, its 25C in here w 46%', 'air 25C 46%'],
  ])('given %s, where nothing else can be meant as things stand, then it is %s', (line, act) => {
    expect(taken(line)).toBe(act);
  });

  it.each([
    ['four is a beauty, release it and ship it', 'a release is a decision'],
    ['flange-4 looks great, ship it', 'so it is in a phrase for it'],
    ['thermocouple on 1 says 91 degrees', 'flange-1 is in no oven'],
    ['the gun is washed out, acetone and then glimmer', 'the second may be a solvent, too'],
    ['hold back 4, sags all along the rim', 'a reason is the speaker’s own'],
    ['pot 1 has gone gummy on me', 'it may be thick or gelled'],
  ])('given %s, then it is not taken: %s', (line) => {
    expect(taken(line)).toBeUndefined();
  });

  it('given degrees behind a word for how long ago, then no time is heard', () => {
    const read = readLine('hace 24 grados con 46% de humedad', { ...shop, hearing: tallerALasDiez.hearing });
    expect(read).not.toMatchObject({ kind: 'command', command: { verb: 'air', humidity: 46 } });
    expect(JSON.stringify(read)).not.toContain('09:36');
  });
});
