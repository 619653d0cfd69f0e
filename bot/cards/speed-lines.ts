// How fast a stirrer was said to turn, on cards: where the sheet gives a range and it was outside, what that means.

import type { Batch } from '../../core/batch/batch.ts';
import { speedsOutside, type Turning } from '../../core/batch/stir-speed.ts';
import type { Telling } from './card-context.ts';

/** `told`: left out, all that was ever said of it. */
export function speedLines({ words, figures }: Telling, batch: Batch, told?: readonly Turning[]): readonly string[] {
  const cutTo = batch.sheet.steps?.vortex?.speed?.fastPotLifePercent;
  return speedsOutside(batch, told).map((outside) => words.steps.speedOutside(outside, cutTo, figures));
}
