// Answers to what was recorded of cans, of weighing and adding, of a pot's lid and what was caught.

import type { Batch } from '../../core/batch/batch.ts';
import { uncoveredMinutes } from '../../core/batch/batch-clocks.ts';
import type { Can } from '../../core/can/can.ts';
import type { FromCan } from '../../core/can/can-events.ts';
import type { CommandOf } from '../../core/commands.ts';
import type { Recorded } from '../../core/execute.ts';
import { numberIn } from '../../core/ids.ts';
import type { Grams } from '../../core/units.ts';
import { batchCard, ratioWithin, weighedCard } from './batch-cards.ts';
import { blanketedCard, checkedCard, discardedCard, lidOffCard, openedCanCard, stirringCanCard } from './can-cards.ts';
import { type Card, makeCard } from './card.ts';
import { massFact, minutesWantedFact, type Telling } from './card-context.ts';
import { heatHazards } from './dead-pot.ts';
import { blanketTaps, fromCanLines, partInCard, repairTold } from './weigh-cards.ts';

export type CanVerb = 'open' | 'lid' | 'blanket' | 'check' | 'prestir' | 'discard';

export function canReply(t: Telling, verb: CanVerb, outcome: Recorded): Card {
  const stream = outcome.envelopes.map((envelope) => envelope.stream).find((each) => each.startsWith('can/'));
  const can: Can | undefined = stream === undefined ? undefined : outcome.shop.cans.get(numberIn(stream));
  if (can === undefined) return makeCard(t.words.replies.settled, 'plain');
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

export function weighReply(t: Telling, batch: Batch, outcome: Recorded): Card {
  const from = fromCansIn(outcome);
  const [body] = outcome.envelopes.map((envelope) => envelope.body);
  if (batch.weighing === undefined) {
    return partInCard(t, batch, body?.type === 'PartWeighed' ? body.component : 'part-a', from);
  }
  return withCansAndRepair(t, batch, weighedCard(t, batch), from);
}

export function addReply(t: Telling, batch: Batch, command: CommandOf<'add'>, outcome: Recorded): Card {
  const { material } = t.words;
  const title = material.added(batch.number, t.f.mass(command.grams), command.component);
  const base = weighedCard(t, batch);
  const told = withCansAndRepair(t, batch, { ...base, title }, fromCansIn(outcome));
  return { ...told, lines: [material.stirAgain, ...told.lines] };
}

/** The same card with its cans, their gas, and what brings an off-ratio mix back. */
function withCansAndRepair(t: Telling, batch: Batch, card: Card, from: readonly FromCan[]): Card {
  const repair = ratioWithin(batch) ? { facts: [], lines: [], taps: [] } : repairTold(t, batch);
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

export function coverReply(t: Telling, batch: Batch, verb: 'cover' | 'uncover'): Card {
  const { material } = t.words;
  const soFar = uncoveredMinutes(batch, t.now);
  const title = verb === 'cover' ? material.covered(batch.number) : material.uncovered(batch.number);
  const lines = soFar > 0 ? [material.uncoveredSoFar(t.f.minutesUp(soFar))] : [];
  const card = batchCard(t, batch, title, lines);
  return { ...card, facts: [...(soFar > 0 ? [minutesWantedFact(t, 'uncovered', soFar)] : []), ...card.facts] };
}

export function caughtReply(t: Telling, batch: Batch, caught: Grams): Card {
  const { material } = t.words;
  const card = batchCard(t, batch, material.caught(batch.number, t.f.mass(caught)), [material.caughtFilter]);
  return { ...card, facts: [massFact(t, 'caught', caught), ...card.facts] };
}

/** What is left over is set aside as the sheet says. */
export function emptiedReply(t: Telling, batch: Batch): Card {
  const card = batchCard(t, batch, t.words.replies.emptied(batch.number), []);
  const left = batch.emptied?.leftGrams;
  const { leftOver } = batch.sheet;
  const seen = batch.thickened?.seen;
  // Set aside it heats as it did in the pot.
  if (seen === 'gelled' || seen === 'hot') return { ...card, hazards: heatHazards(t, seen) };
  if (left === undefined || left <= 0) return card;
  const { setAside, setAsideVented } = t.words.material;
  if (leftOver === undefined) return { ...card, lines: [...card.lines, setAside] };
  const text = leftOver.vented ? setAsideVented : setAside;
  return { ...card, hazards: [{ text, source: t.words.names.source(leftOver.source) }] };
}
