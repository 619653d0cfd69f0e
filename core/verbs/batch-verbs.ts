// What can be said of a batch: from mixing it to an empty pot.

import { filteredIntos, filterMaterials } from '../filters.ts';
import { vesselMaterials } from '../vessels.ts';
import { component } from './component.ts';
import { readWith } from './instrument-verbs.ts';
import { handlings } from './said.ts';
import { air, amount, choice, count, counts, film, mass, sheet, turning, volume } from './slot.ts';
import { verb } from './verb.ts';

const batch = count('batch');
/** Which cans it came from; where nobody names them, the only ones that fit. */
const cans = counts('can');
/** Where one of those that need gas was shut: its lid came off for the pour. */
const handling = choice('handling', handlings);

export const batchVerbs = {
  mix: verb(
    {
      amount: amount('amount', { required: true }),
      sheet: sheet('sheet'),
      air: air({}),
      /** What the mixing vessel holds. */
      vesselLitres: volume('vessel', { behind: 'in' }),
      vesselOf: choice('vessel-material', vesselMaterials),
    },
    {
      leaves: { type: 'BatchOpened' },
      on: 'batch',
      amends: { ofSheet: { slot: 'sheet', fact: 'sheet', told: 'sheet', behind: 'sheet' } },
    },
  ),
  /** Both parts, or one of them. */
  weigh: verb(
    {
      batch,
      partAGrams: mass('part-a', { amend: true, alone: 'A' }),
      partBGrams: mass('part-b', { amend: true, alone: 'B' }),
      cans,
      handling,
      instrument: readWith,
    },
    { leaves: { type: 'PartsWeighed' }, alsoLeaves: ['PartWeighed'], oneOf: ['partAGrams', 'partBGrams'] },
  ),
  /** From which can a part came that has been weighed. */
  drawn: verb({ batch, component, cans: counts('can', { required: true }) }),
  /** More of one part, to bring an off-ratio mix back. */
  add: verb(
    {
      batch,
      component,
      grams: mass('added', { required: true, amend: true }),
      cans,
      handling,
      instrument: readWith,
    },
    { leaves: { type: 'PartAdded' } },
  ),
  /** Said again while it turns, it is how fast. */
  stir: verb(
    { batch, revolutionsPerMinute: turning('stirrer-speed', { noted: true, amend: true }) },
    { leaves: { type: 'StirrerStarted' }, plain: true },
  ),
  stop: verb({ batch }, { leaves: { type: 'StirrerStopped' }, plain: true }),
  filter: verb(
    {
      batch,
      filterMicrometres: film('filter-grade', { amend: true }, { highest: 1_000, above: true }),
      filterOf: choice('filter-material', filterMaterials, { amend: true }),
      filteredInto: choice('filtered-into', filteredIntos, { amend: true }),
    },
    { leaves: { type: 'MixFiltered' } },
  ),
  thick: verb({ batch }, { leaves: { type: 'MixThickened', seen: 'thick' } }),
  gel: verb({ batch }, { leaves: { type: 'MixThickened', seen: 'gelled' } }),
  /** The pot is empty, or what is left is set aside as waste. */
  empty: verb(
    { batch, leftGrams: mass('left', { amend: true }, { above: false }) },
    { leaves: { type: 'PotEmptied' } },
  ),
  /** By the newest edition of the rules, which else judges later acts only. */
  judge: verb({ batch }, { decision: true, leastRole: 'lead' }),
  cover: verb({ batch }, { leaves: { type: 'PotCovered' }, plain: true }),
  uncover: verb({ batch }, { leaves: { type: 'PotUncovered' }, plain: true }),
  /** What drained from a flow coat, to be filtered and used again. */
  catch: verb({ batch, grams: mass('caught', { required: true, amend: true }) }, { leaves: { type: 'MixCaught' } }),
};
