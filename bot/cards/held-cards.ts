// Held parts: the hold just said, with who sees to it, and the ring of the morning to whoever does.

import { heldFor } from '../../core/part/held-reminders.ts';
import type { PartNow } from '../../core/status.ts';
import type { PlannedReminder } from '../../core/wanted-reminder.ts';
import type { Card, CardAction } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { heldLine, partCard } from './part-cards.ts';

export function heldCard(telling: Telling, status: PartNow, title: string): Card {
  const card = partCard(telling, status, title, [], 'warn');
  return { ...card, actions: [...card.actions, seeToTap(telling, status.part.name)] };
}

const seeToTap = (telling: Telling, part: string): CardAction => tap(telling, 'see-to', `see-to ${part} {owner}`);

const mostTold = 8;

/** As they stand when it rings: what was decided since is no longer told. */
export function heldRing(telling: Telling, { to }: Pick<PlannedReminder, 'to'>) {
  const { held } = telling.words.parts;
  const [owner = ''] = to;
  const theirs = heldFor(telling.shop, owner);
  const lines = theirs.slice(0, mostTold).flatMap(({ part }) => [heldLine(telling, part), held.toType(part.name)]);
  return {
    lines: lines.length === 0 ? [held.nothingLeft] : lines,
    taps: [tap(telling, 'on-hold', 'how-stands on-hold')],
  };
}
