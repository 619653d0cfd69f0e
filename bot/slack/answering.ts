// An answer goes out first; what it moved is shown anew after it, and nobody waits for that.

import { showAnswer } from '../messages/answers.ts';
import type { Used } from '../messages/messages.ts';
import type { Where } from '../messages/platform.ts';
import type { Answer } from '../talk/answer.ts';
import type { Desk } from './crew-desk.ts';
import { markedFor } from './crew-mark.ts';
import type { SlackParts } from './slack-parts.ts';

/** Ends when it has been shown. */
export async function answered(
  parts: SlackParts,
  desk: Desk,
  answer: Answer,
  where: Where,
  id: string,
  used?: Used,
): Promise<void> {
  const { background } = parts;
  if (answer.recorded) {
    desk.wake();
    // Begun before the answer is there: what is shown next still stands.
    void background.run('taps-not-taken-away', id, () => settled(desk, answer, used));
  }
  await showAnswer(parts, desk, answer, where, markedFor(desk.crew, id));
  if (answer.recorded) void background.run('refresh-failed', id, () => refreshed(parts, desk, answer));
}

/** What was said of it before is older now. */
function settled({ messages, toldAlone }: Desk, answer: Answer, used?: Used): Promise<void> {
  toldAlone.recorded(answer);
  return messages.settle([...(answer.about ?? []), ...(answer.moved ?? [])], used);
}

/** On another front end. */
export async function recordedElsewhere(parts: SlackParts, desk: Desk, answer: Answer): Promise<void> {
  await settled(desk, answer);
  await refreshed(parts, desk, answer);
}

/** All that shows how things stand. */
export async function refreshed({ homes }: Pick<SlackParts, 'homes'>, desk: Desk, answer?: Answer): Promise<void> {
  await desk.messages.refresh(answer?.about);
  await homes.refresh(desk);
}
