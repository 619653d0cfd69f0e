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
import type { Tongues } from '../language/tongues/tongues.ts';
import type { Card, CardAction, CardFact } from './card.ts';
import { type FactId, factUnits } from './fact-ids.ts';
import { inUnitsOf } from './tap-units.ts';

export interface Telling {
  readonly words: Words;
  readonly figures: Figures;
  /** What may be set, and what each calls itself. */
  readonly languages: Tongues['languages'];
  readonly shop: Shop;
  readonly now: EpochMs;
}

/** The figures that are given in this unit. */
export type FactsOf<Unit> = { [Id in FactId]: (typeof factUnits)[Id] extends Unit ? Id : never }[FactId];

export function fact({ words }: Pick<Telling, 'words'>, id: FactId, value: number | string, shown: string): CardFact {
  return { id, label: words.facts[id], value, unit: factUnits[id], shown };
}

export const massFact = (telling: Telling, id: FactsOf<'g'>, mass: Grams): CardFact =>
  fact(telling, id, mass, telling.figures.mass(mass));

export const volumeFact = (telling: Telling, id: FactsOf<'L'>, volume: Litres): CardFact =>
  fact(telling, id, volume, telling.figures.volume(volume));

export const areaFact = (telling: Telling, area: SquareMetres, id: FactsOf<'m2'> = 'area'): CardFact =>
  fact(telling, id, area, telling.figures.area(area));

export const partAreaFact = (telling: Telling, area: SquareMetres): CardFact =>
  fact(telling, 'part-area', area, telling.figures.area(area));

export const wallFact = (telling: Telling, wall: Millimetres): CardFact =>
  fact(telling, 'part-wall', wall, telling.figures.wall(wall));

export const efficiencyFact = (telling: Telling, share: Fraction): CardFact =>
  fact(telling, 'transfer-efficiency', share, telling.figures.percent(share * 100));

export const temperatureFact = (telling: Telling, id: FactsOf<'degC'>, temperature: Celsius): CardFact =>
  fact(telling, id, temperature, telling.figures.temperature(temperature));

export const spreadFact = (telling: Telling, spread: CelsiusSpread): CardFact =>
  fact(telling, 'spread', spread, telling.figures.spread(spread));

export const percentFact = (telling: Telling, id: FactsOf<'%'>, value: number, digits = 0): CardFact =>
  fact(telling, id, value, telling.figures.percent(value, digits));

/** (B/A) / (B/A of the sheet) - 1, shown in per cent with its sign. */
export const ratioErrorFact = (telling: Telling, error: number): CardFact =>
  fact(telling, 'ratio-error', error, telling.figures.signedPercent(error * 100));

export const ratioToleranceFact = (telling: Telling, tolerancePercent: number): CardFact =>
  fact(telling, 'ratio-tolerance', tolerancePercent / 100, telling.figures.percent(tolerancePercent, 1));

export const filmFact = (telling: Telling, id: FactsOf<'um'>, film: Micrometres): CardFact =>
  fact(telling, id, film, telling.figures.film(film));

export const countFact = (telling: Pick<Telling, 'words' | 'figures'>, id: FactsOf<'count'>, value: number): CardFact =>
  fact(telling, id, value, telling.figures.count(value));

/** What must last so long: shown rounded up. */
export const minutesWantedFact = (telling: Telling, id: FactsOf<'min'>, duration: Minutes): CardFact =>
  fact(telling, id, duration, telling.figures.minutesUp(duration));

/** What has been earned so far: shown rounded down. */
export const minutesGivenFact = (telling: Telling, id: FactsOf<'min'>, duration: Minutes): CardFact =>
  fact(telling, id, duration, telling.figures.minutesDown(duration));

/** Not after: shown rounded down to the minute. */
export const notAfterFact = (telling: Telling, id: FactsOf<'time'>, at: EpochMs): CardFact =>
  fact(telling, id, telling.figures.iso(at), telling.figures.timeDown(at));

export const tap = ({ words, figures }: Telling, id: ButtonId, line: string): CardAction => ({
  id,
  label: words.buttons[id],
  line: inUnitsOf(line, figures.units),
});

/** What a tap would say is told in the words and units of whoever the card is for. */
export function withLinesShown({ words, figures }: Telling, card: Card): Card {
  const actions = card.actions.map((action) => {
    const shown = words.lineShown(action.line, figures);
    return shown === action.line ? action : { ...action, shown };
  });
  return { ...card, actions };
}
