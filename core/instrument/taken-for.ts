// Which instrument a reading was made with: the one that was named, else the one of its kind that was last used there, else the
// only one of its kind that is kept. Nobody is asked. One that failed its check is left aside as long as the shop has another.

import type { PlaceName } from '../ids.ts';
import type { InstrumentKind } from '../instrument-kinds.ts';
import { type Instrument, lastCheckBy } from '../instruments.ts';
import type { EpochMs } from '../units.ts';

export function takenFor(
  instruments: readonly Instrument[],
  kinds: readonly InstrumentKind[],
  place: PlaceName,
  at: EpochMs,
): Instrument | undefined {
  for (const kind of kinds) {
    const ofKind = instruments.filter((each) => each.kind === kind && !each.isRetired);
    const sound = ofKind.filter((each) => lastCheckBy(each, at)?.result !== 'failed');
    const taken = takenOf(sound.length > 0 ? sound : ofKind, place, at);
    if (taken !== undefined) return taken;
  }
  return undefined;
}

function takenOf(these: readonly Instrument[], place: PlaceName, at: EpochMs): Instrument | undefined {
  const [only, another] = these;
  return lastUsed(these, place, at) ?? (another === undefined ? only : undefined);
}

/** At that place, by then; told late, where nothing had been used there yet, what was used next. */
export function lastUsed(these: readonly Instrument[], place: PlaceName, at: EpochMs): Instrument | undefined {
  const used = these
    .flatMap((instrument) =>
      instrument.taken.filter((each) => each.place === place).map((each) => ({ ...each, instrument })),
    )
    .sort((a, b) => a.at - b.at || a.seq - b.seq);
  return (used.findLast((each) => each.at <= at) ?? used[0])?.instrument;
}
