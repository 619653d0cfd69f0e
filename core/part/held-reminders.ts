// Whoever sees to held parts hears of them once a day, at the crew's hour of the morning, until it is decided what becomes of
// each: all of theirs in one ring, so that a shelf of them is no more noise than one.

import { nextHour } from '../crew/local-day.ts';
import { crewStream, type PersonName } from '../ids.ts';
import { standing } from '../settled.ts';
import { byName, liveParts, type Shop } from '../shop.ts';
import { type EpochMs, epochMs } from '../units.ts';
import { type Reminder, remind } from '../wanted-reminder.ts';
import { ownersOf } from './held.ts';
import type { Part } from './part.ts';
import type { Held } from './verdict.ts';

export interface HeldPart {
  readonly part: Part;
  readonly held: Held;
}

export const heldParts = (shop: Shop): readonly HeldPart[] =>
  byName(liveParts(shop)).flatMap((part) => (part.verdict?.is === 'held' ? [{ part, held: part.verdict }] : []));

export const heldKey = (person: PersonName): string => `crew/held/${person}`;

/** Those that ring for this person. */
export const heldFor = (shop: Shop, person: PersonName): readonly HeldPart[] =>
  heldParts(shop).filter(({ held }) => held.ringsFrom !== undefined && ownersOf(shop.crew, held).includes(person));

export function heldReminders(shop: Shop): readonly Reminder[] {
  const { crew } = shop;
  const first = new Map<PersonName, EpochMs>();
  for (const { held } of heldParts(shop)) {
    if (held.ringsFrom === undefined) continue;
    for (const person of ownersOf(crew, held)) {
      first.set(person, epochMs(Math.min(held.ringsFrom, first.get(person) ?? held.ringsFrom)));
    }
  }
  const { hour } = standing(crew, 'morning');
  return [...first].map(([person, from]) => {
    const key = heldKey(person);
    const last = crew.rings.get(key)?.at(-1);
    const morning = nextHour(epochMs(Math.max(from, last?.rangAt ?? from)), crew.zone, hour).at;
    const putOff = last?.answered === undefined ? last?.snoozed?.until : undefined;
    return remind(crewStream, 'held', putOff ?? morning, [person], { key });
  });
}
