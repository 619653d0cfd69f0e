// Answers to what was recorded of weighing and adding, of a pot's lid and what was caught.

import { isRatioOut } from '../../core/batch/batch-status.ts';
import type { FromCan } from '../../core/can/can-events.ts';
import type { CommandOf } from '../../core/commands.ts';
import type { Recorded } from '../../core/execute.ts';
import { mayHeat, wasteOf } from '../../core/heat-care.ts';
import type { BatchNow } from '../../core/status.ts';
import type { Grams } from '../../core/units.ts';
import { batchCard, weighedCard } from './batch-cards.ts';
import { canQuestion } from './can-asked.ts';
import type { Card } from './card.ts';
import type { Telling } from './card-context.ts';
import { heatHazards } from './dead-pot.ts';
import { factsOf } from './facts.ts';
import { cleaningLines } from './gear-cards.ts';
import { lidAgainst, lidFacts, lidLines } from './lid-lines.ts';
import { leftBy } from './recorded-act.ts';
import { blanketTaps, fromCanLines, partInCard, repairTold } from './weigh-cards.ts';

export function weighReply(telling: Telling, status: BatchNow, outcome: Recorded): Card {
  const from = fromCansIn(outcome);
  const asked = canQuestion(telling, status.batch, outcome);
  const card = weighingCard(telling, status, outcome, from);
  return { ...card, lines: [...asked.lines, ...card.lines], actions: [...asked.actions, ...card.actions] };
}

function weighingCard(telling: Telling, status: BatchNow, outcome: Recorded, from: readonly FromCan[]): Card {
  if (status.batch.weighing === undefined) {
    const [{ component } = { component: 'part-a' as const }] = leftBy(outcome, 'PartWeighed');
    return partInCard(telling, status, component, from);
  }
  return withCansAndRepair(telling, status, weighedCard(telling, status), from);
}

export function addReply(telling: Telling, status: BatchNow, command: CommandOf<'add'>, outcome: Recorded): Card {
  const { material } = telling.words;
  const title = material.added(status.batch.number, command.grams, command.component, telling.figures);
  const base = weighedCard(telling, status);
  const told = withCansAndRepair(telling, status, { ...base, title }, fromCansIn(outcome));
  return { ...told, lines: [material.stirAgain, ...told.lines] };
}

/** The same card with its cans, their gas, and what brings an off-ratio mix back. */
function withCansAndRepair(telling: Telling, status: BatchNow, card: Card, from: readonly FromCan[]): Card {
  const repair = isRatioOut(status) ? repairTold(telling, status.batch) : { facts: [], lines: [], taps: [] };
  return {
    ...card,
    facts: [...card.facts, ...repair.facts],
    lines: [...repair.lines, ...card.lines, ...fromCanLines(telling, from)],
    actions: [...repair.taps, ...blanketTaps(telling, from), ...card.actions],
  };
}

const fromCansIn = (outcome: Recorded): readonly FromCan[] =>
  leftBy(outcome, 'PartsWeighed', 'PartWeighed', 'PartAdded').flatMap(({ fromCans = [] }) => fromCans);

export function coverReply(telling: Telling, status: BatchNow, title: string): Card {
  const { batch } = status;
  const card = batchCard(telling, status, title, lidLines(telling, batch));
  const tone = lidAgainst(batch).length > 0 ? 'warn' : card.tone;
  return { ...card, tone, facts: [...lidFacts(telling, batch), ...card.facts] };
}

export function caughtReply(telling: Telling, status: BatchNow, caught: Grams): Card {
  const { material } = telling.words;
  const title = material.caught(status.batch.number, caught, telling.figures);
  const card = batchCard(telling, status, title, [material.caughtFilter]);
  return { ...card, facts: [...factsOf(telling, { caught }), ...card.facts] };
}

/** What is left over is set aside as the sheet says. */
export function emptiedReply(telling: Telling, status: BatchNow): Card {
  const { batch } = status;
  const hasRung = [...batch.rings.keys()].some((key) => key.includes('/gear/'));
  const lines = cleaningLines(telling, batch, !hasRung);
  const card = batchCard(telling, status, telling.words.replies.emptied(batch.number), lines);
  const left = batch.emptied?.leftGrams;
  const { leftOver } = batch.sheet;
  const seen = batch.thickened?.seen;
  // Set aside it heats as it did in the pot.
  if (mayHeat(seen)) return { ...card, hazards: heatHazards(telling, seen) };
  if (left === undefined || left <= 0) return card;
  const { setAside, setAsideLoose, setAsideVented, swellsSource } = telling.words.material;
  if (leftOver === undefined) return { ...card, lines: [...card.lines, setAside] };
  const source = telling.words.names.source(leftOver.source);
  const waste = wasteOf(batch.sheet);
  const asSheet = { text: waste === 'vented' ? setAsideVented : setAside, source };
  const loose = waste === 'loose-lid' ? [{ text: setAsideLoose, source: swellsSource }] : [];
  return { ...card, hazards: [asSheet, ...loose] };
}
