// A humidity that no hygrometer gives, and whatever else the dew point refuses: asked about before it is recorded, and
// where an old record has it, not read. Limits: the demo sheet's, invented, but for 85 % and 3 degC (common practice).

import { describe, expect, it } from 'vitest';
import { dewPoint } from '../../core/calc/air.ts';
import { isFailed } from '../../core/failed.ts';
import { airBreaches } from '../../core/products/sheet-air.ts';
import { editionOfToday } from '../../core/rule-editions.ts';
import { celsius, percent } from '../../core/units.ts';
import { demoShelf, given } from './given.ts';

function sheetOf(id: string) {
  const read = demoShelf.get(id);
  if (read?.kind !== 'sheet') throw new Error(`the sheet ${id} has a fault`);
  return read.sheet;
}

const read = (air: number, humidity: number, surface?: number) =>
  airBreaches(sheetOf('demo-clear'), said(air, humidity, surface), editionOfToday);

const said = (air: number, humidity: number, surface?: number) => ({
  celsius: celsius(air),
  relativeHumidityPercent: percent(humidity),
  surfaceCelsius: surface === undefined ? undefined : celsius(surface),
});

describe('given an act of the first edition', () => {
  it('then what could not be summed on that day is not held against it now', () => {
    expect(airBreaches(sheetOf('demo-clear'), said(8, 0), 1)).toEqual([]);
    expect(airBreaches(sheetOf('demo-clear'), said(8, 1), 1)).not.toEqual([]);
  });
});

describe('given 0 %', () => {
  it.each(['air 8C 0%', 'air 0%', 'air 8C 0.0%', 'mix 2kg 8C 0%', 'air 8C 0% already', 'amend air 0% misread'])(
    'when "%s" is said, then it is asked about and nothing is recorded',
    async (line) => {
      const shift = await given(['08:00 air 24C 48%']);
      expect(await shift.when(`08:05 ${line}`)).toEqual({ misread: 'impossible' });
      expect(await shift.events()).toHaveLength(1);
    },
  );

  it('when an old record has it, then what the sheet limits of it is not read, and the cold is still told', () => {
    expect(read(8, 0)).toEqual([
      { limit: 'lowestAirCelsius', given: 8, allowed: 10, by: 2 },
      { limit: 'lowestHumidityPercent', given: 'not-read', allowed: 25 },
      { limit: 'highestHumidityPercent', given: 'not-read', allowed: 85 },
    ]);
  });

  it('when the steel was read too, then its distance from a dew point that nobody knows is not read', () => {
    expect(read(24, 0, 20)).toContainEqual({ limit: 'leastSpreadCelsius', given: 'not-read', allowed: 3 });
  });
});

it('given a spread that cannot be summed, then only that is not read, and the humidity is judged as ever', () => {
  const beyond = read(24, 90, -150);
  expect(beyond).toContainEqual({ limit: 'leastSpreadCelsius', given: 'not-read', allowed: 3 });
  expect(beyond).toContainEqual({ limit: 'highestHumidityPercent', given: 90, allowed: 85, by: 5 });
});

it('given anything that a line may say of the air, -40 to 60 degC from 0.1 % on, then there is a dew point', () => {
  for (let air = -40; air <= 60; air += 5) {
    for (const humidity of [0.1, 1, 100]) expect(isFailed(dewPoint(celsius(air), percent(humidity)))).toBe(false);
  }
});
