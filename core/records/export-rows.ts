// The record as rows for a spreadsheet or another program: one row an event, in the order in which it was recorded.
// Columns are stable: new ones are only added at the end. Units stand in the names, times are ISO with their zone.

import { DateTime } from 'luxon';
import { asItStands } from '../as-it-stands.ts';
import type { Crew } from '../crew/crew.ts';
import { localDay } from '../crew/local-day.ts';
import { isFor } from '../event-readers.ts';
import { type Entry, type Envelope, type Fact, type FactOf, isLate } from '../history.ts';
import { nameIn, nounOf } from '../ids.ts';
import { dueBy, type Instrument, instrumentNamed, lastCheckBy } from '../instruments.ts';
import { readWith } from '../made-with.ts';
import type { EpochMs } from '../units.ts';
import { isWithin, type Span } from './span.ts';

export type Cell = string | number | undefined;

/** A row's figures by column; what an event does not have stays empty. */
export type ExportRow = Readonly<Record<ExportColumn, Cell>>;

export const exportColumns = [
  'event',
  'happened_at',
  'recorded_at',
  'by',
  'type',
  /** `stands`; `late`, said afterwards; `corrected`, with the corrected figures; `undone`, as it was. */
  'state',
  'batch',
  'part',
  'can',
  'place',
  'part_a_g',
  'part_b_g',
  'mass_g',
  'volume_l',
  'temperature_degC',
  'humidity_percent',
  'film_state',
  'film_um',
  'film_mean_um',
  'film_set',
  'film_spot',
  'film_beside',
  'film_left_out_um',
  'film_base_um',
  'test',
  'test_result',
  'method',
  'applied_by',
  'cure_way',
  'serial',
  'job',
  'customer',
  'material',
  'lot',
  'reason',
  'despite',
  'permitted',
  'corrected_by',
  'corrected_at',
  'corrected_why',
  'hash',
  'instrument',
  /** When it was last checked before the reading, and until which day that held. */
  'instrument_checked',
  'instrument_check',
  'instrument_due',
] as const;
export type ExportColumn = (typeof exportColumns)[number];

/** `streams`: the envelopes of each stream that has something in the span. */
export function exportRows(
  streams: readonly (readonly Envelope[])[],
  span: Span,
  { zone, instruments }: Pick<Crew, 'zone' | 'instruments'>,
): readonly ExportRow[] {
  const hashes = new Map(streams.flat().map((envelope) => [envelope.seq, envelope.hash]));
  const standing = new Map(streams.flatMap(asItStands).map((entry) => [entry.seq, entry]));
  const undone = streams.flat().flatMap((envelope): readonly [Entry, Envelope][] => {
    const { body } = envelope;
    if (body.type !== 'Amended' || body.to.kind !== 'undone') return [];
    const was = streams.flat().find(({ seq }) => seq === body.amends);
    return was === undefined || was.body.type === 'Amended'
      ? []
      : [[{ ...was, fact: was.body, corrections: [] }, envelope]];
  });
  const undoneBySeq = new Map(undone.map(([entry, by]) => [entry.seq, { entry, by }]));
  const iso = (at: EpochMs) => DateTime.fromMillis(at, { zone }).toISO({ suppressMilliseconds: true }) ?? '';
  const rows = [
    ...[...standing.values()].map((entry) => ({ entry, takenBackBy: undefined })),
    ...[...undoneBySeq.values()].map(({ entry, by }) => ({ entry, takenBackBy: by })),
  ];
  return rows
    .filter(({ entry }) => isWithin(span, entry.happenedAt))
    .sort((a, b) => a.entry.seq - b.entry.seq)
    .map(({ entry, takenBackBy }) => ({
      ...rowOf(entry, takenBackBy, hashes.get(entry.seq) ?? '', iso),
      ...instrumentOf(entry, instruments, (at) => localDay(zone, at)),
    }));
}

function rowOf(entry: Entry, takenBackBy: Envelope | undefined, hash: string, iso: (at: EpochMs) => string): ExportRow {
  const { fact, stream, alsoUnder, saidWith } = entry;
  const correction = entry.corrections.at(-1);
  const named = (noun: string) => [stream, ...alsoUnder].filter((each) => nounOf(each) === noun).map(nameIn)[0];
  const empty = Object.fromEntries(exportColumns.map((column) => [column, undefined])) as Record<ExportColumn, Cell>;
  return {
    ...empty,
    event: entry.seq,
    happened_at: iso(entry.happenedAt),
    recorded_at: iso(entry.recordedAt),
    by: entry.by,
    type: fact.type,
    state:
      takenBackBy !== undefined ? 'undone' : correction !== undefined ? 'corrected' : isLate(entry) ? 'late' : 'stands',
    batch: numberOf(named('batch')),
    part: named('part'),
    can: numberOf(named('can')),
    place: named('place'),
    despite: saidWith.despite.join(' ') || undefined,
    permitted: saidWith.permitted,
    corrected_by: takenBackBy?.by ?? correction?.by,
    corrected_at: takenBackBy !== undefined ? iso(takenBackBy.recordedAt) : correction && iso(correction.at),
    corrected_why: correction?.why,
    hash,
    ...figuresOf(fact),
  };
}

