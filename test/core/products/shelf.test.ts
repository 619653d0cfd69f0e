// A shop's own sheets beside the demo's invented products: what is meant where nobody names one, what is offered, and what
// a faulty file is answered with.

import { describe, expect, it } from 'vitest';
import { figuresFor } from '../../../bot/language/figures.ts';
import { englishSheetProblem } from '../../../bot/language/tongues/english/sheet-problems.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import type { Store } from '../../../core/ports.ts';
import { demoSheetIds, offeredSheets } from '../../../core/products/shelf.ts';
import { faultsOf } from '../../../core/store/sheet-files.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { epochMs } from '../../../core/units.ts';
import { demoShelf, given } from '../given.ts';
import { ownSheet, shelfWith } from './own-sheets.ts';

const air = '08:00 air 24C 48%';
const one = { 'own-top.json': ownSheet('own-top') };
const two = { ...one, 'own-base.json': ownSheet('own-base') };
const broken = { 'own-top.json': '{ no' };

/** A record from before the shop had sheets of its own: these lines were said at eight. */
async function earlier(lines: readonly string[], shelf = demoShelf): Promise<Store> {
  const store = openSqliteStore(':memory:');
  await given(
    lines.map((line) => `08:00 @rosa: ${line}`),
    { store, shelf },
  );
  return store;
}

/** By which sheet the last batch was opened. */
async function mixedBy(shift: Awaited<ReturnType<typeof given>>): Promise<string | undefined> {
  return (await shift.events()).flatMap(({ body }) => (body.type === 'BatchOpened' ? [body.sheet.id] : [])).at(-1);
}

describe('a shop with no sheet of its own', () => {
  it('given the demo’s, then each can be read and is invented, and the first of them is the usual one', async () => {
    expect(faultsOf(demoShelf)).toEqual([]);
    expect([...demoShelf.keys()].sort()).toEqual([...demoSheetIds].sort());
    expect([...demoShelf.values()].every((read) => read.kind === 'sheet' && read.sheet.invented)).toBe(true);
    expect(await mixedBy(await given([air, '08:00 mix 2.4kg']))).toBe('demo-clear');
    expect(await mixedBy(await given([air, '08:00 mix 2.4kg build']))).toBe('demo-build');
  });
});

describe('a shop with one sheet of its own', () => {
  it('given nobody names a product, then the own one is mixed, in its own proportions', async () => {
    const shift = await given([air, '08:00 mix 5L'], { shelf: shelfWith(one) });
    expect(await mixedBy(shift)).toBe('own-top');
    const opened = (await shift.events()).flatMap(({ body }) => (body.type === 'BatchOpened' ? [body] : []));
    // 4 L x 1.42 kg/L + 1 L x 0.97 kg/L.
    expect(opened[0]?.plannedGrams).toBeCloseTo(5680 + 970, 6);
  });

  it('given a can is opened without a product, then it is the own one’s', async () => {
    const shift = await given([air, '08:00 open A lot 7731 5kg gas'], { shelf: shelfWith(one) });
    const cans = (await shift.events()).flatMap(({ body }) => (body.type === 'CanOpened' ? [body.sheet.id] : []));
    expect(cans).toEqual(['own-top']);
  });

  it('given a part of a demo’s name, then it brings nothing; the full name brings the demo', async () => {
    const shift = await given([air], { shelf: shelfWith(one) });
    for (const name of ['clear', 'demo', 'build', 'demo-c']) {
      expect(await shift.when(`08:01 mix 1kg ${name}`), name).toEqual({ misread: 'unknown-sheet' });
    }
    expect(await shift.when('08:02 mix 1kg Demo Clear')).toEqual({ recorded: ['BatchOpened'] });
    expect(await mixedBy(shift)).toBe('demo-clear');
    expect(await shift.when('08:03 mix 1kg demo-build')).toEqual({ recorded: ['BatchOpened'] });
    expect(await mixedBy(shift)).toBe('demo-build');
  });

  it('given the lists and forms, then they name the own one alone', () => {
    expect(offeredSheets(shelfWith(one))).toEqual(['own-top']);
  });
});

describe('a shop with several sheets of its own', () => {
  it('given nobody names a product, then it is asked which, and nothing is recorded', async () => {
    const shift = await given([air], { shelf: shelfWith(two) });
    for (const line of ['mix 5L', 'open A lot 7731 5kg gas', 'brief kari']) {
      expect(await shift.when(`08:01 ${line}`), line).toEqual({ unclear: 'which-sheet' });
    }
    expect((await shift.events()).map(({ body }) => body.type)).toEqual(['AirRead']);
  });

  it('given one is set as the usual one, then that is mixed', async () => {
    const lines = [air, '08:00 @rosa: set sheet own-base', '08:01 mix 5L'];
    expect(await mixedBy(await given(lines, { shelf: shelfWith(two) }))).toBe('own-base');
  });

  it('given a part to be coated, then by whichever of them it may wait the shortest', async () => {
    const waits = (minutes: number) => ({ surfaceLife: { kind: 'plain', minutes, source: 'invented for the tests' } });
    const shelf = shelfWith({
      'own-long.json': ownSheet('own-long', waits(480)),
      'own-short.json': ownSheet('own-short', waits(120)),
    });
    const shift = await given([air, '08:00 part rail-2', '08:00 prep rail-2 sa2.5'], { shelf });
    const ends = Object.entries(await shift.plan()).filter(([key]) => key.startsWith('part/rail-2/surface'));
    expect(ends.map(([, at]) => at).sort()[0]).toMatch(/^(?:09:[3-5]\d|10:00)/);
  });
});

