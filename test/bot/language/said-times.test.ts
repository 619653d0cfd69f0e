// Times of day where the clocks change: central Europe went to summer time on 2026-03-29 at 02:00 and back on
// 2026-10-25 at 03:00; New York on 2026-03-08 and 2026-11-01 at 02:00 (IANA time zone database).

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import { isoLocal } from '../../../bot/language/times/wall-clock.ts';
import type { EpochMs } from '../../../core/units.ts';
import { tallerALasDiez, utc } from './shop-at-ten.ts';

function saidAt(line: string, now: EpochMs, zone: string): string {
  const reading = readLine(line, { ...tallerALasDiez, now, zone });
  if (reading.kind === 'misread') return reading.misread.code;
  return reading.kind === 'command' && reading.at !== undefined
    ? new Date(reading.at).toISOString().slice(0, 16)
    : 'none';
}

describe('said times on the wall clock of the shop', () => {
  it.each([
    ['a plain morning', 'stir 1 at 9:40', '2026-03-02T10:00', 'Europe/Berlin', '2026-03-02T08:40'],
    ['an hour still to come, within twelve', 'stir 1 at 14:00', '2026-03-02T10:00', 'Europe/Berlin', 'in-the-future'],
    ['an hour more than twelve ahead', 'stir 1 at 23:30', '2026-03-02T07:00', 'UTC', '2026-03-01T23:30'],
    ['just after midnight', 'stir 1 at 23:50', '2026-03-02T00:20', 'UTC', '2026-03-01T23:50'],
    ['the minute itself', 'stir 1 at 10:00', '2026-03-02T10:00', 'UTC', '2026-03-02T10:00'],
    ['yesterday across New Year', 'stir 1 yesterday 16:00', '2026-01-01T08:00', 'UTC', '2025-12-31T16:00'],
    ['today, though ahead', 'stir 1 at 23:30 today', '2026-03-02T07:00', 'UTC', 'in-the-future'],
    ['an offset on the line', 'stir 1 at 2026-03-02T10:00+05:45', '2026-03-02T10:00', 'UTC', '2026-03-02T04:15'],
    ['the hour that is skipped', 'stir 1 at 2:30', '2026-03-29T08:00', 'Europe/Berlin', 'impossible'],
    ['the hour that shows twice', 'stir 1 at 2:30', '2026-10-25T08:00', 'Europe/Berlin', '2026-10-25T00:30'],
    [
      'its second showing, with offset',
      'stir 1 at 2026-10-25T02:30+01:00',
      '2026-10-25T08:00',
      'Europe/Berlin',
      '2026-10-25T01:30',
    ],
    ['the skipped hour of New York', 'stir 1 at 2:30am', '2026-03-08T14:00', 'America/New_York', 'impossible'],
    [
      'noon of yesterday after the change',
      'stir 1 yesterday noon',
      '2026-11-01T16:00',
      'America/New_York',
      '2026-10-31T16:00',
    ],
  ])('given %s, then the instant is the one meant', (_, line, now, zone, expected) => {
    expect(saidAt(line, utc(now), zone)).toBe(expected);
  });

  // 02:30 never shows: with the offset of winter it is 03:30, with that of summer 01:30.
  it.each([
    ['stir 1 at 2:30', '2026-03-29T08:00', ['stir 1 at 01:30', 'stir 1 at 03:30']],
    ['stir 1 yesterday 2:30', '2026-03-30T08:00', ['stir 1 yesterday 01:30', 'stir 1 yesterday 03:30']],
    ['stir 1 at 2026-03-29T02:30', '2026-03-30T08:00', ['stir 1 at 2026-03-29T01:30', 'stir 1 at 2026-03-29T03:30']],
    ['plan 2m2 spray ready 2:30', '2026-03-29T00:10', ['plan 2m2 spray ready 01:30', 'plan 2m2 spray ready 03:30']],
    ['brief 2:30', '2026-03-29T00:10', ['brief 01:30', 'brief 03:30']],
  ])('given %s on the night of the change, then both times beside it are offered', (line, now, offered) => {
    const reading = readLine(line, { ...tallerALasDiez, now: utc(now), zone: 'Europe/Berlin' });
    expect(reading).toMatchObject({ kind: 'misread', misread: { code: 'impossible', suggestions: offered } });
  });

  it('given the hour that shows twice, then it is written with its offset and otherwise without', () => {
    expect(isoLocal(utc('2026-10-25T00:30'), 'Europe/Berlin')).toBe('2026-10-25T02:30+02:00');
    expect(isoLocal(utc('2026-10-25T01:30'), 'Europe/Berlin')).toBe('2026-10-25T02:30+01:00');
    expect(isoLocal(utc('2026-03-02T09:40'), 'Europe/Berlin')).toBe('2026-03-02T10:40');
    expect(isoLocal(utc('2026-03-02T09:40:30.250'), 'UTC')).toBe('2026-03-02T09:40:30.250');
  });
});