function instrumentFigures(fact: FactOf<'InstrumentKept' | 'InstrumentChecked'>): Partial<Record<ExportColumn, Cell>> {
  const { instrument } = fact;
  switch (fact.type) {
    case 'InstrumentKept':
      return { instrument, instrument_due: fact.due, reason: fact.retired === true ? `${fact.of}, retired` : fact.of };
    case 'InstrumentChecked':
      return { instrument, instrument_check: fact.result, instrument_due: fact.next };
  }
}

/** What it was read with, and the check that stood then. */
function instrumentOf(
  { fact, happenedAt: at }: Entry,
  instruments: readonly Instrument[],
  dayOf: (at: EpochMs) => string,
): Partial<Record<ExportColumn, Cell>> {
  const name = readWith(fact);
  if (name === undefined) return {};
  const instrument = instrumentNamed(instruments, name);
  const check = instrument && lastCheckBy(instrument, at);
  return {
    instrument: name,
    instrument_checked: check && dayOf(check.at),
    instrument_check: check?.result,
    instrument_due: instrument && dueBy(instrument, at),
  };
}

const numberOf = (name: string | undefined): Cell => (name === undefined ? undefined : Number(name));

function filmFigures(fact: FactOf<'FilmRead'>): Partial<Record<ExportColumn, Cell>> {
  const sum = fact.micrometres.reduce((total, film) => total + film, 0);
  const list = fact.micrometres.join(' ');
  return {
    ...{ film_state: fact.state, film_um: list, film_mean_um: sum / fact.micrometres.length },
    ...{ film_set: fact.set, film_spot: fact.spot, film_beside: fact.near },
    ...{ film_left_out_um: fact.dropped?.join(' '), film_base_um: fact.baseMicrometres },
  };
}

function testFigures(fact: FactOf<'FilmTested'>): Partial<Record<ExportColumn, Cell>> {
  const { type: _, of, coupon: _on, retest: _why, ...read } = fact;
  return { test: of, test_result: Object.values(read).flat().join(' ') };
}

const disposedTold = ({ as, to, why, person, document, date }: FactOf<'PartDisposed'>): string =>
  [as, to, why, person, document, date].filter((each) => each !== undefined && each !== '').join(', ');

function figuresOf(fact: Fact): Partial<Record<ExportColumn, Cell>> {
  if (!isFor('export', fact)) return {};
  switch (fact.type) {
    case 'BatchOpened':
      return { mass_g: fact.plannedGrams, material: fact.sheet.name, place: fact.place };
    case 'PartsWeighed':
      return { part_a_g: fact.partAGrams, part_b_g: fact.partBGrams };
    case 'PartWeighed':
    case 'PartAdded':
      return fact.component === 'part-a' ? { part_a_g: fact.grams } : { part_b_g: fact.grams };
    case 'MixCaught':
      return { mass_g: fact.grams };
    case 'PotEmptied':
      return { mass_g: fact.leftGrams };
    case 'MixThickened':
      return { reason: fact.seen };
    case 'CanOpened':
      return { mass_g: fact.grams, volume_l: fact.litres, lot: fact.lot, material: fact.sheet.name };
    case 'StockReceived':
      return { mass_g: fact.grams * fact.count, lot: fact.lot, material: fact.sheet };
    case 'LotRecalled':
    case 'RecallEnded':
      return { lot: fact.lot, reason: fact.why };
    case 'CanDiscarded':
    case 'FailureAnswered':
      return { reason: fact.why };
    case 'PartReceived':
      return { serial: fact.serial, job: fact.job, customer: fact.customer, material: fact.metal };
    case 'CoatApplied':
      return { method: fact.method, applied_by: fact.appliedBy };
    case 'CureStarted':
      return { cure_way: fact.way, temperature_degC: fact.setCelsius };
    case 'PartTemperatureRead':
    case 'SurfaceRead':
      return { temperature_degC: fact.celsius };
    case 'LowestRead':
      return { temperature_degC: fact.lowestCelsius };
    case 'AirRead':
      return { temperature_degC: fact.celsius, humidity_percent: fact.relativeHumidityPercent };
    case 'FilmRead':
      return filmFigures(fact);
    case 'FilmTested':
      return testFigures(fact);
    case 'PartHeld':
      return { reason: fact.why === '' ? (fact.because ?? []).join(' ') : fact.why };
    case 'PartDisposed':
      return { reason: disposedTold(fact) };
    case 'HoldAssigned':
      return { reason: [fact.owner, fact.toDo].filter((told) => told !== undefined).join(', ') };
    case 'SolventUsed': {
      const { amount, material, use } = fact;
      const figure = amount.kind === 'mass' ? { mass_g: amount.grams } : { volume_l: amount.litres };
      return { ...figure, material, reason: use };
    }
    case 'InstrumentKept':
    case 'InstrumentChecked':
      return instrumentFigures(fact);
    case 'PhotoFiled':
      return { reason: fact.reference };
    case 'Rang':
    case 'RingAnswered':
      return { reason: fact.key };
  }
}
