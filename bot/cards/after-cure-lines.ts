// From when a cured part may serve and until when it improves, by its sheet: on its cards and on paper.

import { afterCure } from '../../core/part/after-cure.ts';
import type { PartStatus } from '../../core/part/part-status.ts';
import type { Telling } from './card-context.ts';

/** `figures`: those of paper have the date always. */
export function afterCureLines(telling: Telling, status: PartStatus, figures = telling.figures): readonly string[] {
  const after = afterCure(status, telling.now);
  return after.length === 0 ? [] : [telling.words.steps.afterCure(after, figures)];
}
