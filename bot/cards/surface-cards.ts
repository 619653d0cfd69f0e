// A part before its coat: what came in, how it was prepared, how warm it is and how far from the dew point.

import { dewPoint } from '../../core/calc/air.ts';
import { coatClimate } from '../../core/coat/coat-climate.ts';
import { isFailed } from '../../core/failed.ts';
import { defaultPlace, type PartName, type PlaceName } from '../../core/ids.ts';
import { type Part, phaseOfPart } from '../../core/part/part.ts';
import type { PartStatus } from '../../core/part/part-status.ts';
import { sheetsAtHand } from '../../core/part/surface-life.ts';
import { airBreaches } from '../../core/products/sheet-air.ts';
import { editionOfToday } from '../../core/rule-editions.ts';
import { batchOf, byName, liveParts } from '../../core/shop.ts';
import { type PartNow, statusOf } from '../../core/status.ts';
import { celsiusSpread } from '../../core/units.ts';
import type { PartDetails } from '../../core/verbs/said.ts';
import type { DetailAsked } from '../language/tongues/english/parts.ts';
import { type Card, type CardAction, type CardFact, makeCard } from './card.ts';
import {
  filmFact,
  partAreaFact,
  percentFact,
  spreadFact,
  type Telling,
  tap,
  temperatureFact,
  wallFact,
} from './card-context.ts';
import { clockFacts } from './clock-text.ts';
import { nextTaps } from './next-taps.ts';

export const surfaceTap = (t: Telling, part: string): CardAction =>
  tap(t, 'surface', `surface ${part} {surface-temperature}C`);

/** One part, or a whole pasted list: what is known of each, and what is missing. */
export function notedCard(t: Telling, parts: readonly Part[]): Card {
  const { replies, parts: words } = t.words;
  const [first] = parts;
  if (first === undefined) return makeCard(replies.settled, 'plain');
  const only = parts.length === 1;
  return makeCard(only ? replies.partNoted(first.name) : words.several(parts.length), 'plain', {
    facts: only ? detailFacts(t, first.details) : [],
    lines: [...parts.map((part) => words.detail(part.name, knownOf(t, part.details))), ...missingLines(t, parts)],
    actions: only ? nextTaps(t, statusOf.part(t, first).next()) : [],
  });
}

function detailFacts(t: Telling, details: PartDetails): readonly CardFact[] {
  const { wallMillimetres, areaSquareMetres, highestCelsius } = details;
  return [
    ...(wallMillimetres === undefined ? [] : [wallFact(t, wallMillimetres)]),
    ...(areaSquareMetres === undefined ? [] : [partAreaFact(t, areaSquareMetres)]),
    ...(highestCelsius === undefined ? [] : [temperatureFact(t, 'part-bears', highestCelsius)]),
  ];
}

function knownOf(t: Telling, details: PartDetails): readonly string[] {
  const { serial, job, customer, metal, wallMillimetres, areaSquareMetres, highestCelsius } = details;
  const label = t.words.records.details;
  return [
    serial === undefined ? '' : `${label.serial} ${serial}`,
    job === undefined ? '' : `${label.job} ${job}`,
    customer ?? '',
    metal === undefined ? '' : t.words.names.metal(metal),
    wallMillimetres === undefined ? '' : t.f.wall(wallMillimetres),
    areaSquareMetres === undefined ? '' : t.f.area(areaSquareMetres),
    highestCelsius === undefined ? '' : t.words.parts.bears(highestCelsius, t.f),
  ].filter((text) => text !== '');
}

/** What the plan, the heat-up and the oven would need, with the parts that lack it. */
function missingLines(t: Telling, parts: readonly Part[]): readonly string[] {
  const { unknownDetails } = t.words.parts;
  const lacking = (has: (details: PartDetails) => unknown) =>
    parts.filter(({ details }) => has(details) === undefined).map(({ name }) => name);
  const byParts = new Map<string, { readonly names: readonly PartName[]; readonly what: DetailAsked[] }>();
  const wants: readonly (readonly [DetailAsked, (details: PartDetails) => unknown])[] = [
    ['metal', ({ metal }) => metal],
    ['wall', ({ wallMillimetres }) => wallMillimetres],
    ['area', ({ areaSquareMetres }) => areaSquareMetres],
    ['bears', ({ highestCelsius }) => highestCelsius],
  ];
  for (const [what, has] of wants) {
    const names = lacking(has);
    const known = byParts.get(names.join()) ?? { names, what: [] };
    if (names.length > 0) byParts.set(names.join(), { names, what: [...known.what, what] });
  }
  return [...byParts.values()].map(({ names, what }) => unknownDetails(names, what, t.f));
}

