// Which instrument a reading was made with: the one that was named, else the one of its kind that was last used there, else the
// only one of its kind that is kept. Nobody is asked. One that failed its check is left aside as long as the shop has another.

import type { Fact } from '../history.ts';
import type { PlaceName } from '../ids.ts';
import type { InstrumentKind } from '../instrument-kinds.ts';
import { type Instrument, lastCheckBy } from '../instruments.ts';
import type { EpochMs } from '../units.ts';

/** What each reading may be made with, the usual first. */
export type ReadingFact = Extract<Fact, { readonly instrument?: string | undefined }> & {
  readonly type: keyof typeof kindsRead;
};

const kindsRead = {
  AirRead: ['hygrometer', 'thermometer'],
  SurfaceRead: ['thermometer'],
  LowestRead: ['thermometer', 'hygrometer'],
  PartTemperatureRead: ['thermometer'],
  FilmRead: ['gauge'],
  PartsWeighed: ['scale'],
  PartWeighed: ['scale'],
  PartAdded: ['scale'],
} as const satisfies Partial<Record<Fact['type'], readonly InstrumentKind[]>>;

/** `undefined`: it is no reading of an instrument. A comb for wet film has no check. */
export function kindsOf(fact: Fact): readonly InstrumentKind[] | undefined {
  if (!isReading(fact) || (fact.type === 'FilmRead' && fact.state === 'wet')) return undefined;
  // A thermometer reads no humidity, but for two of them, wet and dry.
  if (fact.type === 'AirRead' && fact.relativeHumidityPercent !== undefined && fact.wetBulbCelsius === undefined) {
    return ['hygrometer'];
  }
  return kindsRead[fact.type];
}

export const isReading = (fact: Fact): fact is ReadingFact => Object.hasOwn(kindsRead, fact.type);

/** Made with which instrument, by what was said or taken. */
export const readWith = (fact: Fact): string | undefined => (isReading(fact) ? fact.instrument : undefined);

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
