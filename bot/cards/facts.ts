// The figures of a card: each in the unit of its row, shown rounded to the cautious side.

import type { InBothUnits, Shown } from '../../core/calc/weighable.ts';
import { isOwnKey } from '../../core/own-key.ts';
import type {
  Celsius,
  CelsiusSpread,
  CubicMetresPerHour,
  Grams,
  Litres,
  MetresPerSecond,
  Micrometres,
  Millimetres,
  Minutes,
  SquareMetres,
} from '../../core/units.ts';
import type { Figures } from '../language/figures.ts';
import type { CardFact } from './card.ts';
import type { Telling } from './card-context.ts';
import { type FactId, factUnits } from './fact-ids.ts';

/** The figures that are given in this unit. */
export type FactsOf<Unit> = { [Id in FactId]: (typeof factUnits)[Id] extends Unit ? Id : never }[FactId];
type FigureId = Exclude<FactId, FactsOf<'time'>>;

interface ValueIn {
  readonly g: Grams;
  readonly L: Litres;
  readonly m2: SquareMetres;
  readonly mm: Millimetres;
  readonly um: Micrometres;
  readonly degC: Celsius;
  readonly 'degC difference': CelsiusSpread;
  readonly min: Minutes;
  readonly 'm/s': MetresPerSecond;
  readonly 'm3/h': CubicMetresPerHour;
  readonly 'L/h': Litres;
  readonly 'g/h': Grams;
  readonly '%': number;
  readonly fraction: number;
  readonly ratio: number;
  readonly count: number;
}
type ValueOf<Id extends FigureId> = ValueIn[(typeof factUnits)[Id]];

/** What is asked for is rounded up. */
const inUnit: { readonly [Unit in keyof ValueIn]: (figures: Figures, value: ValueIn[Unit]) => string } = {
  g: (figures, mass) => figures.mass(mass),
  L: (figures, volume) => figures.volume(volume),
  m2: (figures, area) => figures.area(area),
  mm: (figures, wall) => figures.wall(wall),
  um: (figures, film) => figures.film(film),
  degC: (figures, temperature) => figures.temperature(temperature),
  'degC difference': (figures, spread) => figures.spread(spread),
  min: (figures, duration) => figures.minutesUp(duration),
  'm/s': (figures, speed) => figures.speed(speed),
  'm3/h': (figures, flow) => figures.flowUp(flow),
  'L/h': (figures, volume) => `${figures.volume(volume)} / h`,
  'g/h': (figures, mass) => `${figures.mass(mass)} / h`,
  '%': (figures, value) => figures.percent(value),
  fraction: (figures, share) => figures.percent(share * 100),
  ratio: (figures, ratio) => figures.ratio(ratio),
  count: (figures, value) => figures.count(value),
};

/** What was given or is there is rounded down. */
const inOwnWay: { readonly [Id in FigureId]?: (figures: Figures, value: ValueOf<Id>) => string } = {
  'stir-given': (figures, duration) => figures.minutesDown(duration),
  'cure-given': (figures, duration) => figures.minutesDown(duration),
  'answer-median': (figures, duration) => figures.minutesDown(duration),
  'fan-gives': (figures, flow) => figures.flowDown(flow),
  /** (B/A) / (B/A of the sheet) - 1, with its sign. */
  'ratio-error': (figures, error) => figures.signedPercent(error * 100),
  'ratio-tolerance': (figures, tolerance) => figures.percent(tolerance * 100, 1),
  /** Down to a hundredth: 19.496 is not 19.5. */
  'oxygen-left': (figures, oxygen) => figures.percent(Math.floor(oxygen * 100) / 100, 2),
};

type Wording = Pick<Telling, 'words' | 'figures'>;

export function fact<Id extends FigureId>({ words, figures }: Wording, id: Id, value: ValueOf<Id>): CardFact {
  const unit: (typeof factUnits)[Id] = factUnits[id];
  const shown = (inOwnWay[id] ?? inUnit[unit])(figures, value);
  return { id, label: words.facts[id], value, unit, shown };
}

type MassId = FactsOf<'g'>;

/** Told as its scale showed it. */
export function readFact(telling: Wording, id: MassId, mass: Grams): CardFact {
  return { ...fact(telling, id, mass), shown: telling.figures.asRead(mass) };
}

/** Told to the step of the scale that it is to be weighed on; its value stays exact. */
export function weighFact(telling: Wording, id: MassId, exact: Grams, shown: InBothUnits<Shown>): CardFact {
  return { ...fact(telling, id, exact), shown: telling.figures.toWeigh(shown) };
}

/** In this order, as far as they are known. */
export function factsOf(
  telling: Wording,
  values: { readonly [Id in FigureId]?: ValueOf<Id> | undefined },
): readonly CardFact[] {
  return Object.keys(values).flatMap((id) => {
    const value = isOwnKey(values, id) ? values[id] : undefined;
    return value === undefined || !isOwnKey(values, id) ? [] : [fact(telling, id, value)];
  });
}

export function timedFact({ words }: Wording, id: FactsOf<'time'>, iso: string, shown: string): CardFact {
  return { id, label: words.facts[id], value: iso, unit: factUnits[id], shown };
}
