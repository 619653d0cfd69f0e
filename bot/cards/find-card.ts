// What was found under a customer, job, serial, lot or date, each with its trace one tap away.

import type { Can } from '../../core/can/can.ts';
import { type Part, phaseOfPart } from '../../core/part/part.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { factsOf } from './facts.ts';
import { detailsOf, phaseOf } from './trace-cards.ts';

export interface Found {
  readonly parts: readonly Part[];
  readonly cans: readonly Can[];
}

const mostTaps = 5;
const mostLines = 60;

export function findCard(telling: Telling, what: string, { parts, cans }: Found): Card {
  const { records } = telling.words;
  const count = parts.length + cans.length;
  if (count === 0) return makeCard(records.foundNone(what), 'plain');
  const lines = [
    ...parts.map((part) =>
      records.foundPart(
        part.name,
        detailsOf(telling, part.details),
        phaseOf(telling, phaseOfPart(part)),
        telling.figures,
      ),
    ),
    ...cans.map((can) => records.foundCan(can)),
  ];
  const lots = [...new Set(cans.map(({ lot }) => lot))];
  return makeCard(records.found(what), 'plain', {
    facts: factsOf(telling, { found: count }),
    lines: lines.length > mostLines ? [...lines.slice(0, mostLines), records.more(lines.length - mostLines)] : lines,
    actions: [
      ...parts
        .slice(0, mostTaps)
        .map(({ name }) => ({ ...tap(telling, 'trace', `trace ${name}`), id: `trace-${name}` })),
      ...lots
        .slice(0, mostTaps)
        .map((lot) => ({ ...tap(telling, 'trace', `trace lot ${lot}`), id: `trace-lot-${lot}` })),
    ],
  });
}
