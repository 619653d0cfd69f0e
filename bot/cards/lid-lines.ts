// The lid of a pot on cards: how long it has been off, and what the sheet says of that.

import type { Batch } from '../../core/batch/batch.ts';
import { lidRules, openTooLongFrom, uncoveredMinutes } from '../../core/batch/lid.ts';
import { isOn } from '../../core/calc/runs.ts';
import type { Objection } from '../../core/objections.ts';
import { editionOfToday } from '../../core/rule-editions.ts';
import { objectionsTo } from '../../core/rules.ts';
import type { CardFact } from './card.ts';
import type { Telling } from './card-context.ts';
import { factsOf } from './facts.ts';

/** By `now`; nothing of a pot that was covered all along. */
export function lidFacts(telling: Telling, batch: Batch): readonly CardFact[] {
  const uncovered = uncoveredMinutes(batch, telling.now);
  return factsOf(telling, { uncovered: uncovered > 0 ? uncovered : undefined });
}

/** What speaks against its last opening. */
export function lidAgainst(batch: Batch): readonly Objection[] {
  const off = batch.uncovered.at(-1);
  return off === undefined ? [] : objectionsTo(lidRules, { batch, from: off.from }, editionOfToday);
}

/** How long so far and the sheet's most; past that, that it was too long and what it costs. */
export function lidLines({ words, figures, now }: Telling, batch: Batch): readonly string[] {
  const { covered } = batch.sheet.steps ?? {};
  const soFar = uncoveredMinutes(batch, now);
  const against = lidAgainst(batch);
  const past = openTooLongFrom(batch);
  const cutTo = past !== undefined && past < now ? covered?.potLifePercent : undefined;
  return [
    ...(soFar > 0 ? [words.material.uncoveredSoFar(soFar, figures)] : []),
    ...against.map((objection) => words.objection(objection, figures)),
    ...(cutTo === undefined ? [] : [words.steps.lidCuts(cutTo, figures)]),
    ...(covered !== undefined && isOn(batch.uncovered) && against.length === 0
      ? [words.steps.lidMost(covered.mostMinutes, figures)]
      : []),
  ];
}
