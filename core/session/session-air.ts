// The air that a session needs against what its booth's fan gives. Sums only: one that passes is not a check that was
// made. Where nobody said how much is sprayed, the whole pot within an hour, which is the cautious side.

import { lowestLimit, substances } from '../calc/exposure-limits.ts';
import { type SolventId, solvents } from '../calc/solvents.ts';
import type { Evaporating } from '../calc/vapour.ts';
import { type AgainstLimit, faceFlow, flowForExposure, flowForSolvents, purgeBeforeHeat } from '../calc/ventilation.ts';
import { isFailed } from '../failed.ts';
import type { Sheet } from '../products/sheet.ts';
import {
  type CubicMetresPerHour,
  type Fraction,
  type Grams,
  type Litres,
  litres,
  type MetresPerSecond,
  type Minutes,
  minutes,
} from '../units.ts';
import type { Session } from './session.ts';
import type { BoothSize } from './session-commands.ts';
import type { SpraySettings } from './spray-settings.ts';

export interface AirNeed {
  readonly gramsPerHour: Grams;
  readonly solventLitresPerHour: Litres;
  /** To stay below the share of the lower explosive limit; `undefined` where a solvent has no figure. */
  readonly forLel: CubicMetresPerHour | undefined;
  /** To stay below the lowest published day limits, times the mixing factor. */
  readonly forExposure: CubicMetresPerHour | undefined;
  /** Solvents that the sums leave out, because nothing was read of them. */
  readonly withoutLel: readonly SolventId[];
  readonly withoutLimit: readonly SolventId[];
}

export interface AirAssumed {
  readonly share: Fraction;
  readonly mixingFactor: number;
}

const anHour = minutes(60);

/** `undefined` where the sheet gives no solvents: then there is no sum. */
export function airNeed(sheet: Sheet, gramsPerHour: Grams, { share, mixingFactor }: AirAssumed): AirNeed | undefined {
  const evaporating = solventsIn(sheet, gramsPerHour);
  if (evaporating === undefined) return undefined;
  const against = evaporating.flatMap((part) => limitOf(part));
  const lel = flowForSolvents(evaporating, anHour, share);
  const exposure = flowForExposure(against, anHour, mixingFactor);
  const withoutLel = evaporating.filter(({ solvent }) => solvent.lowerExplosiveLimits.length === 0);
  const withoutLimit = evaporating.filter((part) => limitOf(part).length === 0);
  return {
    gramsPerHour,
    solventLitresPerHour: litres(evaporating.reduce((sum, part) => sum + part.litres, 0)),
    forLel: isFailed(lel) ? undefined : lel,
    forExposure: isFailed(exposure) || against.length === 0 ? undefined : exposure,
    withoutLel: withoutLel.map(({ id }) => id),
    withoutLimit: withoutLimit.map(({ id }) => id),
  };
}

interface SolventOf extends Evaporating {
  readonly id: SolventId;
}

/** Solvent in so much mixed coating, as liquid. A solvent without a density counts as light as any: more litres. */
export function solventsIn(sheet: Sheet, mixed: Grams): readonly SolventOf[] | undefined {
  return sheet.spray?.solvents.map(({ solvent: id, percentByMass }) => {
    const solvent = solvents[id];
    const density = 'density' in solvent && solvent.density !== undefined ? solvent.density : lightest;
    return { id, solvent, litres: litres((mixed * percentByMass) / 100 / 1000 / density) };
  });
}

/** kg/L: lighter than every solvent whose density is on the list. */
const lightest = 0.7;

function limitOf(part: SolventOf): readonly AgainstLimit[] {
  const substance = Object.entries(substances).find(([id]) => id === part.id)?.[1];
  if (substance === undefined) return [];
  const limit = lowestLimit(substance, 'average');
  return isFailed(limit) ? [] : [{ ...part, limitPpm: limit.ppm }];
}

/** `undefined` where the face or its velocity is not known. */
export function fanGives(
  booth: BoothSize | undefined,
  faceMetresPerSecond: MetresPerSecond | undefined,
): CubicMetresPerHour | undefined {
  if (booth === undefined || faceMetresPerSecond === undefined) return undefined;
  const flow = faceFlow(booth.faceSquareMetres, faceMetresPerSecond);
  return isFailed(flow) ? undefined : flow;
}

/**
 * How long the fan needs for four times the booth's volume, never less than 3 minutes: the figures of a purge before heat
 * (29 CFR 1910.107(j)(4)(iii)(b); four volumes from memory), taken for want of a better one. `undefined` where the booth
 * or its velocity is not known.
 */
export function clearingMinutes(
  { place, extraction }: Pick<Session, 'place' | 'extraction'>,
  { booths }: SpraySettings,
): Minutes | undefined {
  const booth = booths.get(place);
  const flow = fanGives(booth, extraction?.faceMetresPerSecond);
  if (booth?.cubicMetres === undefined || flow === undefined) return undefined;
  const purge = purgeBeforeHeat(booth.cubicMetres, flow);
  return isFailed(purge) ? undefined : purge;
}

/** The longer of the sheet's time and the sum's. */
export function fanMinutesAfter(session: Session, settings: SpraySettings): Minutes | undefined {
  const known = [session.sheet.spray?.ventilateAfterMinutes, clearingMinutes(session, settings)];
  const times = known.filter((time) => time !== undefined);
  return times.length === 0 ? undefined : minutes(Math.max(...times));
}
