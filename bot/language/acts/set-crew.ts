// The settings of the crew and of whoever speaks: `set crew Bay two`, `set zone Europe/Madrid`, `set role kari lead`,
// `set language es`, `set units us`, `set rings direct`; `crew-language` and `crew-units` are those of what many read.

import type { CommandOf } from '../../../core/commands.ts';
import { type RoleGiven, ringsTo, roles, type Setting } from '../../../core/crew/crew-commands.ts';
import { personTyped } from '../people-typed.ts';
import { type Fault, isFault } from '../reading.ts';
import { nearest } from '../suggestions.ts';
import { languageTyped } from '../tongues/profiles.ts';
import type { Token } from '../typed/tokens.ts';
import { zonesNamed } from '../zones-typed.ts';
import { type ActLine, leftOver, lineWith } from './act-line.ts';
import { freeTextFrom } from './free-text.ts';

type SetRead = CommandOf<'set'> | Fault;

const longestName = 60;

export function setCrewName(act: ActLine): SetRead {
  const own = freeTextFrom(act, 1);
  if (isFault(own)) return own;
  const crewName = own.words.trim();
  if (crewName === '') return { code: 'incomplete', needs: ['crew-name'] };
  const [, second] = act.tokens;
  if (crewName.length > longestName && second !== undefined) return { code: 'left-over', token: second };
  return settled({ name: 'crew', crewName });
}

/** A zone by its name, or by its city alone where no other has one of that name. */
export function setZone(act: ActLine, [first, ...more]: readonly Token[]): SetRead {
  if (first === undefined) return { code: 'incomplete', needs: ['zone'] };
  const last = more.at(-1) ?? first;
  const token = { text: act.line.slice(first.start, last.end), start: first.start, end: last.end };
  const { zone, likely } = zonesNamed(token.text);
  if (zone !== undefined) return settled({ name: 'zone', zone });
  return {
    code: 'left-over',
    token,
    needs: ['zone'],
    couldBe: likely,
    tries: likely.map((name) => lineWith(act.line, token, name)),
  };
}

/** Person and role by turns: somebody may be called lead. */
export function setRole(typed: readonly Token[]): SetRead {
  const given: RoleGiven[] = [];
  for (let i = 0; i < typed.length || given.length === 0; i += 2) {
    const [person, role] = typed.slice(i, i + 2);
    if (person === undefined || role === undefined) return { code: 'incomplete', needs: ['person', 'role'] };
    const known = oneOf(roles, role);
    if (known === undefined) return { code: 'left-over', token: role, needs: ['role'] };
    const name = personTyped(person);
    if (name === undefined) return { code: 'left-over', token: person, needs: ['person'] };
    given.push({ person: name, role: known });
  }
  return settled({ name: 'role', given });
}

/** As people name it, in either language. */
const languageNames: ReadonlyMap<string, string> = new Map([
  ['english', 'en'],
  ['ingles', 'en'],
  ['spanish', 'es'],
  ['espanol', 'es'],
  ['castellano', 'es'],
]);

export function setLanguage(name: 'language' | 'crew-language', [value, stray]: readonly Token[]): SetRead {
  if (value === undefined) return { code: 'incomplete', needs: ['language'] };
  if (stray !== undefined) return leftOver(stray);
  const word = value.kind === 'word' ? plain(value.text) : '';
  const language = languageTyped(word) ?? languageNames.get(word);
  return language === undefined
    ? { code: 'left-over', token: value, needs: ['language'] }
    : settled({ name, language });
}

export function setRings([value, stray]: readonly Token[]): SetRead {
  if (value === undefined) return { code: 'incomplete', needs: ['rings'] };
  if (stray !== undefined) return leftOver(stray);
  const rings = oneOf(ringsTo, value);
  return rings === undefined
    ? { code: 'left-over', token: value, needs: ['rings'] }
    : settled({ name: 'rings', rings });
}

const systems: ReadonlyMap<string, 'metric' | 'us'> = new Map([
  ['metric', 'metric'],
  ['si', 'metric'],
  ['us', 'us'],
  ['usa', 'us'],
]);

export function setUnits(name: 'units' | 'crew-units', [value, stray]: readonly Token[]): SetRead {
  if (value === undefined) return { code: 'incomplete', needs: ['unit-system'] };
  if (stray !== undefined) return leftOver(stray);
  const units = value.kind === 'word' ? systems.get(value.word) : undefined;
  return units === undefined ? { code: 'left-over', token: value, needs: ['unit-system'] } : settled({ name, units });
}

const settled = (setting: Setting): SetRead => ({ verb: 'set', setting });

/** A slip of one letter is understood: there are few words that it could be. */
function oneOf<T extends string>(known: readonly T[], token: Token): T | undefined {
  if (token.kind !== 'word') return undefined;
  const [near] = nearest(token.word, known);
  return known.find((each) => each === token.word) ?? known.find((each) => each === near);
}

const plain = (word: string): string => word.toLowerCase().normalize('NFD').replaceAll(/\p{M}/gu, '');
