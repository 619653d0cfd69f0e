// Every figure that is published, walked: none without its source, none of advice that gates, no explosive limit that is not the
// lowest of those kept.

import { describe, expect, it } from 'vitest';
import { dayLimit } from '../../../core/calc/day-limit.ts';
import { type limitBodies, type Substance, substances } from '../../../core/calc/exposure-limits.ts';
import { legalFrames } from '../../../core/calc/legal-frame.ts';
import { type Solvent, solventIds, solvents } from '../../../core/calc/solvents.ts';
import { lowestLel } from '../../../core/calc/vapour.ts';
import { isFailed } from '../../../core/failed.ts';
import { partsPerMillion } from '../../../core/units.ts';

const all: readonly (readonly [string, Substance])[] = Object.entries(substances);

const namedBy: Readonly<Record<(typeof limitBodies)[number], RegExp>> = {
  osha: /^29 CFR 1910\.1000, Table Z-[12]/,
  niosh: /^NIOSH Pocket Guide/,
  ontario: /^Ontario/,
  eu: /^Directive (?:\(EU\) )?[\d/]+/,
  uk: /^EH40\/2005/,
  mexico: /^NOM-010-STPS-2014/,
};

describe('given every limit of what is breathed', () => {
  it.each(all)('%s: each names the paper that prints it, and none stands twice', (_, { limits }) => {
    expect(limits.filter(({ body, source }) => !namedBy[body].test(source))).toEqual([]);
    expect(limits.filter(({ ppm }) => !(ppm > 0))).toEqual([]);
    expect(new Set(limits.map(({ body, kind }) => `${body} ${kind}`)).size).toBe(limits.length);
  });

  it.each(all.flatMap(([id, substance]) => legalFrames.map((law) => [id, law, substance] as const)))(
    '%s in %s: what counts is law, or the lowest that is kept and says that it stands in; advice only ever does the latter',
    (_, law, substance) => {
      const found = dayLimit(substance, law);
      if (isFailed(found)) {
        expect(substance.limits.filter(({ kind }) => kind === 'average')).toEqual([]);
        return;
      }
      const own = { us: 'osha', eu: 'eu', uk: 'uk', mexico: 'mexico', elsewhere: undefined }[law];
      const hasOwn = substance.limits.some(({ body }) => body === own);
      expect(found.stands).toBe(hasOwn ? 'law' : 'stand-in');
      if (hasOwn) expect(found.limit?.body).toBe(own);
      const averages = substance.limits.filter(({ kind }) => kind === 'average').map(({ ppm }) => ppm);
      if (!hasOwn) expect(found.ppm).toBe(Math.min(...averages));
      if (found.advised !== undefined) expect(found.advised.ppm).toBeLessThan(found.ppm);
    },
  );

  it.each(all)('%s: what the crew sets makes a law stricter, never softer', (_, substance) => {
    for (const law of legalFrames) {
      const found = dayLimit(substance, law);
      if (isFailed(found)) continue;
      const stricter = dayLimit(substance, law, found.ppm);
      const half = partsPerMillion(found.ppm / 2);
      expect(dayLimit(substance, law, half)).toMatchObject({ ppm: half, stands: 'set' });
      expect(stricter).toMatchObject({ ppm: found.ppm });
      const double = partsPerMillion(found.ppm * 2);
      const softer = dayLimit(substance, law, double);
      expect(softer).toMatchObject(found.stands === 'law' ? { ppm: found.ppm, stands: 'law' } : { stands: 'set' });
    }
  });
});

describe('given every explosive limit', () => {
  it.each(solventIds)('%s: the lowest of those kept counts, and is marked where only the old table has it', (id) => {
    const solvent: Solvent = solvents[id];
    const kept = solvent.lowerExplosiveLimits;
    const found = lowestLel(solvent);
    if (isFailed(found)) {
      expect(kept).toEqual([]);
      return;
    }
    expect(found.percent).toBe(Math.min(...kept.map(({ percent }) => percent)));
    expect(found.oldTableOnly).toBe(kept.every(({ source }) => source === 'osha-1910.94'));
  });

  it('only two naphthas are left with the old table alone', () => {
    const old = solventIds.filter((id) => {
      const found = lowestLel(solvents[id]);
      return !isFailed(found) && found.oldTableOnly;
    });
    expect(old).toEqual(['varnish-naphtha', 'mineral-spirits']);
  });
});
