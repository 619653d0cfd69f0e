// Which limit over the day counts where: the law of the crew's country, else the lowest that any country or body has published.
// What is recommended beyond the law is told, and gates only where the crew has set it so.

import { isFailed } from '../failed.ts';
import type { PartsPerMillion } from '../units.ts';
import {
  dayLimitOf,
  type ExposureLimit,
  type LimitBody,
  lowestLimit,
  type Substance,
  type WithLimits,
} from './exposure-limits.ts';
import type { LegalFrame } from './legal-frame.ts';
import type { Result } from './refusal.ts';

const lawBody: Readonly<Record<LegalFrame, LimitBody | undefined>> = {
  us: 'osha',
  eu: 'eu',
  uk: 'uk',
  mexico: 'mexico',
  elsewhere: undefined,
};

export interface DayLimit {
  readonly ppm: PartsPerMillion;
  /** `stand-in`: of the crew's own country none is kept, and this is the lowest of those that are. */
  readonly stands: 'law' | 'stand-in' | 'set';
  /** Whose it is; none where the crew has set it. */
  readonly limit: ExposureLimit | undefined;
  /** Recommended by NIOSH, and lower than what counts. */
  readonly advised: ExposureLimit | undefined;
}

/** `set`: what the crew has set for it, which makes a law stricter and never softer. */
export function dayLimit(substance: WithLimits, law: LegalFrame, set?: PartsPerMillion): Result<DayLimit> {
  const body = lawBody[law];
  const own = body === undefined ? undefined : dayLimitOf(substance, body);
  const byLaw = own === undefined || isFailed(own) ? undefined : own;
  const found = byLaw ?? lowestLimit(substance, 'average');
  if (set !== undefined && (byLaw === undefined || set < byLaw.ppm)) {
    return { ppm: set, stands: 'set', limit: undefined, advised: adviceBelow(substance, set) };
  }
  if (isFailed(found)) return found;
  const stands = byLaw === undefined ? 'stand-in' : 'law';
  return { ppm: found.ppm, stands, limit: found, advised: adviceBelow(substance, found.ppm) };
}

export interface ShortLimits {
  readonly shortTerm: ExposureLimit | undefined;
  readonly ceiling: ExposureLimit | undefined;
  /** Recommended by NIOSH over a quarter of an hour or as a ceiling, and stricter than the law's. */
  readonly advised: ExposureLimit | undefined;
}

/** Of the law of that country, else the lowest that any country or body has published. */
export function shortLimits(substance: WithLimits, law: LegalFrame): ShortLimits {
  const body = lawBody[law];
  const own = substance.limits.filter((found) => found.body === body);
  const counts = own.length > 0 ? { ...substance, limits: own } : substance;
  const lowest = (of: WithLimits, kind: 'short-term' | 'ceiling') => {
    const found = lowestLimit(of, kind);
    return isFailed(found) ? undefined : found;
  };
  const [shortTerm, ceiling] = [lowest(counts, 'short-term'), lowest(counts, 'ceiling')];
  const niosh = { ...substance, limits: substance.limits.filter((found) => found.body === 'niosh') };
  const advised = lowest(niosh, 'short-term') ?? lowest(niosh, 'ceiling');
  const strictest = Math.min(shortTerm?.ppm ?? Number.POSITIVE_INFINITY, ceiling?.ppm ?? Number.POSITIVE_INFINITY);
  return { shortTerm, ceiling, advised: advised !== undefined && advised.ppm < strictest ? advised : undefined };
}

function adviceBelow({ limits }: WithLimits, ppm: PartsPerMillion): ExposureLimit | undefined {
  return limits.find((found) => found.body === 'niosh' && found.kind === 'average' && found.ppm < ppm);
}

/** As its figures were kept in that edition of the rules. */
export function substanceAsIn(substance: Substance, edition: number): Substance {
  return { ...substance, limits: substance.limits.filter(({ since = 1 }) => since <= edition) };
}
