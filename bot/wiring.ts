// Puts the parts together for one crew, whatever the front end: store, keeper, executor, host, messenger, ringer.

import type { CrewFile } from '../core/crew/crew.ts';
import { createExecutor, type Executor } from '../core/execute.ts';
import { crewStream } from '../core/ids.ts';
import type { Clock, Log, Messenger, RingingReminder, Store } from '../core/ports.ts';
import type { SheetShelf } from '../core/products/sheet.ts';
import { createRinger, type Ringer } from '../core/reminders/run.ts';
import { createShopKeeper } from '../core/shop-keeper.ts';
import { type Answer, makeAnswer } from './answer.ts';
import { reminderCard } from './cards/reminder-cards.ts';
import { tellingDay } from './day.ts';
import type { FrontEnd } from './front-end.ts';
import { createHost, type Host } from './host.ts';

/** One process serves one crew; its key is wide enough for many. */
const crew = 'crew';

export interface Wired {
  readonly executor: Executor;
  readonly host: Host;
  readonly ringer: Ringer;
}

export interface WiringNeeds {
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
  readonly crewFile: CrewFile;
  readonly shelf: SheetShelf;
  /** Where rings go. */
  readonly frontEnd: Pick<FrontEnd, 'tell' | 'wasTold'>;
}

export function wire({ store, clock, log, crewFile, shelf, frontEnd }: WiringNeeds): Wired {
  const keeper = createShopKeeper(store, crew, crewFile, shelf);
  const executor = createExecutor({ store, keeper, crew });
  const host = createHost({ executor, store, clock, log, crew, crewFile });

  async function answerFor(ringing: RingingReminder): Promise<Answer> {
    const { reminder, shop } = ringing;
    const t = host.telling(shop, reminder.to[0]);
    const head = {
      at: t.f.iso(ringing.now),
      in: null,
      as: null,
      to: reminder.to,
      key: reminder.numberedKey,
      code: null,
    };
    if (reminder.stream === crewStream && reminder.kind === 'digest') {
      const date = reminder.key.slice(reminder.key.lastIndexOf('/') + 1);
      const card = await tellingDay({ executor, store, crew }, t, { kind: 'date', date });
      return makeAnswer({
        ...head,
        kind: 'digest',
        recorded: !ringing.unrecorded,
        card: { ...card, ping: reminder.to },
      });
    }
    const card = reminderCard(t, ringing);
    return makeAnswer({ ...head, kind: 'reminder', recorded: !ringing.unrecorded, card });
  }

  const messenger: Messenger = {
    post: async (ringing) => frontEnd.tell(await answerFor(ringing)),
    wasPosted: (_, numberedKey) => frontEnd.wasTold(numberedKey),
  };
  const ringer = createRinger({ store, executor, keeper, messenger, clock, log, crew });
  return { executor, host, ringer };
}
