// How each noun stands at a moment, in one small shape: phase, clocks, what holds it, and which acts come next.

import type { Batch } from './batch/batch.ts';
import { type BatchActId, type BatchStatus, batchActs, batchStatus } from './batch/batch-status.ts';
import type { Can } from './can/can.ts';
import { type CanActId, type CanStatus, canActs, canStatus } from './can/can-status.ts';
import { coatsFor, coatsWaiting } from './coats-waiting.ts';
import type { CommandOf } from './commands.ts';
import { isAct } from './history.ts';
import {
  type BatchNumber,
  batchStream,
  canStream,
  type PartName,
  partStream,
  type StreamId,
  sessionStream,
} from './ids.ts';
import { type Candidate, type Moment, type NextAct, nextActs } from './next-acts.ts';
import type { Part } from './part/part.ts';
import { type PartActId, type PartClockId, type PartStatus, partActs, partStatus } from './part/part-status.ts';
import type { Session } from './session/session.ts';
import { type SessionActId, type SessionStatus, sessionActs, sessionStatus } from './session/session-status.ts';
import { unreadUnder } from './unread.ts';

export type NextActId = 'coat-part' | BatchActId | CanActId | PartActId | SessionActId;
export type ClockId = (BatchStatus | CanStatus | SessionStatus)['clocks'][number]['id'] | PartClockId;

type Now<Status, Id extends string> = Status & {
  /** Asked of the rules only where it is wanted: a list of what runs shows no acts. */
  readonly next: () => readonly NextAct<Id>[];
};
export type BatchNow = Now<BatchStatus, BatchActId | 'coat-part'>;
export type CanNow = Now<CanStatus, CanActId>;
export type PartNow = Now<PartStatus, PartActId | 'coat-part'>;
export type SessionNow = Now<SessionStatus, SessionActId>;

export const statusOf = {
  batch: (moment: Moment, batch: Batch): BatchNow =>
    withNext(moment, batchStream(batch.number), batchStatus(moment, batch), (status) => {
      const coats = coatsWaiting(moment.shop, batch).map((coat) => coatAct(batch.number, coat));
      return batchActs(status).flatMap((act) => (act.id === 'coat' ? [...coats, act] : [act]));
    }),
  can: (moment: Moment, can: Can): CanNow => withNext(moment, canStream(can.number), canStatus(moment, can), canActs),
  part: (moment: Moment, part: Part): PartNow =>
    withNext(moment, partStream(part.name), partStatus(moment, part), (status) => actsOnPart(moment, status)),
  /** Each as it stands alone. Thirty brackets dipped together stand alike: of those the rules are asked once. */
  parts: (moment: Moment, parts: readonly Part[]): readonly PartNow[] => {
    const asked = new Map<string, ReturnType<PartNow['next']>>();
    return parts.map((part) => {
      const status = statusOf.part(moment, part);
      return { ...status, next: () => nextAmong(asked, status, moment) };
    });
  },
  session: (moment: Moment, session: Session): SessionNow =>
    withNext(moment, sessionStream(session.number), sessionStatus(moment, session), sessionActs),
};

/** A bare part may be coated from the pot in use. */
function actsOnPart({ shop }: Moment, status: PartStatus): readonly Candidate<PartActId | 'coat-part'>[] {
  const { part } = status;
  return [...partActs(status), ...coatsFor(shop, part).map((coat) => coatAct(part.name, coat))];
}

const coatAct = (of: BatchNumber | PartName, coat: CommandOf<'coat'>): Candidate<'coat-part'> => ({
  id: 'coat-part',
  of: String(of),
  said: [coat],
});

function nextAmong(asked: Map<string, ReturnType<PartNow['next']>>, status: PartNow, moment: Moment) {
  const { part } = status;
  if (unreadUnder(moment.shop, partStream(part.name)).length > 0) return [];
  const told = toldOf(part);
  const alike = asked.get(told);
  if (alike === undefined) {
    const next = status.next();
    asked.set(told, next);
    return next;
  }
  return actsOnPart(moment, status).flatMap(({ id, of, said: [command] }) =>
    alike.flatMap((act) => (act.id === id ? [{ ...act, of, command }] : [])),
  );
}

/** All that the rules can know of a part but its name: what was said of it, by which lines. */
function toldOf({ name, entries }: Part): string {
  const acts = entries
    .filter(isAct)
    .map(({ request, happenedAt, fact, corrections }) => [
      request,
      happenedAt,
      fact,
      corrections.map((by) => by.request),
    ]);
  return JSON.stringify(acts).replaceAll(JSON.stringify(name), '""');
}

/** Nothing comes next of what does not read any more. */
function withNext<Status, Id extends string>(
  moment: Moment,
  stream: StreamId,
  status: Status,
  acts: (status: Status) => readonly Candidate<Id>[],
): Now<Status, Id> {
  const reads = unreadUnder(moment.shop, stream).length === 0;
  return { ...status, next: () => (reads ? nextActs(moment, acts(status)) : []) };
}
