// The crew's settings: `set sheet demo-build`, `set air-limit 3h`, `set digest 17`, `set units us`.

import type { CommandOf } from '../../../core/commands.ts';
import type { Fault } from '../reading.ts';
import { isOutside, slots } from '../slots.ts';
import { readTimeOfDay } from '../times/time-typed.ts';
import type { Token } from '../typed/tokens.ts';
import { type ActLine, leftOver, lineWith } from './act-line.ts';
import { sheetFrom, wordOf } from './read-names.ts';
import { withUnitText } from './unit-missing.ts';

type SetRead = CommandOf<'set'> | Fault;

const systems: ReadonlyMap<string, 'metric' | 'us'> = new Map([
  ['metric', 'metric'],
  ['si', 'metric'],
  ['us', 'us'],
  ['usa', 'us'],
]);

export function readSet(act: ActLine): SetRead {
  const [first, ...typed] = act.tokens;
  if (first === undefined) return { code: 'incomplete', needs: ['setting'] };
  const values = typed.filter((token) => token.kind !== 'word' || (token.word !== 'to' && token.word !== 'at'));
  const [value, second] = values;
  const name = first.kind === 'word' ? first.word : '';
  const isAirLimit = name === 'air' && value?.kind === 'word' && value.word === 'limit';
  switch (name) {
    case 'sheet':
      return setSheet(act, values);
    case 'air-limit':
      return second === undefined ? setAirLimit(act, value) : leftOver(second);
    case 'air':
      return isAirLimit ? setAirLimit(act, second) : leftOver(value ?? first);
    case 'digest':
      return second === undefined ? setDigest(value) : setDigestHalf(value, second);
    case 'units':
      return second === undefined ? setUnits(value) : leftOver(second);
    default:
      return { code: 'left-over', token: first, needs: ['setting'] };
  }
}

function setSheet(act: ActLine, values: readonly Token[]): SetRead {
  const words = values.filter((token) => token.kind === 'word' || token.kind === 'quoted');
  const stray = values.find((token) => token.kind !== 'word' && token.kind !== 'quoted');
  if (stray !== undefined) return leftOver(stray);
  const sheet = sheetFrom(act, words);
  if (sheet === undefined) return { code: 'incomplete', needs: ['sheet'] };
  return typeof sheet === 'string' ? { verb: 'set', setting: { name: 'sheet', sheet } } : sheet;
}

function setAirLimit(act: ActLine, value: Token | undefined): SetRead {
  if (value === undefined) return { code: 'incomplete', needs: ['air-limit'] };
  if (value.kind === 'number') {
    const tries = ['h', 'min'].map((unit) => lineWith(act.line, value, withUnitText(value, unit)));
    return { code: 'unit-missing', token: value, needs: ['air-limit'], tries };
  }
  if (value.kind !== 'quantity' || value.quantity.is !== 'duration') return leftOver(value);
  const { limits } = slots['air-limit'];
  const { minutes } = value.quantity;
  if (limits !== undefined && isOutside(limits, minutes)) {
    return { code: 'impossible', token: value, needs: ['air-limit'], limits };
  }
  return { verb: 'set', setting: { name: 'air-limit', minutes } };
}

function setDigestHalf(value: Token | undefined, half: Token): SetRead {
  const word = half.kind === 'word' ? wordOf(half) : '';
  if (value === undefined || (word !== 'am' && word !== 'pm')) return leftOver(half);
  return setDigest(value, word);
}

/** On the hour: `17`, `17:00`, `5pm`. */
function setDigest(value: Token | undefined, half = ''): SetRead {
  if (value === undefined) return { code: 'incomplete', needs: ['digest-hour'] };
  const time = readTimeOfDay(`${value.text}${half}`);
  if (time === undefined) return leftOver(value);
  if (time === 'no-such-time' || time.minute !== 0 || time.second !== 0) {
    const { limits } = slots['digest-hour'];
    return { code: 'impossible', token: value, needs: ['digest-hour'], ...(limits !== undefined && { limits }) };
  }
  return { verb: 'set', setting: { name: 'digest', hour: time.hour } };
}

function setUnits(value: Token | undefined): SetRead {
  if (value === undefined) return { code: 'incomplete', needs: ['unit-system'] };
  const units = value.kind === 'word' ? systems.get(value.word) : undefined;
  return units === undefined
    ? { code: 'left-over', token: value, needs: ['unit-system'] }
    : { verb: 'set', setting: { name: 'units', units } };
}
