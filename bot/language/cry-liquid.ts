// `vertido de acetona`, `se me cayó el thinner`: of a liquid these are a spill; else the one is a coat and the other somebody
// who fell.

import { type CryContext, endsWell, opens } from './cry-round.ts';

/** Nothing more, or where: on the floor, not in the drum that it belongs in. */
export function isLiquidOut(
  word: string,
  before: readonly string[],
  after: readonly string[],
  context: CryContext,
): boolean {
  const { cries } = context;
  const rest = after.slice(after.findIndex((each) => cries.liquids.has(each)) + 1);
  // `cayó el nitrógeno` is its pressure, `se cayó la pintura` may be off the part; `se me cayó la pintura` is on the floor.
  const falls = !cries.onlyOfLiquid.has(word);
  // `se cayó`.
  const isOneself =
    word.split(' ').some((each) => cries.itself.has(each)) || before.some((each) => cries.itself.has(each));
  // To pour what one coats with is work; a tap offers the spill.
  if (!falls && after.some((each) => cries.coats.has(each))) return false;
  if (falls && !isOneself) return false;
  if (falls && !before.some((each) => cries.dropping.has(each)) && after.some((each) => cries.losesPressure.has(each)))
    return false;
  const isOpen = opens(before, context) || isOneself;
  return isOpen && endsWell(rest, context) && !rest.some((each) => cries.pots.has(each) || cries.drums.has(each));
}
