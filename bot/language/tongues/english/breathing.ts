// Checks of breathing air, in English.

import {
  type BreathingAirItem,
  type BreathingLimits,
  type BreathingStandard,
  breathingAirItems,
  type ItemJudged,
  limitsOf,
} from '../../../../core/calc/breathing-air.ts';
import type { BreathingCheck, BreathingFact, whyNotFed } from '../../../../core/session/breathing-check.ts';
import type { EpochMs } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';

export type WhyNotFed = NonNullable<ReturnType<typeof whyNotFed>>;

const items: Readonly<Record<BreathingAirItem, string>> = {
  oxygen: 'Oxygen',
  oil: 'Oil',
  'carbon-monoxide': 'Carbon monoxide',
  'carbon-dioxide': 'Carbon dioxide',
  odour: 'Smell',
  'dew-point': 'Dew point',
};

const verdicts: Readonly<Record<ItemJudged['is'], string>> = {
  within: 'within',
  outside: 'OUTSIDE',
  'not-read': 'not read',
};

const standards: Readonly<Record<BreathingStandard, string>> = {
  'grade-d': '29 CFR 1910.134(i)(1)(ii), grade D',
  'en-12021': 'EN 12021:2014, figures from memory',
};

/** What was read of it, and what is asked; empty where nobody read it. */
export function itemFigures(
  item: BreathingAirItem,
  read: BreathingFact,
  limits: BreathingLimits,
  figures: Figures,
): { readonly read: string; readonly asked: string } {
  const told = (value: string | undefined, asked: string) => ({ read: value ?? '', asked });
  switch (item) {
    case 'oxygen': {
      const asked = `${figures.percent(limits.leastOxygen, 1)} – ${figures.percent(limits.mostOxygen, 1)}`;
      return told(read.oxygen === undefined ? undefined : figures.percent(read.oxygen, 1), asked);
    }
    case 'oil': {
      const mist = (value: number) => `${figures.decimal(value)} mg/m³`;
      return told(read.oil === undefined ? undefined : mist(read.oil), `≤ ${mist(limits.mostOil)}`);
    }
    case 'carbon-monoxide':
      return told(
        read.carbonMonoxide === undefined ? undefined : figures.ppm(read.carbonMonoxide),
        `≤ ${figures.ppm(limits.mostCarbonMonoxide)}`,
      );
    case 'carbon-dioxide':
      return told(
        read.carbonDioxide === undefined ? undefined : figures.ppm(read.carbonDioxide),
        `≤ ${figures.ppm(limits.mostCarbonDioxide)}`,
      );
    case 'dew-point':
      return told(read.dewPoint === undefined ? undefined : figures.temperature(read.dewPoint), '');
    case 'odour':
      return told(undefined, '');
  }
}

/** What was read, item by item. */
export const allRead = (
  names: Readonly<Record<BreathingAirItem, string>>,
  read: BreathingFact,
  figures: Figures,
): string =>
  figures.list(
    breathingAirItems.flatMap((item) => {
      const { read: value } = itemFigures(item, read, limitsOf[read.standard], figures);
      return value === '' ? [] : [`${names[item].toLowerCase()} ${value}`];
    }),
  );

const because: Readonly<Record<WhyNotFed, string>> = {
  failed: 'it FAILED: nobody is fed from it',
  'not-whole': 'not everything was read',
  overdue: 'overdue: three months are over',
};

const who = ({ at, by, compressor }: BreathingCheck, figures: Figures) =>
  `${compressor === undefined ? '' : `compressor ${compressor}, `}${figures.dated(at)} by ${by}`;

export const englishBreathing = {
  title: (worst: ItemJudged['is']): string =>
    worst === 'outside'
      ? 'Breathing air: FAILED'
      : worst === 'not-read'
        ? 'Breathing air: not everything was read'
        : 'Breathing air: within',
  item: ({ item, is }: ItemJudged, read: BreathingFact, limits: BreathingLimits, figures: Figures) => {
    const { read: value, asked } = itemFigures(item, read, limits, figures);
    const known = [value, asked === '' ? '' : `asked ${asked}`].filter((each) => each !== '').join(', ');
    return `${items[item]}: ${verdicts[is]}${known === '' ? '' : ` (${known})`}`;
  },
  by: (standard: BreathingStandard, compressor: string | undefined) =>
    `Held against ${standards[standard]}${compressor === undefined ? '' : `; compressor ${compressor}`}.`,
  tap: 'Breathing air…',
  feedsNobody: 'Nobody is fed from it until another check is within: no spraying that needs supplied air.',
  notMonitor: 'What was read at that moment. Alarms and filters of the compressor are the employer’s programme.',
  neverChecked: 'Breathing air: nobody has told of a check. Say breathing air o2 20.9% co 4ppm co2 500ppm oil 0.1mg.',
  checked: (check: BreathingCheck, why: WhyNotFed | undefined, _until: EpochMs, figures: Figures) =>
    `Breathing air checked: ${who(check, figures)}${why === undefined ? '' : `; ${because[why]}`}`,
  fact: (read: BreathingFact, figures: Figures) =>
    `breathing air checked${read.compressor === undefined ? '' : `, compressor ${read.compressor}`}: ${allRead(items, read, figures)}`,
  notFit: (check: BreathingCheck, figures: Figures) =>
    `The breathing air failed its last check (${who(check, figures)}): ${figures.list(check.fails.map((item) => items[item].toLowerCase()))}. Nobody is fed from it: another check, or no spraying. Nobody lifts this.`,
  unchecked: (check: BreathingCheck, why: WhyNotFed, figures: Figures) =>
    `Breathing air: ${because[why]} (${who(check, figures)}). Say breathing air with what was read.`,
};
