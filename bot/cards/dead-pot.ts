// A pot whose life is over while something is in it: thick, gelled, hot, or by its clock. What to do is said by what the
// shop's sheet says of waste; nobody is told to empty or flush a pot that may heat.

import type { Batch, SeenOfPot } from '../../core/batch/batch.ts';
import { commonPractice } from '../../core/session/brief-lines.ts';
import type { WasteSaid } from '../language/tongues/english/replies.ts';
import type { Card } from './card.ts';
import type { Telling } from './card-context.ts';

function wasteSaid({ sheet }: Batch): WasteSaid {
  if (sheet.leftOver === undefined) return 'not-said';
  return sheet.leftOver.vented ? 'vented' : 'as-sheet';
}

/** A gelled or hot pot is left where it is; any other is emptied and flushed. */
export function potOverLines(telling: Telling, batch: Batch): readonly string[] {
  const { replies, session } = telling.words;
  const waste = wasteSaid(batch);
  const seen = batch.thickened?.seen;
  if (!mayHeat(seen)) return [replies.emptyNow(waste)];
  const what = seen === 'hot' ? replies.hotNow(batch.number) : replies.gelledNow(batch.number);
  return [what, replies.gelledWaste(waste), session.troubles.hot.section];
}

/** Of a mix that may heat by itself: one voice with the alarm of a hot pot. */
export function heatHazards(telling: Telling, seen: SeenOfPot | undefined): Card['hazards'] {
  const { now, never } = telling.words.session.troubles.hot;
  const source = telling.words.ruleSources[commonPractice];
  return mayHeat(seen) ? [now, ...never.map((text) => ({ text, source }))] : [];
}

/** Thick only serves no more; what has gelled heats by itself. */
export function mayHeat(seen: SeenOfPot | undefined): seen is 'gelled' | 'hot' {
  return seen === 'gelled' || seen === 'hot';
}
