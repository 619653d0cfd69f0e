// Which streams a command names, besides those that are live: they are loaded before it is decided.

import type { Command, CommandOf } from './commands.ts';
import { foundUnder } from './found-under-instrument.ts';
import {
  batchStream,
  type CrewId,
  canStream,
  crewStream,
  nounOf,
  type PersonName,
  partStream,
  type StreamId,
  sessionStream,
} from './ids.ts';
import { type Instrument, instrumentName } from './instruments.ts';
import { touchedUnder } from './looked-at-anew.ts';
import type { Store } from './ports.ts';
import { streamOfRing } from './ring-log.ts';
import type { EpochMs } from './units.ts';

type Reads = Pick<Store, 'streamsLastTouched' | 'readUnder' | 'streamsBetween' | 'archive'>;

interface Named {
  readonly command: Command;
  readonly at: EpochMs;
  readonly by: PersonName;
  readonly now: EpochMs;
}

/** `instruments`: those that are kept. */
export async function streamsNamed(
  store: Reads,
  crew: CrewId,
  request: Named,
  instruments: readonly Pick<Instrument, 'name'>[],
): Promise<readonly StreamId[]> {
  const { command } = request;
  if (command.verb === 'undo') return store.streamsLastTouched(crew, request.by);
  const streams: StreamId[] = [crewStream];
  const of = command.verb === 'amend' ? command.of : command;
  // What rang may have been the last that anybody waited for there.
  if (of.verb === 'ok' || of.verb === 'snooze') {
    const keys = [of.key, ...('also' in of ? (of.also ?? []) : [])];
    streams.push(...keys.flatMap((key) => streamOfRing(key)));
  }
  if ('batch' in of && of.batch !== undefined) streams.push(batchStream(of.batch));
  // Its coats are judged with it, and stand under their parts.
  if (of.verb === 'judge' && of.batch !== undefined) {
    streams.push(...(await touchedUnder(store, crew, [batchStream(of.batch)])));
  }
  if ('can' in of && of.can !== undefined) streams.push(canStream(of.can));
  if ('cans' in of) streams.push(...(of.cans ?? []).map(canStream));
  // Sessions and batches have one series of numbers: what is flushed may be of either.
  if ('session' in of && of.session !== undefined) streams.push(sessionStream(of.session), batchStream(of.session));
  if ('part' in of && of.part !== undefined) streams.push(partStream(of.part));
  if ('more' in of) streams.push(...(of.more ?? []).map(({ part }) => partStream(part)));
  if ('parts' in of) streams.push(...of.parts.map(partStream));
  if (command.verb === 'recall') return [...streams, ...(await streamsOfLot(store, crew, command.lot))];
  if (of.verb === 'calibrated') return [...streams, ...(await streamsChecked(store, crew, request, instruments))];
  return command.verb === 'amend' ? [...streams, ...streamsPutRight(store, crew, command)] : streams;
}

/** A check that failed speaks against all that was read since the last good one; put right, it may be of any that is kept. */
async function streamsChecked(
  store: Reads,
  crew: CrewId,
  { command, at, now }: Named,
  instruments: readonly Pick<Instrument, 'name'>[],
): Promise<readonly StreamId[]> {
  if (command.verb === 'calibrated' && command.result === 'ok') return [];
  const names = command.verb === 'calibrated' ? [instrumentName(command.name)] : instruments.map(({ name }) => name);
  const of = command.verb === 'amend' ? { at: command.change.at ?? now, until: now } : { at, until: now };
  const found = await Promise.all(names.map((name) => foundUnder(store, crew, name, of)));
  return found.flat();
}

/** Where a coat really belongs; of a delivery the cans that were opened of it, used up or not. */
function streamsPutRight(
  store: Reads,
  crew: CrewId,
  { of, change: { ofBatch, onPart } }: CommandOf<'amend'>,
): readonly StreamId[] {
  if (of.verb === 'received') return store.archive.bookedUnder(crew, 'lot', '');
  return [
    ...(ofBatch === undefined ? [] : [batchStream(ofBatch)]),
    ...(onPart === undefined ? [] : [partStream(onPart)]),
  ];
}

/** Its cans, the pots that were filled from them, and what was coated of those. */
async function streamsOfLot(store: Reads, crew: CrewId, lot: string): Promise<readonly StreamId[]> {
  const cans = store.archive.bookedUnder(crew, 'lot', lot);
  const touched = await touchedUnder(store, crew, cans);
  return [...cans, ...touched, ...(await touchedUnder(store, crew, touched.filter(isBatch)))];
}

const isBatch = (stream: StreamId): boolean => nounOf(stream) === 'batch';
