// Days as people of each country write them: which come first, what is asked, and how the two readings are offered.

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { shopAtTen } from './shop-at-ten.ts';

/** Monday 2 March 2026, ten in the morning. */
const readIn = (locale: string, line: string) =>
  readLine(line, {
    ...shopAtTen,
    hearing: shipped.hearingIn(locale),
    country: shipped.profileOf(locale, 'metric'),
  });

const day = (date: string) => ({ ask: 'day', day: { kind: 'date', date } });
const span = (from: string, to: string) => ({ ask: 'from', span: { kind: 'range', from, to } });
const week = (from: string, to: string) => ({ ask: 'week', span: { kind: 'range', from, to } });

const questions: readonly (readonly [string, string, object])[] = [
  ['es-ES', 'día 02/03/2026', day('2026-03-02')],
  ['es-MX', 'día 02/03/2026', day('2026-03-02')],
  ['en-GB', 'day 02/03/2026', day('2026-03-02')],
  ['en-GB', 'day 2-3-2026', day('2026-03-02')],
  ['es-ES', 'día 2.3.2026', day('2026-03-02')],
  ['es-ES', 'día 2 de marzo', day('2026-03-02')],
  ['es-ES', 'día 2 de marzo de 2025', day('2025-03-02')],
  ['es-ES', 'día 5 de marzo', day('2025-03-05')],
  ['en-GB', 'day 2 March', day('2026-03-02')],
  ['en-GB', 'day 2nd March 2026', day('2026-03-02')],
  ['en-US', 'day March 2', day('2026-03-02')],
  ['en-US', 'day March 2, 2026', day('2026-03-02')],
  ['en-US', 'day 25/02/2026', day('2026-02-25')],
  ['en-US', 'day 02/25/2026', day('2026-02-25')],
  ['en-GB', 'day 02/25/2026', day('2026-02-25')],
  ['es-US', 'día 02/02/2026', day('2026-02-02')],
  ['es-ES', 'desde 1/3/2026 hasta 7/3/2026', span('2026-03-01', '2026-03-07')],
  ['es-ES', 'desde 1 de febrero hasta 7 de febrero', span('2026-02-01', '2026-02-07')],
  ['es-ES', 'desde 1 de marzo de 2026 hasta 7 de marzo de 2026', span('2026-03-01', '2026-03-07')],
  ['es-ES', 'desde 25 de febrero hasta 7 de marzo', span('2026-02-25', '2026-03-07')],
  ['en-GB', 'from 1 March to 7 March', span('2026-03-01', '2026-03-07')],
  ['en-GB', 'from 1 March to 7 March 2025', span('2025-03-01', '2025-03-07')],
  ['en-GB', 'from 25 December to 3 January', span('2025-12-25', '2026-01-03')],
  ['en-GB', 'from 2026-02-25 to 7 March', span('2026-02-25', '2026-03-07')],
  ['en-US', 'from February 1 to February 7', span('2026-02-01', '2026-02-07')],
  ['es-ES', 'semana 9', week('2026-02-23', '2026-03-01')],
  ['en-GB', 'week 10', week('2026-03-02', '2026-03-08')],
  ['en-GB', 'week 11', week('2025-03-10', '2025-03-16')],
  ['en-GB', 'find date 02/03/2026', { ask: 'find', key: 'date', value: '2026-03-02' }],
  [
    'es-ES',
    'exportar semana 9',
    { ask: 'export', span: { kind: 'range', from: '2026-02-23', to: '2026-03-01' }, form: 'csv' },
  ],
];

