// Readings of a place. A reading is a fact: it is recorded, whatever it says.

import type { CommandOf } from '../commands.ts';
import { accepted, type Decision, type Said } from '../decision.ts';
import type { EventBody } from '../history.ts';
import { defaultPlace, placeStream } from '../ids.ts';
import { standing } from '../settled.ts';
import type { Shop } from '../shop.ts';
import { unreadSince } from './place.ts';

export function decideReading(shop: Shop, said: Said<CommandOf<'air' | 'surface' | 'night'>>): Decision {
  const { command, at } = said;
  const place = command.place ?? defaultPlace;
  return accepted({ streams: [placeStream(place)], happenedAt: at, body: bodyOf() });

  function bodyOf(): EventBody {
    switch (command.verb) {
      case 'air':
        return { type: 'AirRead', ...command.air };
      case 'surface':
        return { type: 'SurfaceRead', celsius: command.celsius };
      case 'night': {
        const since = unreadSince(shop.places.get(place), at, standing(shop.crew, 'air-limit').minutes);
        return { type: 'LowestRead', lowestCelsius: command.lowestCelsius, since };
      }
    }
  }
}
