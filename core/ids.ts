// Names of streams and the short names people type. Batches, cans and spray sessions share one series of numbers a crew, so that a
// bare number on a phone means one thing only.

export type Noun = 'batch' | 'part' | 'can' | 'place' | 'session' | 'crew' | 'instrument';
export type StreamId = `${Noun}/${string}`;

export type BatchNumber = number;
export type CanNumber = number;
export type SessionNumber = number;
/** As typed: lower case, no spaces, `impeller-7`. */
export type PartName = string;
export type PlaceName = string;
export type PersonName = string;
export type SheetId = string;
export type CrewId = string;

/** The key of a crew where one is all there is. */
export const onlyCrew: CrewId = 'crew';

/** Where air is read when nobody names a place. */
export const defaultPlace: PlaceName = 'room';

export const batchStream = (batch: BatchNumber): StreamId => `batch/${batch}`;
export const canStream = (can: CanNumber): StreamId => `can/${can}`;
export const partStream = (part: PartName): StreamId => `part/${part}`;
export const placeStream = (place: PlaceName): StreamId => `place/${place}`;
export const sessionStream = (session: SessionNumber): StreamId => `session/${session}`;
/** What was read with it is filed under it. */
export const instrumentStream = (instrument: string): StreamId => `instrument/${instrument}`;
export const crewStream: StreamId = 'crew/crew';

export function nounOf(stream: StreamId): Noun {
  return stream.slice(0, stream.indexOf('/')) as Noun;
}

export function nameIn(stream: StreamId): string {
  return stream.slice(stream.indexOf('/') + 1);
}

/** Of a batch's, can's or session's stream. */
export function numberIn(stream: StreamId): number {
  return Number(nameIn(stream));
}
