// The branded units as zod schemas, for the events' stored form.

import { z } from 'zod';
import * as units from './units.ts';

export const Grams = z.number().transform((value) => units.grams(value));
export const Litres = z.number().transform((value) => units.litres(value));
export const Celsius = z.number().transform((value) => units.celsius(value));
export const Percent = z.number().transform((value) => units.percent(value));
export const EpochMs = z.number().transform((value) => units.epochMs(value));
export const Minutes = z.number().transform((value) => units.minutes(value));
export const Micrometres = z.number().transform((value) => units.micrometres(value));
export const Millimetres = z.number().transform((value) => units.millimetres(value));
export const SquareMetres = z.number().transform((value) => units.squareMetres(value));
