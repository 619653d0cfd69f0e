// Which readings are made with an instrument, with which kinds of it, and with which one each was made.

import type { Fact } from './history.ts';
import type { InstrumentKind } from './instrument-kinds.ts';

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
