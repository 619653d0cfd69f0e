// Of cans: until when one may be used, its lot, and whether its lid is off.

import type { ThingMeant } from '../../../core/asked/things-meant.ts';
import type { Can } from '../../../core/can/can.ts';
import { canStatus } from '../../../core/can/can-status.ts';
import { daysTo, openUntil } from '../../../core/can/can-stock.ts';
import type { Component } from '../../../core/components.ts';
import { liveCans } from '../../../core/shop.ts';
import { minutesBetween } from '../../../core/units.ts';
import { makeCard } from '../card.ts';
import type { Telling } from '../card-context.ts';
import { howLongCard } from './how-long-card.ts';
import type { OfTopic, TopicCards } from './topic-asked.ts';

export const canTopics: TopicCards<'expiry' | 'lot' | 'lid'> = {
  expiry: (of) => {
    const { telling, things } = of;
    const pot = things.find((thing) => thing.is === 'batch' || thing.is === 'part');
    if (pot !== undefined) return howLongCard(telling, undefined, [pot]);
    const { topics } = telling.words;
    const { zone } = telling.shop.crew;
    const cans = cansAsked(of).toSorted((one, other) => (one.expires ?? '').localeCompare(other.expires ?? ''));
    const lines = cans.flatMap((can) => {
      const until = openUntil(can, zone);
      return [expiryLine(telling, can), ...(until === undefined ? [] : [topics.openUntil(until, telling.figures)])];
    });
    const [first = topics.noCans, ...others] = lines;
    const isShort = cans.some(({ expires }) => (daysTo(expires, zone, telling.now) ?? -1) < 0);
    return makeCard(first, isShort ? 'warn' : 'plain', { lines: [...new Set(others)] });
  },
  lot: (of) => {
    const { telling } = of;
    const { topics, material } = telling.words;
    const lines = cansAsked(of).map(({ component, lot, number }) =>
      topics.ofCan(material.component[component], lot, number),
    );
    const [first = topics.noCans, ...others] = lines;
    return makeCard(first, 'plain', { lines: others });
  },
  lid: (of) => {
    const { telling } = of;
    const { topics, page, material } = telling.words;
    const named = of.things.some((thing) => thing.is === 'can');
    const told = cansAsked(of).flatMap((can) => {
      const { lidOffSince } = canStatus(telling, can);
      const name = `${page.can(can.number)}, ${material.component[can.component]}`;
      if (lidOffSince === undefined) return named ? [topics.lidOn(name)] : [];
      return [topics.lidOff(name, lidOffSince, minutesBetween(lidOffSince, telling.now), telling.figures)];
    });
    const [first = topics.noLidOff, ...others] = told;
    return makeCard(first, 'plain', { lines: others });
  },
};

function expiryLine({ words: { topics, page }, shop, figures, now }: Telling, can: Can): string {
  const { number, lot, expires } = can;
  return expires === undefined
    ? topics.noExpiry(page.can(number), lot)
    : topics.expires(page.can(number), lot, expires, daysTo(expires, shop.crew.zone, now), figures);
}

/** Those that were named, by number or by part of the product; else all that are not empty. */
function cansAsked({ telling: { shop }, things, asked }: OfTopic): readonly Can[] {
  const named = things.flatMap((thing) => canMeant(shop.cans, thing));
  if (named.length > 0) return named;
  const of = asked.of.flatMap((thing): readonly Component[] =>
    thing.is === 'name' && thing.name === 'a'
      ? ['part-a']
      : thing.is === 'name' && thing.name === 'b'
        ? ['part-b']
        : [],
  );
  return liveCans(shop).filter(({ component }) => of.length === 0 || of.includes(component));
}

/** Of a batch, those that were poured into it. */
function canMeant(cans: ReadonlyMap<number, Can>, thing: ThingMeant): readonly Can[] {
  if (thing.is === 'can') return [cans.get(thing.number) ?? []].flat();
  if (thing.is !== 'batch') return [];
  return [...cans.values()].filter(({ pours }) => pours.some(({ batch }) => batch === thing.number));
}
