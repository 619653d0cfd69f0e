// Of parts: which wait for a coat, which are held, how many stand where, their coats, what they are and what heat they bear.

import type { ThingMeant } from '../../../core/asked/things-meant.ts';
import { isFailed } from '../../../core/failed.ts';
import type { BatchNumber } from '../../../core/ids.ts';
import { type Coat, type Part, type PartPhase, phaseOfPart } from '../../../core/part/part.ts';
import { batchOf, byName, liveParts, sheetFor } from '../../../core/shop.ts';
import { type Card, type CardAction, makeCard } from '../card.ts';
import type { Telling } from '../card-context.ts';
import { heldLine } from '../part-cards.ts';
import { detailsOf, traceTap } from '../trace-cards.ts';
import type { TopicCards } from './topic-asked.ts';

const mostTold = 8;

export const partTopics: TopicCards<'to-coat' | 'on-hold' | 'counted' | 'coats' | 'from-batch' | 'details' | 'bears'> =
  {
    'to-coat': ({ telling }) => {
      const { topics, asked } = telling.words;
      const bare = live(telling).filter((part) => phaseOfPart(part).is === 'bare');
      if (bare.length === 0) return makeCard(topics.noneToCoat, 'plain', { lines: [asked.whereLastSaid] });
      const names = bare.map(({ name }) => name);
      return makeCard(topics.toCoat(bare.length, names, telling.figures), 'plain', {
        lines: [...bare.slice(0, mostTold).flatMap((part) => described(telling, part)), asked.whereLastSaid],
      });
    },
    'on-hold': ({ telling, things }) => {
      const { topics } = telling.words;
      const named = partsIn(things);
      const held = (named.length > 0 ? named : live(telling)).filter(({ verdict }) => verdict?.is === 'held');
      if (held.length === 0) return makeCard(topics.nothingOnHold, 'plain');
      const names = held.map(({ name }) => name);
      return makeCard(topics.onHold(names, telling.figures), 'warn', {
        lines: held.slice(0, mostTold).map((part) => heldLine(telling, part)),
        actions: held.slice(0, 3).map(({ name }) => whyTap(telling, name)),
      });
    },
    counted: ({ telling }) => countedCard(telling),
    coats: ({ telling, things }) => {
      const { topics, page } = telling.words;
      const { figures } = telling;
      const named = partsIn(things);
      const [pot] = things.flatMap((thing) =>
        thing.is === 'batch' ? (telling.shop.batches.get(thing.number) ?? []) : [],
      );
      if (named.length === 0 && pot !== undefined)
        return makeCard(topics.coats(page.batch(pot.number), pot.coats.length, figures), 'plain');
      if (named.length === 0) return countedCard(telling);
      const [first, ...others] = named;
      return makeCard(topics.coats(first?.name ?? '', first?.coats.length ?? 0, figures), 'plain', {
        lines: [
          ...(first?.coats ?? []).map((coat) => coatLine(telling, coat)),
          ...others.map(({ name, coats }) => topics.coats(name, coats.length, figures)),
        ],
        actions: first === undefined ? [] : [traceTap(telling, first.name)],
      });
    },
    'from-batch': ({ telling, things }) => {
      const { topics, asked } = telling.words;
      const [part, ...others] = partsIn(things);
      if (part === undefined) return countedCard(telling);
      const last = part.coats.at(-1);
      const title =
        last === undefined
          ? topics.coats(part.name, 0, telling.figures)
          : asked.titled(part.name, coatLine(telling, last));
      return makeCard(title, 'plain', {
        lines: [
          ...part.coats.slice(0, -1).map((coat) => coatLine(telling, coat)),
          ...[...new Set(part.coats.map(({ batch }) => batch))].flatMap((batch) => cansOf(telling, batch)),
          ...others.flatMap(({ name, coats }) => coats.map((coat) => asked.titled(name, coatLine(telling, coat)))),
        ],
        actions: [traceTap(telling, part.name)],
      });
    },
    details: ({ telling, things }) => {
      const { asked } = telling.words;
      const named = partsIn(things);
      const [part, ...others] = named.length > 0 ? named : live(telling).slice(0, mostTold);
      if (part === undefined) return countedCard(telling);
      const [first] = described(telling, part);
      const lines = [asked.nextOf(part.name, telling.words.phases[phaseOfPart(part).is], undefined)];
      return makeCard(first ?? telling.words.topics.noDetails(part.name), first === undefined ? 'warn' : 'plain', {
        lines: [...lines, ...others.flatMap((each) => described(telling, each))],
        actions: [traceTap(telling, part.name)],
      });
    },
    bears: ({ telling, things }) => {
      const { topics } = telling.words;
      const named = partsIn(things);
      const told = named.map(({ name, details: { highestCelsius } }) =>
        highestCelsius === undefined ? topics.bearsUnknown(name) : topics.bears(name, highestCelsius, telling.figures),
      );
      const sheet = named.flatMap((part) => batchOf(telling.shop, part)?.sheet ?? [])[0] ?? sheetFor(telling.shop);
      const oven = isFailed(sheet) ? undefined : sheet.cure.oven;
      const ofSheet =
        oven === undefined
          ? []
          : [topics.ovenOfSheet(oven.atCelsius, oven.highestCelsius, oven.minutes, telling.figures)];
      const [first = telling.words.asked.notReadYet, ...others] = [...told, ...ofSheet];
      const isUnknown = named.some(({ details: { highestCelsius } }) => highestCelsius === undefined);
      return makeCard(first, isUnknown ? 'warn' : 'plain', { lines: others });
    },
  };

