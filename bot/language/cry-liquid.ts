// `vertido de acetona`, `se me cayó el thinner`: of a liquid these are a spill; else the one is a coat and the other somebody
// who fell.

import { endsWell, isPlace, type Names, opens } from './cry-round.ts';
import { drums, heard, itself, liquids, onlyOfLiquid, pots } from './cry-words.ts';

/** Nothing more, or where: on the floor, not in the drum that it belongs in. */
export function isLiquidOut(word: string, before: readonly string[], after: readonly string[], names: Names): boolean {
  const rest = after.slice(after.findIndex((each) => liquids.has(each)) + 1);
  // `cayó el nitrógeno` is its pressure, `se cayó la pintura` may be off the part; `se me cayó la pintura` is on the floor.
  const falls = !onlyOfLiquid.has(word);
  const isOneself = isOfItself(word) || before.some((each) => itself.has(each));
  // To pour what one coats with is work; a tap offers the spill.
  if (!falls && after.some((each) => poured.has(each))) return false;
  if (falls && !isOneself) return false;
  if (falls && !before.some((each) => dropping.has(each)) && after.some((each) => fallen.has(each))) return false;
  const isOpen = opens(before, names) || isOneself;
  return isOpen && endsWell(rest, names, isPlace) && !rest.some((each) => pots.has(each) || drums.has(each));
}

/** `se cayó`. */
const isOfItself = (word: string): boolean => word.split(' ').some((each) => itself.has(each));

const dropping = heard('dropping');
const poured = heard('coats');
const fallen = heard('losesPressure');
