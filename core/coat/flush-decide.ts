// What is flushed or cleaned, and for what: a gun and vessels for the spray session that used them, whatever else was used for
// the batch that it was used with, or for none.

import { type Batch, batchAsOf } from '../batch/batch.ts';
import { gearToClean } from '../batch/gear-to-clean.ts';
import type { CommandOf } from '../commands.ts';
import { accepted, type Decision, type Said, unclear } from '../decision.ts';
import { type Failed, isFailed } from '../failed.ts';
import type { EventBody } from '../history.ts';
import { batchStream, crewStream } from '../ids.ts';
import { known } from '../known.ts';
import type { Unclear } from '../objections.ts';
import { flushState, isRunning, type Session } from '../session/session.ts';
import { isSessionGear, type SessionGear } from '../session/session-commands.ts';
import { findSession, gunStopped, sessionEvent } from '../session/session-decide.ts';
import { liveBatches, openSessions, type Shop } from '../shop.ts';

export function decideFlush(shop: Shop, said: Said<CommandOf<'flush'>>): Decision {
  const { gear, solvent, litres, session: named } = said.command;
  const flushed: EventBody = { type: 'GearFlushed', gear, ...known({ solvent, litres }) };
  const cleaned = batchesCleaned(shop, said);
  const session = isSessionGear(gear) ? sessionFlushed(shop, named, gear, cleaned.length > 0) : undefined;
  if (isFailed(session)) return unclear(session.failed);
  if (session !== undefined) {
    // A gun that is flushed has stopped, whether or not somebody said so.
    const stopped = isRunning(session) ? [gunStopped(shop, session, said)] : [];
    return accepted(...stopped, sessionEvent(session, said, flushed));
  }
  if (named !== undefined && cleaned.length === 0) {
    return unclear({ code: 'no-such-batch', batch: named, live: liveBatches(shop).map(({ number }) => number) });
  }
  const [first = crewStream, ...others] = cleaned.map(({ number }) => batchStream(number));
  return accepted({ streams: [first, ...others], happenedAt: said.at, body: flushed });
}

/** The one named, else each for which it waits, the longest first. */
function batchesCleaned({ batches, unread }: Shop, { command, at }: Said<CommandOf<'flush'>>): readonly Batch[] {
  const { gear, session: named } = command;
  if (named !== undefined) return [...batches.values()].filter(({ number }) => number === named);
  const waiting = [...batches.values()].flatMap((batch) => {
    const used = gearToClean(batchAsOf(batch, at)).find((each) => each.gear === gear);
    return used === undefined || unread.has(batchStream(batch.number)) ? [] : [{ batch, usedAt: used.usedAt }];
  });
  return waiting.toSorted((a, b) => a.usedAt - b.usedAt).map(({ batch }) => batch);
}

/** `undefined`: of none, but for a batch or for nothing. */
function sessionFlushed(
  shop: Shop,
  named: number | undefined,
  gear: SessionGear,
  isForBatch: boolean,
): Session | Failed<Unclear> | undefined {
  const open = openSessions(shop);
  if (named === undefined) {
    const waits = open.some((session) => !flushState(session, gear).done);
    return open.length === 0 || (isForBatch && !waits) ? undefined : findSession(shop, undefined);
  }
  const ofBatch = open.find(({ batch }) => batch === named);
  return ofBatch ?? (isForBatch ? undefined : findSession(shop, named));
}
