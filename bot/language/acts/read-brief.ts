// `brief 1 in booth spray kari omar near lia out noor outside rosa 1.2kg`, `brief 13:30`: who sprays, who stays near, who
// moved out, who stands outside, and how much will be sprayed in an hour. No fields are read off it: what a name does is
// said by the word before it, and its time is still to come.

import type { CommandOf } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { type EpochMs, type Grams, grams } from '../../../core/units.ts';
import type { Hearing } from '../hearing.ts';
import { placeNamed } from '../names-typed.ts';
import { personTyped } from '../people-typed.ts';
import type { Fault } from '../reading.ts';
import { mannerOf } from '../time-and-permission.ts';
import { instantTyped } from '../times/instant-typed.ts';
import { readDateAndTime, readTimeOfDay } from '../times/time-typed.ts';
import { dayOf, isoLocal } from '../times/wall-clock.ts';
import { batchMarks, fillers, insides, placings } from '../tongues/english/line-words.ts';
import { isPlaceRoot } from '../trade-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { type ActLine, type ActRead, leftOver } from './act-line.ts';
import { countFrom, outside } from './figure-of-slot.ts';

type Filling = {
  startsAt?: EpochMs;
  batch?: number;
  place?: string;
  attendant?: string;
  gramsPerHour?: Grams;
  insideVessel?: true;
  readonly people: { sprayers?: string[]; stays?: string[]; out?: string[] };
  /** What the next names do. */
  placing: 'sprayers' | 'stays' | 'out' | 'attendant';
};

export function readBrief(act: ActLine): ActRead | Fault {
  const ahead = startFrom(act);
  if (isFailed(ahead)) return ahead;
  const manner = mannerOf(ahead.rest, act.line, act.context, true);
  if (isFailed(manner)) return manner;
  const filled: Filling = { people: {}, placing: 'sprayers' };
  if (ahead.startsAt !== undefined) filled.startsAt = ahead.startsAt;
  const { tokens } = manner;
  for (let i = 0; i < tokens.length; i++) {
    const next = take(filled, tokens, i, act.context.hearing);
    if (typeof next !== 'number') return next;
    i = next - 1;
  }
  const { people, placing: _, ...rest } = filled;
  const command: CommandOf<'brief'> = { verb: 'brief', ...rest, ...people };
  return { command, ...manner.how };
}

interface Ahead {
  readonly startsAt?: EpochMs;
  readonly rest: readonly Token[];
}

/** A time of day still to come today, or a date and time without `at` before it: when the spraying starts. */
function startFrom({ tokens, context }: ActLine): Ahead | Fault {
  const { now, zone } = context;
  for (const [i, token] of tokens.entries()) {
    if (['permit', 'permitted'].includes(wordIn(token))) break;
    if (token.kind !== 'word' || !/^\d/.test(token.word)) continue;
    const before = tokens[i - 1];
    const afterAt = wordIn(before) === 'at';
    const exact = readDateAndTime(token.text);
    const time = readTimeOfDay(token.text);
    const at =
      exact !== undefined && exact !== 'no-such-time' && exact.offsetMinutes === undefined && !afterAt
        ? instantTyped(exact.day, exact.time, zone, token, isoLocal)
        : time !== undefined && time !== 'no-such-time'
          ? instantTyped(dayOf(now, zone), time, zone, token)
          : undefined;
    if (at === undefined || (exact === undefined && typeof at === 'number' && at <= now)) continue;
    if (typeof at !== 'number') return at;
    const from = afterAt ? i - 1 : i;
    return { startsAt: at, rest: [...tokens.slice(0, from), ...tokens.slice(i + 1)] };
  }
  return { rest: tokens };
}

/** The index after what was taken. */
function take(filled: Filling, tokens: readonly Token[], index: number, hearing: Hearing): number | Fault {
  const token = tokens[index];
  if (token === undefined) return index + 1;
  if (token.kind === 'number') return takeBatch(filled, token, index);
  if (token.kind === 'quantity') return takeRate(filled, tokens, index);
  if (token.kind !== 'word' && token.kind !== 'quoted') return leftOver(token);
  const word = wordIn(token);
  const placing = placings.get(word);
  if (placing !== undefined) {
    filled.placing = placing;
    return index + 1;
  }
  if (insides.has(word)) {
    filled.insideVessel = true;
    return index + 1;
  }
  if (batchMarks.has(word) && tokens[index + 1]?.kind === 'number') return index + 1;
  if (word === 'in' || word === 'at') {
    const next = tokens[index + 1];
    return next === undefined || placeIn(next, hearing) === undefined
      ? index + 1
      : takePlace(filled, next, index + 1, hearing);
  }
  if (isPlaceRoot(word)) return takePlace(filled, token, index, hearing);
  if (fillers.has(word) || word === 'a' || word === 'an') return index + 1;
  return takePerson(filled, token, hearing) ?? index + 1;
}

function takeBatch(filled: Filling, token: Extract<Token, { kind: 'number' }>, index: number): number | Fault {
  const batch = countFrom(token);
  if (typeof batch !== 'number') return batch;
  if (filled.batch !== undefined) return leftOver(token);
  filled.batch = batch;
  return index + 1;
}

/** `1.2kg an hour`. */
function takeRate(filled: Filling, tokens: readonly Token[], index: number): number | Fault {
  const token = tokens[index];
  if (token?.kind !== 'quantity' || token.quantity.is !== 'mass' || filled.gramsPerHour !== undefined) {
    return token === undefined ? index + 1 : leftOver(token);
  }
  const fault = outside('spray-rate', token, token.quantity.value);
  if (fault !== undefined) return fault;
  filled.gramsPerHour = grams(token.quantity.value);
  let next = index + 1;
  for (
    let word = tokens[next];
    word?.kind === 'word' && /^(?:an|per|for|by|hour|h|\/h)$/.test(word.word);
    word = tokens[next]
  ) {
    next += 1;
  }
  return next;
}

/** `in a tank` is no place. */
function placeIn(token: Token | undefined, hearing: Hearing): string | undefined {
  return token?.kind === 'word' && !insides.has(token.word) ? placeNamed(token.word, hearing) : undefined;
}

function takePlace(filled: Filling, token: Token, index: number, hearing: Hearing): number | Fault {
  const place = placeIn(token, hearing);
  if (place === undefined || filled.place !== undefined) return leftOver(token);
  filled.place = place;
  return index + 1;
}

function takePerson(filled: Filling, token: Token, hearing: Hearing): Fault | undefined {
  const person = personTyped(token, hearing);
  if (person === undefined) return { ...leftOver(token), needs: ['people'] };
  if (filled.placing === 'attendant') {
    if (filled.attendant !== undefined) return leftOver(token);
    filled.attendant = person;
    return undefined;
  }
  const list = filled.people[filled.placing] ?? [];
  filled.people[filled.placing] = list.includes(person) ? list : [...list, person];
  return undefined;
}
