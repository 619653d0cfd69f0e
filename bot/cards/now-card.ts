// What runs and what rings next.

import { roleMissing } from '../../core/crew/who-may.ts';
import { defaultPlace, type PersonName } from '../../core/ids.ts';
import { partStatus } from '../../core/part/part-status.ts';
import { plannedRings } from '../../core/reminders/plan.ts';
import { byName, liveBatches, liveCans, liveParts, openSessions } from '../../core/shop.ts';
import { airFacts } from './air-facts.ts';
import { batchLine } from './batch-cards.ts';
import { openCanLine } from './can-cards.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { ringNext } from './clock-text.ts';
import { ringLine } from './crew-cards.ts';
import { firstShiftsToldTo } from './first-shift-card.ts';
import { openAlarmLines } from './open-alarm-lines.ts';
import { partLine } from './part-cards.ts';

export function nowCard(telling: Telling, name: PersonName): Card {
  const { replies } = telling.words;
  const batches = liveBatches(telling.shop).map((batch) => batchLine(telling, batch));
  const parts = byName(liveParts(telling.shop)).map((part) => partLine(telling, partStatus(telling, part)));
  const next = plannedRings(telling.shop);
  const cans = liveCans(telling.shop).flatMap((can) => openCanLine(telling, can));
  const sessions = openSessions(telling.shop).map((session) =>
    telling.words.session.titled(
      session.number,
      `${telling.words.names.place(session.place)}, ${telling.figures.list(session.sprayers)}`,
    ),
  );
  // Asked for until it is there: whoever needs the numbers has no time to look for them.
  const isEmergencySet = telling.shop.crew.spray.emergency.call !== undefined;
  const maySet = roleMissing(telling.shop.crew, name, { set: 'emergency' }) === undefined;
  const firstShifts = firstShiftsToldTo(telling, name);
  const runs = [...batches, ...cans, ...sessions, ...parts];
  return makeCard(replies.now, telling.shop.crew.alarms.some(({ isDrill }) => !isDrill) ? 'stop' : 'plain', {
    facts: airFacts(telling, defaultPlace),
    lines: [
      ...openAlarmLines(telling),
      ...(runs.length === 0 ? [replies.nothingRuns(telling.figures)] : runs),
      ...firstShifts.lines,
      ...(isEmergencySet ? [] : [telling.words.session.emergencyNotSet]),
      ...next.map((ring) => ringLine(telling, ring)),
    ],
    actions: [
      ...firstShifts.actions,
      ...(isEmergencySet || !maySet ? [] : [tap(telling, 'numbers', 'set emergency call {numbers}')]),
    ],
    next: next.map(({ numberedKey, dueAt }) => ringNext(telling, numberedKey, dueAt)),
  });
}
