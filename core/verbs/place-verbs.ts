// What a place reads: its air, its steel, its night.

import { readWith } from './instrument-verbs.ts';
import { air, newPart, part, place, ppm, share, temperature } from './slot.ts';
import { verb } from './verb.ts';

const shareRead = {
  // Over a whole limit a monitor may go on counting: what is above all that is read is recorded and objected to, never refused.
  value: share('gas-share', { required: true, amend: true }, { above: false, highest: 1_000 }),
  place: place('place'),
};
const ppmRead = { value: ppm('gas-ppm', { required: true }), place: place('place') };

export const placeVerbs = {
  /** What a gas monitor shows there. */
  lel: verb(shareRead, { leaves: { type: 'GasRead', gas: 'lel' } }),
  o2: verb(shareRead, { leaves: { type: 'GasRead', gas: 'o2' } }),
  co: verb(ppmRead),
  h2s: verb(ppmRead),
  /** All of them, as one monitor shows them at once. */
  gases: verb(
    {
      lel: share('shown-lel', { behind: 'lel' }, { above: false, highest: 1_000 }),
      o2: share('shown-o2', { behind: 'o2' }, { above: false, highest: 1_000 }),
      co: ppm('shown-co', { behind: 'co' }),
      h2s: ppm('shown-h2s', { behind: 'h2s' }),
      place: place('place'),
    },
    { oneOf: ['lel', 'o2', 'co', 'h2s'] },
  ),
  air: verb(
    {
      asNew: newPart,
      air: air({ required: true }),
      wetBulbCelsius: temperature('wet-bulb', { noted: true, behind: 'wet' }),
      place: place('place'),
      instrument: readWith,
    },
    {
      leaves: { type: 'AirRead' },
      amends: {
        celsius: { slot: 'air-temperature', fact: 'celsius' },
        relativeHumidityPercent: { slot: 'humidity', fact: 'relativeHumidityPercent' },
      },
    },
  ),
  /** Of one part, or of a place. */
  surface: verb(
    {
      asNew: newPart,
      part: part('part'),
      celsius: temperature('surface-temperature', { required: true, amend: true }, { highest: 120 }),
      place: place('place'),
      instrument: readWith,
    },
    { leaves: { type: 'SurfaceRead' }, on: 'place' },
  ),
  /** The lowest temperature of the time nobody read, up to now. */
  night: verb(
    {
      asNew: newPart,
      lowestCelsius: temperature('lowest-temperature', { required: true }),
      place: place('place'),
      instrument: readWith,
    },
    {
      leaves: { type: 'LowestRead' },
      amends: { celsius: { slot: 'lowest-temperature', fact: 'lowestCelsius' } },
    },
  ),
};
