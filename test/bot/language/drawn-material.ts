// Commands about cans, weighing in pieces and pots, drawn at random within what a line can hold.

import fc from 'fast-check';
import type { Command } from '../../../core/commands.ts';
import { components } from '../../../core/components.ts';
import { filteredIntos, filterMaterials } from '../../../core/filters.ts';
import { checkResults, instrumentKinds } from '../../../core/instrument-kinds.ts';
import { askedSteps } from '../../../core/steps/step-rows.ts';
import { epochMs, grams, litres, micrometres, percent, revolutionsPerMinute } from '../../../core/units.ts';
import type { Amendment, AmendTarget } from '../../../core/verbs/correction-verbs.ts';
import { vesselMaterials } from '../../../core/vessels.ts';
import { utc } from './shop-at-ten.ts';

const only = <V extends string>(verb: V) => fc.constant(verb);
const mass = fc
  .oneof(fc.integer({ min: 1, max: 1_000_000 }), fc.double({ min: 0.001, max: 1000, noNaN: true }))
  .map(grams);
const volume = fc.integer({ min: 1, max: 900 }).map((value) => litres(value / 4));
const number = fc.integer({ min: 1, max: 1_000_000 });
const cans = fc.uniqueArray(number, { minLength: 1, maxLength: 3 });
const component = fc.constantFrom(...components);
const lot = fc.oneof(
  fc.stringMatching(/^[A-Z0-9][A-Z0-9/-]{0,9}$/),
  fc.constantFrom('9:40', '2026-12-31', '12kg', 'two words', 'whole', 'a "b" \\c', '7731'),
);
const day = fc
  .record({
    year: fc.integer({ min: 2026, max: 2039 }),
    month: fc.integer({ min: 1, max: 12 }),
    date: fc.integer({ min: 1, max: 28 }),
  })
  .map(({ year, month, date }) => `${year}-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`);
const at = fc.integer({ min: utc('2024-01-01T00:00'), max: utc('2026-03-02T10:00') }).map(epochMs);
const why = fc.constantFrom('gelled in the can', 'permit at 9:40', 'a "brick"', 'can 3 at 9:40 already');
const handling = fc.constantFrom('gas', 'whole');
const rpm = fc.integer({ min: 10, max: 30_000 }).map(revolutionsPerMinute);
const filterTold = {
  filterMicrometres: fc.integer({ min: 1, max: 4000 }).map((value) => micrometres(value / 4)),
  filterOf: fc.constantFrom(...filterMaterials),
  filteredInto: fc.constantFrom(...filteredIntos),
};
const ofCan = <V extends 'blanket' | 'check' | 'prestir'>(verb: V) =>
  fc.record({ verb: only(verb), can: number }, { requiredKeys: ['verb'] });

