// How hot a part, the oven or the room was read, and how old the reading is; what would tell it where nobody has read it.

import type { ThingMeant } from '../../../core/asked/things-meant.ts';
import { defaultPlace, type PlaceName } from '../../../core/ids.ts';
import { type Part, phaseOfPart } from '../../../core/part/part.ts';
import { airAt } from '../../../core/place/place.ts';
import { standing } from '../../../core/settled.ts';
import { byName, liveParts } from '../../../core/shop.ts';
import { minutesBetween } from '../../../core/units.ts';
import { airFacts } from '../air-facts.ts';
import { type Card, type CardAction, makeCard } from '../card.ts';
import { type Telling, tap } from '../card-context.ts';

export function howHotCard(telling: Telling, [thing]: readonly ThingMeant[]): Card {
  if (thing?.is === 'part') return partCard(telling, thing.part);
  if (thing?.is === 'place' && thing.place === 'oven') return ovenCard(telling);
  if (thing?.is === 'batch') {
    const card = placeCard(telling, telling.shop.batches.get(thing.number)?.place ?? defaultPlace);
    return { ...card, lines: [telling.words.asked.potNotRead, ...card.lines] };
  }
  return placeCard(telling, thing?.is === 'place' ? thing.place : defaultPlace);
}

function partCard(telling: Telling, part: Part): Card {
  return makeCard(partRead(telling, part), 'plain', {
    lines: setLines(telling, [part]),
    actions: [{ ...tap(telling, 'temp', `temp ${part.name} {part-temperature}C`) }],
  });
}

function partRead({ words: { asked }, figures, now }: Telling, { name, temperatures, surfaces }: Part): string {
  const read = temperatures.at(-1) ?? surfaces.at(-1);
  const told =
    read === undefined ? asked.notReadYet : asked.readAs(read.celsius, read.at, minutesBetween(read.at, now), figures);
  return asked.titled(name, told);
}

function setLines({ words: { asked }, figures }: Telling, parts: readonly Part[]): readonly string[] {
  const set = parts.flatMap(({ cure }) =>
    cure?.setCelsius === undefined || cure.run.to !== undefined ? [] : [cure.setCelsius],
  );
  return [...new Set(set)].map((celsius) => asked.setTo(celsius, figures));
}

/** Nobody reads the oven itself here: what is in it was read. */
function ovenCard(telling: Telling): Card {
  const { asked, names } = telling.words;
  const inside = byName(liveParts(telling.shop)).filter((part) => {
    const phase = phaseOfPart(part);
    return phase.is === 'curing' && phase.cure.way === 'oven';
  });
  const [first, ...others] = inside.map((part) => partRead(telling, part));
  if (first === undefined) return makeCard(asked.thereNow(names.place('oven'), 0, telling.figures), 'plain');
  const actions: readonly CardAction[] = inside.slice(0, 3).map(({ name }) => ({
    ...tap(telling, 'temp', `temp ${name} {part-temperature}C`),
    id: `temp-${name}`,
    label: `${telling.words.buttons.temp} ${name}`,
  }));
  return makeCard(first, 'plain', { lines: [...others, ...setLines(telling, inside)], actions });
}

function placeCard(telling: Telling, place: PlaceName): Card {
  const { asked, names } = telling.words;
  const { figures, now } = telling;
  const read = airAt(telling.shop.places.get(place), now).temperature;
  const actions = [
    tap(telling, 'air', `air {air-temperature}C {humidity}%${place === defaultPlace ? '' : ` in ${place}`}`),
  ];
  if (read?.celsius === undefined)
    return makeCard(asked.titled(names.place(place), asked.notReadYet), 'warn', { actions });
  const age = minutesBetween(read.at, now);
  const isOld = age > standing(telling.shop.crew, 'air-limit').minutes;
  return makeCard(
    asked.titled(names.place(place), asked.readAs(read.celsius, read.at, age, figures)),
    isOld ? 'warn' : 'plain',
    {
      facts: airFacts(telling, place),
      lines: [...(isOld ? [asked.tooOld] : []), telling.words.asked.readBy(read.by)],
      actions,
    },
  );
}
