// Traces both ways: what went on a part and from which lots; what a lot went into and what is left of it.

import type { Entry } from '../../core/history.ts';
import { isLate } from '../../core/history.ts';
import type { PartPhase } from '../../core/part/part.ts';
import { partStatus } from '../../core/part/part-status.ts';
import type { AirThen, BatchTrace, CoatTrace, LotTaken, LotTrace, PartTrace } from '../../core/records/trace.ts';
import { grams, minutesBetween } from '../../core/units.ts';
import type { PartDetails } from '../../core/verbs/said.ts';
import { type Card, type CardFact, makeCard } from './card.ts';
import { countFact, massFact, type Telling, tap } from './card-context.ts';
import { changedBy } from './corrected.ts';
import { deviationLines } from './deviation-lines.ts';
import { filmFacts } from './film-facts.ts';
import { heldLines } from './part-cards.ts';
import { letter } from './period-card.ts';

export function partTraceCard(t: Telling, trace: PartTrace): Card {
  const { records } = t.words;
  const { part } = trace;
  const booked = detailsOf(t, part.details);
  return makeCard(
    records.tracePart(part.name),
    trace.deviations.length > 0 || part.verdict?.is === 'held' ? 'warn' : 'plain',
    {
      facts: [countFact(t, 'deviations', trace.deviations.length), ...dryFilmFacts(t, trace)],
      lines: [
        ...(booked === '' ? [] : [records.bookedAs(booked)]),
        records.phase(phaseOf(t, trace.phase)),
        ...heldLines(t, partStatus(t, part)),
        ...judgedLines(t, trace),
        ...deviationLines(t, trace.deviations),
        ...trace.coats.flatMap((coat, i) => coatLines(t, coat, i + 1)),
        records.steps,
        ...trace.steps.flatMap((entry) => stepLines(t, entry)),
      ],
      actions: [tap(t, 'traveller', `traveller ${part.name}`)],
    },
  );
}

export function batchTraceCard(t: Telling, trace: BatchTrace): Card {
  const { records } = t.words;
  const names = trace.parts.map(({ name }) => name);
  return makeCard(records.traceBatch(trace.batch.number), trace.deviations.length > 0 ? 'warn' : 'plain', {
    facts: [countFact(t, 'parts', names.length), countFact(t, 'deviations', trace.deviations.length)],
    lines: [
      ...judgedLines(t, trace),
      ...deviationLines(t, trace.deviations),
      ...lotLines(t, trace.lots),
      names.length === 0 ? records.onNoPart : records.onParts(t.f.list(names)),
      records.steps,
      ...trace.steps.flatMap((entry) => stepLines(t, entry)),
    ],
    actions: names.slice(0, 3).map((name) => ({ ...tap(t, 'trace', `trace ${name}`), id: `trace-${name}` })),
  });
}

/** What went against a rule depends on the rules of its day. */
export function judgedLines(t: Telling, { editions }: Pick<PartTrace, 'editions'>): readonly string[] {
  return editions.length === 0 ? [] : [t.words.records.judgedBy(editions.length, t.f.list(editions.map(String)))];
}

export function lotTraceCard(t: Telling, trace: LotTrace): Card {
  const { records } = t.words;
  const left = trace.cans.reduce((sum, { leftGrams }) => sum + leftGrams, 0);
  return makeCard(records.traceLot(trace.lot), 'plain', {
    facts: [
      countFact(t, 'cans', trace.cans.length),
      countFact(t, 'batches', trace.batches.length),
      countFact(t, 'parts', trace.parts.length),
      massFact(t, 'can-left', grams(left)),
    ],
    lines: [
      ...trace.cans.map(({ can, leftGrams }) =>
        records.canLeft(can.number, letter(can.component), can.sheet.name, t.f.mass(leftGrams)),
      ),
      ...trace.batches.map(({ batch, grams: poured, parts }) =>
        records.inBatch(batch, t.f.mass(poured), parts.length === 0 ? records.noParts : t.f.list(parts)),
      ),
      ...trace.parts.map(({ name, phase }) => {
        const part = t.shop.parts.get(name);
        const held = part === undefined ? [] : heldLines(t, partStatus(t, part));
        return records.partStands(name, t.f.list([phaseOf(t, phase), ...held]));
      }),
    ],
    actions: trace.parts.slice(0, 3).map(({ name }) => ({ ...tap(t, 'trace', `trace ${name}`), id: `trace-${name}` })),
  });
}

export function phaseOf(t: Telling, phase: PartPhase | undefined): string {
  return phase === undefined ? t.words.records.notKnown : t.words.phases[phase.is];
}

export function detailsOf(t: Telling, details: PartDetails): string {
  const { serial, job, customer, metal, wallMillimetres } = details;
  const label = t.words.records.details;
  const named = (name: string, value: string | undefined) => (value === undefined ? [] : [`${name} ${value}`.trim()]);
  return t.f.list([
    ...named(label.serial, serial),
    ...named(label.job, job),
    ...named(label.customer, customer),
    ...named(label.metal, metal === undefined ? undefined : t.words.names.metal(metal)),
    ...named(label.wall, wallMillimetres === undefined ? undefined : t.f.wall(wallMillimetres)),
  ]);
}

function dryFilmFacts(t: Telling, { part }: PartTrace): readonly CardFact[] {
  const dry = part.films.filter(({ state }) => state === 'dry').flatMap(({ micrometres }) => micrometres);
  return dry.length === 0 ? [] : filmFacts(t, dry);
}

function coatLines(t: Telling, { coat, batch, lots, air }: CoatTrace, number: number): readonly string[] {
  const { records } = t.words;
  const sheet = batch === undefined ? '?' : batch.sheet.name;
  return [
    records.coat(number, t.f.timeDown(coat.at), coat.by, coat.method, coat.batch, sheet),
    ...lotLines(t, lots),
    airLine(t, air),
  ];
}

export function lotLines(t: Telling, lots: readonly LotTaken[]): readonly string[] {
  const { records } = t.words;
  if (lots.length === 0) return [records.noLots];
  return lots.map((taken) =>
    records.lot(letter(taken.component), taken.can.lot, taken.can.number, t.f.mass(taken.grams)),
  );
}

export function airLine(t: Telling, air: AirThen): string {
  const { records } = t.words;
  const label = records.airFigures;
  const figures = [
    ...(air.celsius === undefined ? [] : [`${label.air} ${t.f.temperature(air.celsius)}`]),
    ...(air.relativeHumidityPercent === undefined
      ? []
      : [`${label.humidity} ${t.f.percent(air.relativeHumidityPercent)}`]),
    ...(air.dewPointCelsius === undefined ? [] : [`${label.dewPoint} ${t.f.temperature(air.dewPointCelsius)}`]),
    ...(air.surfaceCelsius === undefined ? [] : [`${label.surface} ${t.f.temperature(air.surfaceCelsius)}`]),
  ];
  return figures.length === 0 ? records.airNotRead : records.airThen(t.f.list(figures));
}

function stepLines(t: Telling, entry: Entry): readonly string[] {
  const { records } = t.words;
  const late = isLate(entry) ? records.late(t.f.minutesUp(minutesBetween(entry.happenedAt, entry.recordedAt))) : '';
  return [
    records.step(t.f.timeDown(entry.happenedAt), entry.by, t.words.fact(entry.fact, t.f)) + late,
    ...entry.corrections.map((correction) => {
      const { was, is } = changedBy(t, entry, correction);
      return `  ${records.correction(t.f.timeDown(correction.at), correction.by, was, is, correction.why)}`;
    }),
  ];
}
