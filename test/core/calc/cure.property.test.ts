// Heating and cure: there and back, and never sooner than proved.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lumpOfWall, minutesToReach, temperatureAfter } from '../../../core/calc/heating.ts';
import { heatProperties } from '../../../core/calc/metals.ts';
import { type PartReading, piecesFromReadings, provedTime } from '../../../core/calc/part-temperature.ts';
import { celsius, millimetres, minutes } from '../../../core/units.ts';
import { answered } from '../../standards/published-case.ts';
import { minutesIn } from './demo-stir.ts';
import { between, expectClose } from './drawn.ts';

it('given any part in any oven, then after the minutes to reach a target it is there, and a hotter oven is never slower', () => {
  fc.assert(
    fc.property(
      between(0.5, 15),
      between(5, 60),
      between(60, 100),
      between(101, 200),
      between(0, 100),
      (wall, passing, target, air, hotter) => {
        const lump = lumpOfWall(heatProperties.steel, millimetres(wall), 2);
        const oven = { celsius: celsius(air), wattsPerSquareMetreKelvin: passing };
        const taken = answered(minutesToReach(lump, oven, celsius(20), celsius(target)));
        expectClose(answered(temperatureAfter(lump, oven, celsius(20), taken)), target);
        const sooner = minutesToReach(lump, { ...oven, celsius: celsius(air + hotter) }, celsius(20), celsius(target));
        expect(sooner).toBeLessThanOrEqual(taken + 1e-9);
      },
    ),
  );
});

it('given any readings on a part, then what is proved at least never passes what may have been at most', () => {
  let proved = 0;
  const temperature = fc.integer({ min: 80, max: 100 });
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.integer({ min: 1, max: 60 }), temperature), { minLength: 1, maxLength: 10 }),
      temperature,
      (lasting, least) => {
        let at = 0;
        const readings = lasting.map(([later, hot]): PartReading => {
          at += later;
          return { at: minutesIn(at), celsius: celsius(hot) };
        });
        const found = answered(provedTime(readings, celsius(least), minutes(45)));
        const warmAtMost = answered(piecesFromReadings(readings, 'at-most', minutes(45)))
          .filter((piece) => piece.celsius !== undefined && piece.celsius >= least)
          .reduce((sum, piece) => sum + (piece.to - piece.from) / 60_000, 0);
        if (found.totalMinutes > 0) proved += 1;
        expect(found.totalMinutes).toBeLessThanOrEqual(warmAtMost + 1e-9);
        expect(found.longestMinutes).toBeLessThanOrEqual(found.totalMinutes + 1e-9);
        const warmer = answered(provedTime(readings, celsius(least + 1), minutes(45)));
        expect(warmer.totalMinutes).toBeLessThanOrEqual(found.totalMinutes + 1e-9);
      },
    ),
  );
  expect(proved).toBeGreaterThan(20);
});
