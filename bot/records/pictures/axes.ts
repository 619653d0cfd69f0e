// The figures of a picture in the units of whoever reads it, and what stands beside its axes.

import { type Celsius, fahrenheitFromCelsius, type Micrometres, milsFromMicrometres } from '../../../core/units.ts';
import type { Figures } from '../../language/figures.ts';

interface Axis<Value> {
  readonly title: string;
  /** As it is drawn, to what a gauge shows. */
  readonly of: (value: Value) => number;
}

export interface Axes {
  readonly temperature: Axis<Celsius>;
  readonly film: Axis<Micrometres>;
}

export const metricAxes: Axes = {
  temperature: { title: '°C', of: (value) => value },
  film: { title: 'µm', of: (value) => value },
};

export function axesFor({ units, profile }: Pick<Figures, 'units' | 'profile'>): Axes {
  if (units === 'metric') return metricAxes;
  return {
    temperature: { title: '°F', of: (value) => rounded(fahrenheitFromCelsius(value), 10) },
    film: { title: profile.mil.many, of: (value) => rounded(milsFromMicrometres(value), 100) },
  };
}

const rounded = (value: number, per: number): number => Math.round(value * per) / per;
