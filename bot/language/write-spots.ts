// Readings told by their spots, as their reader takes them back.

import type { SpotSaid } from '../../core/verbs/said.ts';
import { writeFilms } from './write-quantities.ts';

export const writeSpots = (spots: readonly SpotSaid[]): readonly string[] => spots.flatMap(writeSpot);

function writeSpot({ spot, near, micrometres, dropped = [] }: SpotSaid): readonly string[] {
  return [
    ...(spot === undefined ? [] : [`spot ${spot}`]),
    ...(near === undefined ? [] : [`beside ${near}`]),
    ...(micrometres.length === 0 ? [] : [writeFilms(micrometres)]),
    ...(dropped.length === 0 ? [] : [`drop ${writeFilms(dropped)}`]),
  ];
}
