// What runs and what rings next.

import { roleMissing } from '../../core/crew/who-may.ts';
import { defaultPlace, type PersonName } from '../../core/ids.ts';
import { partStatus } from '../../core/part/part-status.ts';
import { planReminders } from '../../core/reminders/plan.ts';
import { byDueTime } from '../../core/reminders/wanted-reminder.ts';
import { byName, liveBatches, liveCans, liveParts, openSessions } from '../../core/shop.ts';
import { endingOfRing } from '../language/ending.ts';
import { airFacts } from './air-facts.ts';
import { batchLine } from './batch-cards.ts';
import { openCanLine } from './can-cards.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { ringNext } from './clock-text.ts';
import { partLine } from './part-cards.ts';
import { ringLabel } from './ring-label.ts';

export function nowCard(t: Telling, name: PersonName): Card {
  const { replies } = t.words;
  const batches = liveBatches(t.shop).map((batch) => batchLine(t, batch));
  const parts = byName(liveParts(t.shop)).map((part) => partLine(t, partStatus(t, part)));
  const next = [...planReminders(t.shop).values()].flat().sort(byDueTime);
  const cans = liveCans(t.shop).flatMap((can) => openCanLine(t, can));
  const sessions = openSessions(t.shop).map((session) =>
    t.words.session.titled(session.number, `${t.words.names.place(session.place)}, ${t.f.list(session.sprayers)}`),
  );
  // Asked for until it is there: whoever needs the numbers has no time to look for them.
  const isEmergencySet = t.shop.crew.spray.emergency.call !== undefined;
  const maySet = roleMissing(t.shop.crew, name, { set: 'emergency' }) === undefined;
  const runs = [...batches, ...cans, ...sessions, ...parts];
  return makeCard(replies.now, 'plain', {
    facts: airFacts(t, defaultPlace),
    lines: [
      ...(runs.length === 0 ? [replies.nothingRuns(t.f)] : runs),
      ...(isEmergencySet ? [] : [t.words.session.emergencyNotSet]),
      ...next.map(({ numberedKey, dueAt }) =>
        replies.rings(ringLabel(t.words, numberedKey), endingOfRing(numberedKey, dueAt), t.f),
      ),
    ],
    actions: isEmergencySet || !maySet ? [] : [tap(t, 'numbers', 'set emergency call {numbers}')],
    next: next.map(({ numberedKey, dueAt }) => ringNext(t, numberedKey, dueAt)),
  });
}
