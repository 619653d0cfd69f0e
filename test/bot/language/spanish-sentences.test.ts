// The small machinery of Spanish sentences: la una and las dos, one minute and two, dates, and what is below and not above.

import { describe, expect, it } from 'vitest';
import { atTime, counted, spanishDay, theTime, withAmount } from '../../../bot/language/tongues/spanish/names.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';

const spanish = shipped.wordsIn('es');

describe('Spanish sentences', () => {
  it.each([
    ['09:40', 'a las 09:40', 'las 09:40'],
    ['01:10', 'a la 01:10', 'la 01:10'],
    ['1:00', 'a la 1:00', 'la 1:00'],
    ['11:00', 'a las 11:00', 'las 11:00'],
    ['mar 3 mar 01:10', 'el mar 3 mar 01:10', 'el mar 3 mar 01:10'],
  ])('given the time %s, then its article is that of its hour', (time, at, the) => {
    expect(atTime(time)).toBe(at);
    expect(theTime(time)).toBe(the);
  });

  it('given one minute is left, then the verb is in the singular', () => {
    expect(withAmount('queda', 'quedan', '1 min')).toBe('queda 1 min');
    expect(withAmount('queda', 'quedan', '1 h 42 min')).toBe('quedan 1 h 42 min');
    expect(spanish.page.left('1 min')).toBe('queda 1 min');
    expect(spanish.replies.stirStillWanted('1 min')).toBe('Agitado pendiente: 1 min.');
    expect(counted(1, 'anotación', 'anotaciones')).toBe('1 anotación');
    expect(spanish.records.exported(12)).toBe('Exportado: 12 anotaciones');
    expect(spanish.chat.earlierActs(1)).toContain('1 anterior,');
  });

  it('given a day of the record, then it is written as it is read aloud, and what is no day is left alone', () => {
    expect(spanishDay('2026-03-02')).toBe('2 mar 2026');
    expect(spanishDay('2026-12')).toBe('dic 2026');
    expect(spanishDay('2026-13-02')).toBe('2026-13-02');
    expect(spanishDay('Nave dos')).toBe('Nave dos');
  });

  it('given steel colder than the dew point, then the board says below', () => {
    expect(spanish.page.surface('10 °C', '−2,3 °C')).toBe('acero 10 °C, 2,3 °C por debajo');
    expect(spanish.page.surface('19 °C', '6,7 °C')).toBe('acero 19 °C, 6,7 °C por encima');
  });

  it('given a temperature without its scale, then it is not said to have no unit', () => {
    const misread = {
      token: '24 grados',
      from: 5,
      to: 14,
      needs: [],
      couldBe: [],
      example: 'air 24C',
      suggestions: [],
    };
    expect(spanish.misread({ ...misread, code: 'unit-missing' })[0]).toBe('"24 grados" no dice si son C o F.');
    expect(spanish.misread({ ...misread, code: 'unit-missing', token: '24' })[0]).toBe('"24" no lleva unidad.');
  });

  it('given the labels of buttons, then each fits on a phone', () => {
    // Common practice, no source: two buttons side by side, 360 points wide.
    expect(Object.values(spanish.buttons).filter((label) => label.length > 26)).toEqual([]);
  });
});
