// From which can a part came that has been weighed: asked once a batch of a crew that keeps track of its cans, each can that
// may be meant with one tap; and what is told once it is named.

import type { Batch } from '../../core/batch/batch.ts';
import { canAsked, cansFitting, unnamedIn, unnamedParts } from '../../core/batch/unnamed-cans.ts';
import { type Can, isGasSensitive } from '../../core/can/can.ts';
import type { Component } from '../../core/components.ts';
import type { Recorded } from '../../core/execute.ts';
import { liveBatches } from '../../core/shop.ts';
import type { BatchNow } from '../../core/status.ts';
import { batchTaps } from './batch-cards.ts';
import { type Card, type CardAction, makeCard } from './card.ts';
import { lineOf, type Telling, tap } from './card-context.ts';
import { leftBy } from './recorded-act.ts';
import { blanketTaps, fromCanLines } from './weigh-cards.ts';

interface Asked {
  readonly lines: readonly string[];
  readonly actions: readonly CardAction[];
}

/** More would not fit under a card. */
const mostCans = 3;

/** By the weighing that was recorded. */
export function canQuestion(telling: Telling, batch: Batch, { envelopes }: Recorded): Asked {
  const seqs = envelopes.map(({ seq }) => seq);
  const component = canAsked(telling.shop, batch, seqs);
  if (component === undefined) return { lines: [], actions: [] };
  return { lines: [telling.words.material.whichCan(component)], actions: namingTaps(telling, batch, component) };
}

/** On the run card: what nobody has said, for whoever looks it up. */
export function unnamedOnRun(telling: Telling, batch: Batch): Asked & { readonly parts: readonly Component[] } {
  const parts = unnamedParts(telling.shop, batch);
  return {
    parts,
    lines: parts.map((component) => telling.words.records.lotNotGiven(component).trim()),
    actions: parts.slice(0, 1).flatMap((component) => namingTaps(telling, batch, component)),
  };
}

function namingTaps(telling: Telling, batch: Batch, component: Component): readonly CardAction[] {
  const { material } = telling.words;
  const cans = cansFitting(telling.shop, batch, component).slice(0, mostCans);
  return [
    ...cans.map((can) => ({
      id: `drawn-${can.number}`,
      label: material.canOpened(can.number, component, can.lot),
      line: drawnLine(telling, batch, component, can),
      bare: [`${can.number}`, `can ${can.number}`],
    })),
    ...anotherCan(telling, batch, component),
  ];
}

const drawnLine = (telling: Telling, { number: batch }: Batch, component: Component, can: Can): string =>
  lineOf(telling, { command: { verb: 'drawn', batch, component, cans: [can.number] } });

/** It was open by the pour. */
function anotherCan(telling: Telling, batch: Batch, component: Component): readonly CardAction[] {
  const weighed = unnamedIn(batch).find((each) => each.component === component)?.weighing;
  if (weighed === undefined) return [];
  const letter = component === 'part-a' ? 'A' : 'B';
  const handling = isGasSensitive({ sheet: batch.sheet, component }) ? ' {handling}' : '';
  const at = telling.figures.stamp(weighed.happenedAt);
  return [tap(telling, 'another-can', `open ${letter} lot {lot} {can-mass}kg ${batch.sheet.id}${handling} at ${at}`)];
}

/** Of a can that was open by then: the pots that wait to hear where their part came from. */
export function namingTapsOf(telling: Telling, can: Can): readonly CardAction[] {
  return liveBatches(telling.shop).flatMap((batch) => {
    const waits = unnamedIn(batch).some(
      ({ component, weighing }) => component === can.component && weighing.happenedAt >= can.openedAt,
    );
    return waits && batch.sheet.id === can.sheet.id
      ? [
          {
            id: `drawn-${batch.number}`,
            label: telling.words.material.wentInto(batch.number),
            line: drawnLine(telling, batch, can.component, can),
          },
        ]
      : [];
  });
}

export function drawnCard(telling: Telling, status: BatchNow, component: Component, outcome: Recorded): Card {
  const from = leftBy(outcome, 'CanNamed').flatMap(({ fromCans }) => fromCans);
  return makeCard(telling.words.material.canNamed(status.batch.number, component), 'good', {
    lines: fromCanLines(telling, from),
    actions: [...blanketTaps(telling, from), ...batchTaps(telling, status)],
  });
}
