// Readings of a place. A reading is a fact: it is recorded, whatever it says, unless no air is such.

import { humidityFromWetBulb, seaLevelPressure } from '../calc/wet-bulb.ts';
import type { CommandOf } from '../commands.ts';
import { accepted, type Decision, type Said, unclear } from '../decision.ts';
import { type Failed, isFailed } from '../failed.ts';
import type { EventBody } from '../history.ts';
import { defaultPlace, placeStream } from '../ids.ts';
import { known } from '../known.ts';
import { askedAsPlace } from '../new-place.ts';
import type { Unclear } from '../objections.ts';
import { standing } from '../settled.ts';
import type { Shop } from '../shop.ts';
import type { Percent } from '../units.ts';
import { unreadSince } from './place.ts';

export function decideAir(shop: Shop, { command, at }: Said<CommandOf<'air'>>): Decision {
  const asked = askedAsPlace(shop, command);
  if (asked !== undefined) return asked;
  const humidity = humidityRead(command);
  if (isFailed(humidity)) return unclear(humidity.failed);
  const body: EventBody = { type: 'AirRead', ...command.air, ...known({ relativeHumidityPercent: humidity }) };
  return accepted({ streams: [placeStream(command.place ?? defaultPlace)], happenedAt: at, body });
}

/** As it was read, else by the wet bulb; `undefined` where neither was. */
function humidityRead({ air, wetBulbCelsius }: CommandOf<'air'>): Percent | undefined | Failed<Unclear> {
  const { celsius, relativeHumidityPercent } = air;
  if (relativeHumidityPercent !== undefined || wetBulbCelsius === undefined || celsius === undefined)
    return relativeHumidityPercent;
  const summed = humidityFromWetBulb(celsius, wetBulbCelsius, seaLevelPressure);
  return isFailed(summed) ? { failed: { code: 'wet-bulb-cannot-be', celsius, wetBulbCelsius } } : summed;
}

export function decideReading(shop: Shop, said: Said<CommandOf<'surface' | 'night'>>): Decision {
  const { command, at } = said;
  const asked = askedAsPlace(shop, command);
  if (asked !== undefined) return asked;
  const place = command.place ?? defaultPlace;
  return accepted({ streams: [placeStream(place)], happenedAt: at, body: bodyOf() });

  function bodyOf(): EventBody {
    switch (command.verb) {
      case 'surface':
        return { type: 'SurfaceRead', celsius: command.celsius };
      case 'night': {
        const since = unreadSince(shop.places.get(place), at, standing(shop.crew, 'air-limit').minutes);
        return { type: 'LowestRead', lowestCelsius: command.lowestCelsius, since };
      }
    }
  }
}
