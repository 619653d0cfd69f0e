// VOC content of a coating, a kit, a thinned mix: 40 CFR 59.406(a) and EPA Method 24 practice. Volumes are additive.

import { type Grams, type GramsPerLitre, grams, gramsPerLitre, type Litres, litres } from '../units.ts';
import { firstRefusal } from './amount.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';

/** A quantity of any liquid that goes into the pot, seen by its VOC. */
export interface VocLiquid {
  readonly volume: Litres;
  /** Volatile organic mass, exempt solvents and water left out. */
  readonly voc: Grams;
  readonly water: Litres;
  readonly exempt: Litres;
}

export interface VocContent {
  /** (Ws - Ww - Wec) / Vm: what leaves the can. */
  readonly actual: GramsPerLitre;
  /** (Ws - Ww - Wec) / (Vm - Vw - Vec), less water and exempt solvents: what a limit is compared with. */
  readonly lessWaterAndExempt: GramsPerLitre;
}

/** Refuses a liquid that is nothing but water and exempt solvent: it has no content less those. */
export function vocContent(liquid: VocLiquid): Result<VocContent> {
  const refusal = outOfRange('volume', liquid.volume, 1e-6, 1e6) ?? notALiquid(liquid);
  if (refusal !== undefined) return refusal;
  const counted = liquid.volume - liquid.water - liquid.exempt;
  if (counted < liquid.volume * 1e-9) {
    return { failed: 'does-not-apply', what: 'volume-less-water-and-exempt', given: Math.max(0, counted), limit: 0 };
  }
  return {
    actual: gramsPerLitre(liquid.voc / liquid.volume),
    lessWaterAndExempt: gramsPerLitre(liquid.voc / counted),
  };
}

/** All of them poured together: the parts of a kit, thinner, water. */
export function pouredTogether(parts: readonly VocLiquid[]): Result<VocLiquid> {
  const refusal = firstRefusal(parts, notALiquid);
  if (refusal !== undefined) return refusal;
  const total = (of: (part: VocLiquid) => number): number => parts.reduce((sum, part) => sum + of(part), 0);
  return {
    volume: litres(total((part) => part.volume)),
    voc: grams(total((part) => part.voc)),
    water: litres(total((part) => part.water)),
    exempt: litres(total((part) => part.exempt)),
  };
}

/** A liquid of a stated content without water or exempt solvent: the part of a kit, or a VOC thinner. */
export function liquidOfContent(volume: Litres, content: GramsPerLitre): Result<VocLiquid> {
  const refusal = outOfRange('volume', volume, 0, 1e6) ?? outOfRange('voc-content', content, 0, 25_000);
  return refusal ?? { volume, voc: grams(volume * content), water: litres(0), exempt: litres(0) };
}

/** Pure exempt solvent, acetone for one. */
export function exemptLiquid(volume: Litres): Result<VocLiquid> {
  const refusal = outOfRange('volume', volume, 0, 1e6);
  return refusal ?? { volume, voc: grams(0), water: litres(0), exempt: volume };
}

function notALiquid({ volume, voc, water, exempt }: VocLiquid): Refusal | undefined {
  return (
    outOfRange('volume', volume, 0, 1e6) ??
    outOfRange('voc-mass', voc, 0, 1e10) ??
    outOfRange('water', water, 0, volume) ??
    outOfRange('exempt-solvent', exempt, 0, volume) ??
    outOfRange('water-and-exempt', water + exempt, 0, volume * (1 + 1e-12))
  );
}
