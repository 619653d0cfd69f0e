// Temperature, humidity or both, as gathered from a line; undefined where it has neither.

import type { AirSaid } from '../../../core/verbs/said.ts';
import type { SortedPieces } from './sort-pieces.ts';

export function airFrom({ temperature, percent }: SortedPieces): AirSaid | undefined {
  if (temperature === undefined) return percent === undefined ? undefined : { relativeHumidityPercent: percent };
  return percent === undefined ? { celsius: temperature } : { celsius: temperature, relativeHumidityPercent: percent };
}
