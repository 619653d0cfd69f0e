// Vapour of evaporating solvent, and the air that keeps it below a share of the lower explosive limit (LEL). Where two
// figures are published, the one that asks for more air. Air and vapour at 70 degF (21.1 degC), sea level.

import { isFailed } from '../failed.ts';
import {
  type CubicMetres,
  type CubicMetresPerLitre,
  cubicMetres,
  cubicMetresPerLitre,
  type Fraction,
  type GramsPerMole,
  type KilogramsPerLitre,
  type Litres,
  type Percent,
} from '../units.ts';
import { notAnAmount } from './amount.ts';
import { outOfRange, type Result } from './refusal.ts';
import type { LimitSource, Solvent } from './solvents.ts';

/** Ideal gas at 70 degF (294.26 K) and 101,325 Pa: R T / p. */
const cubicMetresPerMole = (8.31446261815324 * (273.15 + 190 / 9)) / 101_325;

/** 29 CFR 1910.94(c)(6)(ii), 1910.124, 1910.106(a)(31): a quarter of the LEL. Title 8 CCR 5153(d): a fifth. */
export const shareOfLel = { oshaSpray: 0.25, californiaSpray: 0.2, confinedSpaceHazard: 0.1 } as const;

export interface Evaporating {
  readonly solvent: Solvent;
  readonly litres: Litres;
}

export interface LowestLimit {
  readonly percent: Percent;
  readonly source: LimitSource;
  /** Table G-11 is old and several of its limits are too high; true when nothing newer stands beside it. */
  readonly oldTableOnly: boolean;
}

/** The lowest of the published lower explosive limits, `no-figure` where none was read. */
export function lowestLel(solvent: Solvent): Result<LowestLimit> {
  const { lowerExplosiveLimits: published } = solvent;
  const [first, ...others] = published;
  if (first === undefined) return { failed: 'no-figure', what: 'lower-explosive-limit' };
  const lowest = others.reduce((least, next) => (next.percent < least.percent ? next : least), first);
  return { ...lowest, oldTableOnly: published.every((limit) => limit.source === 'osha-1910.94') };
}

/** Vapour of a litre of liquid from its density and molar mass. */
export function vapourFromDensity(density: KilogramsPerLitre, molar: GramsPerMole): Result<CubicMetresPerLitre> {
  const refusal = outOfRange('density', density, 0.1, 25) ?? outOfRange('molar-mass', molar, 1, 1000);
  return refusal ?? cubicMetresPerLitre(((density * 1000) / molar) * cubicMetresPerMole);
}

/** Vapour of a litre of liquid: the larger of the tabled and the computed volume. */
export function vapourPerLitre(solvent: Solvent): Result<CubicMetresPerLitre> {
  const { tabledVapour, density, molarMass } = solvent;
  const computed = density === undefined || molarMass === undefined ? undefined : vapourFromDensity(density, molarMass);
  if (computed === undefined) return tabledVapour ?? { failed: 'no-figure', what: 'vapour-volume' };
  if (isFailed(computed)) return computed;
  return cubicMetresPerLitre(Math.max(computed, tabledVapour ?? 0));
}

/**
 * Air that thins so much vapour to a share of its limit: share = vapour / (vapour + air). Refuses a limit outside 0.1
 * to 50 %, a share of nothing.
 */
export function airToStayBelow(vapour: CubicMetres, lel: Percent, share: Fraction): Result<CubicMetres> {
  const refusal =
    notAnAmount('vapour', vapour) ??
    outOfRange('lower-explosive-limit', lel, 0.1, 50) ??
    outOfRange('share-of-lel', share, 0.01, 1);
  if (refusal !== undefined) return refusal;
  const allowed = (share * lel) / 100;
  return cubicMetres((vapour * (1 - allowed)) / allowed);
}

/** Air for all that evaporates, one solvent on top of the other (the same as Le Chatelier's rule gives). */
export function airForSolvents(evaporating: readonly Evaporating[], share: Fraction): Result<CubicMetres> {
  let air = 0;
  for (const { solvent, litres } of evaporating) {
    const lel = lowestLel(solvent);
    if (isFailed(lel)) return lel;
    const vapour = vapourOf({ solvent, litres });
    if (isFailed(vapour)) return vapour;
    const needed = airToStayBelow(vapour, lel.percent, share);
    if (isFailed(needed)) return needed;
    air += needed;
  }
  return cubicMetres(air);
}

/** Vapour volume of so much liquid. */
export function vapourOf({ solvent, litres }: Evaporating): Result<CubicMetres> {
  const refusal = outOfRange('solvent-volume', litres, 0, 1e6);
  if (refusal !== undefined) return refusal;
  const perLitre = vapourPerLitre(solvent);
  return isFailed(perLitre) ? perLitre : cubicMetres(perLitre * litres);
}
