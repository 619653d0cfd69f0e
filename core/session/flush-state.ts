// How far gear is flushed: by the sheet's sequence of solvents where it gives one, in its order.

import type { SolventId } from '../calc/solvents.ts';
import type { Sheet } from '../products/sheet.ts';
import type { EpochMs } from '../units.ts';
import type { Gear } from './session-commands.ts';

export interface FlushState {
  readonly done: boolean;
  /** Of the sheet's sequence; empty where the sheet gives none. */
  readonly left: readonly SolventId[];
}

/** By what it was flushed with since it was last used; without a solvent: through with the whole of the sequence. */
export function flushedBy(
  { flush }: Pick<Sheet, 'flush'>,
  since: readonly { readonly solvent?: SolventId | undefined }[],
): FlushState {
  if (since.some(({ solvent }) => solvent === undefined)) return { done: true, left: [] };
  const steps = flush?.steps;
  if (steps === undefined) return { done: since.length > 0, left: [] };
  // In the sheet's order: isopropyl alcohol before acetone is not the sequence.
  let next = 0;
  for (const { solvent } of since) if (solvent === steps[next]?.solvent) next += 1;
  return { done: next >= steps.length, left: steps.slice(next).map(({ solvent }) => solvent) };
}

/** The first cleaning of a gear after it came to rest. */
export interface FirstCleaning {
  readonly sheet: Pick<Sheet, 'steps'>;
  readonly gear: Gear;
  readonly restsFrom: EpochMs;
  readonly at: EpochMs;
}
