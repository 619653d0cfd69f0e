// What is told by itself: a reminder, the day, trouble with the record. Whatever breaks in making its card, the bell rings.

import { peopleLeading } from '../../core/crew/crew.ts';
import type { Executor } from '../../core/execute.ts';
import { crewStream, type PersonName } from '../../core/ids.ts';
import type { Log, Messenger, RingingReminder } from '../../core/ports.ts';
import { unreadIn, unreadUnder } from '../../core/unread.ts';
import { type Card, makeCard } from '../cards/card.ts';
import { type Telling, withLinesShown } from '../cards/card-context.ts';
import { withFirstShift } from '../cards/first-shift-card.ts';
import { bareReminderCard, howItRings, lateFacts, reminderCard } from '../cards/reminder-cards.ts';
import { ringsTogether } from '../cards/rings-together.ts';
import { unreadCard, unreadLines, withUnread } from '../cards/unread-lines.ts';
import type { RecordAnswers } from '../records/record-answers.ts';
import { type Answer, makeAnswer } from './answer.ts';
import type { Host } from './host.ts';
import { subjectsOf } from './message-subject.ts';

export interface Ringing {
  readonly executor: Executor;
  readonly host: Pick<Host, 'telling'>;
  readonly recordAnswers: RecordAnswers;
  readonly log: Log;
}

type Trouble = Parameters<Messenger['tellLeads']>[0];

/** Whatever breaks in making its card, the bell rings. */
export async function ringAnswer(from: Ringing, ringing: RingingReminder): Promise<Answer> {
  try {
    return await answerFor(from, ringing);
  } catch (error) {
    const { reminder, shop, now, unrecorded } = ringing;
    from.log.error('card-broke', { key: reminder.numberedKey, error: String(error) });
    const telling = from.host.telling(shop, reminder.to[0]);
    const kind = reminder.kind === 'digest' ? 'digest' : 'reminder';
    const head = {
      at: telling.figures.iso(now),
      in: null,
      as: null,
      to: reminder.to,
      key: reminder.numberedKey,
      code: null,
    };
    return makeAnswer({
      ...head,
      kind,
      recorded: !unrecorded,
      card: withLinesShown(telling, bareReminderCard(telling, ringing)),
    });
  }
}

async function answerFor({ executor, host, recordAnswers }: Ringing, ringing: RingingReminder): Promise<Answer> {
  const { reminder, shop } = ringing;
  const telling = host.telling(shop, reminder.to[0]);
  const head = {
    at: telling.figures.iso(ringing.now),
    in: null,
    as: null,
    to: reminder.to,
    key: reminder.numberedKey,
    code: null,
    about: subjectsOf(shop, [reminder.stream]),
  };
  if (reminder.stream === crewStream && reminder.kind === 'digest') {
    const date = reminder.key.slice(reminder.key.lastIndexOf('/') + 1);
    const card = await recordAnswers.digest(telling, date);
    return makeAnswer({
      ...head,
      kind: 'digest',
      recorded: !ringing.unrecorded,
      card: withLinesShown(telling, {
        ...card,
        facts: [...card.facts, ...lateFacts(telling, ringing)],
        lines: [
          ...howItRings(telling, ringing),
          ...unreadLines(telling.words, unreadIn(await executor.look())),
          ...card.lines,
        ],
        ping: reminder.to,
      }),
    });
  }
  // What is left of it would be told as if it were whole.
  const broken = unreadUnder(shop, reminder.stream);
  if (broken.length > 0) {
    const card = withLinesShown(telling, withUnread(telling.words, bareReminderCard(telling, ringing), broken));
    return makeAnswer({ ...head, kind: 'reminder', recorded: !ringing.unrecorded, card });
  }
  const led = (told: Card): Card => withLinesShown(telling, withFirstShiftOf(telling, told, reminder.to));
  const card = withLinesShown(telling, reminderCard(telling, ringing));
  const together = ringsTogether(telling, ringing, card);
  const all = together === undefined ? {} : { together: { ...together, card: led(together.card) } };
  return makeAnswer({ ...head, kind: 'reminder', recorded: !ringing.unrecorded, card: led(card), ...all });
}

/** What rings for one person alone leads them on, as an answer would. */
function withFirstShiftOf(telling: Telling, card: Card, [only, ...others]: readonly PersonName[]): Card {
  return only === undefined || others.length > 0
    ? card
    : withFirstShift(telling, card, only, { asks: true, before: [], calls: false });
}

/** Trouble with the record, told to whoever leads; where nobody does, to everybody. */
export function troubleAnswer(host: Pick<Host, 'telling'>, { now, shop, unread }: Trouble): Answer {
  const leads = peopleLeading(shop.crew);
  const to = leads.length > 0 ? leads : shop.crew.people.map(({ name }) => name);
  const { words, figures } = host.telling(shop, to[0]);
  const head = { at: figures.iso(now), in: null, as: null, to, key: null };
  if (unread !== undefined) {
    const card = unreadCard(words, unread, to);
    return makeAnswer({ ...head, kind: 'error', code: 'not-read', recorded: false, card });
  }
  const card = makeCard(words.replies.recordFails, 'stop', { lines: [words.replies.storeFailedNotice], ping: to });
  return makeAnswer({ ...head, kind: 'error', code: 'store-failed', recorded: false, card });
}
