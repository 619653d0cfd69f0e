// `air 24C 48% booth`, `surface 22C`, `night 16C`: what a place reads.

import type { CommandOf } from '../../../core/commands.ts';
import { type Fault, isFault } from '../reading.ts';
import type { ActLine } from './act-line.ts';
import { airFrom } from './air-said.ts';
import { gather } from './gather.ts';
import { placeFrom } from './read-names.ts';

export function readAir(act: ActLine): CommandOf<'air'> | Fault {
  const gathered = gather(act);
  if (isFault(gathered)) return hotterThanAir(act, gathered);
  const place = placeFrom(act, gathered.words, gathered.place);
  if (typeof place === 'object') return place;
  const air = airFrom(gathered);
  if (air === undefined) return { code: 'incomplete', needs: ['air-temperature', 'humidity'] };
  return place === undefined ? { verb: 'air', air } : { verb: 'air', place, air };
}

/** `88C` alone is no air, but may be a part's reading. */
function hotterThanAir(act: ActLine, fault: Fault): Fault {
  const alone = act.tokens.find((token) => token.text === act.line);
  return fault.code === 'impossible' && alone !== undefined ? { ...fault, tries: [`temp ${alone.text}`] } : fault;
}

export function readSurface(act: ActLine): CommandOf<'surface'> | Fault {
  const gathered = gather(act);
  if (isFault(gathered)) return gathered;
  const place = placeFrom(act, gathered.words, gathered.place);
  if (typeof place === 'object') return place;
  const { temperature } = gathered;
  if (temperature === undefined) return { code: 'incomplete', needs: ['surface-temperature'] };
  return { verb: 'surface', celsius: temperature, ...(place !== undefined && { place }) };
}

export function readNight(act: ActLine): CommandOf<'night'> | Fault {
  const gathered = gather(act);
  if (isFault(gathered)) return gathered;
  const place = placeFrom(act, gathered.words, gathered.place);
  if (typeof place === 'object') return place;
  const { temperature } = gathered;
  if (temperature === undefined) return { code: 'incomplete', needs: ['lowest-temperature'] };
  return { verb: 'night', lowestCelsius: temperature, ...(place !== undefined && { place }) };
}
