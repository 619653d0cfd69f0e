// What was read at a place: its air and surfaces outlive midnight and every batch.

import { z } from 'zod';
import { Celsius, EpochMs, Percent } from '../unit-schemas.ts';

export const AirRead = z.object({
  type: z.literal('AirRead'),
  celsius: Celsius.optional(),
  relativeHumidityPercent: Percent.optional(),
});
export type AirRead = z.infer<typeof AirRead>;

export const SurfaceRead = z.object({ type: z.literal('SurfaceRead'), celsius: Celsius });

/** The lowest of a time that nobody read, from a minimum thermometer or a log. */
export const LowestRead = z.object({ type: z.literal('LowestRead'), lowestCelsius: Celsius, since: EpochMs });

export const PlaceEvent = z.discriminatedUnion('type', [AirRead, SurfaceRead, LowestRead]);
export type PlaceEvent = z.infer<typeof PlaceEvent>;
