// Takes what was said, tapped, filled in or dropped to the crew that it concerns.

import type { Log, Postbox } from '../../core/ports.ts';
import { createAnswering } from './answering.ts';
import { createArrivals } from './arrivals.ts';
import type { BackgroundWork } from './background-work.ts';
import type { Desk } from './crew-desk.ts';
import { createDroppedPictures } from './dropped-pictures.ts';
import type { Submitted } from './form-answer.ts';
import { createForms, type Form } from './forms.ts';
import type { Homes } from './homes.ts';
import type { Inbound } from './inbound.ts';
import { createLines } from './lines.ts';
import type { Outbox } from './outbox.ts';
import type { Respond } from './respond.ts';
import { type Pace, wallPace } from './sender.ts';
import { createSetUpForms } from './set-up-form.ts';
import { setUpCallback } from './set-up-view.ts';
import type { ShowAnswer } from './show-answer.ts';
import type { Call } from './slack-client.ts';
import { createSpeaking } from './speaking.ts';
import { createTaps } from './taps.ts';
import { touchedBy, type WhichCrew } from './which-crew.ts';

export interface Conversation {
  /** Ends when it has been answered; what it moved is shown after that. */
  readonly work: (inbound: Inbound) => Promise<void>;
  readonly submit: (form: Form) => Submitted;
}

export interface ConversationNeeds {
  readonly which: WhichCrew;
  readonly showing: ShowAnswer;
  readonly homes: Homes;
  readonly outbox: Outbox;
  readonly call: Call;
  readonly respond: Respond;
  readonly postbox: Postbox;
  readonly background: BackgroundWork;
  readonly pace: Pace;
  readonly now: () => number;
  readonly log: Log;
}

export function createConversation(needs: ConversationNeeds): Conversation {
  const { which, showing, homes, postbox, background, now } = needs;
  const { privately, warn } = showing;
  const speaking = createSpeaking({ postbox, now });
  const answering = createAnswering({ showing, homes, background });
  const lines = createLines({ speaking, answering, warn, postbox });
  const pictures = createDroppedPictures({ speaking, answering, warn, said: lines.said });
  const taps = createTaps({ speaking, answering, homes, respond: needs.respond, postbox, now });
  const arrivals = createArrivals({ outbox: needs.outbox, postbox, homes, privately });
  // Slack's 3 s are of the wall; its limits are kept by the pace of everything that is sent.
  const forming = {
    ...{ which, speaking, answering, warn, background },
    ...{ call: needs.call, log: needs.log, wall: wallPace, pace: needs.pace, noCrew: arrivals.noCrew },
  };
  const forms = createForms({ ...forming, taps });
  const setUps = createSetUpForms({ ...forming, postbox, outbox: needs.outbox, joined: arrivals.joined });

  async function work(inbound: Inbound): Promise<void> {
    // A form says itself whose it is.
    if (inbound.kind === 'form') return submit(inbound, true).done;
    const desk = which.deskAt(inbound.where, touchedBy(inbound));
    return desk === undefined ? arrivals.noCrew(inbound) : workOf(desk, inbound);
  }

  async function workOf(desk: Desk, inbound: Exclude<Inbound, Form>): Promise<void> {
    switch (inbound.kind) {
      case 'line':
        await lines.said(desk, inbound);
        return;
      case 'edited':
        return lines.edited(desk, inbound);
      case 'tap':
        return /\{[\w-]+\}/.test(inbound.line) ? forms.open(desk, inbound) : taps.pressed(desk, inbound);
      case 'set-up':
        return setUps.open(desk, inbound);
      case 'home':
        return homes.show(desk, inbound.where);
      case 'picture':
        return pictures.dropped(desk, inbound);
      case 'joined':
        return arrivals.joined(desk, inbound.where);
      default: {
        const never: never = inbound;
        return never;
      }
    }
  }

  const submit = (form: Form, resumed = false): Submitted =>
    (form.callback === setUpCallback ? setUps : forms).submit(form, resumed);

  return { work, submit };
}
