// What else is tested of a coated part, one verb a kind of test (`core/film-tests.ts`); all leave the same event.

import { breaks, looks, pencils } from '../film-tests.ts';
import { choice, choices, count, glossUnits, mark, newPart, ownWords, part, pressure, voltage } from './slot.ts';
import { verb } from './verb.ts';

const one = { asNew: newPart, part: part('part', { required: true }) };
/** On a witness coupon that went with it; and why it was tested again. */
const how = { coupon: mark('coupon', 'coupon'), retest: ownWords('retest', { behind: 'retest' }) };

export const filmTestVerbs = {
  'pull-off': verb(
    {
      ...one,
      megapascals: pressure('pull-off', { required: true, amend: true }),
      brokeAt: choice('broke-at', breaks, { amend: true }),
      ...how,
    },
    { leaves: { type: 'FilmTested', of: 'pull-off' } },
  ),
  gloss: verb(
    { ...one, glossUnits: glossUnits('gloss', { required: true, amend: true }), ...how },
    { leaves: { type: 'FilmTested', of: 'gloss' } },
  ),
  hardness: verb(
    {
      ...one,
      pencil: choice('pencil', pencils, { required: true, amend: true, offered: ['F', 'H', '2H'] }),
      ...how,
    },
    { leaves: { type: 'FilmTested', of: 'hardness' } },
  ),
  holidays: verb(
    {
      ...one,
      found: count('holidays', { required: true, amend: true }, { lowest: 0, highest: 10_000 }),
      volts: voltage('volts', { amend: true }),
      ...how,
    },
    { leaves: { type: 'FilmTested', of: 'holidays' } },
  ),
  visual: verb(
    { ...one, looks: choices('looks', looks, { required: true, amend: true }), ...how },
    { leaves: { type: 'FilmTested', of: 'visual' } },
  ),
};
