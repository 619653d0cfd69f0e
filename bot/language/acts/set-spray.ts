// The settings for spraying and for need: `set brief on`, `set brief-ahead 10min`, `set sprayers kari omar`,
// `set booth booth-2 4m2 30m3`, `set lel 20%`, `set mixing 5`, `set emergency call 112`, `set quiet 22-6`, `set bell on`.

import { isOwnKey, ownValue } from '../../../core/own-key.ts';
import { alarms, type EmergencyField, type SpraySetting } from '../../../core/session/session-commands.ts';
import type { CubicMetres, SquareMetres } from '../../../core/units.ts';
import { placeNamed } from '../names-typed.ts';
import { personTyped } from '../people-typed.ts';
import { type Fault, isFault } from '../reading.ts';
import { isOutside, type Slot, slots } from '../slots.ts';
import { fillers } from '../trade-words.ts';
import { roomFrom } from '../typed/air-figures.ts';
import type { Token } from '../typed/tokens.ts';
import { type ActLine, type ActRead, leftOver } from './act-line.ts';
import { freeTextFrom } from './free-text.ts';
import { withManner } from './with-manner.ts';

type SettingRead = SpraySetting | Fault;
type Read = (tokens: readonly Token[]) => SettingRead;

const readers: Readonly<Record<string, Read>> = {
  brief: (tokens) => switched('brief', tokens),
  bell: (tokens) => switched('bell', tokens),
  'brief-ahead': setAhead,
  sprayers: setSprayers,
  booth: setBooth,
  lel: setLel,
  mixing: setMixing,
  quiet: setQuiet,
};

export function isSpraySetting(token: Token | undefined): boolean {
  return (
    token?.kind === 'word' && (isOwnKey(readers, token.word) || token.word === 'emergency' || token.word === 'call')
  );
}

export function readSpraySetting(act: ActLine): ActRead | Fault {
  const name = act.tokens[0]?.kind === 'word' ? act.tokens[0].word : '';
  if (name === 'emergency') return setEmergency(act, 1);
  // `fijar teléfono 112`: the shop's numbers, without the word before them.
  if (name === 'call') return setEmergency(act, 0);
  return withManner((_, tokens) => {
    const read = ownValue(readers, name)?.(tokens.slice(1).filter(isNoFiller));
    if (read === undefined) return { code: 'incomplete', needs: ['setting'] };
    return isFault(read) ? read : { verb: 'set', setting: read };
  }, false)(act);
}

const isNoFiller = (token: Token): boolean => token.kind !== 'word' || token.word === 'on' || !fillers.has(token.word);

function switched(name: 'brief' | 'bell', [value, second]: readonly Token[]): SettingRead {
  if (value === undefined) return { code: 'incomplete', needs: ['on-or-off'] };
  if (second !== undefined) return leftOver(second);
  const word = value.kind === 'word' ? value.word : '';
  const on = word === 'on' || word === 'yes' ? true : word === 'off' || word === 'no' ? false : undefined;
  return on === undefined ? { code: 'left-over', token: value, needs: ['on-or-off'] } : { name, on };
}

function setAhead([value, second]: readonly Token[]): SettingRead {
  if (value === undefined) return { code: 'incomplete', needs: ['brief-ahead'] };
  if (second !== undefined) return leftOver(second);
  if (value.kind !== 'quantity' || value.quantity.is !== 'duration') return leftOver(value);
  const { minutes } = value.quantity;
  return outside(value, 'brief-ahead', minutes) ?? { name: 'brief-ahead', minutes };
}

function setSprayers(tokens: readonly Token[]): SettingRead {
  const [first] = tokens;
  if (first === undefined) return { code: 'incomplete', needs: ['people'] };
  if (first.kind === 'word' && first.word === 'nobody' && tokens.length === 1) return { name: 'sprayers', people: [] };
  const people: string[] = [];
  for (const token of tokens) {
    const person = personTyped(token);
    if (person === undefined) return leftOver(token);
    if (!people.includes(person)) people.push(person);
  }
  return { name: 'sprayers', people };
}

