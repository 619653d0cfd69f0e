// An answer goes out first; what it moved is shown anew after it, and nobody waits for that.

import { showAnswer } from '../messages/answers.ts';
import type { Where } from '../messages/platform.ts';
import type { Answer } from '../talk/answer.ts';
import type { Desk } from './crew-desk.ts';
import { markedFor } from './crew-mark.ts';
import type { SlackParts } from './slack-parts.ts';

/** What was tapped on which message, for what then stands in place of its buttons. */
export interface Used {
  readonly ts: string;
  readonly channel: string;
  readonly outcome: string;
}

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
    void background.run('taps-not-taken-away', id, () => settled(desk, answer, where.team, used));
  }
  await showAnswer(parts, desk, answer, where, markedFor(desk.crew, id));
  if (answer.recorded) void background.run('refresh-failed', id, () => refreshed(parts, desk, answer));
}

/** What was said of it before is older now. */
async function settled({ messages, toldAlone }: Desk, answer: Answer, team = '', used?: Used): Promise<void> {
  const { about = [], moved = [] } = answer;
  toldAlone.recorded(answer);
  await Promise.all([
    ...[...new Set([...about, ...moved])].map((subject) => messages.settle(subject, used)),
    ...(used === undefined ? [] : [messages.settleOne(team, used.channel, used.ts, used.outcome)]),
  ]);
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
