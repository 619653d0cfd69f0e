// An answer goes out first; what it moved is shown anew after it, and nobody waits for that.

import type { Answer } from '../talk/answer.ts';
import type { BackgroundWork } from './background-work.ts';
import type { Desk } from './crew-desk.ts';
import { markedFor } from './crew-mark.ts';
import type { Homes } from './homes.ts';
import type { Where } from './inbound.ts';
import type { ShowAnswer } from './show-answer.ts';

/** What was tapped on which message, for what then stands in place of its buttons. */
export interface Used {
  readonly ts: string;
  readonly channel: string;
  readonly outcome: string;
}

export interface Answering {
  /** Ends when it has been shown. */
  readonly answered: (desk: Desk, answer: Answer, where: Where, id: string, used?: Used) => Promise<void>;
  /** All that shows how things stand. */
  readonly refreshed: (desk: Desk, answer?: Answer) => Promise<void>;
}

interface AnsweringNeeds {
  readonly showing: ShowAnswer;
  readonly homes: Homes;
  readonly background: BackgroundWork;
}

export function createAnswering({ showing, homes, background }: AnsweringNeeds): Answering {
  async function answered(desk: Desk, answer: Answer, where: Where, id: string, used?: Used): Promise<void> {
    if (answer.recorded) {
      desk.wake();
      // Begun before the answer is there: what is shown next still stands.
      void background.run('taps-not-taken-away', id, () => settled(desk, answer, where, used));
    }
    await showing.show(desk, answer, where, markedFor(desk.crew, id));
    if (answer.recorded) void background.run('refresh-failed', id, () => refreshed(desk, answer));
  }

  async function settled({ thread }: Desk, { about = [] }: Answer, { team }: Where, used?: Used): Promise<void> {
    await Promise.all([
      ...about.map((subject) => thread.settle(subject, used)),
      ...(used === undefined ? [] : [thread.settleOne(team, used.channel, used.ts, used.outcome)]),
    ]);
  }

  async function refreshed(desk: Desk, answer?: Answer): Promise<void> {
    await desk.standing.refresh(answer?.about);
    await homes.refresh(desk);
  }

  return { answered, refreshed };
}