describe('a usual product that was set before the shop had sheets of its own', () => {
  it('given the demo was set, then with an own one beside it is asked', async () => {
    const store = await earlier(['set sheet demo-clear']);
    const shift = await given(['08:01 air 24C 48%'], { shelf: shelfWith(one), store });
    expect(await shift.when('08:02 mix 2.4kg')).toEqual({ unclear: 'which-sheet' });
  });

  it('given a batch that runs by the demo, then it goes on by it', async () => {
    const store = await earlier(['air 24C 48%', 'mix 2.4kg', 'weigh 1 1201g 1198g']);
    const shift = await given([], { shelf: shelfWith(one), store });
    expect(await shift.when('09:43 filter 1')).toEqual({ recorded: ['MixFiltered'] });
    expect(await shift.deviations()).toEqual([]);
  });

  it('given somebody would set the demo as the usual one beside an own one, then it is asked which of their own', async () => {
    const shift = await given([air], { shelf: shelfWith(one) });
    expect(await shift.when('08:01 @rosa: set sheet demo-clear')).toEqual({ unclear: 'which-sheet' });
  });
});

describe('a sheet of the shop’s own that cannot be used', () => {
  it.each([
    ['that does not parse', broken, 'own-top.json', 'not JSON'],
    ['with an impossible figure', { 'own-top.json': ownSheet('own-top', { methods: [] }) }, 'own-top.json', 'methods'],
    ['under another id than its file’s', { 'own-top.json': ownSheet('other') }, 'own-top.json', 'id'],
    ['that would replace a demo', { 'demo-clear.json': ownSheet('demo-clear') }, 'demo-clear.json', 'id'],
    ['with a demo’s name', { 'own-top.json': ownSheet('own-top', { name: 'Demo clear' }) }, 'own-top.json', 'name'],
    ['in a folder that holds none', {}, '--sheets', 'NAME.json'],
  ])('given one %s, then nothing is mixed in its place, and file and fault are told', async (_, files, file, fault) => {
    const shelf = shelfWith(files);
    expect(
      faultsOf(shelf)
        .map((each) => `${each.file} ${each.field} ${englishSheetProblem(each.problem)}`)
        .join(),
    ).toContain(fault);
    const shift = await given([air], { shelf });
    expect(await shift.when('08:01 mix 2.4kg')).toEqual({ unclear: 'which-sheet' });
    expect(shift.asked()).toMatchObject({ known: [], faults: [{ file }] });
    expect((await shift.events()).map(({ body }) => body.type)).toEqual(['AirRead']);
  });

  it('given faults of every kind, then a Spanish speaker reads of each in Spanish', () => {
    const figures = JSON.parse(ownSheet('own-top'));
    const files = [
      { 'own-top.json': '{ no' },
      { 'own-top.json': ownSheet('other') },
      { 'demo-clear.json': ownSheet('demo-clear') },
      { 'own-top.json': ownSheet('own-top', { name: 'Demo Clear' }) },
      { 'own-top.json': ownSheet('own-top', { methods: ['hose'], potLife: {}, name: 7, colour: 'red', id: 'X' }) },
      { 'own-top.json': ownSheet('own-top', { ratio: { ...figures.ratio, partsB: -1 }, revision: '', methods: [] }) },
      {
        'own-top.json': ownSheet('own-top', { flashOff: { ...figures.flashOff, leastMinutes: 9_999, mostMinutes: 1 } }),
      },
      { 'own-top.json': ownSheet('own-top', { air: { ...figures.air, highestRelativeHumidityPercent: 101 } }) },
      {},
    ];
    const faults = files.flatMap((each) => faultsOf(shelfWith(each)));
    expect(new Set(faults.map(({ problem }) => problem.is))).toEqual(
      new Set([
        ...['not-json', 'not-files-id', 'demos-own', 'one-of', 'missing', 'other-kind', 'unknown-fields', 'wrong'],
        ...['too-low', 'too-high', 'broken', 'no-files'],
      ]),
    );
    const f = figuresFor({ profile: shipped.profileOf('es', 'metric'), units: 'metric', zone: 'UTC', now: epochMs(0) });
    for (const fault of faults) {
      const told = shipped.wordsIn('es').unclear({ code: 'sheet-faulty', sheet: 'own-top', faults: [fault] }, f);
      expect(told).not.toMatch(/\b(?:must|the|expected|received|invalid|missing|not|SyntaxError)\b/i);
    }
  });

  it('given a file that would replace the demo, then its full name brings neither', async () => {
    const shift = await given([air], { shelf: shelfWith({ 'demo-clear.json': ownSheet('demo-clear') }) });
    expect(await shift.when('08:01 mix 2.4kg demo-clear')).toEqual({ unclear: 'sheet-faulty' });
  });

  it('given a readable one beside, then neither is taken by itself: it is asked, and the fault told', async () => {
    const shift = await given([air], { shelf: shelfWith({ ...broken, 'own-base.json': ownSheet('own-base') }) });
    expect(await shift.when('08:01 mix 5L')).toEqual({ unclear: 'which-sheet' });
    expect(shift.asked()).toMatchObject({ known: ['own-base'], faults: [{ file: 'own-top.json' }] });
    expect(await shift.when('08:01 mix 5L own-top')).toEqual({ unclear: 'sheet-faulty' });
    expect(await shift.when('08:02 mix 5L own-base')).toEqual({ recorded: ['BatchOpened'] });
  });

  it('given the usual one is gone from the folder, then no other stands in for it', async () => {
    const store = await earlier(['set sheet own-base'], shelfWith(two));
    const shift = await given(['08:01 air 24C 48%'], { shelf: shelfWith(one), store });
    expect(await shift.when('08:02 mix 5L')).toEqual({ unclear: 'no-such-sheet' });
  });
});
