// What is answered where a line could not be recorded: worded without a look at the record, which may be what fails.

import { type CrewFile, peopleLeading, personIn } from '../../core/crew/crew.ts';
import type { PersonName } from '../../core/ids.ts';
import type { EpochMs } from '../../core/units.ts';
import type { RestsOnUnread } from '../../core/unread-event.ts';
import { type Card, makeCard } from '../cards/card.ts';
import { unreadLines } from '../cards/unread-lines.ts';
import { toTellLine } from '../cards/whom-to-call.ts';
import { figuresFor } from '../language/figures.ts';
import type { Tongues } from '../language/tongues/tongues.ts';
import { type Answer, makeAnswer } from './answer.ts';
import type { Delivery } from './front-end.ts';

/** How whoever spoke is told: by the crew as it was last read, or else by its file. */
export interface Spoken {
  readonly crewFile: CrewFile;
  readonly tongues: Tongues;
}

/** The store cannot write: nobody's acts are recorded, and the leads must know. */
export function storeFailed(delivery: Delivery, spoken: Spoken, now: EpochMs): Answer {
  const { words, figures } = voiceOf(delivery, spoken, now);
  const { replies, buttons } = words;
  const leads = peopleLeading(spoken.crewFile);
  const others = leads.filter((name) => name !== delivery.as);
  const card = makeCard(replies.notRecorded, 'stop', {
    lines: [replies.storeFailed, ...toTellLine({ words, figures }, others)],
    ping: others,
    actions: [{ id: 'again', label: buttons.again, line: delivery.text }],
  });
  return notRecorded('not-recorded', delivery, spoken, now, card, leads);
}

/** This line alone: whoever said it is told, and the log names what broke. Said again, it would break again. */
export function lineBroke(delivery: Delivery, spoken: Spoken, now: EpochMs): Answer {
  const { replies } = voiceOf(delivery, spoken, now).words;
  return notRecorded(
    'line-broke',
    delivery,
    spoken,
    now,
    makeCard(replies.notRecorded, 'stop', { lines: [replies.lineBroke] }),
    [],
  );
}

/** It would rest on what does not read: said to whoever meant to record it, who is to keep it on paper. */
export function restsOnUnread(delivery: Delivery, spoken: Spoken, now: EpochMs, { events }: RestsOnUnread): Answer {
  const { words } = voiceOf(delivery, spoken, now);
  const card = makeCard(words.replies.notRecorded, 'stop', { lines: unreadLines(words, events) });
  return notRecorded('rests-on-unread', delivery, spoken, now, card, []);
}

function voiceOf({ as }: Delivery, { crewFile, tongues }: Spoken, now: EpochMs) {
  const { language, units } = personIn(crewFile, as);
  const profile = tongues.profileOf(language, units);
  return { words: tongues.wordsIn(language, units), figures: figuresFor({ profile, units, zone: crewFile.zone, now }) };
}

/** Only the first says that the store cannot write: said again later, the others would end as they did. */
type Why = 'not-recorded' | 'line-broke' | 'rests-on-unread';

function notRecorded(
  code: Why,
  { in: delivery, as }: Delivery,
  { crewFile: { zone }, tongues }: Spoken,
  now: EpochMs,
  card: Card,
  alsoTo: readonly PersonName[],
): Answer {
  const figures = figuresFor({ profile: tongues.profileOf('en', 'metric'), units: 'metric', zone, now });
  const head = { at: figures.iso(now), in: delivery, as, to: [...new Set([as, ...alsoTo])], key: null };
  return makeAnswer({ ...head, kind: 'error', code, recorded: false, card });
}
