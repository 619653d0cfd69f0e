// How long a part still warms, by the pace of two of its own readings: the lumped law (Incropera, ch. 5) with the time
// constant that they show.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lumpOfWall, minutesToReach, minutesToReachByPace, temperatureAfter } from '../../../core/calc/heating.ts';
import { heatProperties } from '../../../core/calc/metals.ts';
import { isFailed } from '../../../core/failed.ts';
import { celsius, millimetres, minutes } from '../../../core/units.ts';

const oven = { celsius: celsius(95), wattsPerSquareMetreKelvin: 10 };
const target = celsius(90);

function warmed(wall: number, start: number, after: number): number {
  const lump = lumpOfWall(heatProperties['cast-iron'], millimetres(wall), 2);
  const read = temperatureAfter(lump, oven, celsius(start), minutes(after));
  if (isFailed(read)) throw new Error(JSON.stringify(read));
  return read;
}

const drawn = {
  wall: fc.double({ min: 2, max: 40, noNaN: true }),
  start: fc.double({ min: 10, max: 30, noNaN: true }),
  first: fc.double({ min: 0, max: 30, noNaN: true }),
  apart: fc.double({ min: 2, max: 30, noNaN: true }),
};

describe('the pace of two readings', () => {
  it('given readings of a part that warms as one lump, then it comes up when metal and wall say', () => {
    fc.assert(
      fc.property(fc.record(drawn), ({ wall, start, first, apart }) => {
        const earlier = celsius(warmed(wall, start, first));
        const later = celsius(warmed(wall, start, first + apart));
        fc.pre(later < target);
        const lump = lumpOfWall(heatProperties['cast-iron'], millimetres(wall), 2);
        const byMetal = minutesToReach(lump, oven, later, target);
        const byPace = minutesToReachByPace({ earlier, later, apart: minutes(apart) }, oven.celsius, target);
        if (isFailed(byMetal) || isFailed(byPace)) throw new Error('neither is refused');
        expect(byPace).toBeCloseTo(byMetal, 4);
      }),
    );
  });

  it('given the later reading is the warmer one, then what is left is shorter; below the air it is never negative', () => {
    const temperature = fc.double({ min: 10, max: 89, noNaN: true });
    fc.assert(
      fc.property(temperature, temperature, temperature, (a, b, c) => {
        const [coldest = 0, middle = 0, warmest = 0] = [a, b, c].toSorted((x, y) => x - y);
        fc.pre(middle - coldest > 0.1 && warmest - middle > 0.1);
        const left = (later: number) =>
          minutesToReachByPace(
            { earlier: celsius(coldest), later: celsius(later), apart: minutes(10) },
            oven.celsius,
            target,
          );
        const [slow, fast] = [left(middle), left(warmest)];
        if (isFailed(slow) || isFailed(fast)) throw new Error('neither is refused');
        expect(fast).toBeLessThan(slow);
        expect(fast).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it.each([
    ['it stood still', 40, 40],
    ['it cooled', 60, 40],
    ['it was hotter than the oven', 97, 96],
  ])('given %s, then there is no pace to go by', (_, earlier, later) => {
    const read = { earlier: celsius(earlier), later: celsius(later), apart: minutes(10) };
    expect(minutesToReachByPace(read, oven.celsius, target)).toMatchObject({ failed: 'does-not-apply' });
  });

  it('given a target at the air’s own temperature, then it is never reached', () => {
    const read = { earlier: celsius(40), later: celsius(60), apart: minutes(10) };
    expect(minutesToReachByPace(read, celsius(90), target)).toMatchObject({ failed: 'never-reached' });
  });
});
