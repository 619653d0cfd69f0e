// The shop's scales as they stood at a time, and which of them takes an amount: said later, a scale says nothing of a mix
// before it.

import type { Entry } from '../history.ts';
import type { EpochMs, Grams } from '../units.ts';

export interface Scale {
  readonly scale: string;
  readonly stepGrams: Grams;
  /** What it carries; left out, nobody said. */
  readonly mostGrams?: Grams | undefined;
}

export function scalesAt({ entries }: { readonly entries: readonly Entry[] }, at: EpochMs): readonly Scale[] {
  const byName = new Map<string, Scale | undefined>();
  for (const { fact, happenedAt } of entries) {
    if (fact.type !== 'SettingChanged' || fact.setting.name !== 'scale' || happenedAt > at) continue;
    const { scale, stepGrams, mostGrams } = fact.setting;
    byName.set(scale, stepGrams === undefined ? undefined : { scale, stepGrams, mostGrams });
  }
  return [...byName.values()].filter((each) => each !== undefined);
}

export const carries = ({ mostGrams }: Scale, mass: Grams): boolean => mostGrams === undefined || mass <= mostGrams;

/** The finest that carries it; where none does, the one that carries most. The vessel's own weight nobody knows. */
export function scaleFor(scales: readonly Scale[], mass: Grams): Scale | undefined {
  const carrying = scales.filter((each) => carries(each, mass));
  return carrying.length > 0
    ? carrying.reduce((finest, each) => (each.stepGrams < finest.stepGrams ? each : finest))
    : scales.toSorted((one, other) => (other.mostGrams ?? 0) - (one.mostGrams ?? 0))[0];
}
