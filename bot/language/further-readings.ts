// The readings that a line goes to which the strict reader cannot read, in their order: the first that understands it counts.

import type { LineContext } from './reading.ts';
import { slotsHeard } from './slots-heard/slots-heard.ts';
import type { Understands, Understood } from './understood.ts';

/** A question about the state before what answers or corrects the last card, that before an act told in the speaker's own words. */
const further: readonly Understands[] = [slotsHeard];

export function understood(line: string, context: LineContext): Understood | undefined {
  for (const reading of further) {
    const found = reading(line, context);
    if (found !== undefined) return found;
  }
  return undefined;
}
