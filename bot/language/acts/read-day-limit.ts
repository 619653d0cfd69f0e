// What counts of a solvent over a day, as it is set: `set limit 2-butoxyethanol 5ppm`.

import { solventIds } from '../../../core/calc/solvents.ts';
import type { SettingValues } from '../../../core/setting-kinds.ts';
import { partsPerMillion } from '../../../core/units.ts';
import { choice } from '../../../core/verbs/slot.ts';
import type { Fault } from '../reading.ts';
import { lineWith } from './act-line.ts';
import { choiceAt, choicesOf } from './choices-on-line.ts';
import { asOnePiece, missing, otherKind, outside, type ValueSaid } from './setting-said.ts';

const solvents = choicesOf([['solvent', choice('solvent', solventIds)]]);
const shape = /^(\d+(?:[.,]\d+)?) ?(ppm)?$/i;

export function readDayLimit(said: ValueSaid): SettingValues['day-limit'] | Fault {
  const [first] = said.values;
  if (first === undefined) return missing(said);
  const named = choiceAt(said.values, 0, solvents);
  const solvent = solventIds.find((id) => id === named?.value);
  if (named === undefined || solvent === undefined) return otherKind(said, first);
  const figure = asOnePiece({ ...said, values: said.values.slice(named.to) });
  if (figure === undefined) return missing(said);
  const [, number, unit] = shape.exec(figure.text) ?? [];
  if (number === undefined) return otherKind(said, figure);
  if (unit === undefined) {
    const tries = [lineWith(said.line, figure, `${figure.text}ppm`)];
    return { failed: 'unit-missing', token: figure, setting: said.name, tries };
  }
  const ppm = Number(number.replace(',', '.'));
  return outside(said, figure, ppm) ?? { solvent, ppm: partsPerMillion(ppm) };
}
