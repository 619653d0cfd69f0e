// What can have happened to a part. A coat is filed under the part and under the batch that it came from.

import { z } from 'zod';
import { methods } from '../commands.ts';
import { Celsius, Micrometres, Millimetres, SquareMetres } from '../unit-schemas.ts';
import { holdingCodes } from './holding.ts';

export const PartReceived = z.object({
  type: z.literal('PartReceived'),
  serial: z.string().optional(),
  job: z.string().optional(),
  customer: z.string().optional(),
  metal: z.string().optional(),
  wallMillimetres: Millimetres.optional(),
  areaSquareMetres: SquareMetres.optional(),
  highestCelsius: Celsius.optional(),
});

/** Said when the coat ends: flash-off runs from here. */
export const CoatApplied = z.object({
  type: z.literal('CoatApplied'),
  part: z.string(),
  batch: z.number().int().positive(),
  method: z.enum(methods),
});
export type CoatApplied = z.infer<typeof CoatApplied>;

export const FilmDry = z.object({ type: z.literal('FilmDry') });

export const CureStarted = z.object({
  type: z.literal('CureStarted'),
  way: z.enum(['oven', 'room']),
  setCelsius: Celsius.optional(),
});

export const PartTemperatureRead = z.object({ type: z.literal('PartTemperatureRead'), celsius: Celsius });
export const CureEnded = z.object({ type: z.literal('CureEnded') });

export const FilmRead = z.object({
  type: z.literal('FilmRead'),
  state: z.enum(['wet', 'dry']),
  micrometres: z.array(Micrometres).min(1),
});

export const PartReleased = z.object({ type: z.literal('PartReleased') });
export const PartHeld = z.object({
  type: z.literal('PartHeld'),
  why: z.string(),
  /** Deviations that hold the part by themselves. */
  because: z.array(z.enum(holdingCodes)).optional(),
});

export const PartEvent = z.discriminatedUnion('type', [
  PartReceived,
  CoatApplied,
  FilmDry,
  CureStarted,
  PartTemperatureRead,
  CureEnded,
  FilmRead,
  PartReleased,
  PartHeld,
]);
export type PartEvent = z.infer<typeof PartEvent>;
