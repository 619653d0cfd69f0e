// A pot whose life is over while something is in it, and a can that heats: what is to be done with either, as core/heat-care.ts
// has it. Nobody is told to empty or flush what may heat, nor to touch what swells.

import type { Batch } from '../../core/batch/batch.ts';
import type { Can } from '../../core/can/can.ts';
import { careFor, mayHeat, reactsWithMoisture, type SeenOfPot, wasteOf } from '../../core/heat-care.ts';
import { commonPractice } from '../../core/session/brief-lines.ts';
import type { Trouble } from '../language/tongues/english/troubles.ts';
import type { Card } from './card.ts';
import type { Telling } from './card-context.ts';

/** What is told first, and what never to do, of what is seen of it. */
export const heatTrouble = ({ words: { session } }: Telling, seen: SeenOfPot | undefined): Trouble =>
  seen === 'smoking' || seen === 'bulging' ? session.heats[seen] : session.troubles.hot;

/** A gelled or hot pot is left where it is; any other is felt first, and only a cool one is emptied and flushed. */
export function potOverLines(telling: Telling, { number, sheet, thickened }: Batch): readonly string[] {
  const { replies } = telling.words;
  const waste = wasteOf(sheet);
  const care = careFor(thickened?.seen);
  const { section } = telling.words.session.troubles.hot;
  switch (care) {
    case 'feel-first':
      return [replies.emptyNow(waste, number)];
    case 'let-harden':
      return [replies.gelledNow(number), replies.gelledWaste(waste), section];
    case 'stand-off':
      return [replies.hotNow(number), replies.gelledWaste(waste), section];
    case 'leave-closed':
      return [replies.swollenNow(number), replies.gelledWaste(waste), section];
  }
}

/** Of a mix or a can that may heat by itself: one voice with its alarm. */
export function heatHazards(telling: Telling, seen: SeenOfPot | undefined): Card['hazards'] {
  return mayHeat(seen) ? hazardsOf(telling, heatTrouble(telling, seen)) : [];
}

function hazardsOf({ words }: Telling, { now, never }: Trouble): Card['hazards'] {
  return [now, ...never.map((text) => ({ text, source: words.ruleSources[commonPractice] }))];
}

/** Of a can that is thrown away, whatever the reason: what has begun to react goes on under its lid. */
export function discardHazards(telling: Telling, can: Can): Card['hazards'] {
  if (can.reacts !== undefined) return heatHazards(telling, can.reacts.seen);
  const { material, ruleSources } = telling.words;
  const isMoist = reactsWithMoisture(can.sheet, can.component);
  return [
    { text: material.discardHeats, source: ruleSources[commonPractice] },
    ...(isMoist ? [{ text: material.swellsShut, source: material.swellsSource }] : []),
  ];
}
