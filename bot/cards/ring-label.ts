// What a bell will say, from its key alone: for lists of what rings next.

import { ringNamed } from '../language/ring-key.ts';
import type { Words } from '../language/tongues/tongues.ts';

/** `batch/1/stir-done/2` -> the title of its second ring. A key of a later version is shown as it is. */
export function ringLabel(words: Words, numberedKey: string): string {
  const ring = ringNamed(numberedKey);
  return ring === undefined ? numberedKey : words.rings[ring.kind].title(ring.name);
}
