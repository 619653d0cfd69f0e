// The air that a session needs against what its booth's fan gives. Sums only: one that passes is not a check that was
// made. Where nobody said how much is sprayed, the whole pot within an hour, which is the cautious side.

import { type DayLimit, dayLimit, substanceAsIn } from '../calc/day-limit.ts';
import { lowestLimit, type Substance, substances, type WithLimits } from '../calc/exposure-limits.ts';
import type { LegalFrame } from '../calc/legal-frame.ts';
import { type Solvent, type SolventId, solventAsIn, solvents } from '../calc/solvents.ts';
import type { Evaporating } from '../calc/vapour.ts';
import { type AgainstLimit, faceFlow, flowForExposure, flowForSolvents, purgeBeforeHeat } from '../calc/ventilation.ts';
import { isFailed } from '../failed.ts';
import { ownValue } from '../own-key.ts';
import type { Sheet } from '../products/sheet.ts';
import { type Edition, editionOfToday } from '../rule-editions.ts';
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
import type { DayLimitsSet, SpraySettings } from './spray-settings.ts';

export interface AirNeed {
  readonly gramsPerHour: Grams;
  readonly solventLitresPerHour: Litres;
  /** To stay below the share of the lower explosive limit; `undefined` where a solvent has no figure. */
  readonly forLel: CubicMetresPerHour | undefined;
  /** To stay below the day limits that count here, times the mixing factor. */
  readonly forExposure: CubicMetresPerHour | undefined;
  /** Solvents that the sums leave out, because nothing was read of them. */
  readonly withoutLel: readonly SolventId[];
  readonly withoutLimit: readonly SolventId[];
}

export interface AirAssumed {
  readonly share: Fraction;
  readonly mixingFactor: number;
  readonly law: LegalFrame;
  readonly dayLimits: DayLimitsSet;
}

const anHour = minutes(60);

/** `undefined` where the sheet gives no solvents: then there is no sum. */
export function airNeed(
  sheet: Sheet,
  gramsPerHour: Grams,
  assumed: AirAssumed,
  edition: Edition = editionOfToday,
): AirNeed | undefined {
  const { share, mixingFactor } = assumed;
  const evaporating = solventsIn(sheet, gramsPerHour)?.map((part) => ({
    ...part,
    solvent: solventAsIn(part.solvent, edition),
  }));
  if (evaporating === undefined) return undefined;
  const against = evaporating.flatMap((part) => againstLimit(part, assumed, edition));
  const lel = flowForSolvents(evaporating, anHour, share);
  const exposure = flowForExposure(against, anHour, mixingFactor);
  const withoutLel = evaporating.filter(({ solvent }) => solvent.lowerExplosiveLimits.length === 0);
  const withoutLimit = evaporating.filter((part) => againstLimit(part, assumed, edition).length === 0);
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
    const solvent: Solvent = solvents[id];
    const { density = lightest } = solvent;
    return { id, solvent, litres: litres((mixed * percentByMass) / 100 / 1000 / density) };
  });
}

/** kg/L: lighter than every solvent whose density is on the list. */
const lightest = 0.7;

function againstLimit(part: SolventOf, assumed: AirAssumed, edition: Edition): readonly AgainstLimit[] {
  const limit = edition < 6 ? lowestBefore(part.id, edition) : dayLimitOfSolvent(part.id, assumed);
  return limit === undefined ? [] : [{ ...part, limitPpm: limit.ppm }];
}

/** What counts of it over a day; `undefined` where no figure is kept. */
export function dayLimitOfSolvent(
  id: SolventId,
  { law, dayLimits }: Pick<AirAssumed, 'law' | 'dayLimits'>,
): DayLimit | undefined {
  const found = dayLimit(ownValue<Substance>(substances, id) ?? nothingKept(id), law, dayLimits.get(id));
  return isFailed(found) ? undefined : found;
}

/** Of which no figure is kept: only what the crew has set counts. */
const nothingKept = (id: SolventId): WithLimits => ({ name: id, limits: [] });

/** Before edition 6 the lowest published limit counted, law or not. */
function lowestBefore(id: SolventId, edition: Edition) {
  const substance = ownValue<Substance>(substances, id);
  const found = substance === undefined ? undefined : lowestLimit(substanceAsIn(substance, edition), 'average');
  return found === undefined || isFailed(found) ? undefined : found;
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
