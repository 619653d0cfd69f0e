// How a setting is typed: in which units, the one in which its limits are told, and what it may look like.

import type { SettingKind } from '../../core/setting-kinds.ts';
import { type SettingName, settingRows } from '../../core/settings.ts';
import { usualEmergencyNumber } from '../../core/usual-emergency-number.ts';
import { exampleIn } from './example-units.ts';
import type { LineContext } from './reading.ts';

const units: Readonly<Partial<Record<SettingKind, readonly string[]>>> = {
  duration: ['h', 'min'],
  percent: ['%'],
  rate: ['m2/h', 'ft2/h'],
  'gas-flow': ['L/min', 'cfh'],
  quota: ['kg/month', 'lb/month', 'kg/day', 'kg/year'],
  booth: ['m2', 'ft2'],
  scale: ['g', 'oz'],
  'day-limit': ['ppm'],
};

export const unitsOfSetting = (name: SettingName): readonly string[] => units[settingRows[name].kind] ?? [];

const told: Readonly<Partial<Record<SettingKind, string>>> = {
  duration: 'min',
  percent: '%',
  rate: 'm2/h',
  scale: 'g',
  'day-limit': 'ppm',
  'gas-flow': 'L/min',
};

export const unitOfSetting = (name: SettingName): string => told[settingRows[name].kind] ?? '';

const examples: Readonly<Record<Exclude<SettingKind, 'sheet' | 'zone' | 'emergency'>, string>> = {
  duration: '3h',
  hour: '17',
  hours: '22-6',
  switch: 'on',
  'place-switch': 'tank-3 off',
  percent: '10%',
  factor: '5',
  rate: '4m2/h',
  'gas-flow': '5L/min',
  'last-day': '2026-12-31',
  quota: '300kg/month',
  'crew-name': '"Kari and Omar"',
  language: 'en',
  units: 'metric',
  rings: 'direct',
  people: 'kari omar',
  roles: 'kari lead',
  booth: 'booth 4m2',
  scale: '0.1g 2kg',
  law: 'eu',
  'day-limit': 'toluene 20ppm',
  'job-limits': '88 sa2.5 40 75um salts 20mg/m2 dust 2',
};

/** A line that sets it; of a sheet there is no example without one. */
export function exampleOfSetting(name: SettingName, context: LineContext): string | undefined {
  const value = exampleOf(settingRows[name].kind, context);
  return value && `set ${name} ${value}`;
}

/** Of what the crew has, or where it works. */
function exampleOf(kind: SettingKind, { sheetIds, zone, units }: LineContext): string | undefined {
  if (kind === 'sheet') return sheetIds[0];
  if (kind === 'zone') return zone;
  if (kind === 'emergency') return `call ${usualEmergencyNumber({ zone })}`;
  return exampleIn(examples[kind], units ?? 'metric');
}
