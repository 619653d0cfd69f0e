// Prepared steel has a limited life before it must be coated: a clock that may last at most so long. Before a coat no
// batch says which sheet counts, so the shortest of those at hand does.

import { dueAt, type TemperatureLog } from '../calc/clock.ts';
import type { ClockBasis } from '../calc/clock-sum.ts';
import { rateLaw, type Sheet } from '../products/sheet.ts';
import { sheetsLikely } from '../products/shelf.ts';
import { lastSaid } from '../settled.ts';
import { liveBatches, type Shop } from '../shop.ts';
import { type EpochMs, epochMs } from '../units.ts';
import type { Part } from './part.ts';

/** Still waiting for its first coat since it was prepared. */
export function awaitsCoat(part: Part): boolean {
  const { prepared } = part;
  const coat = part.coats.at(-1);
  return prepared !== undefined && (coat === undefined || coat.firstAt < prepared.at);
}

/** By one sheet; `undefined` where it gives no such life, or nobody said that the part was prepared. */
export function surfaceEndsAt(part: Part, sheet: Sheet, air: TemperatureLog): EpochMs | undefined {
  const basis = surfaceBasis(part, sheet, air);
  const end = basis && dueAt(basis.rules, basis.runs, basis.log);
  return end === undefined ? undefined : epochMs(Math.floor(end));
}

export function surfaceBasis(part: Part, { surfaceLife }: Sheet, log: TemperatureLog): ClockBasis | undefined {
  if (surfaceLife === undefined || part.prepared === undefined || !awaitsCoat(part)) return undefined;
  const rules = { law: rateLaw(surfaceLife), caution: 'at-most', withoutFigure: 'nothing' } as const;
  return { rules, runs: [{ from: part.prepared.at, to: undefined }], log };
}

/** The crew's usual sheet, where none is usual every one that it may take, and those of the live batches. */
export function sheetsAtHand(shop: Shop): readonly Sheet[] {
  const usual = sheetsLikely(shop.shelf, lastSaid(shop.crew, 'sheet')?.sheet);
  const sheets = [...usual, ...liveBatches(shop).map(({ sheet }) => sheet)];
  return [...new Map(sheets.map((sheet) => [sheet.name, sheet])).values()];
}

export interface SurfaceEnd {
  readonly at: EpochMs;
  readonly sheet: Sheet;
}

/** The earliest end by any of these sheets. */
export function earliestSurfaceEnd(part: Part, sheets: readonly Sheet[], air: TemperatureLog): SurfaceEnd | undefined {
  const ends = sheets.flatMap((sheet) => {
    const at = surfaceEndsAt(part, sheet, air);
    return at === undefined ? [] : [{ at, sheet }];
  });
  return ends.sort((a, b) => a.at - b.at)[0];
}
