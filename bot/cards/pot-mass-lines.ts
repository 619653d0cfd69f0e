// What the mass in one pot does to its life: told before B is in, and again when it is. Where the sheet gives no figure for so
// much, that a bigger pot lives shorter than the sheet says.

import { potLifeMinutes } from '../../core/batch/batch-clocks.ts';
import { potLifeFactor } from '../../core/calc/pot-mass.ts';
import { isFailed } from '../../core/failed.ts';
import type { Sheet } from '../../core/products/sheet.ts';
import type { Celsius, Grams } from '../../core/units.ts';
import type { Telling } from './card-context.ts';

/** Of a pot whose end the card tells. */
export function massLines({ words, figures }: Telling, { potLife }: Sheet, mass: Grams): readonly string[] {
  const { potLifeByMass, potLifeBeyondMass, potLifeTested } = words.material;
  const { byMass, testedWith } = potLife;
  if (byMass === undefined) {
    return testedWith !== undefined && mass > testedWith.grams ? [potLifeTested(testedWith.grams, figures)] : [];
  }
  const found = potLifeFactor(byMass.points, mass);
  if (isFailed(found)) return [];
  return [
    ...(found.factor < 1 ? [potLifeByMass(found.factor * 100, figures)] : []),
    ...(found.withinPoints ? [] : [potLifeBeyondMass]),
  ];
}

/** Before its clock runs: how long it will have, too, where the sheet gives that for so much. */
export function massBeforeLines(
  telling: Telling,
  sheet: Sheet,
  mass: Grams,
  celsius: Celsius | undefined,
): readonly string[] {
  const lines = massLines(telling, sheet, mass);
  if (lines.length === 0 || sheet.potLife.byMass === undefined) return lines;
  const life = potLifeMinutes(sheet, mass, celsius);
  return [...lines, telling.words.material.potLifeAhead(life, celsius !== undefined, telling.figures)];
}
