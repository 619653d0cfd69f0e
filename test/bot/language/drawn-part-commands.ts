// Commands about surfaces, doors, tests of the film and people, drawn at random within what a line can hold.

import fc from 'fast-check';
import { solventIds } from '../../../core/calc/solvents.ts';
import type { Command } from '../../../core/commands.ts';
import { breaks, looks, pencils } from '../../../core/film-tests.ts';
import {
  adhesionRatings,
  contaminants,
  grits,
  prepWays,
  rubResults,
  surfaceGrades,
  waterBreaks,
} from '../../../core/grades.ts';
import {
  litresFromMillilitres,
  megapascals,
  micrometres,
  microsiemensPerCentimetre,
  milligramsPerSquareMetre,
  minutes,
  volts,
} from '../../../core/units.ts';

interface Draws {
  readonly only: <V extends string>(verb: V) => fc.Arbitrary<V>;
  readonly part: fc.Arbitrary<string>;
  readonly parts: fc.Arbitrary<string[]>;
  readonly figure: (min: number, max: number) => fc.Arbitrary<number>;
}

export function partAndPeopleCommands({ only, part, parts, figure }: Draws): readonly fc.Arbitrary<Command>[] {
  /** A part that is called like a grade or a grit would have to be quoted. */
  const gradeless = parts.filter((names) => names.every((name) => !/^s[apt]|^p\d/.test(name)));
  const tested = part.filter((name) => name !== 'coupon' && name !== 'witness');
  const coupon = fc.constant(true as const);
  return [
    fc.record(
      {
        verb: only('prep'),
        parts: gradeless,
        grade: fc.constantFrom(...surfaceGrades),
        removed: fc.subarray([...contaminants], { minLength: 1 }),
        solvents: fc.subarray([...solventIds], { minLength: 1, maxLength: 2 }),
        prepWays: fc.subarray([...prepWays], { minLength: 1 }),
        grit: fc.constantFrom(...grits),
        profileMicrometres: figure(1, 1000).map(micrometres),
        saltsMilligramsPerSquareMetre: fc.integer({ min: 0, max: 9999 }).map(milligramsPerSquareMetre),
        saltsMicrosiemensPerCentimetre: fc.integer({ min: 0, max: 9999 }).map(microsiemensPerCentimetre),
        extractLitres: fc.integer({ min: 1, max: 20 }).map((water) => litresFromMillilitres(water)),
        dustRating: fc.integer({ min: 0, max: 5 }),
        dustSize: fc.integer({ min: 0, max: 5 }),
        waterBreak: fc.constantFrom(...waterBreaks),
        asNew: fc.constant(true as const),
      },
      { requiredKeys: ['verb', 'parts', 'grade'] },
    ),
    fc.record(
      { verb: only('door'), parts: fc.oneof(parts, fc.constant([])), openMinutes: figure(0.1, 240).map(minutes) },
      { requiredKeys: ['verb', 'parts'] },
    ),
    fc.record(
      { verb: only('adhesion'), part: tested, rating: fc.constantFrom(...adhesionRatings), coupon },
      { requiredKeys: ['verb', 'part', 'rating'] },
    ),
    fc.record(
      {
        ...{ verb: only('rub'), part: tested, doubleRubs: fc.integer({ min: 1, max: 1000 }) },
        ...{ result: fc.constantFrom(...rubResults), coupon },
      },
      { requiredKeys: ['verb', 'part', 'doubleRubs', 'result'] },
    ),
    fc.record(
      {
        ...{ verb: only('pull-off'), part: tested, coupon },
        ...{ megapascals: figure(0, 100).map(megapascals), brokeAt: fc.constantFrom(...breaks) },
      },
      { requiredKeys: ['verb', 'part', 'megapascals'] },
    ),
    fc.record(
      { verb: only('gloss'), part: tested, glossUnits: figure(0, 2000), coupon },
      { requiredKeys: ['verb', 'part', 'glossUnits'] },
    ),
    fc.record(
      { verb: only('hardness'), part: tested, pencil: fc.constantFrom(...pencils), coupon },
      { requiredKeys: ['verb', 'part', 'pencil'] },
    ),
    fc.record(
      {
        ...{ verb: only('holidays'), part: tested, found: fc.integer({ min: 0, max: 10_000 }) },
        ...{ volts: figure(1, 60_000).map(volts), coupon },
      },
      { requiredKeys: ['verb', 'part', 'found'] },
    ),
    fc.record(
      {
        ...{ verb: only('visual'), part: tested, coupon },
        looks: fc.uniqueArray(fc.constantFrom(...looks), { minLength: 1, maxLength: 3 }),
      },
      { requiredKeys: ['verb', 'part', 'looks'] },
    ),
    fc.record(
      {
        verb: only('snooze'),
        minutes: figure(1, 60).map(minutes),
        key: fc.constantFrom('part/impeller-7/cure-done', 'batch/12/pot-half', 'place/room/air-due', 'crew/handover'),
      },
      { requiredKeys: ['verb', 'minutes'] },
    ),
    fc.record({
      verb: only('remind'),
      minutes: figure(1, 720).map(minutes),
      text: fc.constantFrom('', 'check the gun', 'permit at 9:40 already', 'a "green" one', '2l acetone'),
    }),
    fc.record({ verb: only('shift'), on: fc.boolean() }),
    fc.record({ verb: only('handover'), to: fc.constantFrom('kari', 'omar', 'rosa', 'mary ann', 'jean-luc') }),
    fc.record({ verb: only('takeover') }),
    fc.record({ verb: only('first-shift') }),
    fc.record({ verb: only('first-shift-done'), person: fc.constantFrom('kari', 'mary ann', 'jean-luc') }),
    fc.record(
      { verb: only('first-shift-off'), person: fc.constantFrom('kari', 'mary ann', 'jean-luc') },
      { requiredKeys: ['verb'] },
    ),
  ];
}
