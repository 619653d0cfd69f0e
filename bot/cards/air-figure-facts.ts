// Figures of air and solvent on cards: what is asked for rounded up, what is there rounded down.

import type { CubicMetresPerHour, Fraction, Grams, Litres, MetresPerSecond } from '../../core/units.ts';
import type { CardFact } from './card.ts';
import { type FactsOf, fact, type Telling } from './card-context.ts';

export const airAskedFact = (telling: Telling, id: FactsOf<'m3/h'>, flow: CubicMetresPerHour): CardFact =>
  fact(telling, id, flow, telling.figures.flowUp(flow));

export const airGivenFact = (telling: Telling, id: FactsOf<'m3/h'>, flow: CubicMetresPerHour): CardFact =>
  fact(telling, id, flow, telling.figures.flowDown(flow));

export const speedFact = (telling: Telling, id: FactsOf<'m/s'>, speed: MetresPerSecond): CardFact =>
  fact(telling, id, speed, telling.figures.speed(speed));

/** Rounded down to a hundredth: 0.999 is not 1. */
export const ratioFact = (telling: Telling, id: FactsOf<'ratio'>, ratio: number): CardFact =>
  fact(telling, id, ratio, telling.figures.ratio(ratio));

export const solventRateFact = (telling: Telling, perHour: Litres): CardFact =>
  fact(telling, 'solvent-per-hour', perHour, `${telling.figures.volume(perHour)} / h`);

export const sprayedFact = (telling: Telling, perHour: Grams): CardFact =>
  fact(telling, 'sprayed-per-hour', perHour, `${telling.figures.mass(perHour)} / h`);

export const shareFact = (telling: Telling, share: Fraction): CardFact =>
  fact(telling, 'lel-share', share, telling.figures.percent(share * 100));
