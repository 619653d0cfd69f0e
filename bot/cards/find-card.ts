// What was found under a customer, job, serial, lot or date, each with its trace one tap away.

import type { Can } from '../../core/can/can.ts';
import { jobLimits } from '../../core/crew/job-limits.ts';
import { type Part, phaseOfPart } from '../../core/part/part.ts';
import { type Card, makeCard } from './card.ts';
import type { Telling } from './card-context.ts';
import { factsOf } from './facts.ts';
import { capped } from './period-card.ts';
import { detailsOf, phaseOf, traceTap } from './trace-cards.ts';

export interface Found {
  readonly parts: readonly Part[];
  readonly cans: readonly Can[];
}

const mostTaps = 5;

export function findCard(telling: Telling, what: string, { parts, cans }: Found): Card {
  const { records } = telling.words;
  const count = parts.length + cans.length;
  const jobs = new Set(parts.flatMap(({ details: { job } }) => job ?? []));
  const asked = (jobs.size > 0 ? [...jobs] : [what.replace(/^job /i, '')]).flatMap((job) => {
    const { job: _, ...limits } = { job, ...jobLimits(telling.shop.crew, job, telling.now) };
    return Object.keys(limits).length === 0 ? [] : [telling.words.parts.lacking.asks(job, limits, telling.figures)];
  });
  if (count === 0) return makeCard(records.foundNone(what), 'plain', { lines: asked });
  const lines = [
    ...parts.map((part) => {
      const phase = phaseOf(telling, phaseOfPart(part));
      return records.foundPart(part.name, detailsOf(telling, part.details), phase, telling.figures);
    }),
    ...cans.map((can) => records.foundCan(can)),
  ];
  const lots = [...new Set(cans.map(({ lot }) => lot))];
  return makeCard(records.found(what), 'plain', {
    facts: factsOf(telling, { found: count }),
    lines: [...asked, ...capped(telling, lines)],
    actions: [
      ...parts.slice(0, mostTaps).map(({ name }) => traceTap(telling, name)),
      ...lots.slice(0, mostTaps).map((lot) => traceTap(telling, `lot ${lot}`)),
    ],
  });
}
