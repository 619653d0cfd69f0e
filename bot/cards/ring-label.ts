// What a bell will say, from its key alone: for lists of what rings next.

import type { Figures } from '../language/figures.ts';
import { ringNamed } from '../language/ring-key.ts';
import type { Words } from '../language/tongues/tongues.ts';

interface Reader {
  readonly words: Words;
  readonly figures: Pick<Figures, 'date'>;
}

/** `batch/1/stir-done/2` -> the title of its second ring. A key of a later version is shown as it is. */
export function ringLabel({ words, figures }: Reader, numberedKey: string): string {
  const ring = ringNamed(numberedKey);
  return ring === undefined ? numberedKey : words.rings[ring.kind].title(ring.name, figures);
}
