// The title of a card that tells of an act only that it was done, and to what.

import type { Recorded } from '../../core/execute.ts';
import type { Telling } from './card-context.ts';

export function doneTitle(telling: Telling, { envelopes: [envelope] }: Recorded): string {
  if (envelope === undefined || envelope.body.type === 'Amended') return telling.words.replies.settled;
  const said = telling.words.undo.act({ stream: envelope.stream, fact: envelope.body }, telling.figures);
  return said.slice(0, 1).toUpperCase() + said.slice(1);
}
