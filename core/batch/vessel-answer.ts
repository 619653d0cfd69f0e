// What a mix that names its vessel answers of the step that the paper asks: whether it is of what the sheet allows.

import type { CommandOf } from '../commands.ts';
import type { Said } from '../decision.ts';
import type { NewEvent } from '../history.ts';
import { type BatchNumber, defaultPlace } from '../ids.ts';
import type { Sheet } from '../products/sheet.ts';
import type { Shop } from '../shop.ts';
import { stepAnswer } from '../steps/step-answer.ts';
import { answerTo } from '../steps/steps-answered.ts';
import { isVesselKept } from './vessel.ts';

/** Said again it is no news. */
export function vesselAnswer(
  shop: Shop,
  said: Said<CommandOf<'mix'>>,
  sheet: Sheet,
  batch: BatchNumber,
): readonly NewEvent[] {
  const place = defaultPlace;
  const kept = isVesselKept(sheet, said.command.vesselOf);
  const before = answerTo(shop.crew.stepAnswers, 'vessel', { sheet, place, reader: said.by }, said.at);
  if (kept === undefined || before?.kept === kept) return [];
  return [stepAnswer({ step: 'vessel', kept, sheet, place, batch }, said.at)];
}
