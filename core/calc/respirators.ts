// Assigned protection factors and how far a respirator may be used: 29 CFR 1910.134(d)(3)(i)(A) Table 1.

import { type PartsPerMillion, type Percent, partsPerMillion } from '../units.ts';
import { outOfRange, type Result } from './refusal.ts';

export type RespiratorType =
  | 'air-purifying'
  | 'powered-air-purifying'
  | 'supplied-air-demand'
  | 'supplied-air-continuous-flow'
  | 'supplied-air-pressure-demand'
  | 'self-contained-demand'
  | 'self-contained-pressure-demand';

export type Facepiece = 'quarter-mask' | 'half-mask' | 'full-facepiece' | 'helmet-or-hood' | 'loose-fitting';

type Row = { readonly [facepiece in Facepiece]?: number };

/** A helmet or hood gets 1,000 only on the maker's test evidence (note 4); without it, 25. */
const hoodWithEvidence = 1000;

export const assignedProtectionFactors = {
  'air-purifying': { 'quarter-mask': 5, 'half-mask': 10, 'full-facepiece': 50 },
  'powered-air-purifying': { 'half-mask': 50, 'full-facepiece': 1000, 'helmet-or-hood': 25, 'loose-fitting': 25 },
  'supplied-air-demand': { 'half-mask': 10, 'full-facepiece': 50 },
  'supplied-air-continuous-flow': {
    'half-mask': 50,
    'full-facepiece': 1000,
    'helmet-or-hood': 25,
    'loose-fitting': 25,
  },
  'supplied-air-pressure-demand': { 'half-mask': 50, 'full-facepiece': 1000 },
  'self-contained-demand': { 'half-mask': 10, 'full-facepiece': 50, 'helmet-or-hood': 50 },
  'self-contained-pressure-demand': { 'full-facepiece': 10_000, 'helmet-or-hood': 10_000 },
} as const satisfies Record<RespiratorType, Row>;

/** NIOSH's own numbers for supplied air, Pocket Guide, HDI card: they differ, and the lower one is the cautious one. */
export const nioshSuppliedAirFactors = {
  any: 10,
  'continuous-flow': 25,
  'full-facepiece': 50,
  'full-facepiece-pressure-demand': 2000,
} as const;

/** `no-figure` where the table has a dash. */
export function assignedProtectionFactor(
  type: RespiratorType,
  facepiece: Facepiece,
  hoodEvidence: 'maker-has-tested' | 'none',
): Result<number> {
  const row: Row = assignedProtectionFactors[type];
  const factor = row[facepiece];
  if (factor === undefined) return { failed: 'no-figure', what: `protection-factor:${type}:${facepiece}` };
  const hasNote4 = facepiece === 'helmet-or-hood' && factor === 25;
  return hasNote4 && hoodEvidence === 'maker-has-tested' ? hoodWithEvidence : factor;
}

export interface UseCaps {
  readonly limitPpm: PartsPerMillion;
  /** Immediately dangerous to life or health. */
  readonly idlhPpm?: PartsPerMillion;
  /** Where no IDLH stands, the highest that the card prints. */
  readonly highestUsePpm?: PartsPerMillion;
  readonly lelPercent?: Percent;
}

export interface MaximumUse {
  readonly ppm: PartsPerMillion;
  readonly cappedBy: 'factor' | 'idlh' | 'tenth-of-lel' | 'printed-cap';
}

/**
 * Maximum use concentration: factor times limit (the product from memory, the caps from 1910.134(d)(3)), never above the IDLH nor a tenth of the LEL (1910.146(b) calls more
 * hazardous). With neither an IDLH nor a printed cap there is no figure: the product alone proves nothing.
 */
export function maximumUse(factor: number, caps: UseCaps): Result<MaximumUse> {
  const refusal =
    outOfRange('protection-factor', factor, 1, 10_000) ??
    outOfRange('exposure-limit', caps.limitPpm, 1e-6, 1e6) ??
    outOfRange('idlh', caps.idlhPpm ?? 0, 0, 1e6) ??
    outOfRange('highest-use', caps.highestUsePpm ?? 0, 0, 1e6) ??
    outOfRange('lower-explosive-limit', caps.lelPercent ?? 1, 0.1, 50);
  if (refusal !== undefined) return refusal;
  if (caps.idlhPpm === undefined && caps.highestUsePpm === undefined) return { failed: 'no-figure', what: 'idlh' };
  const candidates: MaximumUse[] = [{ ppm: partsPerMillion(factor * caps.limitPpm), cappedBy: 'factor' }];
  if (caps.idlhPpm !== undefined) candidates.push({ ppm: caps.idlhPpm, cappedBy: 'idlh' });
  if (caps.highestUsePpm !== undefined) candidates.push({ ppm: caps.highestUsePpm, cappedBy: 'printed-cap' });
  if (caps.lelPercent !== undefined) {
    candidates.push({ ppm: partsPerMillion(caps.lelPercent * 1e4 * 0.1), cappedBy: 'tenth-of-lel' });
  }
  return candidates.reduce((least, next) => (next.ppm < least.ppm ? next : least));
}
