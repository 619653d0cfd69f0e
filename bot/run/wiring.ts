// Puts the parts together for one crew, whatever the front end: store, keeper, executor, host, messenger, ringer.

import { setImmediate } from 'node:timers/promises';
import { type CrewFile, peopleLeading } from '../../core/crew/crew.ts';
import { createExecutor, type Executor } from '../../core/execute.ts';
import { type CrewId, crewStream, onlyCrew } from '../../core/ids.ts';
import type { Clock, Log, Messenger, RingingReminder, Store } from '../../core/ports.ts';
import type { SheetShelf } from '../../core/products/sheet.ts';
import { createRinger, type Ringer } from '../../core/reminders/run.ts';
import { createShopKeeper } from '../../core/shop-keeper.ts';
import { unreadIn, unreadUnder } from '../../core/unread.ts';
import { makeCard } from '../cards/card.ts';
import { bareReminderCard, howItRings, lateFacts, reminderCard } from '../cards/reminder-cards.ts';
import { ringsTogether } from '../cards/rings-together.ts';
import { unreadCard, unreadLines, withUnread } from '../cards/unread-lines.ts';
import { shipped, type Tongues } from '../language/tongues/tongues.ts';
import { type PaperTray, paperTray } from '../records/paper-tray.ts';
import { createRecordAnswers } from '../records/record-answers.ts';
import { type Answer, makeAnswer } from '../talk/answer.ts';
import type { FrontEnd } from '../talk/front-end.ts';
import { createHost, type Host } from '../talk/host.ts';
import { subjectsOf } from '../talk/message-subject.ts';
import { createOverview, type Overview } from '../talk/overview.ts';
import { createPictureFiling } from '../talk/picture-filing.ts';

export interface Wired {
  readonly executor: Executor;
  readonly host: Host;
  readonly ringer: Ringer;
  readonly overview: Overview;
  readonly filePicture: ReturnType<typeof createPictureFiling>;
  /** The PNG behind a card's `image`, in the crew's language. */
  readonly picture: (ref: string) => Promise<Uint8Array | undefined>;
  readonly papers: PaperTray;
  readonly tongues: Tongues;
}

export interface WiringNeeds {
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
  readonly crewFile: CrewFile;
  readonly shelf: SheetShelf;
  readonly tongues?: Tongues;
  /** Several crews share a store, and none sees another's. */
  readonly crew?: CrewId;
  /** Where paper, exports and pictures are put; a temporary folder where none is named. */
  readonly papers?: PaperTray;
  /** Where rings go. */
  readonly frontEnd: Pick<FrontEnd, 'tell' | 'wasTold'>;
}

export function wire({
  store,
  clock,
  log,
  crewFile,
  shelf,
  frontEnd,
  tongues = shipped,
  crew = onlyCrew,
  papers = paperTray(undefined),
}: WiringNeeds): Wired {
  const keeper = createShopKeeper(store, crew, crewFile, shelf);
  const executor = createExecutor({ store, keeper, crew, turnOver: setImmediate });
  const recordAnswers = createRecordAnswers({ executor, store, crew, papers });
  const host = createHost({ executor, store, clock, log, crew, crewFile, tongues, recordAnswers });

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
      about: subjectsOf(shop, [reminder.stream]),
    };
    if (reminder.stream === crewStream && reminder.kind === 'digest') {
      const date = reminder.key.slice(reminder.key.lastIndexOf('/') + 1);
      const card = await recordAnswers.digest(t, date);
      return makeAnswer({
        ...head,
        kind: 'digest',
        recorded: !ringing.unrecorded,
        card: {
          ...card,
          facts: [...card.facts, ...lateFacts(t, ringing)],
          lines: [...howItRings(t, ringing), ...unreadLines(t.words, unreadIn(await executor.look())), ...card.lines],
          ping: reminder.to,
        },
      });
    }
    // What is left of it would be told as if it were whole.
    const broken = unreadUnder(shop, reminder.stream);
    if (broken.length > 0) {
      const card = withUnread(t.words, bareReminderCard(t, ringing), broken);
      return makeAnswer({ ...head, kind: 'reminder', recorded: !ringing.unrecorded, card });
    }
    const card = reminderCard(t, ringing);
    const together = ringsTogether(t, ringing, card);
    const all = together === undefined ? {} : { together };
    return makeAnswer({ ...head, kind: 'reminder', recorded: !ringing.unrecorded, card, ...all });
  }

  /** Whatever breaks in making its card, the bell rings. */
  async function answerOrBare(ringing: RingingReminder): Promise<Answer> {
    try {
      return await answerFor(ringing);
    } catch (error) {
      const { reminder, shop, now, unrecorded } = ringing;
      log.error('card-broke', { key: reminder.numberedKey, error: String(error) });
      const t = host.telling(shop, reminder.to[0]);
      const kind = reminder.kind === 'digest' ? 'digest' : 'reminder';
      const head = { at: t.f.iso(now), in: null, as: null, to: reminder.to, key: reminder.numberedKey, code: null };
      return makeAnswer({ ...head, kind, recorded: !unrecorded, card: bareReminderCard(t, ringing) });
    }
  }

  const messenger: Messenger = {
    post: async (ringing) => frontEnd.tell(await answerOrBare(ringing)),
    wasPosted: (_, numberedKey) => frontEnd.wasTold(numberedKey),
    tellLeads: async ({ now, shop, unread }) => {
      const leads = peopleLeading(shop.crew);
      const to = leads.length > 0 ? leads : shop.crew.people.map(({ name }) => name);
      const { words, f } = host.telling(shop, to[0]);
      const head = { at: f.iso(now), in: null, as: null, to, key: null };
      if (unread !== undefined) {
        const card = unreadCard(words, unread, to);
        return frontEnd.tell(makeAnswer({ ...head, kind: 'error', code: 'not-read', recorded: false, card }));
      }
      const card = makeCard(words.replies.recordFails, 'stop', { lines: [words.replies.storeFailedNotice], ping: to });
      return frontEnd.tell(makeAnswer({ ...head, kind: 'error', code: 'store-failed', recorded: false, card }));
    },
  };
  const ringer = createRinger({ store, executor, keeper, messenger, clock, log, crew });
  return {
    executor,
    host,
    ringer,
    papers,
    tongues,
    overview: createOverview({ executor, host }),
    filePicture: createPictureFiling(executor, host, clock),
    picture: async (ref) => recordAnswers.picture(host.telling(await executor.look(), undefined), ref),
  };
}
