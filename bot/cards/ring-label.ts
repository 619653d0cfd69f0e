// What a bell will say, from its key alone: for lists of what rings next.

import { type ReminderKind, reminderKinds } from '../../core/reminders/wish.ts';
import type { Words } from '../language/words/languages.ts';

/** `batch/1/stir-done/2` -> the title of its second ring. A key of a later version is shown as it is. */
export function ringLabel(words: Words, numberedKey: string): string {
  const [noun, second = '', third = ''] = numberedKey.split('/');
  // The crew's own bells have no name before their kind, and a day after it.
  const [name, kind] = noun === 'crew' ? [third, second] : [second, third];
  return isReminderKind(kind) ? words.rings[kind].title(name) : numberedKey;
}

/** What must last at least so long rings for a person at the minute after; everything else at the minute before. */
export function isRoundedUp(numberedKey: string): boolean {
  const kind = numberedKey.split('/')[2] ?? '';
  return atLeast.some((known) => known === kind);
}

const atLeast: readonly ReminderKind[] = [
  'stir-done',
  'induction-done',
  'flash-least',
  'recoat-opens',
  'stage-handle',
  'stage-service',
  'stage-full',
  'cure-done',
];

const isReminderKind = (kind: string): kind is ReminderKind => reminderKinds.some((known) => known === kind);
