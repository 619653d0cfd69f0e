// Spanish by country.

import type { DateTime } from 'luxon';
import type { Countries, Profile } from '../profile.ts';

/** A weekday is enough of what is less than a week away; a short one would be a month as well: mar is martes and marzo. */
function day(local: DateTime, today: DateTime): string {
  const away = Math.abs(local.startOf('day').diff(today.startOf('day'), 'days').days);
  if (away < 7) return local.toFormat('cccc d');
  return local.toFormat(local.year === today.year ? "d 'de' LLLL" : "d 'de' LLLL 'de' yyyy");
}

const anywhere = {
  onAxis: { clock: '%H:%M', day: '%d.%m.' },
  day,
  date: (local: DateTime) => local.toFormat('d LLL yyyy'),
  dates: 'day-first',
  dateTyped: (local: DateTime) => local.toFormat("d 'de' LLLL 'de' yyyy"),
  beforeClock: ', ',
  list: { type: 'conjunction' },
  // In Spanish mil is a thousand but behind a one, and in a preposition.
  mil: { one: 'mil', many: 'mils' },
  inch: 'pulg',
} as const;

export const spain: Profile = {
  ...anywhere,
  locale: 'es-ES',
  name: 'Español (España)',
  clock: (local) => local.toFormat('H:mm'),
  dated: (local) => local.toFormat('d LLL yyyy, H:mm'),
  paper: 'A4',
};

export const mexico: Profile = {
  ...spain,
  locale: 'es-MX',
  name: 'Español (México)',
  paper: 'LETTER',
};

export const unitedStates: Profile = {
  ...anywhere,
  onAxis: { clock: '%-I:%M %p', day: '%-d/%-m' },
  locale: 'es-US',
  name: 'Español (EE. UU.)',
  dates: 'either',
  clock: (local) => local.toFormat('h:mm a'),
  dated: (local) => local.toFormat('d LLL yyyy, h:mm a'),
  paper: 'LETTER',
};

export const spanishCountries: Countries = {
  byUnits: { metric: spain, us: unitedStates },
  all: [spain, mexico, unitedStates],
};
