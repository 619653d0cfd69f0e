// What speaks against a coat by the part's steel: its life is over, nobody said how it was prepared, or it was measured outside
// what is asked.

import type { AirLog } from '../place/place.ts';
import type { Sheet } from '../products/sheet.ts';
import type { Rule } from '../rules.ts';
import type { EpochMs } from '../units.ts';
import type { Part } from './part.ts';
import { awaitsCoat, surfaceEndsAt } from './surface-life.ts';
import { type SurfaceAsked, surfaceBreaches } from './surface-limits.ts';

export interface SurfaceCase {
  /** `undefined`: nobody has named it before. */
  readonly part: Part | undefined;
  readonly sheet: Sheet;
  readonly at: EpochMs;
  readonly air: AirLog;
  /** Of its steel, by the sheet and by its job. */
  readonly asked: readonly SurfaceAsked[];
  readonly keepsPrep: boolean;
}

export const surfaceRules: readonly Rule<SurfaceCase>[] = [
  {
    code: 'surface-life-over',
    source: 'sheet',
    liftedBy: 'lead',
    check: ({ part, sheet, air, at }) => {
      const endedAt = part && surfaceEndsAt(part, sheet, air);
      return endedAt !== undefined && at >= endedAt && part?.prepared !== undefined
        ? { code: 'surface-life-over', preparedAt: part.prepared.at, endedAt }
        : undefined;
    },
  },
  {
    code: 'not-prepared',
    source: 'sheet or job',
    liftedBy: 'lead',
    since: 5,
    check: ({ part, asked, keepsPrep }) => {
      const isBare = part === undefined || (part.coats.length === 0 && part.prepared === undefined);
      return keepsPrep && isBare && asked.length > 0 ? { code: 'not-prepared', asked } : undefined;
    },
  },
  {
    code: 'surface-outside',
    source: 'sheet or job',
    liftedBy: 'lead',
    since: 5,
    check: ({ part, asked }) => {
      const breaches = part !== undefined && awaitsCoat(part) ? surfaceBreaches(asked, part.prepared) : [];
      return breaches.length === 0 ? undefined : { code: 'surface-outside', breaches };
    },
  },
];
