// What is to be done with a pot or a can whose material may go on reacting, by what is known of it: what was seen of it, what
// its sheet says of waste, whether it reacts with moisture. Every card, bell, waste line and rule takes it from here.

import type { Component } from './components.ts';
import type { Sheet } from './products/sheet.ts';

/** What eyes or a hand near it tell, whatever a clock says; each worse than the one before. */
export const seenOfPot = ['thick', 'gelled', 'hot', 'smoking', 'bulging'] as const;
export type SeenOfPot = (typeof seenOfPot)[number];

/** Those that are cried out: of a pot or of a can. */
export const heatSigns = ['hot', 'smoking', 'bulging'] as const;
export type HeatSign = (typeof heatSigns)[number];
/** It goes on reacting by itself: nobody empties it or flushes it. */
export type Reacting = HeatSign | 'gelled';

/** Thick only serves no more; what has gelled heats by itself. */
export const mayHeat = (seen: SeenOfPot | undefined): seen is Reacting => seen !== undefined && seen !== 'thick';

/** The worse of the two. */
export const worse = <Seen extends SeenOfPot>(before: Seen | undefined, now: Seen): Seen =>
  before !== undefined && seenOfPot.indexOf(before) >= seenOfPot.indexOf(now) ? before : now;

export type Care =
  /** Nobody has said whether it is warm: that is felt first, and only what is cool is emptied and flushed. */
  | 'feel-first'
  /** Left to harden with a loose lid, and looked at. */
  | 'let-harden'
  | 'stand-off'
  /** Its lid is on and it swells: it stays where it stands. */
  | 'leave-closed';

/** Of a pot whose life is over: by its clock, where nothing was seen of it. */
export function careFor(seen: SeenOfPot | undefined): Care {
  switch (seen) {
    case undefined:
    case 'thick':
      return 'feel-first';
    case 'gelled':
      return 'let-harden';
    case 'hot':
    case 'smoking':
      return 'stand-off';
    case 'bulging':
      return 'leave-closed';
  }
}

export type Waste = 'vented' | 'as-sheet' | 'loose-lid' | 'not-said';

/** What the sheet says of what is thrown away; that it wants no vent lets nobody close what gives off gas. */
export function wasteOf(sheet: Pick<Sheet, 'leftOver' | 'blanket' | 'sensitisers'>): Waste {
  if (sheet.leftOver === undefined) return 'not-said';
  if (sheet.leftOver.vented) return 'vented';
  return reactsWithMoisture(sheet) ? 'loose-lid' : 'as-sheet';
}

/**
 * Moist air in it and the lid on tight, such a part gives off gas until the can bursts. It is the one that the sheet keeps from
 * the air; where the sheet names isocyanates or silanes, or leaves open whether there are any, it may be either.
 */
export function reactsWithMoisture(
  { blanket, sensitisers }: Pick<Sheet, 'blanket' | 'sensitisers'>,
  of?: Component,
): boolean {
  const kept = blanket?.components ?? [];
  if (of === undefined ? kept.length > 0 : kept.includes(of)) return true;
  return sensitisers === undefined || sensitisers.named.some(({ kind }) => kind !== 'amines');
}
