// What is answered about a step of the maker's paper: recorded, whatever it says.

import type { CommandOf } from '../commands.ts';
import { accepted, type Decision, type Said, unclear } from '../decision.ts';
import { isFailed } from '../failed.ts';
import { defaultPlace } from '../ids.ts';
import type { Sheet } from '../products/sheet.ts';
import { liveBatches, type Shop, sheetFor } from '../shop.ts';
import { strengthAsked } from '../steps/alcohol.ts';
import { stepAnswer } from '../steps/step-answer.ts';
import { findBatch } from './batch-decide.ts';

export function decideStep(shop: Shop, said: Said<CommandOf<'confirm'>>): Decision {
  const { batch: named, step } = said.command;
  const found = named === undefined && liveBatches(shop).length === 0 ? undefined : findBatch(shop, named, () => true);
  // A bottle is the crew's: it is told of whether or not a pot is meant.
  const batch = isFailed(found) && named === undefined && step === 'alcohol' ? undefined : found;
  if (isFailed(batch)) return unclear(batch.failed);
  const sheet = batch?.sheet ?? sheetFor(shop);
  if (isFailed(sheet)) return unclear(sheet.failed);
  const place = batch?.place ?? defaultPlace;
  const answer = step === 'alcohol' ? ofBottle(said.command, sheet) : { kept: said.command.kept ?? true };
  return accepted(stepAnswer({ step, ...answer, sheet, place, batch: batch?.number }, said.at));
}

/** A bottle that is as the sheet asks is as strong as that; of another it may not be known. */
function ofBottle({ kept = true, purityPercent }: CommandOf<'confirm'>, sheet: Sheet) {
  const asked = strengthAsked(sheet)?.purityPercent;
  if (purityPercent === undefined) return { kept, purityPercent: kept ? asked : undefined };
  return { kept: asked === undefined || purityPercent >= asked, purityPercent };
}
