// The readings that a line goes to which the strict reader cannot read, in their order: the first that understands it counts.

import { asSaid } from './as-said/as-said.ts';
import type { LineContext } from './reading.ts';
import { bareAnswer } from './said-of-last/bare-answer.ts';
import { slotsHeard } from './slots-heard/slots-heard.ts';
import type { Strictly, Understands, Understood } from './understood.ts';

/** A question about the state before what answers or corrects the last card, that before an act told in the speaker's own words. */
const further: readonly Understands[] = [bareAnswer, asSaid, slotsHeard];

export function understood(line: string, context: LineContext, strictly: Strictly): Understood | undefined {
  for (const reading of further) {
    const found = reading(line, context, strictly);
    if (found !== undefined) return found;
  }
  return undefined;
}
