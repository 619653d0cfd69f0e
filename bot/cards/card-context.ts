// What every card is worded from (`Telling`): the words, figures and shop for one person at one moment; and the making
// of its figures and taps.

import type { Shop } from '../../core/shop.ts';
import type {
  Celsius,
  CelsiusSpread,
  EpochMs,
  Fraction,
  Grams,
  Litres,
  Micrometres,
  Millimetres,
  Minutes,
  SquareMetres,
} from '../../core/units.ts';
import type { Figures } from '../language/figures.ts';
import type { ButtonId, Words } from '../language/tongues/english/sentences.ts';
import type { Card, CardAction, CardFact } from './card.ts';
import { type FactId, factUnits } from './fact-ids.ts';
import { inUnitsOf } from './tap-units.ts';

export interface Telling {
  readonly words: Words;
  readonly f: Figures;
  readonly shop: Shop;
  readonly now: EpochMs;
}

/** The figures that are given in this unit. */
export type FactsOf<Unit> = { [Id in FactId]: (typeof factUnits)[Id] extends Unit ? Id : never }[FactId];

export function fact({ words }: Pick<Telling, 'words'>, id: FactId, value: number | string, shown: string): CardFact {
  return { id, label: words.facts[id], value, unit: factUnits[id], shown };
}

export const massFact = (t: Telling, id: FactsOf<'g'>, mass: Grams): CardFact => fact(t, id, mass, t.f.mass(mass));

export const volumeFact = (t: Telling, id: FactsOf<'L'>, volume: Litres): CardFact =>
  fact(t, id, volume, t.f.volume(volume));

export const areaFact = (t: Telling, area: SquareMetres, id: FactsOf<'m2'> = 'area'): CardFact =>
  fact(t, id, area, t.f.area(area));

export const partAreaFact = (t: Telling, area: SquareMetres): CardFact => fact(t, 'part-area', area, t.f.area(area));

export const wallFact = (t: Telling, wall: Millimetres): CardFact => fact(t, 'part-wall', wall, t.f.wall(wall));

export const efficiencyFact = (t: Telling, share: Fraction): CardFact =>
  fact(t, 'transfer-efficiency', share, t.f.percent(share * 100));

export const temperatureFact = (t: Telling, id: FactsOf<'degC'>, temperature: Celsius): CardFact =>
  fact(t, id, temperature, t.f.temperature(temperature));

export const spreadFact = (t: Telling, spread: CelsiusSpread): CardFact =>
  fact(t, 'spread', spread, t.f.spread(spread));

export const percentFact = (t: Telling, id: FactsOf<'%'>, value: number, digits = 0): CardFact =>
  fact(t, id, value, t.f.percent(value, digits));

/** (B/A) / (B/A of the sheet) - 1, shown in per cent with its sign. */
export const ratioErrorFact = (t: Telling, error: number): CardFact =>
  fact(t, 'ratio-error', error, t.f.signedPercent(error * 100));

export const ratioToleranceFact = (t: Telling, tolerancePercent: number): CardFact =>
  fact(t, 'ratio-tolerance', tolerancePercent / 100, t.f.percent(tolerancePercent, 1));

export const filmFact = (t: Telling, id: FactsOf<'um'>, film: Micrometres): CardFact =>
  fact(t, id, film, t.f.film(film));

export const countFact = (t: Pick<Telling, 'words' | 'f'>, id: FactsOf<'count'>, value: number): CardFact =>
  fact(t, id, value, t.f.count(value));

/** What must last so long: shown rounded up. */
export const minutesWantedFact = (t: Telling, id: FactsOf<'min'>, duration: Minutes): CardFact =>
  fact(t, id, duration, t.f.minutesUp(duration));

/** What has been earned so far: shown rounded down. */
export const minutesGivenFact = (t: Telling, id: FactsOf<'min'>, duration: Minutes): CardFact =>
  fact(t, id, duration, t.f.minutesDown(duration));

/** Not after: shown rounded down to the minute. */
export const notAfterFact = (t: Telling, id: FactsOf<'time'>, at: EpochMs): CardFact =>
  fact(t, id, t.f.iso(at), t.f.timeDown(at));

export const tap = ({ words, f }: Telling, id: ButtonId, line: string): CardAction => ({
  id,
  label: words.buttons[id],
  line: inUnitsOf(line, f.units),
});

/** What a tap would say is told in the words and units of whoever the card is for. */
export function withLinesShown({ words, f }: Telling, card: Card): Card {
  const actions = card.actions.map((action) => {
    const shown = words.lineShown(action.line, f);
    return shown === action.line ? action : { ...action, shown };
  });
  return { ...card, actions };
}
