// How crews tell that an instrument was checked, in both tongues; and what of it tells no check.

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import { shopAtTen, tallerALasDiez } from './shop-at-ten.ts';

const offered = (line: string, shop = shopAtTen): readonly string[] => {
  const reading = readLine(line, shop);
  return reading.kind === 'misread' ? reading.misread.suggestions : [];
};

describe('a check in other words', () => {
  it.each([
    ['the gauge failed its check', 'calibrated gauge-2 failed'],
    ['hygro-1 failed calibration', 'calibrated hygro-1 failed'],
    ['the scale did not pass its check', 'calibrated scale-1 failed'],
    ['gauge-2 was calibrated today, good till March', 'calibrated gauge-2 passed next 2027-03-01'],
    ['gauge-2 passed its calibration, next due 2027-03-01', 'calibrated gauge-2 passed next 2027-03-01'],
    ['checked the scale, it is ok', 'calibrated scale-1 passed'],
  ])('given "%s", then it is offered as %s', (line, act) => {
    expect(offered(line)[0]).toBe(act);
  });

  it.each([
    ['el higrómetro no pasó la verificación', 'calibrated hygro-1 failed'],
    ['la báscula falló la calibración', 'calibrated scale-1 failed'],
    ['el medidor se calibró hoy, vale hasta marzo', 'calibrated gauge-2 passed next 2027-03-01'],
    ['termómetro calibrado, vale hasta 2027-03-01', 'calibrated probe-1 passed next 2027-03-01'],
  ])('given "%s", then it is offered as %s', (line, act) => {
    expect(offered(line, tallerALasDiez)[0]).toBe(act);
  });

  it('given it is said in the order of its line, then it is taken', () => {
    const failed = { command: { verb: 'calibrated', name: 'gauge-2', result: 'failed' } };
    expect(readLine('checked gauge-2 failed', shopAtTen)).toMatchObject(failed);
    expect(readLine('verificado gauge-2 falló', tallerALasDiez)).toMatchObject(failed);
    // A can is looked at by its number.
    expect(readLine('checked 3', shopAtTen)).toMatchObject({ command: { verb: 'check', can: 3 } });
  });

  it.each([
    'gauge-2 needs calibration',
    'the gauge has not been calibrated',
    'calibrate the gauge',
    'the gauge did not fail its check',
    'we checked the air with the hygrometer 24C 48%',
    'we checked the film with gauge-2',
    'hay que calibrar el medidor',
  ])('given "%s", then no check is offered', (line) => {
    for (const shop of [shopAtTen, tallerALasDiez]) {
      expect(offered(line, shop).filter((each) => each.startsWith('calibrated'))).toEqual([]);
      expect(readLine(line, shop)).not.toMatchObject({ command: { verb: 'calibrated' } });
    }
  });

  it('given it is asked, then the list of them is told', () => {
    expect(readLine('is the gauge calibrated?', shopAtTen)).toMatchObject({ question: { ask: 'instruments' } });
    expect(readLine('¿está calibrado el medidor?', tallerALasDiez)).toMatchObject({ question: { ask: 'instruments' } });
  });

  it('given what a reading was made with, then it stands behind with; of a shop that keeps none it is no word of the line', () => {
    const read = { command: { verb: 'film', part: 'impeller-7', instrument: 'gauge-2' } };
    expect(readLine('film impeller-7 95 100 105um with gauge-2', shopAtTen)).toMatchObject(read);
    expect(readLine('película impeller-7 95 100 105um con gauge-2', tallerALasDiez)).toMatchObject(read);
    const none = { ...shopAtTen, instruments: [] };
    expect(readLine('film impeller-7 95 100 105um with gauge-2', none)).not.toMatchObject(read);
    expect(readLine('weigh 1 1201g with 1198g', shopAtTen)).toMatchObject({ command: { verb: 'weigh', batch: 1 } });
  });
});
