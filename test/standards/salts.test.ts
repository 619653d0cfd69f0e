// Soluble salts: ISO 8502-6 extraction, ISO 8502-9 conductivity, as instrument manuals quote them.

import {
  conductivityAt25,
  microgramsPerSquareCentimetre,
  type PatchTest,
  type SaltKind,
  saltDensity,
} from '../../core/calc/salts.ts';
import { isFailed } from '../../core/failed.ts';
import {
  celsius,
  microsiemensPerCentimetre,
  milligramsPerSquareMetre,
  millilitres,
  squareCentimetres,
} from '../../core/units.ts';
import { answered, checkPublished, derived, fromMemory, type PublishedCase, seen } from './published-case.ts';

const manual = 'instrument manual after ISO 8502-9 and the IMO ballast-tank standard';
const constant = 'ISO 8502-9, constant 5 kg/(m2 S)';
const ionic = 'CRC Handbook ionic conductivities, Na+ 0.005008 and Cl- 0.007631 S m2/mol';

const patch = (water: number, before: number, after: number): PatchTest => ({
  patch: squareCentimetres(12.5),
  water: millilitres(water),
  before: microsiemensPerCentimetre(before),
  after: microsiemensPerCentimetre(after),
});
const row = (
  make: typeof seen,
  says: string,
  source: string,
  test: PatchTest,
  kind: SaltKind,
  published: number,
  within: number,
): PublishedCase => make(says, source, () => answered(saltDensity(test, kind)), published, within);

checkPublished('soluble salts', { seen: 3, run: 0, derived: 13, 'from-memory': 1 }, [
  row(seen, '3 mL, one uS/cm, ISO mixture: 1.2 mg/m2', manual, patch(3, 0, 1), 'iso-mix', 1.2, 0.01),
  row(seen, '3 mL, one uS/cm, sodium chloride: 1.1', manual, patch(3, 0, 1), 'sodium-chloride', 1.1, 0.05),
  row(seen, '15 mL, one uS/cm, ISO mixture: 6.0', manual, patch(15, 0, 1), 'iso-mix', 6.0, 0.05),
  row(derived, '10 mL, one uS/cm, ISO mixture: 4.0', constant, patch(10, 0, 1), 'iso-mix', 4.0, 0.05),
  row(derived, '10 mL, one uS/cm, sodium chloride: 3.7', ionic, patch(10, 0, 1), 'sodium-chloride', 3.7, 0.05),
  row(derived, '15 mL, one uS/cm, sodium chloride: 5.5', ionic, patch(15, 0, 1), 'sodium-chloride', 5.5, 0.05),
  row(derived, '3 mL, one uS/cm, sodium chloride: 1.11', ionic, patch(3, 0, 1), 'sodium-chloride', 1.11, 0.005),
  row(derived, 'sodium chloride has the constant 4.62', ionic, patch(12.5, 0, 1), 'sodium-chloride', 4.62, 0.005),
  row(derived, 'factor 5 is 12.5 mL on 12.5 cm2, not factor 6', constant, patch(12.5, 0, 1), 'iso-mix', 5, 1e-9),
  row(derived, '15 mL, 2 then 7 uS/cm: 30.0', constant, patch(15, 2, 7), 'iso-mix', 30, 0.1),
  row(derived, '15 mL, 8 uS/cm more: 48.0', constant, patch(15, 1, 9), 'iso-mix', 48, 0.1),
  row(
    derived,
    '15 mL, 8 uS/cm more, as chloride of sodium: 44.4',
    ionic,
    patch(15, 1, 9),
    'sodium-chloride',
    44.4,
    0.1,
  ),
  row(derived, '10 mL, 20 uS/cm more: 80.0', constant, patch(10, 2, 22), 'iso-mix', 80, 0.1),
  row(derived, '3 mL, 40 uS/cm more: 48.0', constant, patch(3, 1, 41), 'iso-mix', 48, 0.1),
  derived(
    '48 mg/m2 is 4.8 ug/cm2',
    'exact',
    () => microgramsPerSquareCentimetre(milligramsPerSquareMetre(48)),
    4.8,
    1e-9,
  ),
  derived(
    'an extract that conducts less than its water is refused',
    constant,
    () => isFailed(saltDensity(patch(15, 7, 2), 'iso-mix')),
    true,
  ),
  fromMemory(
    '100 uS/cm read at 20 degC are 111.1 at 25 degC, 2 % a degree',
    'common practice of conductivity meters',
    () => answered(conductivityAt25(microsiemensPerCentimetre(100), celsius(20))),
    111.11,
    0.01,
  ),
]);
