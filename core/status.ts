// How each noun stands at a moment, in one small shape: phase, clocks, what holds it, and which acts come next.

import type { Batch } from './batch/batch.ts';
import { type BatchActId, type BatchStatus, batchActs, batchStatus } from './batch/batch-status.ts';
import type { Can } from './can/can.ts';
import { type CanActId, type CanStatus, canActs, canStatus } from './can/can-status.ts';
import { batchStream, canStream, partStream, type StreamId, sessionStream } from './ids.ts';
import { type Candidate, type Moment, type NextAct, nextActs } from './next-acts.ts';
import type { Part } from './part/part.ts';
import { type PartActId, type PartClockId, type PartStatus, partActs, partStatus } from './part/part-status.ts';
import type { Session } from './session/session.ts';
import { type SessionActId, type SessionStatus, sessionActs, sessionStatus } from './session/session-status.ts';
import { unreadUnder } from './unread.ts';

export type NextActId = BatchActId | CanActId | PartActId | SessionActId;
export type ClockId = (BatchStatus | CanStatus | SessionStatus)['clocks'][number]['id'] | PartClockId;

type Now<Status, Id extends string> = Status & {
  /** Asked of the rules only where it is wanted: a list of what runs shows no acts. */
  readonly next: () => readonly NextAct<Id>[];
};
export type BatchNow = Now<BatchStatus, BatchActId>;
export type CanNow = Now<CanStatus, CanActId>;
export type PartNow = Now<PartStatus, PartActId>;
export type SessionNow = Now<SessionStatus, SessionActId>;

export const statusOf = {
  batch: (moment: Moment, batch: Batch): BatchNow =>
    withNext(moment, batchStream(batch.number), batchStatus(moment, batch), batchActs),
  can: (moment: Moment, can: Can): CanNow => withNext(moment, canStream(can.number), canStatus(moment, can), canActs),
  part: (moment: Moment, part: Part): PartNow =>
    withNext(moment, partStream(part.name), partStatus(moment, part), partActs),
  session: (moment: Moment, session: Session): SessionNow =>
    withNext(moment, sessionStream(session.number), sessionStatus(moment, session), sessionActs),
};

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
