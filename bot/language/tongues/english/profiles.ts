// English by country.

import type { DateTime } from 'luxon';
import type { Countries, Profile } from '../profile.ts';

const anywhere = {
  onAxis: { clock: '%H:%M', day: '%d.%m.' },
  beforeClock: ' ',
  dated: (local: DateTime) => local.toFormat(local.second === 0 ? 'yyyy-MM-dd HH:mm' : 'yyyy-MM-dd HH:mm:ss'),
  // An English list stands after a colon, with commas alone.
  list: { type: 'unit', style: 'short' },
  mil: { one: 'mil', many: 'mils' },
  inch: 'in',
} as const;

const dayInBritain = (local: DateTime, today: DateTime): string =>
  local.toFormat(local.year === today.year ? 'ccc d LLL' : 'ccc d LLL yyyy');
const dayInAmerica = (local: DateTime, today: DateTime): string =>
  local.toFormat(local.year === today.year ? 'ccc LLL d' : 'ccc LLL d yyyy');

export const britain: Profile = {
  ...anywhere,
  locale: 'en-GB',
  name: 'English (UK)',
  dates: 'day-first',
  dateTyped: (local) => local.toFormat('d LLLL yyyy'),
  clock: (local) => local.toFormat('HH:mm'),
  day: dayInBritain,
  date: dayInBritain,
  paper: 'A4',
};

export const unitedStates: Profile = {
  ...anywhere,
  onAxis: { clock: '%-I:%M %p', day: '%-m/%-d' },
  locale: 'en-US',
  name: 'English (US)',
  dates: 'either',
  dateTyped: (local) => local.toFormat('LLLL d yyyy'),
  clock: (local) => local.toFormat('h:mm a'),
  day: dayInAmerica,
  date: dayInAmerica,
  paper: 'LETTER',
};

export const englishCountries: Countries = {
  byUnits: { metric: britain, us: unitedStates },
  all: [britain, unitedStates],
};
