// A coat is where a part meets a batch: both have their say, and the event is filed under both.

import type { Batch } from '../batch/batch.ts';
import { batchAsOf } from '../batch/batch.ts';
import { findBatch } from '../batch/batch-decide.ts';
import { coatFromBatchRules } from '../batch/batch-rules.ts';
import { recalledIn } from '../can/recalled-in.ts';
import type { CommandOf } from '../commands.ts';
import { keepsPrep } from '../crew/keeps-prep.ts';
import { type Decision, type Said, unclear } from '../decision.ts';
import { isFailed } from '../failed.ts';
import type { NewEvent } from '../history.ts';
import { batchStream, partStream, sessionStream } from '../ids.ts';
import { coatRestsOn } from '../instrument/rests-on-readings.ts';
import { known } from '../known.ts';
import { methodRows } from '../methods.ts';
import { holdAfter } from '../part/holding.ts';
import { askedAsNew } from '../part/new-part.ts';
import { partAsOf } from '../part/part-decide.ts';
import { coatOnPartRules } from '../part/part-rules.ts';
import { surfaceAsked } from '../part/surface-limits.ts';
import { judge } from '../rules.ts';
import { namedIn } from '../session/people-named.ts';
import { newcomerTo, sprayedBy } from '../session/session.ts';
import { sessionForCoat, sprayCase } from '../session/session-decide.ts';
import { coatUnderBriefRules } from '../session/session-rules.ts';
import { airLog, type Shop } from '../shop.ts';
import { coatClimate } from './coat-climate.ts';

export function decideCoat(shop: Shop, said: Said<CommandOf<'coat'>>): Decision {
  const { parts, method, pass, place, fromOutside, asNew = false } = said.command;
  const isReady = ({ weighing, thickened }: Batch) => weighing !== undefined && !thickened;
  const batch = findBatch(shop, said.command.batch, isReady, said.at);
  if (isFailed(batch)) return unclear(batch.failed);
  const asked = askedAsNew(shop, { names: parts, asNew, mayName: true });
  if (asked !== undefined) return asked;
  const named = namedIn(shop, said, said.command.appliedBy === undefined ? [] : [said.command.appliedBy]);
  if (named.is === 'stranger') return named.decision;
  const appliedBy = said.command.appliedBy && named.asFiled(said.command.appliedBy);
  const { sheet } = batch;
  const found = batchAsOf(batch, said.at);
  const air = airLog(shop, batch.place);
  const session = methodRows[method].atomised ? sessionForCoat(shop, batch.number, said.at) : undefined;
  const spray = session && sprayCase(shop, sprayedBy(session, appliedBy), said.at, { batch: batch.number, place });
  const newcomer = newcomerTo(session, appliedBy);
  const under = session === undefined ? [] : [sessionStream(session.number)];
  const recalled = recalledIn(shop, batch, said.at);
  const cases = parts.map((name) => {
    const part = partAsOf(shop, name, said.at);
    return {
      ...coatClimate(shop, batch.place, part, said.at),
      ...coatRestsOn(shop, found, part, said.at),
      asked: surfaceAsked(shop, part, sheet, said.at),
      keepsPrep: keepsPrep(shop.crew),
      part,
      batch: found,
      recalled,
      sheet,
      air,
      at: said.at,
      method,
      pass,
      spray,
      newcomer,
      within: { part: name, place: place ?? batch.place, fromOutside },
      settings: shop.crew.spray,
    };
  });
  return judge(shop, said, [...coatFromBatchRules, ...coatOnPartRules, ...coatUnderBriefRules], cases, (saidWith) =>
    parts.flatMap((part): readonly NewEvent[] => [
      {
        streams: [partStream(part), batchStream(batch.number), ...under],
        happenedAt: said.at,
        body: {
          type: 'CoatApplied',
          part,
          batch: batch.number,
          method,
          ...known({ pass, appliedBy, place, fromOutside }),
        },
        saidWith,
      },
      ...holdAfter(part, said.at, saidWith),
    ]),
  );
}
