// Of the mix: how much of B goes to so much of A, and whether there is enough for more parts.

import { potsAtRisk } from '../../../core/asked/pots-at-risk.ts';
import { isComponent } from '../../../core/asked/things-meant.ts';
import { planCoating } from '../../../core/batch/coating-plan.ts';
import { partsByWeight } from '../../../core/calc/mixing.ts';
import { leftGrams } from '../../../core/can/can.ts';
import type { Component } from '../../../core/components.ts';
import { isFailed } from '../../../core/failed.ts';
import { methods } from '../../../core/methods.ts';
import { type Part, phaseOfPart } from '../../../core/part/part.ts';
import { mixRatio } from '../../../core/products/sheet.ts';
import { byName, liveBatches, liveCans, liveParts, sheetFor } from '../../../core/shop.ts';
import { type Grams, grams, type SquareMetres } from '../../../core/units.ts';
import { type Card, makeCard } from '../card.ts';
import type { Telling } from '../card-context.ts';
import { toWeighCard } from '../to-weigh-card.ts';
import { massOf } from './how-much-card.ts';
import type { OfTopic, TopicCards } from './topic-asked.ts';

export const mixTopics: TopicCards<'ratio' | 'enough'> = { ratio: ratioCard, enough: enoughCard };

function ratioCard({ telling, asked, things }: OfTopic): Card {
  const { topics, material, asked: words } = telling.words;
  const named = things.flatMap((thing) => (thing.is === 'batch' ? (telling.shop.batches.get(thing.number) ?? []) : []));
  const sheet = (named[0] ?? liveBatches(telling.shop).at(-1))?.sheet ?? sheetFor(telling.shop);
  if (isFailed(sheet)) return unclearSheet(telling, sheet.failed);
  const { partsA, partsB, basis, tolerancePercent } = sheet.ratio;
  const rule = topics.ratio(partsA, partsB, basis, tolerancePercent, telling.figures);
  const bySheet = topics.bySheet(sheet.name);
  const byWeight = partsByWeight(mixRatio(sheet.ratio));
  const { mass } = asked;
  // Of nothing that is named, the only one that waits for its weights: `how much hardener goes in`.
  const isOfNone = named.length === 0 && mass === undefined;
  const toBeWeighed = (isOfNone ? liveBatches(telling.shop) : named).filter(({ weighing }) => weighing === undefined);
  const raw = isOfNone && toBeWeighed.length > 1 ? undefined : toBeWeighed[0];
  const toWeigh = raw && toWeighCard(telling, raw).facts;
  if (raw !== undefined && toWeigh !== undefined && toWeigh.length > 0) {
    const shown = toWeigh.map(({ label, shown }) => words.titled(label, shown)).join(', ');
    return makeCard(words.titled(telling.words.page.batch(raw.number), shown), 'plain', { lines: [rule, bySheet] });
  }
  if (mass === undefined || isFailed(byWeight)) return makeCard(rule, 'plain', { lines: [bySheet] });
  // `how much B for 700 g of A`: what is asked for stands first, what is there last.
  const component = asked.of.flatMap((thing) => (thing.is === 'name' && isComponent(thing) ? [thing.name] : []));
  if (component.length === 0) {
    const shares = [
      ['part-a', byWeight.partsA],
      ['part-b', byWeight.partsB],
    ] as const;
    const all = byWeight.partsA + byWeight.partsB;
    const shown = shares.map(([each, parts]) =>
      words.titled(material.component[each], telling.figures.mass(grams((mass * parts) / all))),
    );
    return makeCard(shown.join(', '), 'plain', { lines: [rule, bySheet] });
  }
  const given: Component = component.at(-1) === 'b' ? 'part-b' : 'part-a';
  const other: Component = given === 'part-a' ? 'part-b' : 'part-a';
  const share = given === 'part-a' ? byWeight.partsB / byWeight.partsA : byWeight.partsA / byWeight.partsB;
  const needed = grams(mass * share);
  return makeCard(
    topics.ratioTo(material.component[given], mass, material.component[other], needed, telling.figures),
    'plain',
    { lines: [rule, bySheet] },
  );
}

const unclearSheet = ({ words, figures }: Telling, unclear: Parameters<Telling['words']['unclear']>[0]): Card =>
  makeCard(words.replies.notClear, 'warn', { lines: [words.unclear(unclear, figures)] });

/** Of parts as big as those that wait, by each way that the sheet allows; beside what the pots and cans hold. */
function enoughCard({ telling, asked }: OfTopic): Card {
  const { topics, asked: words, page, material } = telling.words;
  const { shop, figures, now } = telling;
  const held = [
    ...potsAtRisk(telling).map(({ batch }) =>
      topics.inPots(page.batch(batch.number), massOf(telling, batch), words.coatsFrom(batch.coats.length, figures)),
    ),
    ...(['part-a', 'part-b'] as const).map((component) =>
      topics.inCans(material.component[component], stockOf(telling, component), figures),
    ),
    words.leftUnknown,
  ];
  const waiting = byName(liveParts(shop)).filter(
    (part) => phaseOfPart(part).is === 'bare' && areaOf(part) !== undefined,
  );
  const named = asked.of.flatMap((thing) => (thing.is === 'name' ? (shop.parts.get(thing.name) ?? []) : []));
  const like = named.find((part) => areaOf(part) !== undefined) ?? waiting[0];
  const each = like && areaOf(like);
  const [count = named.length > 0 ? named.length : waiting.length] = asked.of.flatMap((thing) =>
    thing.is === 'number' && thing.noun === undefined ? [thing.number] : [],
  );
  if (like === undefined || each === undefined || count === 0) {
    const [first = topics.noArea, ...others] = held;
    return makeCard(first, 'plain', { lines: [...others, topics.noArea] });
  }
  const sheet = liveBatches(shop).at(-1)?.sheet ?? sheetFor(shop);
  const masses = isFailed(sheet)
    ? []
    : methods.flatMap((method) => {
        const plan = planCoating(shop, { parts: [{ count, eachSquareMetres: each }], method, sheet: sheet.id }, now);
        return sheet.methods.includes(method) && !isFailed(plan) ? [plan.mixedGrams] : [];
      });
  const needed =
    masses.length === 0
      ? material.planNoFilm
      : topics.massBetween(grams(Math.min(...masses)), grams(Math.max(...masses)), figures);
  return makeCard(topics.enoughFor(count, figures.area(each), needed, figures), 'plain', {
    lines: [topics.areaTaken(like.name), ...held],
  });
}

const areaOf = ({ details }: Part): SquareMetres | undefined => details.areaSquareMetres;

const stockOf = ({ shop }: Telling, wanted: Component): Grams =>
  grams(
    liveCans(shop)
      .filter(({ component }) => component === wanted)
      .reduce((sum, can) => sum + leftGrams(can), 0),
  );
