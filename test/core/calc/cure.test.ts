// The same cure by another schedule. The published examples are among the standards.

import { describe, expect, it } from 'vitest';
import { energyFromFactor, equivalentByEnergy, equivalentByRuleOfTen, rateRatio } from '../../../core/calc/cure.ts';
import { celsius, kilojoulesPerMole, minutes } from '../../../core/units.ts';

const oneHourAt90 = { minutes: minutes(60), celsius: celsius(90) };
const stated = {
  activation: kilojoulesPerMole(60),
  range: { lowestCelsius: celsius(70), highestCelsius: celsius(110) },
};

describe('the same cure by another schedule', () => {
  it("given the schedule's own temperature, then its own time", () => {
    expect(equivalentByEnergy(stated, oneHourAt90, celsius(90))).toBe(60);
    expect(equivalentByRuleOfTen(2, oneHourAt90, celsius(90))).toBe(60);
  });

  it('given a cooler oven, then longer: 60 kJ/mol from 90 to 80 degC is 60 x exp(7216 x 7.8e-5) minutes', () => {
    expect(equivalentByEnergy(stated, oneHourAt90, celsius(80))).toBeCloseTo(105.3, 1);
  });

  it('given a temperature for which the sheet states no energy, then it is refused; the ends are not', () => {
    expect(equivalentByEnergy(stated, oneHourAt90, celsius(69))).toMatchObject({
      what: 'other temperature',
      lowest: 70,
    });
    expect(equivalentByEnergy(stated, oneHourAt90, celsius(111))).toMatchObject({ what: 'other temperature' });
    expect(equivalentByEnergy(stated, { ...oneHourAt90, celsius: celsius(60) }, celsius(80))).toMatchObject({
      what: 'schedule temperature',
    });
    expect(typeof equivalentByEnergy(stated, oneHourAt90, celsius(70))).toBe('number');
    expect(typeof equivalentByEnergy(stated, oneHourAt90, celsius(110))).toBe('number');
  });

  it('given a schedule of a hundred years, then it is the longest that is asked about', () => {
    const century = 100 * 366 * 24 * 60;
    expect(equivalentByRuleOfTen(2, { minutes: minutes(century), celsius: celsius(90) }, celsius(100))).toBe(
      century / 2,
    );
    expect(
      equivalentByRuleOfTen(2, { minutes: minutes(century + 1), celsius: celsius(90) }, celsius(90)),
    ).toMatchObject({
      highest: century,
    });
  });

  it('given a jump of 40 degC, then the rule of ten still answers; a hair further either way it does not', () => {
    expect(equivalentByRuleOfTen(2, oneHourAt90, celsius(50))).toBe(960);
    expect(equivalentByRuleOfTen(2, oneHourAt90, celsius(130))).toBe(3.75);
    expect(equivalentByRuleOfTen(2, oneHourAt90, celsius(49.9))).toMatchObject({ refused: 'too-far', furthest: 40 });
    expect(equivalentByRuleOfTen(2, oneHourAt90, celsius(130.1))).toMatchObject({ refused: 'too-far' });
  });

  it('given times, temperatures, factors or energies that cannot be, then each is refused by name', () => {
    expect(equivalentByRuleOfTen(0.9, oneHourAt90, celsius(80))).toMatchObject({ what: 'factor per 10 degC' });
    expect(equivalentByRuleOfTen(10.1, oneHourAt90, celsius(80))).toMatchObject({ what: 'factor per 10 degC' });
    expect(equivalentByRuleOfTen(1, oneHourAt90, celsius(80))).toBe(60);
    expect(equivalentByRuleOfTen(10, oneHourAt90, celsius(80))).toBe(600);
    expect(equivalentByRuleOfTen(2, { ...oneHourAt90, minutes: minutes(-1) }, celsius(80))).toMatchObject({
      what: 'schedule minutes',
    });
    expect(equivalentByEnergy(stated, { ...oneHourAt90, minutes: minutes(1e9) }, celsius(80))).toMatchObject({
      what: 'schedule minutes',
    });
    expect(equivalentByRuleOfTen(2, { ...oneHourAt90, celsius: celsius(601) }, celsius(600))).toMatchObject({
      what: 'schedule temperature',
    });
    expect(equivalentByRuleOfTen(2, { ...oneHourAt90, celsius: celsius(600) }, celsius(601))).toMatchObject({
      what: 'other temperature',
    });
    expect(rateRatio(kilojoulesPerMole(401), celsius(20), celsius(30))).toMatchObject({ what: 'activation energy' });
    expect(rateRatio(kilojoulesPerMole(0), celsius(-60), celsius(600))).toBe(1);
    expect(rateRatio(kilojoulesPerMole(60), celsius(-61), celsius(30))).toMatchObject({ what: 'from' });
    expect(rateRatio(kilojoulesPerMole(60), celsius(20), celsius(601))).toMatchObject({ what: 'to' });
    expect(energyFromFactor(0.5, celsius(20))).toMatchObject({ what: 'factor per 10 degC' });
    expect(energyFromFactor(2, celsius(-61))).toMatchObject({ what: 'temperature' });
    const wide = {
      activation: kilojoulesPerMole(401),
      range: { lowestCelsius: celsius(0), highestCelsius: celsius(200) },
    };
    expect(equivalentByEnergy(wide, oneHourAt90, celsius(80))).toMatchObject({ what: 'activation energy' });
    const slow = {
      activation: kilojoulesPerMole(400),
      range: { lowestCelsius: celsius(-60), highestCelsius: celsius(200) },
    };
    expect(equivalentByEnergy(slow, oneHourAt90, celsius(-60))).toMatchObject({ what: 'equivalent minutes' });
  });
});
