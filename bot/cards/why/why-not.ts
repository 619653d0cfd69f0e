// Why not: what speaks against an act as things stand, whose rule each is, the figures behind it, and who may lift it. And why a
// part is held.

import { ruleOf } from '../../../core/allowed.ts';
import type { Breach } from '../../../core/calc/climate-window.ts';
import type { Command } from '../../../core/commands.ts';
import { partStream } from '../../../core/ids.ts';
import type { Objection, ObjectionCode } from '../../../core/objections.ts';
import type { Part } from '../../../core/part/part.ts';
import { partStatus } from '../../../core/part/part-status.ts';
import { deviationsIn } from '../../../core/records/deviations.ts';
import { sprayLaws } from '../../../core/session/figure-sources.ts';
import { type Card, makeCard } from '../card.ts';
import type { Telling } from '../card-context.ts';
import { deviationSaid } from '../deviation-lines.ts';
import type { FactId } from '../fact-ids.ts';
import { heldLines } from '../part-cards.ts';
import type { FigureAtHand } from './figures-at-hand.ts';
import { readLine, whyLinesOf } from './why-card.ts';

/** The figure that a rule looks at, where a card has one. */
const figureOf: Readonly<Partial<Record<ObjectionCode, FactId>>> = {
  'air-needed': 'air-read-at',
  'blend-not-done': 'stir-done-at',
  'past-pot-life': 'pot-life-ends',
  'ratio-out': 'ratio-error',
  'flash-off-not-over': 'flash-least-at',
  'recoat-too-early': 'recoat-opens-at',
  'recoat-too-late': 'recoat-closes-at',
  'surface-life-over': 'surface-ends-at',
  'film-drying': 'open-until',
  'cure-not-given': 'cure-done-at',
  'can-doubtful': 'blanket-by',
  'part-a-not-stirred': 'can-stir-wanted',
  'fan-too-weak': 'air-for-lel',
  'hotter-than-part-bears': 'part-bears',
  'more-than-can-holds': 'can-left',
};

const ofLimit: Readonly<Record<Breach['limit'], FactId>> = {
  lowestAirCelsius: 'air-temperature',
  highestAirCelsius: 'air-temperature',
  lowestHumidityPercent: 'humidity',
  highestHumidityPercent: 'humidity',
  leastSpreadCelsius: 'spread',
  lowestSurfaceCelsius: 'surface-temperature',
  highestSurfaceCelsius: 'surface-temperature',
};

function figureBehind(objection: Objection): FactId | undefined {
  if (objection.code !== 'air-outside') return figureOf[objection.code];
  const [breach] = objection.breaches;
  return breach && ofLimit[breach.limit];
}

export function whyNotCard(
  telling: Telling,
  { verb }: Command,
  objections: readonly Objection[],
  figures: readonly FigureAtHand[],
): Card {
  const { words } = telling;
  const law = sprayLaws[telling.shop.crew.spray.law.frame];
  return makeCard(words.why.whyNot, 'plain', {
    lines: [
      ...new Set(
        objections.flatMap((objection) => {
          const { source, liftedBy } = ruleOf(verb, objection.code);
          const id = figureBehind(objection);
          const figure = figures.find(({ fact }) => fact.id === id);
          return [
            words.objection(objection, telling.figures),
            words.replies.askedBy([source], law, telling.figures),
            ...(figure === undefined ? [] : whyLinesOf({ telling, ...figure, question: undefined })),
            words.why.lifted[liftedBy],
          ];
        }),
      ),
      words.why.ruleErrs,
    ],
  });
}

/** Its hold, by whom and when, and every deviation that stands on it. */
export function whyHeldCard(telling: Telling, part: Part): Card {
  const { words, figures, shop } = telling;
  const home = partStream(part.name);
  const deviations = deviationsIn(shop, ({ stream }) => stream === home);
  const held = heldLines(telling, partStatus(telling, part));
  if (held.length + deviations.length === 0) return makeCard(words.why.noHold(part.name), 'plain');
  const holding = part.entries.filter(({ fact }) => fact.type === 'PartHeld').slice(-1);
  return makeCard(words.why.whyHeld(part.name), 'plain', {
    lines: [
      ...held,
      ...(holding.length === 0 ? [] : [words.why.read(holding.map((entry) => readLine(telling, entry)))]),
      ...deviations.map((deviation) => {
        const { entry } = deviation;
        return words.why.deviates(deviationSaid(telling, deviation), entry.by, entry.happenedAt, figures);
      }),
    ],
  });
}
