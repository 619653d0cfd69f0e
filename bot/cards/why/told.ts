// What the words for a why are told: on what it rests, which way it errs, a stretch of a clock.

import type { NoFigure } from '../../../core/calc/dose.ts';
import type { Sheet } from '../../../core/products/sheet.ts';
import type { FigureSourceId } from '../../../core/session/figure-sources.ts';
import type { Celsius, Minutes } from '../../../core/units.ts';

export type WhySource =
  /** `field`: as the sheet's file names it. */
  | {
      readonly is: 'sheet';
      readonly sheet: Pick<Sheet, 'name' | 'revision'>;
      readonly field: string;
      readonly source: string;
    }
  | { readonly is: 'law'; readonly of: FigureSourceId }
  /** A standard, a handbook, or physics. */
  | { readonly is: 'published'; readonly what: string }
  | { readonly is: 'reading' | 'record' | 'setting' | 'memory' };

/** `nearest`: worked out. `late`: at least so long. `early`: at most so long. `high`: what is asked for. `low`: what is there. `as-read`: as it was said or counted. */
export const waysToErr = ['late', 'early', 'high', 'low', 'nearest', 'as-read', 'worst'] as const;
export type WayToErr = (typeof waysToErr)[number];

/** For the words: `whole` is how long it would take at that pace alone; nothing where it earns nothing. */
export interface StretchTold {
  readonly lasted: Minutes;
  readonly celsius: Celsius | undefined;
  readonly whole: number | undefined;
  readonly share: number;
  readonly why: NoFigure | undefined;
  readonly expected: boolean;
}