function setBooth(tokens: readonly Token[]): SettingRead {
  let place: string | undefined;
  let face: SquareMetres | undefined;
  let room: CubicMetres | undefined;
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i];
    if (token === undefined) continue;
    const volume = roomFrom(tokens, i);
    if (volume !== undefined && room === undefined) {
      const fault = outside(token, 'room-volume', volume.value);
      if (fault !== undefined) return fault;
      room = volume.value;
      i = volume.to - 1;
    } else if (token.kind === 'quantity' && token.quantity.is === 'area' && face === undefined) {
      const fault = outside(token, 'area', token.quantity.squareMetres);
      if (fault !== undefined) return fault;
      face = token.quantity.squareMetres;
    } else {
      const name = token.kind === 'word' ? placeNamed(token.word) : undefined;
      if (name === undefined || place !== undefined) return leftOver(token);
      place = name;
    }
  }
  if (face === undefined) return { code: 'incomplete', needs: ['area'] };
  // `set booth 4m2`: the place is called what it is.
  return {
    name: 'booth',
    place: place ?? 'booth',
    faceSquareMetres: face,
    ...(room !== undefined && { cubicMetres: room }),
  };
}

function setLel([value, second]: readonly Token[]): SettingRead {
  if (value === undefined) return { code: 'incomplete', needs: ['lel-share'] };
  if (second !== undefined) return leftOver(second);
  if (value.kind !== 'quantity' || value.quantity.is !== 'percent') return leftOver(value);
  const { percent } = value.quantity;
  return outside(value, 'lel-share', percent) ?? { name: 'lel', percent };
}

function setMixing([value, second]: readonly Token[]): SettingRead {
  if (value === undefined) return { code: 'incomplete', needs: ['mixing-factor'] };
  if (second !== undefined) return leftOver(second);
  if (value.kind !== 'number' || value.number.other !== undefined) return leftOver(value);
  const factor = value.number.value;
  return outside(value, 'mixing-factor', factor) ?? { name: 'mixing', factor };
}

const quietHours = /^(\d{1,2})(?::00)?-(\d{1,2})(?::00)?$/;

/** `22-6`, `22 a 6`, `22 to 6`. */
function setQuiet([value, ...more]: readonly Token[]): SettingRead {
  const [second, third] = more.filter((token) => token.kind !== 'word' || token.word !== 'a');
  if (value?.kind === 'number' && second?.kind === 'number' && third === undefined) {
    return hoursOfQuiet(`${value.text}-${second.text}`, value);
  }
  if (value === undefined) return { code: 'incomplete', needs: ['quiet-hours'] };
  if (second !== undefined) return leftOver(second);
  if (value.kind === 'word' && (value.word === 'off' || value.word === 'no'))
    return { name: 'quiet', fromHour: 0, toHour: 0 };
  return hoursOfQuiet(value.text, value);
}

function hoursOfQuiet(text: string, value: Token): SettingRead {
  const found = quietHours.exec(text);
  if (found === null) return leftOver(value);
  const [fromHour, toHour] = [Number(found[1]), Number(found[2])];
  if (fromHour > 23 || toHour > 23) return { code: 'impossible', token: value, needs: ['quiet-hours'] };
  return { name: 'quiet', fromHour, toHour };
}

const fields: ReadonlyMap<string, EmergencyField> = new Map([
  ...['call', 'numbers', 'number', 'phone'].map((word) => [word, 'call'] as const),
  ...alarms.map((alarm) => [alarm, alarm] as const),
]);

function setEmergency(act: ActLine, at: number): ActRead | Fault {
  const token = act.tokens[at];
  const field = token?.kind === 'word' ? fields.get(token.word) : undefined;
  if (token === undefined) return { code: 'incomplete', needs: ['emergency-field'] };
  if (field === undefined) return { code: 'left-over', token, needs: ['emergency-field'] };
  const second = act.tokens[at + 1];
  const from = field === 'hot' && second?.kind === 'word' && second.word === 'pot' ? at + 2 : at + 1;
  const own = freeTextFrom(act, from);
  if (isFault(own)) return own;
  if (own.words === '') return { code: 'incomplete', needs: ['told'] };
  return {
    command: { verb: 'set', setting: { name: 'emergency', field, text: own.words } },
    ...(own.at !== undefined && { at: own.at }),
    ...(own.stance !== undefined && { stance: own.stance }),
  };
}

function outside(token: Token, slot: Slot, value: number): Fault | undefined {
  const { limits } = slots[slot];
  return limits !== undefined && isOutside(limits, value)
    ? { code: 'impossible', token, needs: [slot], limits }
    : undefined;
}
