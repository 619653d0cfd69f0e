// What there is to learn at each thing that somebody does: the same lesson for all that hands learn together. Its how and why
// stand in each tongue's `first-shift.ts`.

import type { ClockId, NextActId } from '../status.ts';
import type { Doing } from './guidance.ts';

export type Lesson =
  | 'read-air'
  | 'name-parts'
  | 'mix'
  | 'name-can'
  | 'open-can'
  | 'stir-can'
  | 'weigh'
  | 'blanket'
  | 'blend'
  | 'filter'
  | 'prep'
  | 'coat'
  | 'empty'
  | 'clean'
  | 'flash'
  | 'dry'
  | 'cure'
  | 'heat'
  | 'temp'
  | 'out'
  | 'inspect'
  | 'look-in-can'
  | 'look-at-pot'
  | 'brief'
  | 'spray'
  | 'countersign';

/** What it is worst to forget goes first. Our own choice, no source. */
export const keepInMind: readonly Lesson[] = [
  ...([
    'brief',
    'spray',
    'blanket',
    'dry',
    'clean',
    'blend',
    'weigh',
    'coat',
    'stir-can',
    'filter',
    'prep',
    'flash',
  ] as const),
  ...([
    'temp',
    'heat',
    'open-can',
    'mix',
    'look-at-pot',
    'look-in-can',
    'empty',
    'cure',
    'read-air',
    'name-parts',
    'name-can',
  ] as const),
];

/** None where whoever does it must not stop to learn. */
export function lessonOf(doing: Doing): Lesson | undefined {
  switch (doing.is) {
    case 'stay-out':
      return undefined;
    case 'use-up':
      return 'empty';
    case 'wait':
      return lessonOfWait(doing.clock.id);
    case 'act':
      return lessonOfAct[doing.act.id];
    case 'read-air':
    case 'name-parts':
    case 'mix':
    case 'name-can':
    case 'open-can':
    case 'stir-can':
    case 'countersign':
      return doing.is;
  }
}

function lessonOfWait(id: ClockId): Lesson {
  if (id === 'pre-stir') return 'stir-can';
  if (id === 'stir' || id === 'induction') return 'blend';
  if (id === 'fan') return 'spray';
  return id === 'flash' || id === 'recoat-opens' ? 'flash' : 'heat';
}

const lessonOfAct: Readonly<Record<NextActId, Lesson>> = {
  ...{ weigh: 'weigh', 'weigh-a': 'weigh', 'weigh-b': 'weigh' },
  ...{ stir: 'blend', stop: 'blend', cover: 'blend', filter: 'filter', catch: 'coat' },
  ...{ coat: 'coat', 'coat-part': 'coat', 'touch-up': 'coat', wet: 'coat' },
  ...{ thick: 'look-at-pot', hot: 'look-at-pot', empty: 'empty' },
  ...{ 'flush-step': 'clean', 'gear-cleaned': 'clean', flush: 'clean', vessels: 'clean', rags: 'clean' },
  ...{ lid: 'open-can', prestir: 'stir-can', 'prestir-gas': 'stir-can', blanket: 'blanket' },
  ...{ check: 'look-in-can', discard: 'look-in-can' },
  ...{ prep: 'prep', surface: 'prep', strip: 'prep', abrade: 'prep', dry: 'dry' },
  ...{ 'cure-oven': 'cure', 'cure-room': 'cure', temp: 'temp', door: 'heat', out: 'out' },
  ...{ film: 'inspect', release: 'inspect', lift: 'inspect', hold: 'inspect' },
  ...{ rework: 'inspect', concession: 'inspect', scrap: 'inspect', return: 'inspect' },
  ...{ brief: 'brief', ack: 'brief', 'ack-for': 'brief', 'moved-out': 'brief' },
  ...{ 'fan-on': 'spray', 'fan-unmeasured': 'spray', 'fan-off': 'spray', 'supplied-yes': 'spray' },
  ...{ 'supplied-no': 'spray', 'spray-on': 'spray', 'spray-off': 'spray', close: 'spray' },
};
