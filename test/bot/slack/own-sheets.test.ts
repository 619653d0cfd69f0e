// A crew with sheets of its own: what the home tab, its forms and a typed line offer, and what they mix.

import { afterEach, describe, expect, test } from 'vitest';
import { ownSheet, shelfWith } from '../../core/products/own-sheets.ts';
import { openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
afterEach(() => shop.close());

const home = () => JSON.stringify(shop.fake.homes.get('UKARI')?.blocks);
const form = () => JSON.stringify([...shop.fake.views.values()].at(-1)?.blocks);
const one = { 'own-top.json': ownSheet('own-top') };
const two = { ...one, 'own-base.json': ownSheet('own-base') };

describe('a crew with one sheet of its own', () => {
  test('a new batch from the home tab is of its own product', async () => {
    shop = await openWorkshop({ shelf: shelfWith(one) });
    await shop.types('air 24C 48%');
    await shop.opensHome();
    await shop.tapsHome('New batch…');
    await shop.fills({ amount: '6.65' });
    expect(shop.batch().text).toContain('Invented own-top');
    // 4 : 1 by volume, 1.42 and 0.97 kg/L: 6.65 kg are 5 L.
    expect(shop.batch().text).toContain('5680 g');
  });

  test('neither the home tab nor the set-up names the demo’s products', async () => {
    shop = await openWorkshop({ shelf: shelfWith(one) });
    await shop.opensHome();
    expect(home()).toContain('Sheet: own-top.');
    expect(home()).not.toMatch(/demo/i);
    await shop.tapsHome('Set up the crew…');
    expect(form()).toContain('own-top');
    expect(form()).not.toMatch(/demo-/i);
  });
});

describe('a crew with several', () => {
  test('has a tap for a new batch of each, and none that leaves open which', async () => {
    shop = await openWorkshop({ shelf: shelfWith(two) });
    await shop.types('air 24C 48%');
    await shop.opensHome();
    expect(home()).toContain('Sheet: none is the usual one.');
    expect(home()).not.toMatch(/demo/i);
    await shop.tapsHome('Set up the crew…');
    expect(form()).toContain('own-top');
    expect(form()).not.toMatch(/demo-/i);
    await shop.tapsHome('New batch… own-base');
    await shop.fills({ amount: '2' });
    expect(shop.batch().text).toContain('Invented own-base');
  });

  test('is asked by a tap each where a line names none', async () => {
    shop = await openWorkshop({ shelf: shelfWith(two) });
    await shop.types('air 24C 48%');
    await shop.types('mix 5L');
    await shop.tapsWhisper('You meant own-top');
    expect(shop.batch().text).toContain('Invented own-top');
  });
});
