// Flammable-liquid categories, bonding, flush solvents and mixing rooms (OSHA, 2015 annual edition of the CFR).

import {
  type FlammableCategory,
  flammableCategory,
  flushFlashPoint,
  handledAs,
  needsBonding,
} from '../../core/calc/flammable.ts';
import { type Solvent, type SolventId, solvents } from '../../core/calc/solvents.ts';
import { purgeBeforeHeat } from '../../core/calc/ventilation.ts';
import {
  type Celsius,
  celsius,
  cubicMetres,
  cubicMetresPerHour,
  celsiusFromFahrenheit as f,
} from '../../core/units.ts';
import { answered, checkPublished, derived, type PublishedCase, seen } from './published-case.ts';

const rule = '29 CFR 1910.106(a)(19)';
const fire = '29 CFR 1910.107';

const category = (
  make: typeof seen,
  liquid: string,
  flash: Celsius,
  boils: Celsius,
  published: FlammableCategory,
): PublishedCase => make(`${liquid}: category ${published}`, rule, () => flammableCategory(flash, boils), published);

const bySheet = (id: SolventId, published: FlammableCategory): PublishedCase => {
  const { flashPointCelsius, boilingPointCelsius }: Solvent = solvents[id];
  if (flashPointCelsius === undefined || boilingPointCelsius === undefined) throw new Error(`no points for ${id}`);
  return category(derived, `${id} by our table`, flashPointCelsius, boilingPointCelsius, published);
};

checkPublished('flammable categories', { seen: 0, run: 0, derived: 24, 'from-memory': 0 }, [
  category(derived, 'flash 22.9 degC, boils at 35', celsius(22.9), celsius(35), '1'),
  category(derived, 'flash 22.9 degC, boils at 35.1', celsius(22.9), celsius(35.1), '2'),
  category(derived, 'flash 23 degC', celsius(23), celsius(30), '3-below-100F'),
  category(derived, 'flash 99.9 degF', f(99.9), celsius(150), '3-below-100F'),
  category(derived, 'flash 100 degF', f(100), celsius(150), '3'),
  category(derived, 'flash 60 degC', celsius(60), celsius(150), '3'),
  category(derived, 'flash 60.1 degC', celsius(60.1), celsius(150), '4'),
  category(derived, 'flash 93 degC', celsius(93), celsius(150), '4'),
  category(derived, 'flash 93.1 degC', celsius(93.1), celsius(150), 'none'),
  category(derived, 'flash 73.3 degF', f(73.3), f(95.1), '2'),
  category(derived, 'acetone, 0 and 133 degF', f(0), f(133), '2'),
  category(derived, 'isopropyl alcohol, 53 and 181 degF', f(53), f(181), '2'),
  category(derived, 'toluene, 40 and 232 degF', f(40), f(232), '2'),
  category(derived, 'ethanol, 55 and 173 degF', f(55), f(173), '2'),
  category(derived, 'n-butyl acetate, 72 and 258 degF', f(72), f(258), '2'),
  category(derived, 'n-butyl acetate, 22 degC in IEC 60079-20-1', celsius(22), celsius(126.15), '2'),
  category(derived, 'xylenes, 77 degF', f(77), f(281), '3-below-100F'),
  category(derived, 'xylenes, 86 degF', f(86), f(281), '3-below-100F'),
  category(derived, 'methoxypropyl acetate, 42 degC', celsius(42), celsius(145.8), '3'),
  category(derived, 'hexamethylene diisocyanate, 284 and 415 degF', f(284), f(415), 'none'),
  bySheet('acetone', '2'),
  bySheet('isopropyl-alcohol', '2'),
  bySheet('xylene', '3-below-100F'),
  bySheet('methoxypropyl-acetate', '3'),
]);

const warmed = (says: string, flash: Celsius, liquid: Celsius, published: FlammableCategory): PublishedCase =>
  derived(says, rule, () => handledAs(flash, celsius(150), liquid), published);

checkPublished('what hangs on the category', { seen: 2, run: 0, derived: 11, 'from-memory': 0 }, [
  warmed(
    'a category 3 liquid that flashes at 42 degC counts as below 100 degF from 25.3',
    celsius(42),
    celsius(25.3),
    '3-below-100F',
  ),
  warmed('the same at 25.2 degC stays category 3', celsius(42), celsius(25.2), '3'),
  warmed(
    'a category 4 liquid heated to within 16.7 degC of its flash point counts as 3',
    celsius(70),
    celsius(54),
    '3',
  ),
  warmed('a liquid above 93 degC heated to within 16.7 degC counts as 4', celsius(100), celsius(84), '4'),
  seen(
    'bonding for categories 1, 2 and 3 below 100 degF only',
    '29 CFR 1910.106(f)(3)(vi) and (e)(6)(ii)',
    () => (['1', '2', '3-below-100F', '3', '4', 'none'] as const).map(needsBonding),
    [true, true, true, false, false, false],
  ),
  derived(
    'a flush solvent of 100 degF is for any cleaning',
    `${fire}(g)(5)`,
    () => flushFlashPoint(f(100), [f(150)]),
    'any-cleaning',
  ),
  derived(
    'a flush solvent that flashes with the lowest of those sprayed is for guns only',
    `${fire}(g)(5)`,
    () => flushFlashPoint(f(72), [f(77), f(72)]),
    'guns-only',
  ),
  derived(
    'acetone flashes below a butyl acetate coating: the rule does not allow it even for guns',
    `${fire}(g)(5)`,
    () => flushFlashPoint(f(0), [f(72)]),
    'below-the-sprayed',
  ),
  seen(
    'three minutes of purge at the least before a dryer in a booth is energised',
    `${fire}(j)(4)(iii)(b)`,
    () => answered(purgeBeforeHeat(cubicMetres(0.2), cubicMetresPerHour(1000))),
    3,
  ),
  ...(['1', '2', '3-below-100F', 'none'] as const).map(
    (held): PublishedCase =>
      derived(
        `category ${held} is never eased by a cold liquid`,
        rule,
        () => {
          const flash = { '1': 10, '2': 10, '3-below-100F': 30, none: 120 }[held];
          return handledAs(celsius(flash), held === '1' ? celsius(30) : celsius(150), celsius(-20));
        },
        held,
      ),
  ),
]);
