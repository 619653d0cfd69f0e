// Temperature, humidity or both, as gathered from a line; undefined where it has neither.

import type { AirSaid } from '../../../core/commands.ts';
import type { Gathered } from './gather.ts';

export function airFrom({ temperature, percent }: Gathered): AirSaid | undefined {
  if (temperature === undefined) return percent === undefined ? undefined : { relativeHumidityPercent: percent };
  return percent === undefined ? { celsius: temperature } : { celsius: temperature, relativeHumidityPercent: percent };
}
