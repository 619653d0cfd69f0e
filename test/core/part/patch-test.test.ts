// A patch test is summed by the sheet's own patch where the sheet gives one, and stays so whatever the sheet says later.

import { expect, it } from 'vitest';
import { Surface } from '../../../core/products/sheet-surface.ts';
import { demoShelf, given } from '../given.ts';

it('given a sheet with its own patch, then that stands in the event, and what the line says of the water goes before it', async () => {
  const demo = demoShelf.get('demo-clear');
  if (demo?.kind !== 'sheet') throw new Error('no demo sheet');
  const salts = {
    ...{ mostMilligramsPerSquareMetre: 20, source: 'invented for the test' },
    patch: { areaSquareCentimetres: 10, waterMillilitres: 15 },
  };
  const sheet = { ...demo.sheet, surface: { ...demo.sheet.surface, ...Surface.parse({ salts }) } };
  const shift = await given(['08:00 part lid-6'], { shelf: new Map([['demo-clear', { kind: 'sheet', sheet }]]) });
  const saltsNow = async () => (await shift.shop()).parts.get('lid-6')?.prepared?.saltsMilligramsPerSquareMetre;
  await shift.when('08:01 prep lid-6 salts 12uS/cm');
  expect((await shift.events()).at(-1)?.body).toMatchObject({ extractLitres: 0.015, patchSquareCentimetres: 10 });
  // 5 x 15 x 12 / 10
  expect(await saltsNow()).toBeCloseTo(90, 9);
  await shift.when('08:02 prep lid-6 salts 12uS/cm extract 3mL');
  expect(await saltsNow()).toBeCloseTo(18, 9);
});
