// What a place reads: its air, its steel, its night.

import { air, newPart, part, place, temperature } from './slot.ts';
import { verb } from './verb.ts';

export const placeVerbs = {
  air: verb(
    { air: air({ required: true }), place: place('place') },
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
    },
    { leaves: { type: 'SurfaceRead' }, on: 'place' },
  ),
  /** The lowest temperature of the time nobody read, up to now. */
  night: verb(
    { lowestCelsius: temperature('lowest-temperature', { required: true }), place: place('place') },
    {
      leaves: { type: 'LowestRead' },
      amends: { celsius: { slot: 'lowest-temperature', fact: 'lowestCelsius' } },
    },
  ),
};
