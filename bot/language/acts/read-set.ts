// The crew's settings: `set sheet demo-build`, `set air-limit 3h`, `set digest 17`, `set morning 7`,
// `set rate 4m2/h`. Those of the crew itself and of whoever speaks are read in set-crew.ts.

import type { CommandOf } from '../../../core/commands.ts';
import { squareMetresFromSquareFeet, squareMetresPerHour } from '../../../core/units.ts';
import type { Fault } from '../reading.ts';
import { isOutside, slots } from '../slots.ts';
import { readTimeOfDay } from '../times/time-typed.ts';
import { withoutAccents } from '../tongues/spanish/lexicon.ts';
import type { Token } from '../typed/tokens.ts';
import { type ActLine, leftOver, lineWith } from './act-line.ts';
import { sheetFrom, wordOf } from './read-names.ts';
import { setCrewName, setLanguage, setRings, setRole, setUnits, setZone } from './set-crew.ts';
import { setVocLimit } from './set-voc-limit.ts';
import { withUnitText } from './unit-missing.ts';

type SetRead = CommandOf<'set'> | Fault;

export function readSet(act: ActLine): SetRead {
  const [first] = act.tokens;
  if (first === undefined) return { code: 'incomplete', needs: ['setting'] };
  const { name, rest } = settingNamed(act.tokens);
  const values = rest.filter((token) => token.kind !== 'word' || (token.word !== 'to' && token.word !== 'at'));
  const [value, second] = values;
  switch (name) {
    case 'sheet':
      return setSheet(act, values);
    case 'air-limit':
      return second === undefined ? setAirLimit(act, value) : leftOver(second);
    case 'air':
      return leftOver(value ?? first);
    case 'digest':
      return second === undefined ? setHour('digest', value) : setHourHalf('digest', value, second);
    case 'morning':
      return second === undefined ? setHour('morning', value) : setHourHalf('morning', value, second);
    case 'rate':
      return setRate(act, values);
    case 'voc-limit':
      return setVocLimit(act, values);
    case 'units':
    case 'crew-units':
      return setUnits(name, values);
    case 'crew':
      return setCrewName(act);
    case 'zone':
      return setZone(act, values);
    case 'role':
      return setRole(values);
    case 'language':
    case 'crew-language':
      return setLanguage(name, values);
    case 'rings':
      return setRings(values);
    default:
      return { code: 'left-over', token: first, needs: ['setting'] };
  }
}

/** Names that thumbs type as two words. */
const namesApart: ReadonlyMap<string, string> = new Map([
  ['air limit', 'air-limit'],
  ['limite air', 'air-limit'],
  ['limite aire', 'air-limit'],
  ['voc limit', 'voc-limit'],
  ['limite cov', 'voc-limit'],
  ['crew language', 'crew-language'],
  ['language crew', 'crew-language'],
  ['crew units', 'crew-units'],
  ['units crew', 'crew-units'],
]);

interface SettingNamed {
  readonly name: string;
  readonly rest: readonly Token[];
}

/** `límite del aire 3h`: the first words, else the first one. */
function settingNamed(tokens: readonly Token[]): SettingNamed {
  const wordAt = (index: number): string => {
    const token = tokens[index];
    return token?.kind === 'word' ? withoutAccents(token.word) : '';
  };
  const next = wordAt(1) === 'of' ? (wordAt(2) === 'the' ? 3 : 2) : 1;
  const joined = namesApart.get(`${wordAt(0)} ${wordAt(next)}`);
  return joined === undefined
    ? { name: wordAt(0), rest: tokens.slice(1) }
    : { name: joined, rest: tokens.slice(next + 1) };
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

type HourSetting = 'digest' | 'morning';

function setHourHalf(name: HourSetting, value: Token | undefined, half: Token): SetRead {
  const word = half.kind === 'word' ? wordOf(half) : '';
  if (value === undefined || (word !== 'am' && word !== 'pm')) return leftOver(half);
  return setHour(name, value, word);
}

/** On the hour: `17`, `17:00`, `5pm`. */
function setHour(name: HourSetting, value: Token | undefined, half = ''): SetRead {
  const slot = name === 'digest' ? 'digest-hour' : 'morning-hour';
  if (value === undefined) return { code: 'incomplete', needs: [slot] };
  const time = readTimeOfDay(`${value.text}${half}`);
  if (time === undefined) return leftOver(value);
  if (time === 'no-such-time' || time.minute !== 0 || time.second !== 0) {
    const { limits } = slots[slot];
    return { code: 'impossible', token: value, needs: [slot], ...(limits !== undefined && { limits }) };
  }
  return { verb: 'set', setting: { name, hour: time.hour } };
}

const rateShape = /^([\d.,]+) ?(m\^?2|sqm|ft\^?2|sqft) ?(?:\/|per|an|a|por|a la) ?(?:h|hr|hour|hora)$/i;
/** A hectare an hour: no crew of eight. */
const fastestRate = 10_000;

/** `4m2/h`, `40 ft2 per hour`. */
function setRate(act: ActLine, values: readonly Token[]): SetRead {
  const [first] = values;
  const last = values.at(-1);
  if (first === undefined || last === undefined) return { code: 'incomplete', needs: ['rate'] };
  const token = { text: act.line.slice(first.start, last.end), start: first.start, end: last.end };
  const [, number = '', unit = ''] = rateShape.exec(token.text) ?? [];
  const value = Number(number.replace(',', '.'));
  if (unit === '' || !Number.isFinite(value)) {
    const bare = first.kind === 'number' && values.length === 1;
    const tries = slots.rate.units.map((each) => lineWith(act.line, token, `${token.text}${each}`));
    return bare
      ? { code: 'unit-missing', token, needs: ['rate'], tries }
      : { code: 'left-over', token, needs: ['rate'] };
  }
  const area =
    unit.toLowerCase().startsWith('f') || unit.toLowerCase() === 'sqft' ? squareMetresFromSquareFeet(value) : value;
  if (area <= 0 || area > fastestRate) {
    return {
      code: 'impossible',
      token,
      needs: ['rate'],
      limits: { lowest: 0, highest: fastestRate, unit: 'm2/h', above: true },
    };
  }
  return { verb: 'set', setting: { name: 'rate', squareMetresPerHour: squareMetresPerHour(area) } };
}
