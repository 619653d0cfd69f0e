// The branded units as zod schemas, for the events' stored form.

import { z } from 'zod';
import * as units from './units.ts';

export const Grams = z.number().transform((value) => units.grams(value));
export const Litres = z.number().transform((value) => units.litres(value));
export const KilogramsPerLitre = z.number().transform((value) => units.kilogramsPerLitre(value));
export const Celsius = z.number().transform((value) => units.celsius(value));
export const Percent = z.number().transform((value) => units.percent(value));
export const PartsPerMillion = z.number().transform((value) => units.partsPerMillion(value));
export const EpochMs = z.number().transform((value) => units.epochMs(value));
export const Minutes = z.number().transform((value) => units.minutes(value));
export const Micrometres = z.number().transform((value) => units.micrometres(value));
export const Millimetres = z.number().transform((value) => units.millimetres(value));
export const CubicMetres = z.number().transform((value) => units.cubicMetres(value));
export const MetresPerSecond = z.number().transform((value) => units.metresPerSecond(value));
export const SquareMetres = z.number().transform((value) => units.squareMetres(value));
export const LitresPerMinute = z.number().transform((value) => units.litresPerMinute(value));
export const SquareMetresPerHour = z.number().transform((value) => units.squareMetresPerHour(value));
export const SquareCentimetres = z.number().transform((value) => units.squareCentimetres(value));
export const MicrosiemensPerCentimetre = z.number().transform((value) => units.microsiemensPerCentimetre(value));
export const RevolutionsPerMinute = z.number().transform((value) => units.revolutionsPerMinute(value));
export const MilligramsPerSquareMetre = z.number().transform((value) => units.milligramsPerSquareMetre(value));
export const MilligramsPerCubicMetre = z.number().transform((value) => units.milligramsPerCubicMetre(value));
export const Megapascals = z.number().transform((value) => units.megapascals(value));
export const Volts = z.number().transform((value) => units.volts(value));
