// Figures in units that few acts take: of moving air, of rooms, of salts, of stirrers: `0.6m/s`, `120 fpm`, `30m3`, `12 mg/m2`, `400rpm`. The
// reader of quantities leaves them as words, or as a bare number before a word.

import { ownValue } from '../../../core/own-key.ts';
import {
  type CubicMetres,
  cubicMetres,
  cubicMetresFromCubicFeet,
  type LitresPerMinute,
  litresFromUsGallons,
  litresPerMinute,
  litresPerMinuteFromCubicFeetPerHour,
  type Megapascals,
  type MetresPerSecond,
  type MicrosiemensPerCentimetre,
  type MilligramsPerCubicMetre,
  type MilligramsPerSquareMetre,
  megapascals,
  megapascalsFromPsi,
  metresPerSecond,
  metresPerSecondFromFeetPerMinute,
  microsiemensPerCentimetre,
  milligramsPerCubicMetre,
  milligramsPerSquareMetre,
  type RevolutionsPerMinute,
  revolutionsPerMinute,
  type Volts,
  volts,
} from '../../../core/units.ts';
import type { BaseUnit } from '../../../core/verbs/slot-row.ts';
import { readNumber } from './number-typed.ts';
import type { Token } from './token.ts';

const speeds: Readonly<Record<string, (value: number) => MetresPerSecond>> = {
  'm/s': metresPerSecond,
  mps: metresPerSecond,
  fpm: metresPerSecondFromFeetPerMinute,
  'ft/min': metresPerSecondFromFeetPerMinute,
};

const salts: Readonly<Record<string, (value: number) => MilligramsPerSquareMetre>> = {
  'mg/m2': milligramsPerSquareMetre,
  'mg/m^2': milligramsPerSquareMetre,
};

/** Water and steel, µ from either keyboard. */
const conductivities: Readonly<Record<string, (value: number) => MicrosiemensPerCentimetre>> = {
  'us/cm': microsiemensPerCentimetre,
  'µs/cm': microsiemensPerCentimetre,
  'μs/cm': microsiemensPerCentimetre,
};

/** Of oil in air nobody types more than `1mg`. */
const mists: Readonly<Record<string, (value: number) => MilligramsPerCubicMetre>> = {
  'mg/m3': milligramsPerCubicMetre,
  'mg/m^3': milligramsPerCubicMetre,
  mg: milligramsPerCubicMetre,
};

const turns: Readonly<Record<string, (value: number) => RevolutionsPerMinute>> = {
  rpm: revolutionsPerMinute,
  'r/min': revolutionsPerMinute,
};

const pressures: Readonly<Record<string, (value: number) => Megapascals>> = {
  mpa: megapascals,
  'n/mm2': megapascals,
  psi: megapascalsFromPsi,
};

const glosses: Readonly<Record<string, (value: number) => number>> = { gu: (value) => value };

const voltages: Readonly<Record<string, (value: number) => Volts>> = {
  v: volts,
  volt: volts,
  volts,
  vdc: volts,
  kv: (value) => volts(value * 1000),
};

const shares: Readonly<Record<string, (value: number) => number>> = { ppm: (value) => value };

const flows: Readonly<Record<string, (value: number) => LitresPerMinute>> = {
  'l/min': litresPerMinute,
  lpm: litresPerMinute,
  cfh: litresPerMinuteFromCubicFeetPerHour,
  scfh: litresPerMinuteFromCubicFeetPerHour,
  'ft3/h': litresPerMinuteFromCubicFeetPerHour,
};

const rooms: Readonly<Record<string, (value: number) => CubicMetres>> = {
  m3: cubicMetres,
  'm^3': cubicMetres,
  cbm: cubicMetres,
  ft3: cubicMetresFromCubicFeet,
  l: (value) => cubicMetres(value / 1000),
  litres: (value) => cubicMetres(value / 1000),
  gal: (value) => cubicMetres(litresFromUsGallons(value) / 1000),
};

export interface Taken<Value> {
  readonly value: Value;
  /** Index of the token after it. */
  readonly to: number;
}

export const speedFrom = (tokens: readonly Token[], from: number): Taken<MetresPerSecond> | undefined =>
  figureFrom(tokens, from, speeds);

export const flowFrom = (tokens: readonly Token[], from: number): Taken<LitresPerMinute> | undefined =>
  figureFrom(tokens, from, flows);

/** The figure of such a unit at `from`, if one stands there. */
export function rareFigureFrom(
  tokens: readonly Token[],
  from: number,
  unit: BaseUnit | undefined,
): Taken<number> | undefined {
  if (unit === 'm/s') return speedFrom(tokens, from);
  if (unit === 'MPa') return figureFrom(tokens, from, pressures);
  if (unit === 'V') return figureFrom(tokens, from, voltages);
  if (unit === 'GU') return figureFrom(tokens, from, glosses) ?? bareFrom(tokens, from);
  if (unit === 'ppm') return figureFrom(tokens, from, shares);
  if (unit === 'mg/m3') return figureFrom(tokens, from, mists);
  if (unit === 'rpm') return figureFrom(tokens, from, turns);
  if (unit === 'uS/cm') return figureFrom(tokens, from, conductivities);
  return unit === 'mg/m2' ? figureFrom(tokens, from, salts) : undefined;
}

/** Gloss is told in nothing else. */
function bareFrom(tokens: readonly Token[], from: number): Taken<number> | undefined {
  const token = tokens[from];
  return token?.kind !== 'number' || token.number.other !== undefined || token.number.value < 0
    ? undefined
    : { value: token.number.value, to: from + 1 };
}

/** A volume in litres, which every act reads, counts too. */
export function roomFrom(tokens: readonly Token[], from: number): Taken<CubicMetres> | undefined {
  const token = tokens[from];
  if (token?.kind === 'quantity' && token.quantity.is === 'volume') {
    return { value: cubicMetres(token.quantity.value / 1000), to: from + 1 };
  }
  return figureFrom(tokens, from, rooms);
}

const together = /^(\d+(?:[.,]\d+)?)([a-zµμ^]+(?:\/[a-z^]+)?[23]?)$/;

function figureFrom<Value>(
  tokens: readonly Token[],
  from: number,
  units: Readonly<Record<string, (value: number) => Value>>,
): Taken<Value> | undefined {
  const token = tokens[from];
  const next = tokens[from + 1];
  if (token?.kind === 'number') {
    const of = next?.kind === 'word' ? ownValue(units, next.word) : undefined;
    // Below nothing there is none of them.
    return of === undefined || token.number.other !== undefined || token.number.value < 0
      ? undefined
      : { value: of(token.number.value), to: from + 2 };
  }
  if (token === undefined || token.kind === 'quoted') return undefined;
  const found = together.exec(token.text.toLowerCase());
  const of = found === null ? undefined : ownValue(units, found[2] ?? '');
  const number = found === null ? undefined : readNumber(found[1] ?? '');
  return of === undefined || number === undefined || number.other !== undefined
    ? undefined
    : { value: of(number.value), to: from + 1 };
}
