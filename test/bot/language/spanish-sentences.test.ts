// The small machinery of Spanish sentences: la una and las dos, one minute and two, dates, and what is below and not above.

import { describe, expect, it } from 'vitest';
import { figuresFor } from '../../../bot/language/figures.ts';
import { atTime, counted, theTime } from '../../../bot/language/tongues/spanish/names.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { celsius, celsiusSpread, epochMs, minutes } from '../../../core/units.ts';

const spanish = shipped.wordsIn('es');
/** A Monday. */
const now = epochMs(Date.UTC(2026, 2, 2, 8));
const figures = figuresFor({ profile: shipped.profileOf('es', 'metric'), units: 'metric', zone: 'UTC', now });
const inHouston = figuresFor({ profile: shipped.profileOf('es', 'us'), units: 'us', zone: 'UTC', now });
const at = (day: number, hour: number, minute: number) => epochMs(Date.UTC(2026, 2, day, hour, minute));

describe('Spanish sentences', () => {
  it.each([
    [at(2, 9, 40), 'a las 9:40', 'las 9:40', 'a las 9:40 a.m.'],
    [at(2, 1, 10), 'a la 1:10', 'la 1:10', 'a la 1:10 a.m.'],
    [at(2, 13, 0), 'a las 13:00', 'las 13:00', 'a la 1:00 p.m.'],
    [at(2, 11, 0), 'a las 11:00', 'las 11:00', 'a las 11:00 a.m.'],
    [at(3, 10, 15), 'el martes 3 a las 10:15', 'el martes 3 a las 10:15', 'el martes 3 a las 10:15 a.m.'],
    [at(3, 1, 10), 'el martes 3 a la 1:10', 'el martes 3 a la 1:10', 'el martes 3 a la 1:10 a.m.'],
  ])('given the instant %s, then its article is that of its hour', (when, atIt, the, us) => {
    expect(atTime(figures, when)).toBe(atIt);
    expect(theTime(figures, when)).toBe(the);
    expect(atTime(inHouston, when)).toBe(us);
  });

  it('given a sentence that ends in a time with points, then it ends once', () => {
    expect(shipped.wordsIn('es-US').records.paper.released('rosa', at(2, 11, 23), inHouston)).toBe(
      'Liberada por rosa, 2 mar 2026, 11:23 a.m.',
    );
  });

  it('given one minute is left, then the verb is in the singular', () => {
    expect(spanish.page.left(minutes(0.4), 'up', figures)).toBe('queda 1 min');
    expect(spanish.page.left(minutes(1.9), 'down', figures)).toBe('queda 1 min');
    expect(spanish.page.left(minutes(102), 'down', figures)).toBe('quedan 1 h 42 min');
    expect(spanish.replies.stirStillWanted(minutes(1), figures)).toBe('Agitación pendiente: 1 min.');
    expect(counted(1, 'anotación', 'anotaciones')).toBe('1 anotación');
    expect(spanish.records.exported(12)).toBe('Exportado: 12 anotaciones');
    expect(spanish.chat.earlierActs(1)).toContain('1 anterior,');
  });

  it('given a day of the record, then it is written as it is read aloud, and what is no day is left alone', () => {
    expect(figures.date('2026-03-02')).toBe('2 mar 2026');
    expect(figures.date('2026-12')).toBe('dic 2026');
    expect(figures.date('2026-13-02')).toBe('2026-13-02');
    expect(figures.date('Nave dos')).toBe('Nave dos');
  });

  it('given steel colder than the dew point, then the board says below', () => {
    expect(spanish.page.surface(celsius(10), celsiusSpread(-2.3), figures)).toBe('sustrato 10 °C, 2,3 °C por debajo');
    expect(spanish.page.surface(celsius(19), celsiusSpread(6.7), figures)).toBe('sustrato 19 °C, 6,7 °C por encima');
  });

  it('given a temperature without its scale, then it is not said to have no unit', () => {
    const misread = {
      token: '24 grados',
      from: 5,
      to: 14,
      needs: [],
      couldBe: [],
      exampleOf: 'air' as const,
      suggestions: [],
    };
    const example = 'aire 24C 48%';
    expect(spanish.misread({ ...misread, code: 'unit-missing' }, example)[0]).toBe('«24 grados» no dice si son C o F.');
    expect(spanish.misread({ ...misread, code: 'unit-missing', token: '24' }, example)[0]).toBe(
      '«24» no lleva unidad.',
    );
  });

  it('given the labels of buttons, then each fits on a phone', () => {
    // Common practice, no source: two buttons side by side, 360 points wide.
    expect(Object.values(spanish.buttons).filter((label) => label.length > 26)).toEqual([]);
  });
});
