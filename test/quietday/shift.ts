// A faultless shift on invented parts: who says what at which time of the day. Each act is done by the book: air and steel
// are read, cans open under gas, Part A is stirred in its can, nobody sprays before the brief is read, every gun is flushed,
// every part is at its temperature for its time. So whatever the bot objects to, holds or asks back counts against the bot.

import type { Said } from './parts-of-shift.ts';
import { brushed } from './shift-brushed.ts';
import { sprayed } from './shift-sprayed.ts';

export type Chapter = 'the shop' | 'batch 3' | 'batch 6' | 'batch 8';

export interface ShiftLine {
  /** Wall clock of the day, UTC. */
  readonly at: string;
  readonly as: string;
  readonly line: string;
  readonly of: Chapter;
}

/** Invented, as their ids in the stand-in for Slack are. */
export const crew = {
  name: 'Quay bay (invented)',
  zone: 'UTC',
  people: [
    { name: 'ada', role: 'lead', slack: 'UADA' },
    { name: 'bo', role: 'supervisor', slack: 'UBO' },
    { name: 'kari', role: 'crew', slack: 'UKARI' },
    { name: 'omar', role: 'crew', slack: 'UOMAR' },
    { name: 'lia', role: 'crew', slack: 'ULIA' },
  ],
  slackChannels: ['C1'],
} as const;

export const shiftStart = '2026-03-02T06:00:00Z';

/** Settings are a supervisor's. The demo's sheet is named in full, since the shop has one of its own. */
const settled: readonly Said[] = [
  ['06:00', 'bo', 'set emergency call 555-0112, gate 2'],
  ['06:01', 'bo', 'set emergency eyes eyewash by the north door'],
  ['06:02', 'bo', 'set sheet quay-coat'],
  ['06:03', 'bo', 'set sprayers kari omar'],
  ['06:04', 'bo', 'set booth booth 4m2'],
  ...['kari', 'omar'].flatMap((person): readonly Said[] => [
    ['06:05', 'bo', `fit ${person} 2026-12-01`],
    ['06:06', 'bo', `medical ${person} 2026-12-30`],
    ['06:07', 'bo', `training ${person} 2027-01-31`],
  ]),
];

const opened: readonly Said[] = [
  ...crew.people.map(({ name }): Said => ['06:10', name, 'shift on']),
  ['06:12', 'ada', 'air 22C 48%'],
  ['06:13', 'ada', 'surface 21C'],
];

const readAgain: readonly Said[] = [
  ['09:40', 'ada', 'air 22C 47%'],
  ['09:41', 'ada', 'surface 21C'],
  ['12:30', 'ada', 'air 23C 46%'],
  ['12:31', 'ada', 'surface 22C'],
];

const closed: readonly Said[] = [
  ...['kari', 'omar', 'lia'].map((name): Said => ['15:40', name, 'shift off']),
  ['15:41', 'ada', 'stock'],
  ['15:42', 'bo', 'day'],
  ['15:43', 'ada', 'shift off'],
  ['15:44', 'bo', 'shift off'],
];

const of = (chapter: Chapter, said: readonly Said[]): readonly ShiftLine[] =>
  said.map(([at, as, line]) => ({ at, as, line, of: chapter }));

/** In order of time; lines of one minute as they stand here. */
export const shift: readonly ShiftLine[] = [
  ...of('the shop', [...settled, ...opened, ...readAgain, ...closed]),
  ...of('batch 3', brushed),
  ...of('batch 6', sprayed.ownSheet),
  ...of('batch 8', sprayed.demoSheet),
].sort((one, other) => one.at.localeCompare(other.at));
