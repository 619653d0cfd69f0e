// An invented shift on invented parts, as it would be typed: minutes after its start, who, what. It has what a shift has: a
// room that warms, a can under gas, two batches, objections, a pot that thickens, a hold.

import { type EpochMs, epochMs } from '../../core/units.ts';

export interface DemoLine {
  readonly afterMinutes: number;
  readonly as: string;
  readonly line: string;
}

/** An hour a minute. */
export const demoSpeed = 60;

/** A Monday morning, in the invented crew's zone. */
export const demoShiftStart: EpochMs = epochMs(Date.UTC(2026, 2, 2, 7));

export const demoShift: readonly DemoLine[] = [
  { afterMinutes: 0, as: 'Ines', line: 'air 20C 52%' },
  { afterMinutes: 1, as: 'Ines', line: 'surface 19C' },
  { afterMinutes: 2, as: 'Kari', line: 'part demo-impeller-7 serial demo-4411 cast-iron 12mm 0.8m2 max 120C' },
  { afterMinutes: 3, as: 'Kari', line: 'part demo-valve-3 serial demo-4412 brass 6mm 0.2m2 max 60C' },
  { afterMinutes: 5, as: 'Kari', line: 'mix 2.4kg' },
  { afterMinutes: 6, as: 'Kari', line: 'open A lot demo-7731 5kg gas' },
  { afterMinutes: 7, as: 'Kari', line: 'prestir 2' },
  { afterMinutes: 9, as: 'Kari', line: 'weigh 1 1201g 1198g' },
  { afterMinutes: 10, as: 'Kari', line: 'blanket 2' },
  { afterMinutes: 31, as: 'Tomas', line: 'part demo-plate-1 serial demo-4413 stainless 3mm 0.5m2 max 150C' },
  { afterMinutes: 32, as: 'Tomas', line: 'mix 1.2kg' },
  { afterMinutes: 33, as: 'Tomas', line: 'prestir 2 gas' },
  { afterMinutes: 36, as: 'Tomas', line: 'weigh 3 604g 598g' },
  { afterMinutes: 40, as: 'Tomas', line: 'blanket 2' },
  { afterMinutes: 70, as: 'Ines', line: 'air 24C 48%' },
  // Too early: it objects, and nothing is recorded.
  { afterMinutes: 96, as: 'Kari', line: 'filter 1' },
  { afterMinutes: 120, as: 'Kari', line: 'stop 1' },
  { afterMinutes: 122, as: 'Kari', line: 'filter 1' },
  { afterMinutes: 130, as: 'Kari', line: 'coat demo-impeller-7 1 flow' },
  { afterMinutes: 138, as: 'Kari', line: 'coat demo-valve-3 1 dip' },
  { afterMinutes: 142, as: 'Kari', line: 'dry demo-impeller-7' },
  { afterMinutes: 144, as: 'Kari', line: 'cure demo-impeller-7 oven 90C' },
  { afterMinutes: 147, as: 'Tomas', line: 'stop 3' },
  { afterMinutes: 148, as: 'Tomas', line: 'filter 3' },
  { afterMinutes: 151, as: 'Kari', line: 'dry demo-valve-3' },
  // It bears 60 degC: the oven is refused, the room serves.
  { afterMinutes: 152, as: 'Kari', line: 'cure demo-valve-3 oven 90C' },
  { afterMinutes: 153, as: 'Kari', line: 'cure demo-valve-3 room' },
  { afterMinutes: 156, as: 'Tomas', line: 'coat demo-plate-1 3 brush' },
  { afterMinutes: 162, as: 'Kari', line: 'temp demo-impeller-7 91C' },
  { afterMinutes: 170, as: 'Tomas', line: 'dry demo-plate-1' },
  { afterMinutes: 172, as: 'Tomas', line: 'cure demo-plate-1 oven 90C' },
  { afterMinutes: 180, as: 'Tomas', line: 'temp demo-plate-1 90C' },
  { afterMinutes: 192, as: 'Tomas', line: 'thick 3' },
  { afterMinutes: 197, as: 'Tomas', line: 'empty 3 310g' },
  { afterMinutes: 205, as: 'Kari', line: 'empty 1 90g' },
  { afterMinutes: 223, as: 'Kari', line: 'temp demo-impeller-7 92C' },
  { afterMinutes: 224, as: 'Kari', line: 'out demo-impeller-7' },
  { afterMinutes: 228, as: 'Kari', line: 'film demo-impeller-7 12 14 13um' },
  { afterMinutes: 230, as: 'Ines', line: 'release demo-impeller-7' },
  { afterMinutes: 241, as: 'Tomas', line: 'temp demo-plate-1 91C' },
  { afterMinutes: 242, as: 'Tomas', line: 'out demo-plate-1' },
  { afterMinutes: 244, as: 'Ines', line: 'hold demo-plate-1 orange peel' },
  { afterMinutes: 246, as: 'Ines', line: 'air 23C 50%' },
  { afterMinutes: 248, as: 'Ines', line: 'day' },
];