const expiries: readonly (readonly [string, string, string])[] = [
  ['es-ES', 'abrir A lote 7731 5kg caduca 06/12/2026', '2026-12-06'],
  ['es-MX', 'abrir A lote 7731 caduca 06/12/2026 5kg', '2026-12-06'],
  ['es-ES', 'abrir A lote 7731 5kg caduca 12/2026 gas', '2026-12-31'],
  ['es-ES', 'abrir A lote 7731 5kg caduca 6 de diciembre de 2026', '2026-12-06'],
  ['en-GB', 'open A lot 7731 5kg exp 12/2026', '2026-12-31'],
  ['en-GB', 'open A lot 7731 5kg exp December 2026', '2026-12-31'],
  ['en-GB', 'open A lot 7731 5kg exp 06/12/2026', '2026-12-06'],
  ['en-US', 'open A lot 7731 5kg exp 12/31/2026', '2026-12-31'],
  ['en-GB', 'open A lot 7731 5kg exp 12/26 argon', '2026-12-31'],
  ['en-US', 'open A lot 7731 exp 2/27 5kg', '2027-02-28'],
  ['en-GB', 'open A lot 7731 5kg exp dec 26', '2026-12-31'],
  ['en-US', 'open A lot 7731 5kg exp Sep-26 argon', '2026-09-30'],
  ['es-ES', 'abrir A lote 7731 5kg cad 12/26', '2026-12-31'],
  ['es-MX', 'abrir A lote 7731 5kg cad dic 26 gas', '2026-12-31'],
  ['es-US', 'abrir A lote 7731 11lb cad dic 25', '2025-12-31'],
  ['en-US', 'open A lot 7731 5kg exp Dec 6 2026', '2026-12-06'],
];

/** The token, the two readings, and the lines on the taps. */
const asked: readonly (readonly [string, string, string, readonly string[], string])[] = [
  ['en-US', 'day 02/03/2026', '02/03/2026', ['February 3 2026', 'March 2 2026'], 'day March 2 2026'],
  ['es-US', 'día 02/03/2026', '02/03/2026', ['3 de febrero de 2026', '2 de marzo de 2026'], 'día 2 de marzo de 2026'],
  [
    ...([
      'en-US',
      'open A lot 7731 5kg exp 06/12/2026 gas',
      '06/12/2026',
      ['June 12 2026', 'December 6 2026'],
    ] as const),
    'open A lot 7731 5kg exp December 6 2026 gas',
  ],
  [
    ...(['en-US', 'open B lot 8 5kg exp 11/12', '11/12', ['November 12 2026', 'December 11 2026']] as const),
    'open B lot 8 5kg exp December 11 2026',
  ],
  [
    ...([
      'es-US',
      'desde 1/3/2026 hasta 7 de marzo',
      '1/3/2026',
      ['3 de enero de 2026', '1 de marzo de 2026'],
    ] as const),
    'desde 1 de marzo de 2026 hasta 7 de marzo',
  ],
];

describe('days as typed', () => {
  it.each(questions)('%s: %s', (locale, line, question) => {
    expect(readIn(locale, line)).toMatchObject({ kind: 'question', question });
  });

  it.each(expiries)('%s: %s', (locale, line, expires) => {
    expect(readIn(locale, line)).toMatchObject({ command: { verb: 'open', lot: '7731', expires } });
  });

  it.each(asked)('%s: %s is asked about', (locale, line, token, couldBe, tap) => {
    const reading = readIn(locale, line);
    expect(reading).toMatchObject({ misread: { code: 'ambiguous-time', token, couldBe } });
    const offered = reading.kind === 'misread' ? reading.misread.suggestions : [];
    expect(offered).toHaveLength(2);
    expect(offered[1]).toBe(tap);
    for (const each of offered) expect(readIn(locale, each).kind).not.toBe('misread');
  });

  it.each([
    ['en-GB', 'day 31/02/2026', 'impossible'],
    ['es-ES', 'día 31 de febrero', 'impossible'],
    ['en-GB', 'week 54', 'left-over'],
    ['en-GB', 'day today 2 March', 'left-over'],
    ['en-GB', 'open A lot 7731 5kg exp 6 December', 'incomplete'],
  ])('%s: %s is no day', (locale, line, code) => {
    const reading = readIn(locale, line);
    expect(reading).toMatchObject({ misread: { code } });
    // As typed, and not as it was understood.
    if (reading.kind === 'misread') expect(line).toContain(reading.misread.token);
  });
});
