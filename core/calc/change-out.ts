// How long an organic vapour cartridge lasts at the most, by OSHA's rule of thumb (Respiratory eTool, change schedules, after the AIHA's
// "The Occupational Environment", chapter 36). It holds for what boils above 70 degC at less than 200 ppm, and for nothing else.

import { type Celsius, type Hours, hours, type PartsPerMillion, type Percent } from '../units.ts';
import { outOfRange, type Result } from './refusal.ts';

export interface VapourBreathed {
  /** `undefined`: nobody has read it. */
  readonly boils: Celsius | undefined;
  readonly ppm: PartsPerMillion;
}

export interface CartridgeWork {
  readonly breathed: readonly VapourBreathed[];
  readonly humidity: Percent;
  /** Hard: twice the air of ordinary work. */
  readonly pace: 'ordinary' | 'hard';
}

export interface CartridgeLife {
  readonly hours: Hours;
  readonly shortenedBy: readonly ('humidity' | 'pace')[];
}

const boilsAbove = 70;
const lessThanPpm = 200;
const wetFrom = 85;

/**
 * Refused past what the rule holds for: `does-not-apply` to what boils at 70 degC or lower, or to 200 ppm and more of all vapours
 * together; `no-figure` where a boiling point was not read. That a tenth of the vapour lasts five times as long is not counted.
 */
export function cartridgeLife({ breathed, humidity, pace }: CartridgeWork): Result<CartridgeLife> {
  const total = breathed.reduce((sum, { ppm }) => sum + ppm, 0);
  const refusal = outOfRange('humidity', humidity, 0, 100) ?? outOfRange('ppm', total, 0, 1e6);
  if (refusal !== undefined) return refusal;
  const [low] = breathed.filter(({ boils }) => boils !== undefined && boils <= boilsAbove);
  if (low?.boils !== undefined) {
    return { failed: 'does-not-apply', what: 'boiling-point', given: low.boils, limit: boilsAbove };
  }
  if (breathed.length === 0 || breathed.some(({ boils }) => boils === undefined)) {
    return { failed: 'no-figure', what: 'boiling-point' };
  }
  if (total >= lessThanPpm) return { failed: 'does-not-apply', what: 'ppm', given: total, limit: lessThanPpm };
  const shortenedBy = [
    ...(humidity >= wetFrom ? (['humidity'] as const) : []),
    ...(pace === 'hard' ? (['pace'] as const) : []),
  ];
  return { hours: hours(8 / 2 ** shortenedBy.length), shortenedBy };
}
