// How long inert gas runs over what is left in a can, and what oxygen that leaves: of a can that is recorded, of a size that the
// sheet knows, or of a headspace that somebody measured.

import { volumeFromMass } from '../calc/density.ts';
import { cleanGas, oxygenAfterPurge, oxygenInAir, purgeTime, purgeVolume } from '../calc/gas.ts';
import { type Failed, isFailed } from '../failed.ts';
import type { CanNumber } from '../ids.ts';
import { componentDensity, type Sheet } from '../products/sheet.ts';
import { lastSaid } from '../settled.ts';
import { type Shop, sheetFor } from '../shop.ts';
import {
  type Grams,
  grams,
  type Litres,
  type LitresPerMinute,
  litres,
  type Minutes,
  minutes,
  type Percent,
} from '../units.ts';
import { type Can, leftGrams } from './can.ts';
import { brimfulOf, headspaceOf } from './can-clocks.ts';

export interface PurgeAsked {
  readonly can?: CanNumber;
  /** What a can of that size is sold with. */
  readonly soldGrams?: Grams;
  readonly leftGrams?: Grams;
  readonly headspaceLitres?: Litres;
  /** Left out: the shop's own. */
  readonly litresPerMinute?: LitresPerMinute;
  /** It has run so long, or shall. */
  readonly minutes?: Minutes;
}

export interface PurgeSum {
  readonly headspaceLitres: Litres;
  readonly gasLitres: Litres;
  readonly litresPerMinute: LitresPerMinute;
  /** Whole ones, so that nobody stops short; or those that were asked about. */
  readonly minutes: Minutes;
  readonly oxygenPercent: Percent;
  readonly targetPercent: Percent;
  /** Of what it is taken; of a measured headspace nothing. */
  readonly of?: { readonly brimfulLitres: Litres; readonly leftGrams: Grams };
}

type Lacking = 'no-such-can' | 'no-gas-asked' | 'size-unknown' | 'flow-needed';

/** By what the shop has set, where no flow is said; `undefined` of a can where neither says enough. */
export function purgeOfCan(shop: Shop, can: Can): PurgeSum | undefined {
  const sum = purgeFor(shop, { can: can.number });
  return isFailed(sum) ? undefined : sum;
}

export function purgeFor(shop: Shop, asked: PurgeAsked): PurgeSum | Failed<Lacking> {
  const can = asked.can === undefined ? undefined : shop.cans.get(asked.can);
  if (asked.can !== undefined && can === undefined) return { failed: 'no-such-can' };
  const usual = sheetFor(shop);
  const sheet = can?.sheet ?? (isFailed(usual) ? undefined : usual);
  const target = sheet?.blanket?.oxygenTargetPercent;
  if (sheet === undefined || target === undefined) return { failed: 'no-gas-asked' };
  const litresPerMinute = asked.litresPerMinute ?? lastSaid(shop.crew, 'gas-flow')?.litresPerMinute;
  if (litresPerMinute === undefined) return { failed: 'flow-needed' };
  const space =
    asked.headspaceLitres === undefined ? spaceOver(sheet, asked, can) : { headspaceLitres: asked.headspaceLitres };
  if (space === undefined) return { failed: 'size-unknown' };
  const purge = { headspace: space.headspaceLitres, from: oxygenInAir, gasOxygen: cleanGas };
  const needed = purgeTime(purge, target, litresPerMinute);
  const gasLitres = purgeVolume(purge, target);
  if (isFailed(needed) || isFailed(gasLitres)) return { failed: 'size-unknown' };
  const runs = asked.minutes ?? minutes(Math.ceil(needed - 1e-6));
  const oxygenPercent = oxygenAfterPurge(purge, litres(litresPerMinute * runs));
  if (isFailed(oxygenPercent)) return { failed: 'size-unknown' };
  return { ...space, gasLitres, litresPerMinute, minutes: runs, oxygenPercent, targetPercent: target };
}

/** Of a size alone, where nobody says what is left, the whole can: the most gas. */
function spaceOver(sheet: Sheet, { soldGrams, leftGrams: said }: PurgeAsked, can: Can | undefined) {
  if (can !== undefined) {
    const known = headspaceOf(can);
    const brimful = brimfulOf(can);
    if (known === undefined || brimful === undefined) return undefined;
    return { headspaceLitres: known.headspaceLitres, of: { brimfulLitres: brimful, leftGrams: leftGrams(can) } };
  }
  const { blanket } = sheet;
  const brimful = blanket?.cans.find(({ soldWithGrams }) => soldWithGrams === soldGrams)?.litres;
  const [component] = blanket?.components ?? [];
  const density = component === undefined ? undefined : componentDensity(sheet, component);
  const left = said ?? grams(0);
  const filled = density === undefined ? undefined : volumeFromMass(left, density);
  if (brimful === undefined || filled === undefined || isFailed(filled) || filled >= brimful) return undefined;
  return { headspaceLitres: litres(brimful - filled), of: { brimfulLitres: brimful, leftGrams: left } };
}
