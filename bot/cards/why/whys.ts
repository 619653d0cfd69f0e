// Of every figure that a card can hold why it is what it is, and which way it errs. A new figure without its why does not compile.

import type { FactId } from '../fact-ids.ts';
import { airWhys } from './of-air.ts';
import { batchWhys } from './of-batch.ts';
import { canWhys } from './of-can.ts';
import { partWhys } from './of-part.ts';
import { planWhys } from './of-plan.ts';
import { recordWhys } from './of-record.ts';
import { sessionWhys } from './of-session.ts';
import { type WayToErr, waysToErr } from './told.ts';
import type { WhyOf } from './why.ts';

export const whys: Readonly<Record<FactId, WhyOf>> = {
  ...batchWhys,
  ...airWhys,
  ...partWhys,
  ...canWhys,
  ...sessionWhys,
  ...recordWhys,
  ...planWhys,
};

const late = [
  'stir-done-at',
  'flash-least-at',
  'recoat-opens-at',
  'cure-done-at',
  'temp-due-at',
  'stage-handle-at',
  'stage-service-at',
  'stage-full-at',
  'can-stir-done-at',
  'fan-until',
] as const satisfies readonly FactId[];
const early = [
  'pot-life-ends',
  'pot-margin-at',
  'flash-most-at',
  'open-until',
  'surface-ends-at',
  'recoat-closes-at',
  'blanket-by',
  'spell-ends-at',
] as const satisfies readonly FactId[];
const high = [
  'stir-wanted',
  'gas-needed',
  'can-stir-wanted',
  'mixed-volume',
  'mixed-mass',
  'uncovered',
  'door-open',
  'oxygen-left',
] as const satisfies readonly FactId[];
const low = ['stir-given', 'cure-given', 'fan-gives', 'fan-over-lel', 'fan-over-exposure', 'fan-over-oven'] as const;
/** By the figure of each source that asks for more. */
const worst = [
  'sprayed-per-hour',
  'solvent-per-hour',
  'air-for-lel',
  'air-for-exposure',
  'oven-air',
  'solvent-in-load',
  'voc',
] as const satisfies readonly FactId[];

const nearest = [
  'ratio-error',
  'dew-point',
  'spread',
  'film-mean',
  'can-left',
  'headspace',
  'part-b-exact',
  'add-part-a',
  'add-part-b',
  'wet-film-wanted',
] as const satisfies readonly FactId[];

const waysOf: Readonly<Record<Exclude<WayToErr, 'as-read'>, readonly FactId[]>> = {
  ...{ late, early, high, low, nearest, worst },
};

export const errsOf = (id: FactId): WayToErr =>
  waysToErr.find((way) => way !== 'as-read' && waysOf[way].includes(id)) ?? 'as-read';