export function surfaceFacts(t: Telling, { part, phase, clocks }: PartStatus): readonly CardFact[] {
  if (phase.is !== 'bare') return [];
  const profile = part.prepared?.profileMicrometres;
  return [...(profile === undefined ? [] : [filmFact(t, 'profile', profile)]), ...clockFacts(t, clocks, ['surface'])];
}

export function preparedCard(t: Telling, status: PartNow): Card {
  const { part, surface } = status;
  const { prepared } = part;
  const { parts, replies } = t.words;
  if (prepared === undefined) return makeCard(replies.partNoted(part.name), 'plain');
  return makeCard(parts.prepared(part.name, prepared.grade), 'plain', {
    facts: surfaceFacts(t, status),
    lines: [
      surface === undefined
        ? parts.noSurfaceLife(
            sheetsAtHand(t.shop).map(({ name }) => name),
            t.f,
          )
        : parts.surfaceLifeOf(surface.sheet.name),
    ],
    actions: nextTaps(t, status.next()),
  });
}

/** The part's own surface against the air of the place, and against the sheets at hand. */
export function partSurfaceCard(t: Telling, { part, phase, next }: PartNow): Card {
  const { parts } = t.words;
  const place = batchOf(t.shop, part)?.place ?? defaultPlace;
  const read = coatClimate(t.shop, place, part, t.now);
  const { celsius, relativeHumidityPercent: humidity, surfaceCelsius } = read;
  const dew = celsius === undefined || humidity === undefined ? undefined : dewPoint(celsius, humidity);
  const known = dew === undefined || isFailed(dew) ? undefined : dew;
  const breaches = sheetsAtHand(t.shop).flatMap((sheet) => {
    const broken = airBreaches(sheet, read, editionOfToday);
    return broken.length === 0
      ? []
      : [`${sheet.name}: ${t.words.objection({ code: 'air-outside', breaches: broken }, t.f)}`];
  });
  return makeCard(parts.surfaceRead(part.name), breaches.length > 0 ? 'warn' : 'plain', {
    facts: [
      ...(surfaceCelsius === undefined ? [] : [temperatureFact(t, 'surface-temperature', surfaceCelsius)]),
      ...(known === undefined ? [] : [temperatureFact(t, 'dew-point', known)]),
      ...(known === undefined || surfaceCelsius === undefined
        ? []
        : [spreadFact(t, celsiusSpread(surfaceCelsius - known))]),
      ...(humidity === undefined ? [] : [percentFact(t, 'humidity', humidity)]),
    ],
    lines: [...breaches, ...(known === undefined ? [parts.spreadNeeds] : [])],
    actions: phase.is === 'bare' ? nextTaps(t, next()).filter(({ id }) => id === 'prep') : [],
  });
}

/** Said before a coat: whose steel nobody has read. A short line, never an objection. */
export function surfacesBeforeCoat(t: Telling, place: PlaceName): readonly string[] {
  const waiting = byName(liveParts(t.shop).filter((part) => phaseOfPart(part).is === 'bare'));
  const unread = waiting.filter((part) => coatClimate(t.shop, place, part, t.now).surfaceOf !== 'part');
  if (waiting.length > 0 && unread.length === 0) return [];
  return waiting.length === 0
    ? [t.words.parts.readSurfaces(t.f)]
    : [
        t.words.parts.surfaceNotRead(
          unread.map(({ name }) => name),
          t.f,
        ),
      ];
}

/** Said on a coat: what its distance from the dew point rests on. */
export function surfaceOfCoat(t: Telling, part: Part): readonly string[] {
  const coat = part.coats.at(-1);
  const place = batchOf(t.shop, part)?.place ?? defaultPlace;
  if (coat === undefined) return [];
  switch (coatClimate(t.shop, place, part, coat.at).surfaceOf) {
    case 'part':
      return [];
    case 'place':
      return [t.words.parts.surfaceOfPlace(part.name)];
    case undefined:
      return [t.words.parts.surfaceNotRead([part.name], t.f)];
  }
}
