// What a bell will say, from its key alone: for lists of what rings next.

import type { ReminderKind } from '../../core/reminders/wanted-reminder.ts';
import { ringNamed } from '../language/ring-key.ts';
import type { Words } from '../language/tongues/languages.ts';

/** `batch/1/stir-done/2` -> the title of its second ring. A key of a later version is shown as it is. */
export function ringLabel(words: Words, numberedKey: string): string {
  const ring = ringNamed(numberedKey);
  return ring === undefined ? numberedKey : words.rings[ring.kind].title(ring.name);
}

/** What must last at least so long rings for a person at the minute after; everything else at the minute before. */
export function isRoundedUp(numberedKey: string): boolean {
  const kind = ringNamed(numberedKey)?.kind;
  return atLeast.some((known) => known === kind);
}

const atLeast: readonly ReminderKind[] = [
  'stir-done',
  'induction-done',
  'can-stirred',
  'flash-least',
  'recoat-opens',
  'stage-handle',
  'stage-service',
  'stage-full',
  'cure-done',
];
