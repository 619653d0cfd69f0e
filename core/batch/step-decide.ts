// What follows from an answer about a step: it is recorded, whatever it says.

import type { CommandOf } from '../commands.ts';
import { type Decision, type Said, unclear } from '../decision.ts';
import { isFailed } from '../failed.ts';
import { batchStream, crewStream, defaultPlace } from '../ids.ts';
import { sheetMeant } from '../products/shelf.ts';
import { lastSaid } from '../settled.ts';
import { liveBatches, type Shop } from '../shop.ts';
import { findBatch } from './batch-decide.ts';
import { paperOf } from './vessel-answer.ts';

export function decideStep(shop: Shop, said: Said<CommandOf<'confirm'>>): Decision {
  const { batch: named, step, kept = true } = said.command;
  const batch = named === undefined && liveBatches(shop).length === 0 ? undefined : findBatch(shop, named, () => true);
  if (isFailed(batch)) return unclear(batch.failed);
  const sheet = batch?.sheet ?? sheetMeant(shop.shelf, lastSaid(shop.crew, 'sheet')?.sheet);
  if (isFailed(sheet)) return unclear(sheet.failed);
  const under = batch === undefined ? [] : [batchStream(batch.number)];
  const of = batch === undefined ? {} : { batch: batch.number };
  const body = {
    ...{ type: 'StepAnswered' as const, step, kept, ...paperOf(sheet) },
    ...{ place: batch?.place ?? defaultPlace, ...of },
  };
  return {
    kind: 'accepted',
    events: [{ streams: [crewStream, ...under], happenedAt: said.at, body }],
  };
}
