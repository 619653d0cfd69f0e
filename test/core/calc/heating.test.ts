// How a part warms in an oven. The published examples are among the standards.

import { describe, expect, it } from 'vitest';
import { biotNumber, lumpOfWall, minutesToReach, temperatureAfter, timeConstant } from '../../../core/calc/heating.ts';
import { heatProperties } from '../../../core/calc/metals.ts';
import { celsius, metres, millimetres, minutes } from '../../../core/units.ts';
import { answered } from '../../standards/published-case.ts';

const oven = { celsius: celsius(100), wattsPerSquareMetreKelvin: 25 };
const sixMillimetres = lumpOfWall(heatProperties.steel, millimetres(6), 2);

describe('a part warming in an oven', () => {
  it('given one time constant, then it has come 63 % of the way', () => {
    const tau = answered(timeConstant(sixMillimetres, oven));
    expect(temperatureAfter(sixMillimetres, oven, celsius(20), tau)).toBeCloseTo(100 - 80 / Math.E, 9);
    expect(temperatureAfter(sixMillimetres, oven, celsius(20), minutes(0))).toBe(20);
  });

  it('given a wall heated on one face, then it takes twice as long as on both', () => {
    const oneFace = lumpOfWall(heatProperties.steel, millimetres(6), 1);
    const both = answered(minutesToReach(sixMillimetres, oven, celsius(20), celsius(90)));
    expect(minutesToReach(oneFace, oven, celsius(20), celsius(90))).toBeCloseTo(2 * both, 9);
  });

  it("given a part at its target, then no time; given a target away from the oven's warmth, then never", () => {
    expect(minutesToReach(sixMillimetres, oven, celsius(90), celsius(90))).toBe(0);
    expect(minutesToReach(sixMillimetres, oven, celsius(90), celsius(80))).toMatchObject({ failed: 'never-reached' });
    expect(minutesToReach(sixMillimetres, { ...oven, celsius: celsius(20) }, celsius(20), celsius(90))).toMatchObject({
      failed: 'never-reached',
      given: 90,
      limit: 20,
    });
  });

  it("given a part cooling in a room, then it never falls to the room's own temperature", () => {
    const room = { ...oven, celsius: celsius(20) };
    const cooling = answered(minutesToReach(sixMillimetres, room, celsius(90), celsius(40)));
    expect(temperatureAfter(sixMillimetres, room, celsius(90), cooling)).toBeCloseTo(40, 9);
    expect(minutesToReach(sixMillimetres, room, celsius(90), celsius(20))).toMatchObject({ failed: 'never-reached' });
  });

  it('given a block too thick to even out, then the lumped sum does not apply: from a Biot number of 0.1', () => {
    const thick = { metal: { ...heatProperties.steel, wattsPerMetreKelvin: 50 }, characteristicMetres: metres(0.25) };
    const still = { celsius: celsius(100), wattsPerSquareMetreKelvin: 20 };
    expect(biotNumber(thick, still)).toBe(0.1);
    const refusal = { failed: 'does-not-apply', what: 'Biot number', given: 0.1, limit: 0.1 };
    expect(timeConstant(thick, still)).toEqual(refusal);
    expect(minutesToReach(thick, still, celsius(20), celsius(90))).toEqual(refusal);
    expect(temperatureAfter(thick, still, celsius(20), minutes(1))).toEqual(refusal);
    expect(typeof timeConstant({ ...thick, characteristicMetres: metres(0.2499) }, still)).toBe('number');
  });

  it('given figures that no part or oven has, then each is refused by name', () => {
    const lump = (metal: object, length = 0.003) => ({
      metal: { ...heatProperties.steel, ...metal },
      characteristicMetres: metres(length),
    });
    expect(biotNumber(lump({}, 0), oven)).toMatchObject({ what: 'volume over surface, m' });
    expect(biotNumber(lump({ kilogramsPerCubicMetre: 7.8 }), oven)).toMatchObject({ what: 'metal density' });
    expect(biotNumber(lump({ wattsPerMetreKelvin: 0 }), oven)).toMatchObject({ what: 'metal conductivity' });
    expect(biotNumber(lump({ joulesPerKilogramKelvin: 0.45 }), oven)).toMatchObject({ what: 'metal heat capacity' });
    expect(timeConstant(lump({}), { ...oven, wattsPerSquareMetreKelvin: 0 })).toMatchObject({
      what: 'heat transfer, W/(m2 K)',
    });
    expect(timeConstant(lump({}), { ...oven, celsius: celsius(2001) })).toMatchObject({ what: 'air' });
    expect(minutesToReach(lump({}), oven, celsius(-201), celsius(90))).toMatchObject({ what: 'start' });
    expect(minutesToReach(lump({}), oven, celsius(20), celsius(2001))).toMatchObject({ what: 'target' });
    expect(temperatureAfter(lump({}), oven, celsius(-201), minutes(1))).toMatchObject({ what: 'start' });
    expect(temperatureAfter(lump({}), oven, celsius(20), minutes(-1))).toMatchObject({ what: 'elapsed' });
    expect(temperatureAfter(lump({}), oven, celsius(20), minutes(366 * 24 * 60))).toBeCloseTo(100, 9);
    expect(temperatureAfter(lump({}), oven, celsius(20), minutes(366 * 24 * 60 + 1))).toMatchObject({
      what: 'elapsed',
    });
  });
});
