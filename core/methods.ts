// The ways of applying a coat, one row each: all that the bot does otherwise for one than for another stands here. Its
// words are in the `methods.ts` of each tongue; a sheet names those that it allows.

import type { ApplicationMethod } from './calc/transfer-efficiency.ts';
import type { Gear } from './session/session-commands.ts';

export const methods = ['flow', 'dip', 'brush', 'roller', 'spray'] as const;
export type Method = (typeof methods)[number];

/** The three that a phone-length card has room for where none was said. */
export const offeredMethods: readonly Method[] = ['flow', 'dip', 'spray'];

/** The one that most sheets know, where nothing tells which is meant; it wants no session. */
export const usualMethod: Method = 'brush';

export interface MethodRow {
  /** It goes on as a mist, through a hose and a gun: by a brief, in a session, with gear to be flushed. */
  readonly atomised: boolean;
  /** Whoever puts it on may stand in what is coated: the part's own name is asked about. */
  readonly fromWithin: boolean;
  /** Which of the short lines of hazards are told with it; a spray session has its brief instead. */
  readonly hazards: 'spray' | 'flow' | 'dip' | 'wipe';
  /** What runs off is caught, filtered and used again. Common practice, no source. */
  readonly drains: boolean;
  /** A second pass of the same coat spoils the first. Common practice, no source. */
  readonly once: boolean;
  /** What is cleaned after its last coat. */
  readonly gear: Gear;
  /** By which figure of transfer it is planned. */
  readonly transfer: ApplicationMethod;
}

const byHand: Omit<MethodRow, 'gear'> = {
  atomised: false,
  fromWithin: true,
  hazards: 'wipe',
  drains: false,
  once: false,
  transfer: 'brush-or-roller',
};

export const methodRows: Readonly<Record<Method, MethodRow>> = {
  flow: {
    ...{ atomised: false, fromWithin: false, hazards: 'flow', drains: true, once: false },
    ...{ gear: 'flow-gear', transfer: 'flow' },
  },
  dip: {
    atomised: false,
    fromWithin: false,
    hazards: 'dip',
    drains: false,
    once: true,
    gear: 'dip-tank',
    transfer: 'dip',
  },
  brush: { ...byHand, gear: 'brush' },
  roller: { ...byHand, gear: 'roller' },
  // High volume at low pressure, as the trade's sheets have it.
  spray: {
    atomised: true,
    fromWithin: true,
    hazards: 'spray',
    drains: false,
    once: false,
    gear: 'gun',
    transfer: 'hvlp',
  },
};
