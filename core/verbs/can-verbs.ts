// What can be said of a can of material.

import { components } from '../components.ts';
import { handlings } from './said.ts';
import { choice, count, day, mass, ownWay, ownWords, sheet, spoken, volume } from './slot.ts';
import { verb } from './verb.ts';

const can = count('can');

export const canVerbs = {
  open: verb(
    {
      component: choice('component', components, { required: true }),
      lot: ownWay<string>()([spoken('lot')], { required: true }),
      grams: mass('can-mass', { required: true, amend: true }, { units: ['kg', 'lb', 'g'] }),
      /** The last day: `2026-12-31`. */
      expires: day('expiry'),
      handling: choice('handling', handlings),
      /** Of the can, brimful, where its label says it. */
      litres: volume('can-volume'),
      sheet: sheet('sheet'),
    },
    { leaves: { type: 'CanOpened' }, on: 'can' },
  ),
  /** The lid comes off again. */
  lid: verb({ can }, { leaves: { type: 'LidOff' } }),
  /** Inert gas over what is left, and the lid on. */
  blanket: verb({ can }, { leaves: { type: 'CanBlanketed' } }),
  /** A lead looked at a doubtful can and takes it. */
  check: verb({ can }, { leaves: { type: 'CanChecked' }, decision: true }),
  /** The stirrer runs in the can itself, before a pour. */
  prestir: verb({ can }, { leaves: { type: 'CanStirred' } }),
  discard: verb(
    { can: count('can', { required: true }), why: ownWords('reason', { required: true }) },
    { leaves: { type: 'CanDiscarded' }, endsInWords: true },
  ),
};
