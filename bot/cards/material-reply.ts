// Answers to what was recorded of cans, of weighing and adding, of a pot's lid and what was caught.

import { uncoveredMinutes } from '../../core/batch/batch-clocks.ts';
import { isRatioOut } from '../../core/batch/batch-status.ts';
import type { FromCan } from '../../core/can/can-events.ts';
import type { CommandOf } from '../../core/commands.ts';
import type { Recorded } from '../../core/execute.ts';
import { numberIn } from '../../core/ids.ts';
import { type BatchNow, statusOf } from '../../core/status.ts';
import type { Grams } from '../../core/units.ts';
import { batchCard, weighedCard } from './batch-cards.ts';
import { blanketedCard, checkedCard, discardedCard, lidOffCard, openedCanCard, stirringCanCard } from './can-cards.ts';
import { type Card, makeCard } from './card.ts';
import { massFact, minutesWantedFact, type Telling } from './card-context.ts';
import { heatHazards, mayHeat } from './dead-pot.ts';
import { blanketTaps, fromCanLines, partInCard, repairTold } from './weigh-cards.ts';

export type CanVerb = 'open' | 'lid' | 'blanket' | 'check' | 'prestir' | 'discard';

export function canReply(t: Telling, verb: CanVerb, outcome: Recorded): Card {
  const stream = outcome.envelopes.map((envelope) => envelope.stream).find((each) => each.startsWith('can/'));
  const found = stream === undefined ? undefined : outcome.shop.cans.get(numberIn(stream));
  if (found === undefined) return makeCard(t.words.replies.settled, 'plain');
  const can = statusOf.can(t, found);
  switch (verb) {
    case 'open':
      return openedCanCard(t, can);
    case 'lid':
      return lidOffCard(t, can);
    case 'blanket':
      return blanketedCard(t, can);
    case 'check':
      return checkedCard(t, can);
    case 'prestir':
      return stirringCanCard(t, can);
    case 'discard':
      return discardedCard(t, can);
  }
}

export function weighReply(t: Telling, status: BatchNow, outcome: Recorded): Card {
  const from = fromCansIn(outcome);
  const [body] = outcome.envelopes.map((envelope) => envelope.body);
  if (status.batch.weighing === undefined) {
    return partInCard(t, status, body?.type === 'PartWeighed' ? body.component : 'part-a', from);
  }
  return withCansAndRepair(t, status, weighedCard(t, status), from);
}

export function addReply(t: Telling, status: BatchNow, command: CommandOf<'add'>, outcome: Recorded): Card {
  const { material } = t.words;
  const title = material.added(status.batch.number, command.grams, command.component, t.f);
  const base = weighedCard(t, status);
  const told = withCansAndRepair(t, status, { ...base, title }, fromCansIn(outcome));
  return { ...told, lines: [material.stirAgain, ...told.lines] };
}

/** The same card with its cans, their gas, and what brings an off-ratio mix back. */
function withCansAndRepair(t: Telling, status: BatchNow, card: Card, from: readonly FromCan[]): Card {
  const repair = isRatioOut(status) ? repairTold(t, status.batch) : { facts: [], lines: [], taps: [] };
  return {
    ...card,
    facts: [...card.facts, ...repair.facts],
    lines: [...repair.lines, ...card.lines, ...fromCanLines(t, from)],
    actions: [...repair.taps, ...blanketTaps(t, from), ...card.actions],
  };
}

function fromCansIn({ envelopes }: Recorded): readonly FromCan[] {
  return envelopes.flatMap(({ body }) =>
    body.type === 'PartsWeighed' || body.type === 'PartWeighed' || body.type === 'PartAdded'
      ? (body.fromCans ?? [])
      : [],
  );
}

export function coverReply(t: Telling, status: BatchNow, title: string): Card {
  const { material } = t.words;
  const { batch } = status;
  const soFar = uncoveredMinutes(batch, t.now);
  const lines = soFar > 0 ? [material.uncoveredSoFar(soFar, t.f)] : [];
  const card = batchCard(t, status, title, lines);
  return { ...card, facts: [...(soFar > 0 ? [minutesWantedFact(t, 'uncovered', soFar)] : []), ...card.facts] };
}

export function caughtReply(t: Telling, status: BatchNow, caught: Grams): Card {
  const { material } = t.words;
  const title = material.caught(status.batch.number, caught, t.f);
  const card = batchCard(t, status, title, [material.caughtFilter]);
  return { ...card, facts: [massFact(t, 'caught', caught), ...card.facts] };
}

/** What is left over is set aside as the sheet says. */
export function emptiedReply(t: Telling, status: BatchNow): Card {
  const { batch } = status;
  const card = batchCard(t, status, t.words.replies.emptied(batch.number), []);
  const left = batch.emptied?.leftGrams;
  const { leftOver } = batch.sheet;
  const seen = batch.thickened?.seen;
  // Set aside it heats as it did in the pot.
  if (mayHeat(seen)) return { ...card, hazards: heatHazards(t, seen) };
  if (left === undefined || left <= 0) return card;
  const { setAside, setAsideVented } = t.words.material;
  if (leftOver === undefined) return { ...card, lines: [...card.lines, setAside] };
  const text = leftOver.vented ? setAsideVented : setAside;
  return { ...card, hazards: [{ text, source: t.words.names.source(leftOver.source) }] };
}
