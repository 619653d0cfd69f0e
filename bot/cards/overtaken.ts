// Which words are true of a bell by the time at which it rings, in place of its own: of one that comes late what it was for
// may be past.

import type { BatchStatus } from '../../core/batch/batch-status.ts';
import { isOn } from '../../core/calc/runs.ts';
import type { CanStatus } from '../../core/can/can-status.ts';
import type { PartStatus } from '../../core/part/part-status.ts';
import type { RingingReminder } from '../../core/ports.ts';
import type { ReminderKind } from '../../core/wanted-reminder.ts';
import type { RingWords } from '../language/tongues/english/rings.ts';
import type { Telling } from './card-context.ts';
import { potOverLines } from './dead-pot.ts';

/** Told late, the last reading is too old by then. */
export const airRings = ({ words }: Telling, { late }: RingingReminder): RingWords =>
  late === undefined ? words.rings['air-due'] : words.overtaken['air-old'];

/** Of a pot whose life is over nothing else is true; with no more left than to finish it, that. */
export function potRings({ words, now }: Telling, { phase, pot }: BatchStatus, kind: ReminderKind): RingWords {
  if (phase.is === 'over') return words.rings['pot-end'];
  return kind === 'pot-half' && pot !== undefined && pot.nearAt <= now ? words.rings['pot-margin'] : words.rings[kind];
}

/** What is to be done with a pot that is over; of one that nobody stopped stirring, that first. */
export function overLines(telling: Telling, { batch }: BatchStatus, kind: ReminderKind): readonly string[] {
  const turns = batch.sheet.blend.way === 'stir' && isOn(batch.stirring) && kind !== 'pot-end';
  return [...(turns ? [telling.words.replies.stopStirrer] : []), ...potOverLines(telling, batch)];
}

/** A can may be in doubt by then: nothing is poured from it, and nobody closes it tight. */
export function canRings({ words }: Telling, { phase }: CanStatus, { reminder, late }: RingingReminder): RingWords {
  const isDoubtful = phase.is === 'doubtful' && (late !== undefined || phase.because === 'stood-open');
  return isDoubtful ? words.overtaken['can-in-doubt'] : words.rings[reminder.kind];
}

export function partRings(telling: Telling, status: PartStatus, { reminder, late }: RingingReminder): RingWords {
  const { kind } = reminder;
  const { overtaken, rings } = telling.words;
  if (kind === 'temp-due' && status.cure?.warming?.by === 'last-readings') return overtaken['warm-by-pace'];
  if (late === undefined) return rings[kind];
  if (kind === 'surface-ends' && isPast(telling, status, 'surface')) return overtaken['surface-over'];
  if (kind !== 'recoat-opens' && kind !== 'recoat-closes') return rings[kind];
  if (isPast(telling, status, 'recoat-closes')) return overtaken['recoat-over'];
  return kind === 'recoat-closes' ? overtaken['recoat-soon'] : rings[kind];
}

function isPast({ now }: Telling, { clocks }: PartStatus, id: 'surface' | 'recoat-closes'): boolean {
  const end = clocks.find((clock) => clock.id === id)?.dueAt;
  return end !== undefined && end <= now;
}
