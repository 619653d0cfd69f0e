// In which units a setting may be typed, and the one in which its limits are told.

import type { SettingKind } from '../../core/setting-kinds.ts';
import { type SettingName, settingRows } from '../../core/settings.ts';

const units: Readonly<Partial<Record<SettingKind, readonly string[]>>> = {
  duration: ['h', 'min'],
  percent: ['%'],
  rate: ['m2/h', 'ft2/h'],
  quota: ['kg/month', 'lb/month', 'kg/day', 'kg/year'],
  booth: ['m2', 'ft2'],
};

export const unitsOfSetting = (name: SettingName): readonly string[] => units[settingRows[name].kind] ?? [];

const told: Readonly<Partial<Record<SettingKind, string>>> = { duration: 'min', percent: '%', rate: 'm2/h' };

export const unitOfSetting = (name: SettingName): string => told[settingRows[name].kind] ?? '';
