// Which batch, can, session, part, place or person a question names. A bare number may be any of them: `7` is also the only
// part whose name ends so. What fits nothing comes back with the names near it.

import { type ThingAsked, type Verb, verbRows } from '../commands.ts';
import {
  batchStream,
  canStream,
  type PartName,
  type PersonName,
  type PlaceName,
  partStream,
  type StreamId,
  sessionStream,
} from '../ids.ts';
import { nearNames } from '../part/near-names.ts';
import type { Part } from '../part/part.ts';
import { byName, liveParts, type Shop } from '../shop.ts';

export type ThingMeant =
  | { readonly is: 'batch' | 'can' | 'session'; readonly number: number }
  | { readonly is: 'part'; readonly part: Part }
  | { readonly is: 'place'; readonly place: PlaceName }
  | { readonly is: 'person'; readonly person: PersonName };

/** What fits nothing, or several parts: those it may be. */
export interface NotMeant {
  readonly said: ThingAsked;
  readonly parts: readonly PartName[];
}

export interface Meant {
  readonly things: readonly ThingMeant[];
  readonly not: readonly NotMeant[];
}

/** `a` or `b` is a part of the product where one is asked of. */
export const isComponent = (thing: ThingAsked): boolean => thing.is === 'name' && /^[ab]$/.test(thing.name);

/** All that it may be: those that ended need to be loaded. */
export const streamsAsked = (of: readonly ThingAsked[]): readonly StreamId[] =>
  of.flatMap((thing) =>
    thing.is === 'name'
      ? [partStream(thing.name)]
      : [batchStream(thing.number), canStream(thing.number), sessionStream(thing.number)],
  );

/** What is asked of parts rather than of pots; `both`: of parts from a pot, whose number stands last. */
export type AskedFirst = 'pots' | 'parts' | 'both';

export function thingsMeant(shop: Shop, of: readonly ThingAsked[], first: AskedFirst): Meant {
  const isPot = (i: number): boolean => first === 'pots' || (first === 'both' && i > 0 && i === of.length - 1);
  const each = of.map((said, i) => (said.is === 'name' ? named(shop, said) : numbered(shop, said, !isPot(i))));
  return {
    things: each.flatMap((meant) => ('things' in meant ? meant.things : [])),
    not: each.flatMap((meant) => ('things' in meant ? [] : [meant])),
  };
}

/** `is 7 dry`: films dry, pots do not. */
export function askedFirstOf(act: Verb | undefined): AskedFirst {
  if (act === undefined) return 'pots';
  const { parts, part, batch } = verbRows[act].fields;
  if (parts === undefined && part === undefined) return 'pots';
  return batch === undefined ? 'parts' : 'both';
}

type Fits = { readonly things: readonly ThingMeant[] } | NotMeant;

function numbered(shop: Shop, said: Extract<ThingAsked, { is: 'number' }>, partsFirst: boolean): Fits {
  const ends = said.noun === undefined ? partsEndingIn(shop, said.number) : [];
  const pots = potNumbered(shop, said);
  const [only, second] = ends;
  const part: readonly ThingMeant[] = only === undefined || second !== undefined ? [] : [{ is: 'part', part: only }];
  const [first, other] = partsFirst ? [part, pots] : [pots, part];
  if (first.length > 0 && !(partsFirst && second !== undefined)) return { things: first };
  if (second !== undefined && (partsFirst || pots.length === 0)) return { said, parts: ends.map(({ name }) => name) };
  if (other.length > 0) return { things: other };
  const serial = liveParts(shop).filter(({ details }) => details.serial === `${said.number}`);
  return serial.length > 0 ? { things: serial.map((part) => ({ is: 'part', part })) } : { said, parts: [] };
}

function potNumbered(shop: Shop, { number, noun }: Extract<ThingAsked, { is: 'number' }>): readonly ThingMeant[] {
  const kinds = { batch: shop.batches, can: shop.cans, session: shop.sessions } as const;
  const all = (['batch', 'can', 'session'] as const).flatMap((is) => (kinds[is].has(number) ? [{ is, number }] : []));
  // They share one series of numbers: a can that is called a pot is still that one.
  return all.some(({ is }) => is === noun) ? all.filter(({ is }) => is === noun) : all;
}

function partsEndingIn(shop: Shop, number: number): readonly Part[] {
  return byName(liveParts(shop)).filter(({ name }) => Number(/\d+$/.exec(name)?.[0]) === number);
}

const lettersAndDigits = (name: string): string => name.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');

function named(shop: Shop, said: Extract<ThingAsked, { is: 'name' }>): Fits {
  const { name } = said;
  const known = shop.parts.get(name);
  if (known !== undefined && known.entries.length > 0) return { things: [{ is: 'part', part: known }] };
  const cans = [...shop.cans.values()].filter(({ lot }) => `lot ${lot}`.toLowerCase() === name.toLowerCase());
  if (cans.length > 0) return { things: cans.map(({ number }) => ({ is: 'can', number })) };
  const person = shop.crew.people.find((each) => each.name.toLowerCase() === name.toLowerCase());
  if (person !== undefined) return { things: [{ is: 'person', person: person.name }] };
  const live = liveParts(shop).filter(({ entries }) => entries.length > 0);
  const same = live.filter((part) => lettersAndDigits(part.name) === lettersAndDigits(name));
  const [only, second] = same;
  if (only !== undefined && second === undefined) return { things: [{ is: 'part', part: only }] };
  if ((shop.places.get(name)?.entries ?? []).length > 0 || isPlaceOf(shop, name))
    return { things: [{ is: 'place', place: name }] };
  return {
    said,
    parts: nearNames(
      name,
      byName(live).map((part) => part.name),
    ),
  };
}

const usual: readonly PlaceName[] = ['oven', 'room', 'booth', 'shop'];

const isPlaceOf = (shop: Shop, name: string): boolean =>
  usual.includes(name) || [...shop.sessions.values()].some(({ place }) => place === name);