export const drawnMaterial: fc.Arbitrary<Command> = fc.oneof(
  fc.record(
    {
      ...{ verb: only('weigh'), batch: number, cans, handling, partAGrams: mass, partBGrams: mass },
      instrument: only('scale-1'),
    },
    { requiredKeys: ['verb', 'partAGrams', 'partBGrams'] },
  ),
  fc.record(
    { verb: only('weigh'), batch: number, cans, handling, partAGrams: mass },
    { requiredKeys: ['verb', 'partAGrams'] },
  ),
  fc.record(
    { verb: only('weigh'), batch: number, cans, handling, partBGrams: mass },
    { requiredKeys: ['verb', 'partBGrams'] },
  ),
  fc.record(
    {
      ...{ verb: only('instrument'), name: fc.constantFrom('gauge-2', 'bench-scale') },
      ...{ kind: fc.constantFrom(...instrumentKinds), due: day, retired: fc.constant(true as const) },
    },
    { requiredKeys: ['verb', 'name'] },
  ),
  fc.record(
    {
      ...{ verb: only('calibrated'), name: fc.constantFrom('gauge-2', 'bench-scale') },
      ...{ result: fc.constantFrom(...checkResults), next: day },
    },
    { requiredKeys: ['verb', 'name', 'result'] },
  ),
  fc.record({ verb: only('recall'), lot, component, why }, { requiredKeys: ['verb', 'lot', 'why'] }),
  fc.record({ verb: only('recall-over'), lot, component, why }, { requiredKeys: ['verb', 'lot', 'why'] }),
  fc.record(
    {
      ...{ verb: only('received'), component, lot, grams: mass, expires: day },
      ...{ count: fc.integer({ min: 1, max: 10_000 }), sheet: fc.constantFrom('demo-clear', 'demo-build') },
    },
    { requiredKeys: ['verb', 'component', 'lot', 'grams'] },
  ),
  fc.record({ verb: only('drawn'), batch: number, component, cans }, { requiredKeys: ['verb', 'component', 'cans'] }),
  fc.record(
    { verb: only('add'), batch: number, component, grams: mass, cans, handling },
    { requiredKeys: ['verb', 'component', 'grams'] },
  ),
  fc.record(
    {
      ...{ verb: only('open'), component, lot, grams: mass, litres: volume, expires: day },
      sheet: fc.constantFrom('demo-clear', 'demo-build'),
      handling,
    },
    { requiredKeys: ['verb', 'component', 'lot', 'grams'] },
  ),
  fc.record(
    { verb: only('open'), component, lot, litres: volume, expires: day },
    { requiredKeys: ['verb', 'component', 'lot', 'litres'] },
  ),
  fc.record({ verb: fc.constantFrom('lid', 'shut'), can: number, handling }, { requiredKeys: ['verb'] }),
  ofCan('blanket'),
  ofCan('check'),
  ofCan('prestir'),
  fc.record({ verb: only('prestir'), can: number, handling, revolutionsPerMinute: rpm }, { requiredKeys: ['verb'] }),
  fc.record({ verb: only('stir'), batch: number, revolutionsPerMinute: rpm }, { requiredKeys: ['verb'] }),
  fc.record({ verb: only('filter'), batch: number, ...filterTold }, { requiredKeys: ['verb'] }),
  fc.record({ verb: only('discard'), can: number, why }),
  fc.record({ verb: fc.constantFrom('cover', 'uncover'), batch: number }, { requiredKeys: ['verb'] }),
  fc.record({ verb: only('catch'), batch: number, grams: mass }, { requiredKeys: ['verb', 'grams'] }),
  fc.record(
    {
      verb: only('mix'),
      amount: fc.record({ kind: only('mass'), grams: mass }),
      vesselLitres: volume,
      vesselOf: fc.constantFrom(...vesselMaterials),
    },
    { requiredKeys: ['verb', 'amount'] },
  ),
  fc.record(
    { verb: only('confirm'), batch: number, step: fc.constantFrom(...askedSteps), kept: fc.boolean() },
    { requiredKeys: ['verb', 'step', 'kept'] },
  ),
  // A figure is told of a bottle alone.
  fc.record(
    {
      verb: only('confirm'),
      batch: number,
      step: only('alcohol'),
      kept: fc.boolean(),
      purityPercent: fc.integer({ min: 1, max: 400 }).map((value) => percent(value / 4)),
    },
    { requiredKeys: ['verb', 'step', 'kept'] },
  ),
);

export const drawnMaterialAmendment: fc.Arbitrary<[AmendTarget, Amendment]> = fc.oneof(
  fc
    .tuple(
      fc.constantFrom('lid' as const, 'blanket' as const, 'check' as const, 'prestir' as const, 'discard' as const),
      at,
      number,
    )
    .map(([verb, when, can]): [AmendTarget, Amendment] => [{ verb, can }, { at: when }]),
  fc.tuple(mass, number).map(([weight, can]): [AmendTarget, Amendment] => [{ verb: 'open', can }, { grams: weight }]),
  fc.tuple(lot, day, number).map(([lot, expires, can]): [AmendTarget, Amendment] => [
    { verb: 'open', can },
    { lot, expires },
  ]),
  lot.map((lot): [AmendTarget, Amendment] => [{ verb: 'received' }, { lot }]),
  fc
    .tuple(fc.constantFrom('add' as const, 'catch' as const), mass, number)
    .map(([verb, weight, batch]): [AmendTarget, Amendment] => [{ verb, batch }, { grams: weight }]),
);
