// What the product's sheet asks for, where no clock of a thing is meant: the figure, its source, and that no clock runs by it.

import { durationAt } from '../../../core/calc/rate-law.ts';
import { isFailed } from '../../../core/failed.ts';
import { defaultPlace } from '../../../core/ids.ts';
import { rateLaw, type Sheet } from '../../../core/products/sheet.ts';
import type { Duration } from '../../../core/products/sheet-duration.ts';
import { airServingIn, batchOf, liveBatches, sheetFor } from '../../../core/shop.ts';
import type { Topic } from '../../../core/verbs/topics.ts';
import { type Card, makeCard } from '../card.ts';
import type { Telling } from '../card-context.ts';
import type { OfTopic, TopicCards } from './topic-asked.ts';

type SheetTopic = Extract<Topic, `sheet-${string}`>;

interface Asked {
  readonly lines: readonly string[];
  readonly field: string;
  readonly source: string;
}

type AskedBy = (telling: Telling, sheet: Sheet) => Asked | undefined;

const groups: { readonly [T in SheetTopic]: AskedBy } = {
  'sheet-air': ({ words: { topics }, figures }, { air }) => {
    const { lowestRelativeHumidityPercent: lowest, highestRelativeHumidityPercent: highest } = air;
    const humidity =
      lowest === undefined
        ? topics.upTo(figures.percent(highest))
        : topics.between(figures.percent(lowest), figures.percent(highest));
    const spread = figures.spread(air.leastSpreadCelsius);
    const line = topics.air(air.lowestCelsius, air.highestCelsius, humidity, spread, figures);
    return { lines: [line], field: 'air', source: air.source };
  },
  'sheet-surface': ({ words: { parts, names }, figures }, { surface, name }) => {
    if (surface === undefined) return undefined;
    const { remove, grade, profile, salts, dust } = surface;
    const limits = {
      ...(grade !== undefined && { grade: grade.anyOf }),
      ...(profile !== undefined && { profile }),
      ...(salts !== undefined && { salts: salts.mostMilligramsPerSquareMetre }),
      ...(dust !== undefined && { dust: dust.mostRating }),
    };
    const lines = [
      ...(Object.keys(limits).length === 0 ? [] : [parts.limits(limits, figures)]),
      ...(remove === undefined ? [] : [parts.toRemove(remove.what, names.source(name), figures)]),
    ];
    const source = (grade ?? profile ?? salts ?? dust ?? remove)?.source;
    return lines.length === 0 || source === undefined ? undefined : { lines, field: 'surface', source };
  },
  'sheet-blend': (telling, { blend: { time } }) => ({
    lines: [...now(telling, time), telling.words.why.law(time, telling.figures)],
    field: 'blend.time',
    source: time.source,
  }),
  'sheet-pot-life': (telling, { potLife: { time } }) => ({
    lines: [...now(telling, time), telling.words.why.law(time, telling.figures)],
    field: 'potLife.time',
    source: time.source,
  }),
  'sheet-film': ({ words: { topics }, figures }, { film }) =>
    film && {
      lines: [topics.film(film.lowestDryMicrometres, film.highestDryMicrometres, figures)],
      field: 'film',
      source: film.source,
    },
  'sheet-flash': ({ words: { topics }, figures }, { flashOff }) => ({
    lines: [topics.flash(flashOff.leastMinutes, flashOff.mostMinutes, figures)],
    field: 'flashOff',
    source: flashOff.source,
  }),
  'sheet-recoat': ({ words: { topics }, figures }, { recoat }) => ({
    lines: [
      recoat.rule === 'forbidden'
        ? topics.recoatForbidden
        : topics.recoat(recoat.opensMinutes, recoat.closesMinutes, figures),
    ],
    field: 'recoat',
    source: recoat.source,
  }),
  'sheet-cure': ({ words: { topics, why }, figures }, { cure: { oven, room } }) => {
    const source = oven?.source ?? room?.time.source;
    if (source === undefined) return undefined;
    return {
      lines: [
        ...(oven === undefined ? [] : [topics.ovenCure(oven.minutes, oven.atCelsius, figures)]),
        ...(room === undefined ? [] : [topics.roomCure(why.law(room.time, figures))]),
      ],
      field: 'cure',
      source,
    };
  },
  'sheet-flush': ({ words: { topics, names }, figures }, { flush }) =>
    flush && {
      lines: [
        flush.steps
          .map(({ solvent, purityPercent }) =>
            purityPercent === undefined
              ? names.solvent(solvent)
              : topics.pure(names.solvent(solvent), figures.percent(purityPercent)),
          )
          .join(topics.thenSolvent),
      ],
      field: 'flush',
      source: flush.source,
    },
};

/** At the air that was read, where its reading still serves. */
function now({ shop, words, figures, now: at }: Telling, time: Duration): readonly string[] {
  const { celsius } = airServingIn(shop, defaultPlace, at);
  if (celsius === undefined) return [];
  const lasts = durationAt(rateLaw(time), celsius);
  return 'minutes' in lasts ? [words.topics.atAir(lasts.minutes, celsius, figures)] : [];
}

function cardOf(topic: SheetTopic, { telling, things }: OfTopic): Card {
  const { topics, why, names, unclear, replies } = telling.words;
  const sheet = sheetMeant(telling, things);
  if (isFailed(sheet)) return makeCard(replies.notClear, 'warn', { lines: [unclear(sheet.failed, telling.figures)] });
  const what = topics.sheetOf[topic];
  const asked = groups[topic](telling, sheet);
  if (asked === undefined) return makeCard(topics.notOnSheet(what, sheet.name), 'warn');
  const { lines, field, source } = asked;
  const [first = '', ...others] = lines;
  return makeCard(topics.titled(what, first), 'plain', {
    lines: [
      ...others,
      why.source({ is: 'sheet', sheet, field, source }, names.source(source)),
      topics.bySheet(sheet.name),
    ],
  });
}

/** Of what was named, else of the pots in use, else the crew's usual one. */
function sheetMeant({ shop }: Telling, things: OfTopic['things']) {
  const [named] = things.flatMap((thing) => {
    if (thing.is === 'batch') return [shop.batches.get(thing.number)?.sheet ?? []].flat();
    if (thing.is === 'can') return [shop.cans.get(thing.number)?.sheet ?? []].flat();
    return thing.is === 'part' ? [batchOf(shop, thing.part)?.sheet ?? []].flat() : [];
  });
  return named ?? liveBatches(shop).at(-1)?.sheet ?? sheetFor(shop);
}

export const sheetTopics: TopicCards<SheetTopic> = {
  'sheet-air': (of) => cardOf('sheet-air', of),
  'sheet-surface': (of) => cardOf('sheet-surface', of),
  'sheet-blend': (of) => cardOf('sheet-blend', of),
  'sheet-pot-life': (of) => cardOf('sheet-pot-life', of),
  'sheet-film': (of) => cardOf('sheet-film', of),
  'sheet-flash': (of) => cardOf('sheet-flash', of),
  'sheet-recoat': (of) => cardOf('sheet-recoat', of),
  'sheet-cure': (of) => cardOf('sheet-cure', of),
  'sheet-flush': (of) => cardOf('sheet-flush', of),
};
