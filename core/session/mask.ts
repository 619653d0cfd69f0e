// Whether a respirator may be worn for spraying, as far as figures go: its assigned factor against what the sheet's solvents come to
// in the booth, and what no cartridge is ever worn for.

import { lowestLimit, substances } from '../calc/exposure-limits.ts';
import {
  assignedProtectionFactor,
  type Facepiece,
  type MaximumUse,
  maximumUse,
  nioshSuppliedAirFactors,
  type RespiratorType,
} from '../calc/respirators.ts';
import { type SolventId, solvents } from '../calc/solvents.ts';
import { lowestLel } from '../calc/vapour.ts';
import { isFailed } from '../failed.ts';
import type { Sheet } from '../products/sheet.ts';

export interface Mask {
  readonly facepiece: Facepiece;
  readonly type: RespiratorType;
}

/** What a crew of sprayers wears, the least first. */
export const usualMasks: readonly Mask[] = [
  { type: 'air-purifying', facepiece: 'half-mask' },
  { type: 'air-purifying', facepiece: 'full-facepiece' },
  { type: 'powered-air-purifying', facepiece: 'helmet-or-hood' },
  { type: 'supplied-air-continuous-flow', facepiece: 'half-mask' },
  { type: 'supplied-air-continuous-flow', facepiece: 'helmet-or-hood' },
  { type: 'supplied-air-continuous-flow', facepiece: 'full-facepiece' },
  { type: 'self-contained-pressure-demand', facepiece: 'full-facepiece' },
];

/** Why no cartridge serves, whatever its factor; `undefined` where nothing of the kind is known. */
export type NoCartridge = 'sensitiser' | 'sensitiser-open' | 'oxygen-low' | 'explosive';

export interface MaskJudged {
  readonly mask: Mask;
  /** `undefined` where the table has none. */
  readonly factor: number | undefined;
  readonly never: NoCartridge | undefined;
  /** The vapours together, in multiples of their limits, against the factor; `undefined` where there is no sum. */
  readonly enough: boolean | undefined;
}

export interface Breathed {
  readonly sheet: Sheet;
  /** All solvents together, in multiples of their day limits; `undefined`: nobody can say. */
  readonly timesLimit: number | undefined;
  /** As a gas monitor last showed it there, in per cent. */
  readonly oxygen: number | undefined;
  readonly lelShare: number | undefined;
}

/** Oxygen-deficient below 19.5 %, 29 CFR 1910.134(b); a tenth of the explosive limit, 1910.146(b). */
const leastOxygen = 19.5;
const highestLelShare = 10;

export function judgedMask(mask: Mask, breathed: Breathed): MaskJudged {
  const found = assignedProtectionFactor(mask.type, mask.facepiece, 'none');
  const factor = isFailed(found) ? undefined : found;
  const never = isPurifying(mask) ? noCartridge(breathed) : explosive(breathed);
  const { timesLimit } = breathed;
  const enough = factor === undefined || timesLimit === undefined ? undefined : timesLimit <= factor;
  return { mask, factor, never, enough };
}

export const isPurifying = ({ type }: Mask): boolean => type === 'air-purifying' || type === 'powered-air-purifying';

function noCartridge(breathed: Breathed): NoCartridge | undefined {
  const { sheet, oxygen } = breathed;
  if (sheet.sensitisers === undefined) return 'sensitiser-open';
  if (sheet.sensitisers.named.length > 0) return 'sensitiser';
  if (oxygen !== undefined && oxygen < leastOxygen) return 'oxygen-low';
  return explosive(breathed);
}

const explosive = ({ lelShare }: Breathed): NoCartridge | undefined =>
  lelShare !== undefined && lelShare >= highestLelShare ? 'explosive' : undefined;

/** What NIOSH's own card counts, where it is less; `undefined` for what it does not count. */
export function factorOfNiosh({ type, facepiece }: Mask): number | undefined {
  if (type !== 'supplied-air-continuous-flow') return undefined;
  return nioshSuppliedAirFactors[facepiece === 'full-facepiece' ? 'full-facepiece' : 'continuous-flow'];
}

export interface UseOfMask {
  readonly solvent: SolventId;
  /** `undefined` where neither limit nor cap was read: then it is worn for none of it. */
  readonly most: MaximumUse | undefined;
}

/** Up to how much of each solvent of the sheet. */
export function usesOf(factor: number, sheet: Sheet): readonly UseOfMask[] {
  return (sheet.spray?.solvents ?? []).map(({ solvent }) => ({ solvent, most: mostOf(factor, solvent) }));
}

function mostOf(factor: number, id: SolventId): MaximumUse | undefined {
  const substance = Object.entries(substances).find(([name]) => name === id)?.[1];
  const limit = substance && lowestLimit(substance, 'average');
  if (substance === undefined || limit === undefined || isFailed(limit)) return undefined;
  const lel = lowestLel(solvents[id]);
  const most = maximumUse(factor, {
    limitPpm: limit.ppm,
    ...('idlhPpm' in substance && { idlhPpm: substance.idlhPpm }),
    ...(!isFailed(lel) && { lelPercent: lel.percent }),
  });
  return isFailed(most) ? undefined : most;
}

/** As far as it was said. */
export type MaskSaid = Partial<Mask>;

/** A hood is fed with air, a mask has cartridges, unless it is said otherwise. */
export function maskOf({ facepiece, type }: MaskSaid): Mask | undefined {
  if (facepiece === undefined && type === undefined) return undefined;
  const fed = type ?? (facepiece === 'helmet-or-hood' ? 'supplied-air-continuous-flow' : 'air-purifying');
  return {
    facepiece: facepiece ?? (fed === 'self-contained-pressure-demand' ? 'full-facepiece' : 'half-mask'),
    type: fed,
  };
}
