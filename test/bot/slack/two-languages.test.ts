// A crew that speaks English with somebody among them who speaks Spanish: what many read is in the crew's language and
// units, what one reads is in theirs.

import { afterEach, describe, expect, test } from 'vitest';
import { bayTwo, openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
afterEach(() => shop.close());

async function started(): Promise<void> {
  const people = bayTwo.people.map((person) =>
    person.name === 'jo' ? { ...person, language: 'es', units: 'us' } : person,
  );
  shop = await openWorkshop({ crews: [{ crew: 'crew', file: { ...bayTwo, people } }] });
  await shop.types('mix 2.4kg 24C 48%');
}
const inThread = () => shop.fake.inThread(shop.batch().ts).at(-1)?.text ?? '';
const whispered = () => shop.fake.whispers.at(-1)?.text ?? '';

describe('what jo says in Spanish', () => {
  test('stands in the thread in English and is answered to jo in Spanish', async () => {
    await started();
    await shop.types('weigh 1 1201g 1198g', 'UJO');
    expect(inThread()).toContain('Batch 1: A and B together, clocks run');
    expect(inThread()).toContain('Part A: 1201 g');
    expect(inThread()).toContain('Said by jo');
    expect(whispered()).toContain('Mezcla 1');
  });

  test('is objected to in the thread in English: its tap is open to anyone', async () => {
    await started();
    await shop.types('weigh 1 1201g 1198g');
    await shop.types('filter 1', 'UJO');
    expect(inThread()).toContain('Not yet <@UJO>');
    expect(inThread()).toContain('[It already happened]');
  });

  test('of the air is for all in English and Celsius', async () => {
    await started();
    await shop.types('air 22C 50%', 'UJO');
    const said = shop.fake.inChannel('C1').at(-1)?.text;
    expect(said).toContain('Air: 22 °C');
    expect(said).toContain('Said by jo');
  });

  test('directly is answered in Spanish and Fahrenheit', async () => {
    await started();
    await shop.writes('air 22C 50%', 'UJO');
    expect(shop.fake.inChannel('DUJO').at(-1)?.text).toContain('72 °F');
  });

  test('and cannot be read is asked back in Spanish', async () => {
    await started();
    await shop.types('xyzzy plugh', 'UJO');
    expect(whispered()).toContain('No se entiende');
  });
});
