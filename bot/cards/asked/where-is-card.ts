// Where a part is by the record, and what is in a place: nobody is tracked, it is what was last said.

import type { ThingMeant } from '../../../core/asked/things-meant.ts';
import { defaultPlace, type PersonName, type PlaceName } from '../../../core/ids.ts';
import { type Part, phaseOfPart } from '../../../core/part/part.ts';
import { batchOf, byName, liveBatches, liveParts, openSessions } from '../../../core/shop.ts';
import { minutesBetween } from '../../../core/units.ts';
import { makeBoard } from '../board.ts';
import { type Card, makeCard } from '../card.ts';
import type { Telling } from '../card-context.ts';
import { partPhaseTold } from '../part-phase.ts';
import { tapsThatAsk, thingTold } from './things-told.ts';
import { whoDidCard } from './who-did-card.ts';

const mostTold = 8;

export function whereIsCard(telling: Telling, things: readonly ThingMeant[]): Card {
  const { asked } = telling.words;
  const [thing] = things;
  if (thing === undefined) {
    const all = makeBoard(telling).items.map(({ name, phase }) => asked.titled(name, phase));
    const [first = asked.nothingWaits, ...others] = all;
    return makeCard(first, 'plain', { lines: others.slice(0, mostTold) });
  }
  switch (thing.is) {
    case 'part':
      return partPlace(telling, thing.part, things.slice(1));
    case 'place':
      return inPlace(telling, thing.place);
    case 'person':
      return personThere(telling, thing.person, things);
    case 'batch':
    case 'can':
    case 'session': {
      const told = thingTold(telling, thing);
      const place = thing.is === 'batch' ? telling.shop.batches.get(thing.number)?.place : undefined;
      const where = place === undefined ? [] : [telling.words.names.place(place)];
      return makeCard(asked.titled(told?.name ?? '', [told?.phase ?? '', ...where].join(', ')), 'plain', {
        facts: told?.facts ?? [],
        lines: told?.lines ?? [],
        actions: tapsThatAsk(told?.taps ?? []),
      });
    }
  }
}

/** Whether they are on shift, where they spray, and what they said last. */
function personThere(telling: Telling, person: PersonName, things: readonly ThingMeant[]): Card {
  const { asked, topics, names } = telling.words;
  const { shop, figures } = telling;
  const since = shop.crew.shifts.onShift.get(person);
  const there = openSessions(shop).filter((session) => [...session.sprayers, ...session.stays].includes(person));
  const watches = openSessions(shop).filter(({ attendant }) => attendant === person);
  const done = whoDidCard(telling, undefined, things);
  const [first = asked.titled(person, topics.notOnShift), ...others] = [
    ...there.map(({ place, sprayers, stays }) =>
      asked.sprayersAt(names.place(place), [...sprayers, ...stays], figures),
    ),
    ...watches.map(({ place }) => topics.watches(person, names.place(place))),
    ...(since === undefined ? [] : [asked.onShift(person, since, figures)]),
  ];
  return makeCard(first, 'plain', { lines: [...others, done.title, ...done.lines, asked.whereLastSaid] });
}

function partPlace(telling: Telling, part: Part, others: readonly ThingMeant[]): Card {
  const { asked } = telling.words;
  const told = thingTold(telling, { is: 'part', part });
  const batch = batchOf(telling.shop, part);
  return makeCard(asked.titled(part.name, whereOf(telling, part)), 'plain', {
    facts: told?.facts ?? [],
    lines: [
      ...(told?.lines ?? []),
      ...(batch === undefined ? [] : [asked.fromBatch(batch.number, batch.place)]),
      ...others.flatMap((thing) =>
        thing.is === 'part' ? [asked.titled(thing.part.name, whereOf(telling, thing.part))] : [],
      ),
      asked.whereLastSaid,
    ],
    actions: tapsThatAsk(told?.taps ?? []),
  });
}

/** In its cure it stands somewhere; else its phase is all that is known. */
function whereOf(telling: Telling, part: Part): string {
  const { words, figures } = telling;
  const phase = phaseOfPart(part);
  if (phase.is !== 'curing') return partPhaseTold(telling, part);
  const { way, run } = phase.cure;
  return words.asked.since(words.asked.cureWay[way], run.from, figures);
}

function inPlace(telling: Telling, place: PlaceName): Card {
  const { asked, names, page } = telling.words;
  const { shop, figures } = telling;
  const way = place === 'oven' ? 'oven' : place === defaultPlace ? 'room' : undefined;
  const curing = byName(liveParts(shop)).flatMap((part) => {
    const phase = phaseOfPart(part);
    return phase.is === 'curing' && phase.cure.way === way ? [{ name: part.name, part }] : [];
  });
  const pots = liveBatches(shop).filter((batch) => batch.place === place);
  const sessions = openSessions(shop).filter((session) => session.place === place);
  const lines = [
    ...curing.map(({ name, part }) => {
      const read = part.temperatures.at(-1);
      const last =
        read === undefined ? [] : [asked.readAs(read.celsius, read.at, minutesBetween(read.at, telling.now), figures)];
      return asked.titled(name, [whereOf(telling, part), ...last].join('; '));
    }),
    ...pots.map(({ number }) =>
      asked.titled(page.batch(number), thingTold(telling, { is: 'batch', number })?.phase ?? ''),
    ),
    ...sessions.map(({ number, sprayers }) =>
      asked.titled(telling.words.session.titled(number, ''), figures.list(sprayers)),
    ),
  ];
  const title =
    curing.length > 0
      ? asked.titled(names.place(place), figures.list(curing.map(({ name }) => name)))
      : asked.thereNow(names.place(place), lines.length, figures);
  return makeCard(title, 'plain', { lines: [...lines, asked.whereLastSaid] });
}
