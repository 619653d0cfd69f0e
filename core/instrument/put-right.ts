// What a reading was made with, put right: it is filed under the other instrument too, and what is read next there is taken to be
// read with that.

import type { Corrected } from '../corrections/corrected-fact.ts';
import type { Failed } from '../failed.ts';
import { isFailed } from '../failed.ts';
import type { Entry, EventBody, Fact, NewEvent } from '../history.ts';
import { instrumentStream, type StreamId } from '../ids.ts';
import { instrumentNamed } from '../instruments.ts';
import { isReading, kindsOf, readWith } from '../made-with.ts';
import type { Unclear } from '../objections.ts';
import { entriesIn, type Shop } from '../shop.ts';
import { instrumentMeant, placeOf, takenUp } from '../with-instruments.ts';

/** None is kept under that name, or of a kind that such a reading is not made with. */
export function unknownInstrument(shop: Shop, fact: Fact, was: Fact): Failed<Unclear> | undefined {
  const name = readWith(fact);
  if (name === undefined || name === readWith(was)) return undefined;
  const meant = instrumentMeant(shop, name, kindsOf(fact) ?? []);
  return isFailed(meant) ? meant : undefined;
}

export function underInstrument(to: Extract<EventBody, { type: 'Amended' }>['to']): readonly StreamId[] {
  const name = to.kind === 'corrected' ? readWith(to.fact) : undefined;
  return name === undefined ? [] : [instrumentStream(name)];
}

/** What the same line told besides was read with it too. */
export function readBeside(shop: Shop, { seq, request, fact: was }: Entry, fact: Fact): readonly Corrected[] {
  const instrument = readWith(fact);
  if (instrument === readWith(was)) return [];
  const kind = kindsOf(was)?.[0];
  return entriesIn(shop, (other) => other.request === request && other.seq !== seq).flatMap((entry) =>
    isReading(entry.fact) && kindsOf(entry.fact)?.[0] === kind
      ? [{ entry, fact: { ...entry.fact, instrument }, happenedAt: entry.happenedAt }]
      : [],
  );
}

/** Not of one that others were read after: those said what is used there now. */
export function takenInstead(
  shop: Shop,
  { seq, stream, fact: was, happenedAt }: Entry,
  fact: Fact,
): readonly NewEvent[] {
  const name = readWith(fact);
  const instrument = name === undefined ? undefined : instrumentNamed(shop.crew.instruments, name);
  if (instrument === undefined || name === readWith(was)) return [];
  const place = placeOf(shop, stream, was);
  const kinds = kindsOf(was);
  const isLast = !entriesIn(shop, (other) => other.seq > seq && other.happenedAt >= happenedAt).some(
    (other) => kindsOf(other.fact)?.[0] === kinds?.[0] && placeOf(shop, other.stream, other.fact) === place,
  );
  return isLast ? (takenUp(shop.crew.instruments, instrument, place, happenedAt) ?? []) : [];
}