const live = (telling: Telling): readonly Part[] =>
  byName(liveParts(telling.shop)).filter(({ entries }) => entries.length > 0);

const partsIn = (things: readonly ThingMeant[]): readonly Part[] =>
  things.flatMap((thing) => (thing.is === 'part' ? [thing.part] : []));

/** How many stand where, and which. */
function countedCard(telling: Telling): Card {
  const { topics, phases, asked } = telling.words;
  const { figures } = telling;
  const parts = live(telling);
  const phasesThere = [...new Set(parts.map((part) => phaseOfPart(part).is))];
  const inPhase = (is: PartPhase['is']) => parts.filter((part) => phaseOfPart(part).is === is);
  if (parts.length === 0) return makeCard(topics.noParts, 'plain');
  const each = phasesThere.map((is) => topics.countedAs(inPhase(is).length, phases[is], figures));
  return makeCard(topics.counted(each, figures), 'plain', {
    lines: [
      ...phasesThere.map((is) => {
        const names = inPhase(is).map(({ name }) => name);
        return topics.named(phases[is], names.slice(0, mostTold), figures);
      }),
      asked.whereLastSaid,
    ],
  });
}

const coatLine = ({ words, figures }: Telling, { batch, method, at, by }: Coat): string =>
  words.topics.coatFrom(batch, method, at, by, figures);

function cansOf({ shop, words }: Telling, batch: BatchNumber): readonly string[] {
  return [...shop.cans.values()]
    .filter(({ pours }) => pours.some((pour) => pour.batch === batch))
    .map(({ number, lot, component }) => words.topics.ofCan(words.material.component[component], lot, number));
}

/** `impeller-5: serial 4405, job 87, cast iron, wall 12 mm, area 0.8 m², bears up to 120 °C`. */
function described(telling: Telling, { name, details }: Part): readonly string[] {
  const { topics, asked } = telling.words;
  const { areaSquareMetres: area, highestCelsius } = details;
  const told = [
    ...detailsOf(telling, details),
    ...(area === undefined ? [] : [topics.area(telling.figures.area(area))]),
    ...(highestCelsius === undefined ? [] : [telling.figures.temperature(highestCelsius)]),
  ];
  return told.length === 0 ? [] : [asked.titled(name, told.join(', '))];
}

const whyTap = ({ words }: Telling, name: string): CardAction => ({
  id: `why-${name}`,
  label: words.why.whyHeld(name),
  line: `why ${name}`,
});
