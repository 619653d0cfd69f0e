// Flammable-liquid categories by flash and boiling point, 29 CFR 1910.106(a)(19), and what hangs on them: bonding when
// pouring, warm liquids, and how a flush solvent's flash point compares.

import { type Celsius, celsius, celsiusFromFahrenheit } from '../units.ts';
import { firstRefusal } from './amount.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';

/** Category 3 in two halves, because several rules part it at 100 degF. */
export type FlammableCategory = '1' | '2' | '3-below-100F' | '3' | '4' | 'none';

/** 73.4, 100, 140 and 199.4 degF; boiling point 95 degF. Written in degC where the rule is, to sit exactly on the edge. */
const cold = celsius(23);
const hundredFahrenheit = celsiusFromFahrenheit(100);
const warm = celsius(60);
const hot = celsius(93);
const boilsCold = celsius(35);
/** 30 degF as an interval. */
const nearFlashPoint = 16.7;

/** A boiling point that nobody read counts as low: category 1. */
export function flammableCategory(flashPoint: Celsius, boilingPoint: Celsius | undefined): Result<FlammableCategory> {
  const refusal = notATemperature('flash-point', flashPoint) ?? notATemperature('boiling-point', boilingPoint ?? cold);
  if (refusal !== undefined) return refusal;
  if (flashPoint < cold) return boilingPoint === undefined || boilingPoint <= boilsCold ? '1' : '2';
  if (flashPoint < hundredFahrenheit) return '3-below-100F';
  if (flashPoint <= warm) return '3';
  return flashPoint <= hot ? '4' : 'none';
}

/** As it must be handled at its own temperature: within 30 degF of its flash point a liquid counts one step worse. */
export function handledAs(
  flashPoint: Celsius,
  boilingPoint: Celsius | undefined,
  liquid: Celsius,
): Result<FlammableCategory> {
  const refusal = notATemperature('liquid-temperature', liquid);
  if (refusal !== undefined) return refusal;
  const category = flammableCategory(flashPoint, boilingPoint);
  if (typeof category !== 'string' || liquid < flashPoint - nearFlashPoint) return category;
  switch (category) {
    case '1':
    case '2':
    case '3-below-100F':
      return category;
    case '3':
      return '3-below-100F';
    case '4':
      return '3';
    case 'none':
      return '4';
  }
}

/** Nozzle and container are to be bonded when it is poured, 1910.106(f)(3)(vi) and (e)(6)(ii). */
export function needsBonding(category: FlammableCategory): boolean {
  return category === '1' || category === '2' || category === '3-below-100F';
}

export type FlushFlashPoint =
  /** 100 degF or more: good for any cleaning, 1910.107(g)(5). */
  | 'any-cleaning'
  /** Below 100 degF, not below what was sprayed: guns only, in the booth with the fan on. */
  | 'guns-only'
  /** Below what was sprayed: the rule does not allow it even for guns. */
  | 'below-the-sprayed';

/** `sprayed`: flash points of the solvents of the coating; the lowest of them counts. */
export function flushFlashPoint(flush: Celsius, sprayed: readonly Celsius[]): Result<FlushFlashPoint> {
  const refusal =
    notATemperature('flash-point', flush) ?? firstRefusal(sprayed, (point) => notATemperature('flash-point', point));
  if (refusal !== undefined) return refusal;
  if (flush >= hundredFahrenheit) return 'any-cleaning';
  if (sprayed.length === 0) return { failed: 'no-figure', what: 'flash-point:sprayed' };
  return flush >= Math.min(...sprayed) ? 'guns-only' : 'below-the-sprayed';
}

const notATemperature = (what: string, given: Celsius): Refusal | undefined => outOfRange(what, given, -273.15, 1000);
