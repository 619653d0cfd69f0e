// What share of the solids stays on the part, by method, as two US rules fix it for their own sums. Planning figures:
// a crew that weighs what it uses soon has a better one of its own.

import { type Fraction, fraction } from '../units.ts';

export type ApplicationMethod =
  | 'air-atomised'
  | 'airless'
  | 'manual-electrostatic'
  | 'automatic-electrostatic'
  | 'rotating-electrostatic'
  | 'hvlp'
  | 'dip'
  | 'flow'
  | 'brush-or-roller';

export interface TransferEfficiency {
  /** 40 CFR 60.313, metal furniture, table 1; `undefined`: not listed. */
  readonly metalFurniture: Fraction | undefined;
  /** 40 CFR 60.453, large appliances, table 1. */
  readonly largeAppliances: Fraction | undefined;
  /** From memory, no publication seen: the floor of the range that is usually planned with. */
  readonly fromMemory: Fraction | undefined;
}

const listed = (metalFurniture: number, largeAppliances: number): TransferEfficiency => ({
  metalFurniture: fraction(metalFurniture),
  largeAppliances: fraction(largeAppliances),
  fromMemory: undefined,
});

const remembered = (fromMemory: number): TransferEfficiency => ({
  metalFurniture: undefined,
  largeAppliances: undefined,
  fromMemory: fraction(fromMemory),
});

export const transferEfficiencies: Readonly<Record<ApplicationMethod, TransferEfficiency>> = {
  'air-atomised': listed(0.25, 0.4),
  airless: listed(0.25, 0.45),
  'manual-electrostatic': listed(0.6, 0.6),
  'automatic-electrostatic': listed(0.7, 0.85),
  'rotating-electrostatic': listed(0.8, 0.9),
  hvlp: remembered(0.65),
  dip: listed(0.9, 0.85),
  flow: listed(0.9, 0.85),
  'brush-or-roller': remembered(0.9),
};

/** The lowest figure there is, so that the plan never comes up short. */
export function transferEfficiencyOf(method: ApplicationMethod): Fraction {
  const { metalFurniture, largeAppliances, fromMemory } = transferEfficiencies[method];
  const figures = [metalFurniture, largeAppliances, fromMemory].filter((figure) => figure !== undefined);
  return fraction(Math.min(...figures));
}
