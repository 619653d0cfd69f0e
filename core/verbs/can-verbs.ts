// What can be said of a can of material.

import { components } from '../components.ts';
import { component } from './component.ts';
import { handlings } from './said.ts';
import { choice, count, day, mass, ownWords, sheet, text, turning, volume } from './slot.ts';
import { verb } from './verb.ts';

const can = count('can');

const ofLot = {
  lot: text('lot', { required: true, behind: 'lot' }),
  component: choice('component', components, {}, { 'part-a': 'A', 'part-b': 'B' }),
};
const calledBack = { on: 'crew', endsInWords: true, decision: true, leastRole: 'lead' } as const;

export const canVerbs = {
  open: verb(
    {
      component,
      lot: text('lot', { required: true, amend: true, behind: 'lot' }),
      /** Left out, with the volume: as it was received. */
      grams: mass('can-mass', { amend: true }, { units: ['kg', 'lb', 'g'] }),
      /** Of the can, brimful, where its label says it; without a weight, of what is in it. */
      litres: volume('can-volume'),
      /** The last day: `2026-12-31`. */
      expires: day('expiry', { amend: true, behind: 'exp' }),
      sheet: sheet('sheet'),
      handling: choice('handling', handlings),
    },
    { leaves: { type: 'CanOpened' }, on: 'can' },
  ),
  /** Sealed cans of one size: how many, and what is in each. */
  received: verb(
    {
      count: count('can-count', {}, { highest: 10_000 }),
      component,
      lot: text('lot', { required: true, amend: true, behind: 'lot' }),
      grams: mass('can-mass', { required: true, amend: true }, { units: ['kg', 'lb', 'g'] }),
      expires: day('expiry', { amend: true, behind: 'exp' }),
      sheet: sheet('sheet'),
    },
    { leaves: { type: 'StockReceived' }, on: 'crew' },
  ),
  /** The lid comes off again. */
  lid: verb({ can, handling: choice('handling', handlings) }, { leaves: { type: 'LidOff' } }),
  /** The lid goes on: with gas under it, or over a can used up whole. */
  shut: verb(
    { can, handling: choice('handling', handlings) },
    { leaves: { type: 'LidOn' }, alsoLeaves: ['CanBlanketed'] },
  ),
  /** Inert gas over what is left, and the lid on. */
  blanket: verb({ can }, { leaves: { type: 'CanBlanketed' }, plain: true }),
  /** A lead looked at a doubtful can and takes it. */
  check: verb({ can }, { leaves: { type: 'CanChecked' }, decision: true, leastRole: 'lead' }),
  /** The stirrer runs in the can itself, before a pour: of one that is shut the lid comes off first, with gas or used whole. */
  prestir: verb(
    {
      can,
      handling: choice('handling', handlings),
      revolutionsPerMinute: turning('stirrer-speed', { noted: true, amend: true }),
    },
    { leaves: { type: 'CanStirred' }, plain: true },
  ),
  /** Every part that has some of it on is held. */
  recall: verb(
    { ...ofLot, why: ownWords('reason', { required: true }) },
    { ...calledBack, leaves: { type: 'LotRecalled' } },
  ),
  'recall-over': verb(
    { ...ofLot, why: ownWords('reason', { required: true }) },
    { ...calledBack, leaves: { type: 'RecallEnded' } },
  ),
  discard: verb(
    { can: count('can', { required: true }), why: ownWords('reason', { required: true }) },
    { leaves: { type: 'CanDiscarded' }, endsInWords: true },
  ),
};
