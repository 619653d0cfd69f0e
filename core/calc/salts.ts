// Soluble salts on prepared steel from the conductivity of a patch extract: ISO 8502-6 and ISO 8502-9.

import {
  type Celsius,
  type MicrosiemensPerCentimetre,
  type MilligramsPerSquareMetre,
  type Millilitres,
  microsiemensPerCentimetre,
  milligramsPerSquareMetre,
  type SquareCentimetres,
} from '../units.ts';
import { notAnAmount, notASize } from './amount.ts';
import { outOfRange, type Result } from './refusal.ts';

/**
 * Salt mass to conductivity, kg/(m2 S). The mixture's 5 is ISO 8502-9's constant from memory; it gives
 * the 1.2 mg/m2 per uS/cm that an instrument manual prints after that standard (3 mL, 12.5 cm2). Sodium chloride's follows from the
 * ionic conductivities at infinite dilution (CRC Handbook: Na+ 0.005008, Cl- 0.007631 S m2/mol) and 58.44 g/mol.
 */
export const saltConstant = { 'iso-mix': 5, 'sodium-chloride': 0.05844 / (0.005008 + 0.007631) } as const;

/** What the salts are taken to be. The mixture gives the larger figure. */
export type SaltKind = keyof typeof saltConstant;

export interface PatchTest {
  readonly patch: SquareCentimetres;
  readonly water: Millilitres;
  /** Of the water before, and of the extract after, both at 25 degC. */
  readonly before: MicrosiemensPerCentimetre;
  readonly after: MicrosiemensPerCentimetre;
}

/** Surface density: c V dGamma / A. Refuses an extract that conducts less than the water it was made from. */
export function saltDensity(test: PatchTest, kind: SaltKind): Result<MilligramsPerSquareMetre> {
  const { patch, water, before, after } = test;
  const refusal =
    notASize('patch-area', patch) ??
    notASize('water-volume', water) ??
    outOfRange('water-conductivity', before, 0, 1e6) ??
    outOfRange('extract-conductivity', after, before, 1e6);
  if (refusal !== undefined) return refusal;
  // mL x uS/cm / cm2 is 1e-6 kg/m2 of c: the same number in mg/m2.
  return milligramsPerSquareMetre((saltConstant[kind] * water * (after - before)) / patch);
}

/** 10 mg/m2 is 1 ug/cm2. */
export function microgramsPerSquareCentimetre(density: MilligramsPerSquareMetre): number {
  return density / 10;
}

/**
 * A reading brought to 25 degC at 2 % a degree (from memory), for a meter that does not do it; 5 to 40 degC.
 * @awaited
 */
export function conductivityAt25(
  reading: MicrosiemensPerCentimetre,
  solution: Celsius,
): Result<MicrosiemensPerCentimetre> {
  const refusal = notAnAmount('conductivity', reading) ?? outOfRange('solution-temperature', solution, 5, 40);
  return refusal ?? microsiemensPerCentimetre(reading / (1 + 0.02 * (solution - 25)));
}
