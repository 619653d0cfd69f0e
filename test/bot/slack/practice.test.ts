// Practice in Slack: whoever practises reads it alone, the channel and everybody else's phone stay as they are.

import { afterEach, describe, expect, test } from 'vitest';
import { openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
afterEach(() => shop.close());

const whispers = () => shop.fake.whispers.map(({ text }) => text);
const recorded = async () => (await shop.wired.get('crew')?.overview.board('kari'))?.items.length;

async function practising(): Promise<void> {
  shop = await openWorkshop();
  await shop.types('practice on', 'UJO');
}

describe('somebody who practises in Slack', () => {
  test('is led alone: nothing of it stands in the channel or reaches anybody', async () => {
    await practising();
    for (const line of ['air 24C 48%', 'part rail-1', 'mix 2kg', 'weigh 1 1000g 1000g already', 'wait'])
      await shop.types(line, 'UJO');
    expect(whispers().every((text) => text?.includes('PRACTICE'))).toBe(true);
    expect(shop.fake.inChannel('C1')).toEqual([]);
    expect(shop.fake.inChannel('DUKARI')).toEqual([]);
    expect(await recorded()).toBe(0);
  });

  test('goes on by the taps of its cards', async () => {
    await practising();
    await shop.tapsWhisper('Invented: air 24C 48%', 'UJO');
    expect(whispers().at(-1)).toContain('PRACTICE 08:00 · Air, room');
  });

  test('calls the crew by a cry', async () => {
    await practising();
    await shop.types('fire in the booth', 'UJO');
    expect(shop.fake.inChannel('C1').at(-1)?.text).toContain('Fire');
  });

  test('is asked which is meant where the home tab begins a batch; a setting there is the shop’s', async () => {
    await practising();
    await shop.opensHome('UJO');
    await shop.tapsHome('New batch…', 'UJO');
    await shop.fills({ amount: '2.4' }, 'UJO');
    expect(shop.fake.inChannel('DUJO').at(-1)?.text).toContain('For the shop, or for practice?');
    expect(await recorded()).toBe(0);
    await shop.tapsHome('US units', 'UJO');
    expect(JSON.stringify(shop.fake.homes.get('UJO'))).toContain('Units: US.');
    await shop.tapsHome('My settings…', 'UJO');
    await shop.fills({ language: 'es', units: 'us' }, 'UJO');
    expect(JSON.stringify(shop.fake.homes.get('UJO'))).toContain('Usted: jo');
  });

  test('is asked which is meant in the thread of a batch', async () => {
    await practising();
    await shop.types('mix 2.4kg 24C 48%');
    await shop.mentions('weigh 1201g 1198g', shop.batch().ts, 'UJO');
    expect(whispers().at(-1)).toContain('For the shop, or for practice?');
    expect(shop.batch().text).not.toContain('1201');
  });
});
