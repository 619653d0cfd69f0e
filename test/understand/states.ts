// The prepared shops in which the lines of this corpus are said. Invented: a Monday in bay four, by the demo's sheet.

import type { CrewFile } from '../../core/crew/crew.ts';
import { minutes } from '../../core/units.ts';

export const crew: CrewFile = {
  ...{ name: 'Bay four (invented)', zone: 'Europe/Madrid', language: 'en', units: 'metric', digestHour: 17 },
  escalationMinutes: minutes(10),
  people: [
    { name: 'Ines', role: 'lead', language: 'en', units: 'metric' },
    { name: 'Wade', role: 'lead', language: 'en', units: 'us' },
    { name: 'Rocio', role: 'lead', language: 'es', units: 'metric' },
    { name: 'Beto', role: 'lead', language: 'es', units: 'us' },
    { name: 'Tomas', role: 'crew', language: 'en', units: 'metric' },
    { name: 'Nell', role: 'crew', language: 'en', units: 'metric' },
  ],
};

/** Said at an hour, of the clock on the wall. */
export type Said = readonly [at: string, line: string];
export interface Prepared {
  /** The hour at which the line of the corpus is said. */
  readonly now: string;
  readonly said: readonly Said[];
}

const opened: readonly Said[] = [
  ['07:00', 'set emergency call 112'],
  ['07:01', 'air 23C 47%'],
  ['07:02', 'mix 1.8kg'],
  ['07:03', 'open A lot 5512 5kg exp 2026-12 gas'],
  ['07:03', 'open B lot 6643 5kg exp 2026-12 gas'],
  ['07:04', 'prestir 2'],
];
const booked: readonly Said[] = [
  ...[1, 2, 3, 4, 5, 6].map((n): Said => ['07:10', `part flange-${n} serial 90${n} job 31 steel 10mm 0.3m2 max 120C`]),
  ...[7, 8, 9].map((n): Said => ['07:10', `part bracket-${n} serial 90${n} job 32 steel 6mm 0.2m2 max 120C`]),
  ['07:11', 'part gear-cover-12 serial 912 job 33 steel 8mm 0.4m2 max 120C'],
];
const inUse: readonly Said[] = [
  ...opened,
  ['07:08', 'weigh 1 901g 899g'],
  ['07:09', 'blanket 2'],
  ...booked,
  ['08:58', 'filter 1'],
  ['08:59', 'surface 21C'],
  ['09:00', 'coat bracket-9 1 brush'],
  ['09:12', 'dry bracket-9'],
  ['09:13', 'cure bracket-9 oven 90C'],
  ['09:20', 'temp bracket-9 91C'],
  ['09:25', 'air 23C 48%'],
  ['09:30', 'coat bracket-8 1 brush'],
];

/** Nothing yet; the air read; a pot to be weighed; a pot in use, one part in the oven, one wet; a spray session. */
export const states = {
  bare: { now: '09:10', said: [['07:00', 'set emergency call 112']] },
  aired: { now: '07:30', said: opened.slice(0, 2) },
  unweighed: { now: '07:07', said: opened },
  working: { now: '09:36', said: inUse },
  flashed: { now: '09:46', said: inUse },
  dried: { now: '09:50', said: [...inUse, ['09:46', 'dry bracket-8']] },
  stirring: {
    now: '08:56',
    said: inUse.slice(
      0,
      inUse.findIndex(([, line]) => line === 'filter 1'),
    ),
  },
  uncovered: { now: '09:40', said: [...inUse, ['09:37', 'lid 2 gas']] },
  cured: { now: '10:30', said: [...inUse, ['10:24', 'temp bracket-9 92C'], ['10:25', 'out bracket-9']] },
  briefed: {
    now: '09:48',
    said: [
      ...inUse,
      ['09:37', 'set booth booth 4m2'],
      ['09:38', 'fit tomas 2026-12-01'],
      ['09:38', 'medical tomas 2026-12-30'],
      ['09:38', 'training tomas 2027-01-31'],
      ['09:39', 'brief 1 in booth spray tomas out nell outside ines'],
    ],
  },
} as const satisfies Readonly<Record<string, Prepared>>;

export type State = keyof typeof states;
