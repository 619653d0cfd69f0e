// Values of settings that are figures: a duration, an hour, a share, a rate.

import { ownValue } from '../../../core/own-key.ts';
import type { SettingValues } from '../../../core/setting-kinds.ts';
import {
  grams,
  gramsFromKilograms,
  gramsFromPounds,
  minutes,
  percent,
  squareMetresFromSquareFeet,
  squareMetresPerHour,
} from '../../../core/units.ts';
import type { Fault } from '../reading.ts';
import { unitsOfSetting } from '../setting-units.ts';
import { readTimeOfDay } from '../times/time-typed.ts';
import { flowFrom } from '../typed/rare-figures.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { hour as hourUnit } from '../typed/units-typed.ts';
import { meaningOn } from '../verbs-typed.ts';
import { leftOver, lineWith } from './act-line.ts';
import { withUnitText } from './figure-of-slot.ts';
import { asOnePiece, missing, otherKind, outside, readOne, type ValueSaid } from './setting-said.ts';

export const readDuration = readOne<SettingValues['duration']>((value, said) => {
  if (value.kind === 'number') {
    const tries = unitsOfSetting(said.name).map((unit) => lineWith(said.line, value, withUnitText(value, unit)));
    return { failed: 'unit-missing', token: value, setting: said.name, tries };
  }
  if (value.kind !== 'quantity' || value.quantity.is !== 'duration') return leftOver(value);
  const { value: figure } = value.quantity;
  return outside(said, value, figure) ?? { minutes: minutes(figure) };
});

export const readPercent = readOne<SettingValues['percent']>((value, said) => {
  if (value.kind !== 'quantity' || value.quantity.is !== 'percent') return leftOver(value);
  const { value: figure } = value.quantity;
  return outside(said, value, figure) ?? { percent: percent(figure) };
});

export const readFactor = readOne<SettingValues['factor']>((value, said) => {
  if (value.kind !== 'number' || value.number.other !== undefined) return leftOver(value);
  const factor = value.number.value;
  return outside(said, value, factor) ?? { factor };
});

const hoursOfDay = { lowest: 0, highest: 23, unit: 'h' };

/** On the hour: `17`, `17:00`, `5pm`, `5 pm`. */
export function readHour(said: ValueSaid): SettingValues['hour'] | Fault {
  const [value, half, third] = said.values;
  if (value === undefined) return missing(said);
  const word = wordIn(half);
  const stray = half !== undefined && word !== 'am' && word !== 'pm' ? half : third;
  if (stray !== undefined) return leftOver(stray);
  const time = readTimeOfDay(`${value.text}${word}`);
  if (time === undefined) return leftOver(value);
  if (time === 'no-such-time' || time.minute !== 0 || time.second !== 0) {
    return { failed: 'impossible', token: value, setting: said.name, limits: hoursOfDay };
  }
  return { hour: time.hour };
}

const spanShape = /^(\d{1,2})(?::00)?-(\d{1,2})(?::00)?$/;

/** `22-6`, `22 a 6`, `22 to 6`, `off`. */
export function readHours(said: ValueSaid): SettingValues['hours'] | Fault {
  const [value, second, third] = said.values.filter((token) => wordIn(token) !== 'a');
  if (value === undefined) return missing(said);
  if (value.kind === 'number' && second?.kind === 'number' && third === undefined) {
    return hoursFrom(said, `${value.text}-${second.text}`, value);
  }
  if (second !== undefined) return leftOver(second);
  const isNone = ['off', 'no'].includes(wordIn(value));
  return isNone ? { fromHour: 0, toHour: 0 } : hoursFrom(said, value.text, value);
}

function hoursFrom({ name: setting }: ValueSaid, text: string, token: Token): SettingValues['hours'] | Fault {
  const found = spanShape.exec(text);
  if (found === null) return leftOver(token);
  const [fromHour, toHour] = [Number(found[1]), Number(found[2])];
  return fromHour > 23 || toHour > 23 ? { failed: 'impossible', token, setting } : { fromHour, toHour };
}

const rateShape = /^([\d.,]+) ?(m\^?2|sqm|ft\^?2|sqft) ?(?:\/|\s\p{L}{1,3}\s(?:\p{L}{1,3}\s)?) ?(\p{L}+)$/iu;

/** `4m2/h`, `40 ft2 per hour`. */
export function readRate(said: ValueSaid): SettingValues['rate'] | Fault {
  const token = asOnePiece(said);
  if (token === undefined) return missing(said);
  const [, number = '', unit = '', per = ''] = rateShape.exec(token.text) ?? [];
  const value = Number(number.replace(',', '.'));
  if (said.context.hearing.units.get(per.toLowerCase()) !== hourUnit || !Number.isFinite(value)) {
    const [first, second] = said.values;
    if (first?.kind !== 'number' || second !== undefined) return otherKind(said, token);
    const tries = unitsOfSetting(said.name).map((each) => lineWith(said.line, token, `${token.text}${each}`));
    return { failed: 'unit-missing', token, setting: said.name, tries };
  }
  const area = /^(?:ft|sqft)/i.test(unit) ? squareMetresFromSquareFeet(value) : value;
  return outside(said, token, area) ?? { squareMetresPerHour: squareMetresPerHour(area) };
}

export function readGasFlow(said: ValueSaid): SettingValues['gas-flow'] | Fault {
  const [value] = said.values;
  if (value === undefined) return missing(said);
  const flow = flowFrom(said.values, 0);
  const stray = said.values[flow?.to ?? 1];
  if (stray !== undefined) return leftOver(stray);
  if (flow !== undefined) return outside(said, value, flow.value) ?? { litresPerMinute: flow.value };
  if (value.kind !== 'number') return otherKind(said, value);
  const tries = unitsOfSetting(said.name).map((unit) => lineWith(said.line, value, withUnitText(value, unit)));
  return { failed: 'unit-missing', token: value, setting: said.name, tries };
}

const quotaShape = /^(\d+(?:[.,]\d+)?) ?(kg|g|lb)s? ?(?:\/|\s\p{L}{1,3}\s) ?(\p{L}+)$/iu;
const masses: Readonly<Record<string, typeof grams>> = { g: grams, kg: gramsFromKilograms, lb: gramsFromPounds };
const spans: Readonly<Record<string, SettingValues['quota']['per']>> = {
  day: 'day',
  month: 'month',
  year: 'year',
};

/** `300kg/month`: a mass in a time. */
export function readQuota(said: ValueSaid): SettingValues['quota'] | Fault {
  const token = asOnePiece(said);
  if (token === undefined) return missing(said);
  const [, amount = '', unit = '', span = ''] = quotaShape.exec(token.text) ?? [];
  const make = ownValue(masses, unit.toLowerCase());
  const per = ownValue(spans, meaningOn('set', span.toLowerCase(), said.context.hearing));
  if (make === undefined || per === undefined) return { failed: 'unit-missing', token, setting: said.name, tries: [] };
  const mass = make(Number(amount.replace(',', '.')));
  return mass > 0 ? { grams: mass, per } : { failed: 'impossible', token, setting: said.name };
}
