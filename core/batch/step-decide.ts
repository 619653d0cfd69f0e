// What is answered about a step of the maker's paper: recorded, whatever it says.

import type { CommandOf } from '../commands.ts';
import { accepted, type Decision, type Said, unclear } from '../decision.ts';
import { isFailed } from '../failed.ts';
import { defaultPlace } from '../ids.ts';
import { liveBatches, type Shop, sheetFor } from '../shop.ts';
import { stepAnswer } from '../steps/step-answer.ts';
import { findBatch } from './batch-decide.ts';

export function decideStep(shop: Shop, said: Said<CommandOf<'confirm'>>): Decision {
  const { batch: named, step, kept = true } = said.command;
  const batch = named === undefined && liveBatches(shop).length === 0 ? undefined : findBatch(shop, named, () => true);
  if (isFailed(batch)) return unclear(batch.failed);
  const sheet = batch?.sheet ?? sheetFor(shop);
  if (isFailed(sheet)) return unclear(sheet.failed);
  const place = batch?.place ?? defaultPlace;
  return accepted(stepAnswer({ step, kept, sheet, place, batch: batch?.number }, said.at));
}
