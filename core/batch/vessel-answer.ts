// What a mix that names its vessel answers of the step that the paper asks: whether it is of what the sheet allows.

import type { CommandOf } from '../commands.ts';
import type { Said } from '../decision.ts';
import type { NewEvent } from '../history.ts';
import { type BatchNumber, batchStream, crewStream, defaultPlace } from '../ids.ts';
import type { Sheet } from '../products/sheet.ts';
import type { Shop } from '../shop.ts';
import { answerTo } from '../steps/steps-answered.ts';
import { isVesselKept } from './vessel.ts';

/** Whose paper asks, and which of its revisions. */
export const paperOf = ({ id, revision }: Sheet) => ({ sheet: id, revision });

/** A vessel that is named answers of what it is; said again it is no news. */
export function vesselAnswer(
  shop: Shop,
  said: Said<CommandOf<'mix'>>,
  sheet: Sheet,
  batch: BatchNumber,
): readonly NewEvent[] {
  const kept = isVesselKept(sheet, said.command.vesselOf);
  const asked = { sheet, place: defaultPlace, reader: said.by };
  if (kept === undefined || answerTo(shop.crew.stepAnswers, 'vessel', asked, said.at)?.kept === kept) return [];
  const body = {
    type: 'StepAnswered' as const,
    step: 'vessel' as const,
    kept,
    ...paperOf(sheet),
    place: defaultPlace,
    batch,
  };
  return [{ streams: [crewStream, batchStream(batch)], happenedAt: said.at, body }];
}
