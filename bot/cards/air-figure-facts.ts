// Figures of air and solvent on cards: what is asked for rounded up, what is there rounded down.

import type { CubicMetresPerHour, Fraction, Grams, Litres, MetresPerSecond } from '../../core/units.ts';
import type { CardFact } from './card.ts';
import { type FactsOf, fact, type Telling } from './card-context.ts';

export const airAskedFact = (t: Telling, id: FactsOf<'m3/h'>, flow: CubicMetresPerHour): CardFact =>
  fact(t, id, flow, t.f.flowUp(flow));

export const airGivenFact = (t: Telling, id: FactsOf<'m3/h'>, flow: CubicMetresPerHour): CardFact =>
  fact(t, id, flow, t.f.flowDown(flow));

export const speedFact = (t: Telling, id: FactsOf<'m/s'>, speed: MetresPerSecond): CardFact =>
  fact(t, id, speed, t.f.speed(speed));

/** Rounded down to a hundredth: 0.999 is not 1. */
export const ratioFact = (t: Telling, id: FactsOf<'ratio'>, ratio: number): CardFact =>
  fact(t, id, ratio, t.f.ratio(ratio));

export const solventRateFact = (t: Telling, perHour: Litres): CardFact =>
  fact(t, 'solvent-per-hour', perHour, `${t.f.volume(perHour)} / h`);

export const sprayedFact = (t: Telling, perHour: Grams): CardFact =>
  fact(t, 'sprayed-per-hour', perHour, `${t.f.mass(perHour)} / h`);

export const shareFact = (t: Telling, share: Fraction): CardFact =>
  fact(t, 'lel-share', share, t.f.percent(share * 100));
