// Values of settings that are words: names of people, sheets and zones, or one of a few that are known.

import { legalFrames } from '../../../core/calc/legal-frame.ts';
import { ringsTo, roles } from '../../../core/crew/crew-commands.ts';
import type { PersonName } from '../../../core/ids.ts';
import { isOwnKey } from '../../../core/own-key.ts';
import type { SettingValues } from '../../../core/setting-kinds.ts';
import { type CubicMetres, type SquareMetres, squareMetres } from '../../../core/units.ts';
import { placeNamed } from '../names-typed.ts';
import { personTyped } from '../people-typed.ts';
import type { Fault } from '../reading.ts';
import { nearest } from '../suggestions.ts';
import { roomFrom } from '../typed/rare-figures.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { zonesNamed } from '../zones-typed.ts';
import { leftOver, lineWith } from './act-line.ts';
import { outside } from './figure-of-slot.ts';
import { sheetFrom } from './read-names.ts';
import { asOnePiece, missing, otherKind, readOne, type ValueSaid } from './setting-said.ts';

export function readSheetName(said: ValueSaid): SettingValues['sheet'] | Fault {
  const words = said.values.filter((token) => token.kind === 'word' || token.kind === 'quoted');
  const stray = said.values.find((token) => token.kind !== 'word' && token.kind !== 'quoted');
  if (stray !== undefined) return leftOver(stray);
  const sheet = sheetFrom(said, words);
  if (sheet === undefined) return missing(said);
  return typeof sheet === 'string' ? { sheet } : sheet;
}

const longestName = 60;

export function readCrewName(said: ValueSaid): SettingValues['crew-name'] | Fault {
  const [first, second] = said.rest;
  const last = said.rest.at(-1);
  if (first === undefined || last === undefined) return missing(said);
  const typed = first.kind === 'quoted' && second === undefined ? first.words : said.line.slice(first.start, last.end);
  const crewName = typed.trim();
  if (crewName === '') return missing(said);
  return crewName.length > longestName ? leftOver(second ?? first) : { crewName };
}

/** By its name, or by its city alone where no other has one of that name. */
export function readZone(said: ValueSaid): SettingValues['zone'] | Fault {
  const token = asOnePiece(said);
  if (token === undefined) return missing(said);
  const { zone, likely } = zonesNamed(token.text);
  if (zone !== undefined) return { zone };
  const tries = likely.map((name) => lineWith(said.line, token, name));
  return { ...otherKind(said, token), couldBe: likely, tries };
}

export const readLanguage = readOne<SettingValues['language']>((value, said) => {
  const word = value.kind === 'word' ? withoutAccents(value.text.toLowerCase()) : '';
  const language = said.context.hearing.languages.get(word.replace('_', '-'));
  return language === undefined ? otherKind(said, value) : { language };
});

const systems = { metric: 'metric', si: 'metric', us: 'us' } as const;

export const readUnits = readOne<SettingValues['units']>((value, said) => {
  const word = wordIn(value);
  return isOwnKey(systems, word) ? { units: systems[word] } : otherKind(said, value);
});

export const readRings = readOne<SettingValues['rings']>((value, said) => {
  const rings = oneOf(ringsTo, value);
  return rings === undefined ? otherKind(said, value) : { rings };
});

export const readLaw = readOne<SettingValues['law']>((value, said) => {
  const law = oneOf(legalFrames, value);
  return law === undefined ? otherKind(said, value) : { law };
});

const positions = { on: true, yes: true, off: false, no: false } as const;

export const readSwitch = readOne<SettingValues['switch']>((value, said) => {
  const word = wordIn(value);
  return isOwnKey(positions, word) ? { on: positions[word] } : otherKind(said, value);
});

/** `tank-3 off`. */
export function readPlaceSwitch(said: ValueSaid): SettingValues['place-switch'] | Fault {
  const [named, position, third] = said.values;
  if (named === undefined) return missing(said);
  const place = named.kind === 'word' ? placeNamed(named.word, said.context.hearing) : undefined;
  if (place === undefined) return otherKind(said, named);
  if (position === undefined) return missing(said);
  if (third !== undefined) return leftOver(third);
  const word = wordIn(position);
  return isOwnKey(positions, word) ? { place, on: positions[word] } : otherKind(said, position);
}

export function readPeople(said: ValueSaid): SettingValues['people'] | Fault {
  const [first, second] = said.values;
  if (first === undefined) return missing(said);
  if (wordIn(first) === 'nobody' && second === undefined) return { people: [] };
  const people: PersonName[] = [];
  for (const token of said.values) {
    const person = personTyped(token, said.context.hearing);
    if (person === undefined) return leftOver(token);
    if (!people.includes(person)) people.push(person);
  }
  return { people };
}

/** Person and role by turns: somebody may be called lead. */
export function readRoles(said: ValueSaid): SettingValues['roles'] | Fault {
  const { values } = said;
  const given: SettingValues['roles']['given'][number][] = [];
  for (let i = 0; i < values.length || given.length === 0; i += 2) {
    const [person, role] = values.slice(i, i + 2);
    if (person === undefined || role === undefined) return missing(said);
    const known = oneOf(roles, role);
    if (known === undefined) return { failed: 'left-over', token: role, needs: ['role'] };
    const name = personTyped(person, said.context.hearing);
    if (name === undefined) return { failed: 'left-over', token: person, needs: ['person'] };
    given.push({ person: name, role: known });
  }
  return { given };
}

/** `booth-2 4m2 30m3`; `4m2` alone: the place is called what it is. */
export function readBooth(said: ValueSaid): SettingValues['booth'] | Fault {
  const { values } = said;
  let place: string | undefined;
  let face: SquareMetres | undefined;
  let room: CubicMetres | undefined;
  for (let i = 0; i < values.length; i++) {
    const token = values[i];
    if (token === undefined) continue;
    const volume = roomFrom(values, i);
    if (volume !== undefined && room === undefined) {
      const fault = outside('room-volume', token, volume.value);
      if (fault !== undefined) return fault;
      room = volume.value;
      i = volume.to - 1;
    } else if (token.kind === 'quantity' && token.quantity.is === 'area' && face === undefined) {
      const fault = outside('area', token, token.quantity.value);
      if (fault !== undefined) return fault;
      face = squareMetres(token.quantity.value);
    } else {
      const name = token.kind === 'word' ? placeNamed(token.word, said.context.hearing) : undefined;
      if (name === undefined || place !== undefined) return leftOver(token);
      place = name;
    }
  }
  if (face === undefined) return missing(said);
  return { place: place ?? 'booth', faceSquareMetres: face, ...(room !== undefined && { cubicMetres: room }) };
}

/** A slip of one letter is understood: there are few words that it could be. */
function oneOf<T extends string>(known: readonly T[], token: Token): T | undefined {
  if (token.kind !== 'word') return undefined;
  const [near] = nearest(token.word, known);
  return known.find((each) => each === token.word) ?? known.find((each) => each === near);
}
