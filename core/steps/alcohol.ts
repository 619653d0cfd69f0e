// How strong the solvent is that the sheet names for the end of a flush, where it says how strong: of the bottle in use
// somebody is asked once, after a flush with it.

import type { SolventId } from '../calc/solvents.ts';
import type { Entry } from '../history.ts';
import type { Sheet } from '../products/sheet.ts';
import type { Percent } from '../units.ts';

export interface StrengthAsked {
  readonly solvent: SolventId;
  readonly purityPercent: Percent;
}

export function strengthAsked({ flush }: Pick<Sheet, 'flush'>): StrengthAsked | undefined {
  for (const { solvent, purityPercent } of flush?.steps ?? []) {
    if (purityPercent !== undefined) return { solvent, purityPercent };
  }
  return undefined;
}

/** Whether it was flushed with it; without a solvent it was the whole of the sequence. */
export function isFlushedWith(sheet: Pick<Sheet, 'flush'>, { fact }: Pick<Entry, 'fact'>): boolean {
  const asked = strengthAsked(sheet);
  return fact.type === 'GearFlushed' && asked !== undefined && (fact.solvent ?? asked.solvent) === asked.solvent;
}
