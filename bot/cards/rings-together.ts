// Thirty parts from one pot are dry enough to touch at the same moment: what then rings for each of them, as one card for
// a front end that would otherwise call somebody thirty times.

import { nameIn, nounOf, type StreamId } from '../../core/ids.ts';
import { inNaturalOrder } from '../../core/natural-order.ts';
import type { RingingReminder } from '../../core/ports.ts';
import { plannedRings } from '../../core/reminders/plan.ts';
import { movedMs } from '../../core/ring-log.ts';
import type { Shop } from '../../core/shop.ts';
import type { PlannedReminder } from '../../core/wanted-reminder.ts';
import { writeRingKey } from '../language/ring-key.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { tapsTogether } from './parts-together.ts';
import { reminderCard } from './reminder-cards.ts';

export interface RingsTogether {
  /** Numbered, the bell's own among them. */
  readonly keys: readonly string[];
  readonly card: Card;
}

/** Named in the title; the rest stand below it. */
const namesInTitle = 2;

/** `own`: the card of this bell alone. `undefined`: nothing rings with it. */
export function ringsTogether(telling: Telling, ringing: RingingReminder, own: Card): RingsTogether | undefined {
  const { reminder, shop, unrecorded, possibleRepeat } = ringing;
  if (nounOf(reminder.stream) !== 'part' || unrecorded || possibleRepeat) return undefined;
  const rings = alongside(shop, ringing).flatMap((planned) => {
    const card = reminderCard(telling, { ...ringing, reminder: { ...planned, crew: reminder.crew } });
    return isAlike(own, nameIn(reminder.stream), card, nameIn(planned.stream)) ? [{ ...planned, card }] : [];
  });
  if (rings.length === 0) return undefined;
  const all = [{ ...reminder, card: own }, ...rings].sort((a, b) => inNaturalOrder(a.stream, b.stream));
  const names = all.map(({ stream }) => nameIn(stream));
  const others = names.length - namesInTitle;
  const named = names.slice(0, namesInTitle).join(', ') + (others > 0 ? ` +${others}` : '');
  return {
    keys: all.map(({ numberedKey }) => numberedKey),
    card: makeCard(titleFor(own, nameIn(reminder.stream), named), own.tone, {
      facts: own.facts,
      lines: [...own.lines, ...(others > 0 ? [names.join(', ')] : [])],
      hazards: own.hazards,
      actions: [
        ...tapsTogether(all.map(({ stream, card }) => ({ part: nameIn(stream), taps: card.actions }))),
        tap(telling, 'ok', `ok ${all.map(({ key }) => writeRingKey(key)).join(' ')}`),
      ],
      ping: own.ping,
    }),
  };
}

/** Due with it, for the same people, of the same kind and pot, and as often rung before. */
function alongside(shop: Shop, { reminder }: RingingReminder): readonly PlannedReminder[] {
  const pot = potOf(shop, reminder.stream);
  if (pot === undefined) return [];
  const people = reminder.to.join();
  return plannedRings(shop).filter(
    (planned) =>
      planned.kind === reminder.kind &&
      planned.numberedKey !== reminder.numberedKey &&
      Math.abs(planned.dueAt - reminder.dueAt) <= movedMs &&
      planned.ring === reminder.ring &&
      planned.to.join() === people &&
      potOf(shop, planned.stream) === pot,
  );
}

function potOf(shop: Shop, stream: StreamId): number | undefined {
  return nounOf(stream) === 'part' ? shop.parts.get(nameIn(stream))?.coats.at(-1)?.batch : undefined;
}

/** The same but for the name: figures of its own are for a bell of its own. */
function isAlike(own: Card, ownName: string, card: Card, name: string): boolean {
  const said = ({ facts, lines, tone }: Card) => JSON.stringify([facts, lines, tone]);
  return said(own) === said(card) && titleFor(own, ownName, '') === titleFor(card, name, '');
}

/** A part's title begins with its name. */
const titleFor = ({ title }: Card, name: string, named: string): string =>
  title.startsWith(name) ? named + title.slice(name.length) : title;
