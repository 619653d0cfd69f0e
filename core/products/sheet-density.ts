// The density of one part of a product, where the sheet gives it.

import type { Component } from '../components.ts';
import type { KilogramsPerLitre } from '../units.ts';
import type { Sheet } from './sheet.ts';

export function componentDensity({ ratio }: Pick<Sheet, 'ratio'>, component: Component): KilogramsPerLitre | undefined {
  const { densities } = ratio;
  return component === 'part-a' ? densities?.partAKilogramsPerLitre : densities?.partBKilogramsPerLitre;
}
