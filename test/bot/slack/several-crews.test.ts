// Somebody of two crews: what lies before them is one crew's, and a tap on it is for that crew, wherever they last spoke.

import { afterEach, describe, expect, test } from 'vitest';
import { bayTwo, openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
afterEach(() => shop.close());

const mia = { name: 'mia', role: 'lead', slack: 'UMIA', rings: 'direct' };
const two = {
  crews: [
    { crew: 'bay-2', file: { ...bayTwo, people: [mia] } },
    { crew: 'bay-3', file: { ...bayTwo, name: 'bay 3 (invented)', people: [mia], slackChannels: ['C3'] } },
  ],
};
const recordedBy = async (crew: string) => (await shop.store.eventsAfter(crew, 0)).map(({ body }) => body.type);

async function aBatchInEach(): Promise<void> {
  shop = await openWorkshop(two);
  for (const channel of ['C1', 'C3']) {
    await shop.types('mix 2.4kg 24C 48%', 'UMIA', channel);
    await shop.types('weigh 1 1201g 1198g', 'UMIA', channel);
  }
}

describe('somebody of two crews', () => {
  test('who taps one crew’s bell in a direct message acts for that crew', async () => {
    await aBatchInEach();
    await shop.passes(103);
    const [ofTwo] = shop.fake
      .inChannel('DUMIA')
      .filter(({ text, key }) => text.includes('stirring done') && key?.startsWith('bay-2/'));
    if (ofTwo === undefined) throw new Error('no bell rang');
    await shop.types('now', 'UMIA', 'C3');
    await shop.taps(ofTwo, 'Filtered, 1 µm glass fibre, second vessel', 'UMIA');
    expect(shop.batch('C1').text).toContain('mia: filtered');
    expect(shop.batch('C3').text).not.toContain('filtered');
  });

  test('who fills in a form from a home tab acts for the crew whose home it is', async () => {
    shop = await openWorkshop(two);
    await shop.types('air 24C 48%', 'UMIA', 'C1');
    await shop.opensHome('UMIA');
    await shop.types('air 24C 48%', 'UMIA', 'C3');
    await shop.tapsHome('New batch…', 'UMIA');
    await shop.types('now', 'UMIA', 'C3');
    await shop.fills({ amount: '2.4' }, 'UMIA');
    expect(await recordedBy('bay-2')).toContain('BatchOpened');
    expect(await recordedBy('bay-3')).not.toContain('BatchOpened');
  });

  test('who sets something up from a home tab sets up the crew whose home it is', async () => {
    shop = await openWorkshop(two);
    await shop.types('air 24C 48%', 'UMIA', 'C1');
    await shop.opensHome('UMIA');
    await shop.types('air 24C 48%', 'UMIA', 'C3');
    await shop.tapsHome('Set up the crew…', 'UMIA');
    await shop.types('now', 'UMIA', 'C3');
    await shop.fills({ crew: 'Bay of two' }, 'UMIA');
    expect((await shop.wired.get('bay-2')?.overview.crew())?.name).toBe('Bay of two');
    expect((await shop.wired.get('bay-3')?.overview.crew())?.name).toBe('bay 3 (invented)');
  });

  test('who taps on an answer in a direct message means the crew that answered', async () => {
    shop = await openWorkshop(two);
    await shop.types('now', 'UMIA', 'C1');
    await shop.writes('airr 24C 48%', 'UMIA');
    const misread = shop.fake.inChannel('DUMIA').at(-1);
    await shop.types('now', 'UMIA', 'C3');
    if (misread === undefined) throw new Error('nothing was answered');
    await shop.taps(misread, 'Air 24 °C 48 %', 'UMIA');
    expect([await recordedBy('bay-2'), await recordedBy('bay-3')]).toEqual([['AirRead'], []]);
  });
});
