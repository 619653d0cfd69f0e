// Traces both ways: what went on a part and from which lots; what a lot went into and what is left of it.

import type { Batch } from '../../core/batch/batch.ts';
import type { Can } from '../../core/can/can.ts';
import type { GasAfter } from '../../core/can/can-clocks.ts';
import { type Entry, isAct, isLate } from '../../core/history.ts';
import { nounOf, numberIn } from '../../core/ids.ts';
import { filmSheet } from '../../core/part/film-rule.ts';
import { setsJudged } from '../../core/part/film-set-failed.ts';
import type { Part, PartPhase } from '../../core/part/part.ts';
import { partStatus } from '../../core/part/part-status.ts';
import type { BatchTrace, CoatTrace, LotTrace, PartTrace } from '../../core/records/trace.ts';
import { isOfLot } from '../../core/sealed-stock.ts';
import { statusOf } from '../../core/status.ts';
import { grams, minutesBetween } from '../../core/units.ts';
import type { PartDetails } from '../../core/verbs/said.ts';
import { afterCureLines } from './after-cure-lines.ts';
import { briefsOffLines } from './briefs-off.ts';
import { canFacts } from './can-cards.ts';
import { type Card, type CardAction, type CardFact, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { concessionLines } from './concession-lines.ts';
import { asTold, changedBy } from './corrected.ts';
import { provedLines } from './cure-facts.ts';
import { deviationLines } from './deviation-lines.ts';
import { factsOf } from './facts.ts';
import { filmFacts } from './film-cards.ts';
import { readWithTold } from './instrument-cards.ts';
import { lidFacts } from './lid-lines.ts';
import { nextTaps } from './next-taps.ts';
import { papersLines } from './papers-lines.ts';
import { heldLines } from './part-cards.ts';
import { partPhaseTold } from './part-phase.ts';
import { sealedLine } from './sealed-cards.ts';
import { speedLines } from './speed-lines.ts';
import { setSummary } from './spot-cards.ts';
import { stillAskedLines } from './still-asked.ts';
import { surfaceOnPaper } from './surface-asked.ts';

export function partTraceCard(telling: Telling, trace: PartTrace): Card {
  const { records } = telling.words;
  const { part } = trace;
  const booked = detailsOf(telling, part.details);
  return makeCard(
    records.tracePart(part.name),
    trace.deviations.length > 0 || part.verdict?.is === 'held' ? 'warn' : 'plain',
    {
      facts: [...factsOf(telling, { deviations: trace.deviations.length }), ...dryFilmFacts(telling, trace)],
      lines: [
        ...(booked.length === 0 ? [] : [records.bookedAs(booked, telling.figures)]),
        records.phase(phaseOf(telling, trace.phase)),
        ...heldLines(telling, partStatus(telling, part)),
        ...stillAskedLines(telling, partStatus(telling, part), 'always'),
        ...becomeLines(telling, part),
        ...provedLines(telling, partStatus(telling, part)),
        ...afterCureLines(telling, partStatus(telling, part)),
        surfaceOnPaper(telling, part),
        ...papersLines(telling, potsOf(trace)),
        ...judgedLines(telling, trace),
        ...deviationLines(telling, trace.deviations),
        ...briefsOffLines(telling, part.entries),
        ...trace.coats.flatMap((coat, i) => coatLines(telling, coat, i + 1)),
        ...setsJudged(part, filmSheet(telling.shop, part, telling.now)).flatMap((set) =>
          setSummary(telling, part, set),
        ),
        records.steps,
        ...trace.steps.flatMap((entry) => stepLines(telling, entry)),
      ],
      actions: [tap(telling, 'traveller', `traveller ${part.name}`)],
    },
  );
}

/** What was decided of it: as it stands now, and how many of the coats below were reworked. */
function becomeLines(telling: Telling, { verdict, concession, earlier }: Part): readonly string[] {
  const { held } = telling.words.parts;
  return [
    ...(verdict?.is === 'scrapped' || verdict?.is === 'returned' ? [held.disposed(verdict, telling.figures)] : []),
    ...concessionLines(telling, concession),
    ...(earlier.length === 0 ? [] : [held.earlier(earlier.length)]),
  ];
}

export function batchTraceCard(telling: Telling, trace: BatchTrace): Card {
  const { records } = telling.words;
  const names = trace.parts.map(({ name }) => name);
  return makeCard(records.traceBatch(trace.batch.number), trace.deviations.length > 0 ? 'warn' : 'plain', {
    facts: [
      ...factsOf(telling, { parts: names.length, deviations: trace.deviations.length }),
      ...lidFacts(telling, trace.batch),
    ],
    lines: [
      ...judgedLines(telling, trace),
      ...deviationLines(telling, trace.deviations),
      ...papersLines(telling, [trace.batch]),
      ...speedLines(telling, trace.batch),
      ...briefsOffLines(telling, trace.batch.entries),
      ...lotLines(telling, trace),
      records.onParts(names, telling.figures),
      records.steps,
      ...trace.steps.flatMap((entry) => stepLines(telling, entry)),
    ],
    actions: names.slice(0, 3).map((name) => traceTap(telling, name)),
  });
}

export const traceTap = (telling: Telling, name: string): CardAction => ({
  ...tap(telling, 'trace', `trace ${name}`),
  id: `trace-${name.replace(' ', '-')}`,
});

/** Of all its coats, each once. */
export const potsOf = ({ coats }: Pick<PartTrace, 'coats'>): readonly Batch[] => [
  ...new Set(coats.flatMap(({ batch }) => batch ?? [])),
];

/** What went against a rule depends on the rules of its day. */
export function judgedLines(telling: Telling, { editions }: Pick<PartTrace, 'editions'>): readonly string[] {
  return editions.length === 0 ? [] : [telling.words.records.judgedBy(editions, telling.figures)];
}

export function lotTraceCard(telling: Telling, trace: LotTrace): Card {
  const { records } = telling.words;
  const left = trace.cans.reduce((sum, { leftGrams }) => sum + leftGrams, 0);
  return makeCard(records.traceLot(trace.lot), 'plain', {
    facts: factsOf(telling, {
      cans: trace.cans.length,
      batches: trace.batches.length,
      parts: trace.parts.length,
      'can-left': grams(left),
    }),
    lines: [
      ...telling.shop.crew.sealed.filter((each) => isOfLot(each, trace.lot)).map((each) => sealedLine(telling, each)),
      ...trace.cans.flatMap(({ can, leftGrams }) => [
        records.canLeft(can, can.sheet.name, leftGrams, telling.figures),
        ...canHistory(telling, can),
      ]),
      ...trace.batches.map(({ batch, grams: poured, parts }) => records.inBatch(batch, poured, parts, telling.figures)),
      ...trace.parts.map(({ name, phase }) => {
        const part = telling.shop.parts.get(name);
        const held = part === undefined ? [] : heldLines(telling, partStatus(telling, part));
        return records.partStands(
          name,
          [part === undefined ? phaseOf(telling, phase) : partPhaseTold(telling, part), ...held],
          telling.figures,
        );
      }),
    ],
    actions: trace.parts.slice(0, 3).map(({ name }) => traceTap(telling, name)),
  });
}

export function phaseOf(telling: Telling, phase: PartPhase | undefined): string {
  return phase === undefined ? telling.words.records.notKnown : telling.words.phases[phase.is];
}

export function detailsOf(telling: Telling, details: PartDetails): readonly string[] {
  const { serial, job, customer, metal, wallMillimetres } = details;
  const label = telling.words.records.details;
  const named = (name: string, value: string | undefined) => (value === undefined ? [] : [`${name} ${value}`.trim()]);
  return [
    ...named(label.serial, serial),
    ...named(label.job, job),
    ...named(label.customer, customer),
    ...named(label.metal, metal === undefined ? undefined : telling.words.names.metal(metal)),
    ...named(label.wall, wallMillimetres === undefined ? undefined : telling.figures.wall(wallMillimetres)),
  ];
}

function dryFilmFacts(telling: Telling, { part }: PartTrace): readonly CardFact[] {
  const dry = part.films
    .filter(({ state, told }) => state === 'dry' && told === undefined)
    .flatMap(({ micrometres }) => micrometres);
  return dry.length === 0 ? [] : filmFacts(telling, dry);
}

function coatLines(telling: Telling, trace: CoatTrace, number: number): readonly string[] {
  const { records } = telling.words;
  const { coat, batch, air, applied } = trace;
  const sheet = batch === undefined ? '?' : batch.sheet.name;
  return [
    records.coat(number, coat, applied, sheet, telling.figures),
    ...lotLines(telling, trace),
    ...(batch === undefined ? [] : speedLines(telling, batch)),
    records.airThen(air, telling.figures),
  ];
}

export function lotLines(telling: Telling, { lots, unnamed }: Pick<CoatTrace, 'lots' | 'unnamed'>): readonly string[] {
  const { records } = telling.words;
  if (lots.length + unnamed.length === 0) return [records.noLots];
  const named = lots.map(({ can, grams: taken, stirred, gas }) =>
    [
      records.lot(can, taken, telling.figures),
      ...(stirred === undefined
        ? []
        : [records.stirredInCan(stirred.givenMinutes, stirred.wantedMinutes, telling.figures)]),
      ...gasAfterWords(telling, gas),
    ].join(', '),
  );
  return [...named, ...unnamed.map((component) => records.lotNotGiven(component))];
}

/** When gas went over what was left; nothing of a can that needs none. */
export function gasAfterWords({ words, figures }: Telling, gas: GasAfter | undefined): readonly string[] {
  if (gas === undefined) return [];
  const { gasOverIt, gasNotTold } = words.records;
  return [gas.is === 'over-it' ? gasOverIt(gas.at, gas.openMinutes, figures) : gasNotTold];
}

/** What was done to a can and poured from it, from its opening on. */
export function canTraceCard(telling: Telling, can: Can): Card {
  const status = statusOf.can(telling, can);
  const title = telling.words.records.traceCan(can);
  const isDoubtful = status.phase.is === 'doubtful';
  return makeCard(title, isDoubtful ? 'warn' : 'plain', {
    facts: canFacts(telling, status),
    lines: canHistory(telling, can),
    actions: nextTaps(telling, status.next()),
  });
}

function canHistory(telling: Telling, can: Can): readonly string[] {
  const { records } = telling.words;
  return can.entries.filter(isAct).flatMap((entry) => {
    const { fact } = entry;
    if (fact.type === 'CanOpened' && fact.handling !== undefined) {
      const { words, figures } = telling;
      return stepLines(telling, entry, `${words.fact(fact, figures)}, ${words.material.handling[fact.handling]}`);
    }
    if (nounOf(entry.stream) !== 'batch') return stepLines(telling, entry);
    const batch = numberIn(entry.stream);
    const from = 'fromCans' in fact ? (fact.fromCans ?? []) : [];
    const poured = grams(from.filter(({ can: of }) => of === can.number).reduce((sum, each) => sum + each.grams, 0));
    const told = records.pouredInto(batch, poured, telling.figures);
    return stepLines(telling, entry, told);
  });
}

function stepLines(telling: Telling, entry: Entry, told?: string): readonly string[] {
  const { records } = telling.words;
  const { figures } = telling;
  // Of a time that was put right the correction says who and when.
  const isMoved = entry.corrections.some(({ wasAt }) => wasAt !== entry.happenedAt);
  const late = isLate(entry) && !isMoved ? minutesBetween(entry.happenedAt, entry.recordedAt) : undefined;
  return [
    records.step(
      entry.happenedAt,
      entry.by,
      told ?? `${telling.words.fact(entry.fact, figures)}${readWithTold(telling, entry)}`,
      late,
      figures,
    ),
    ...entry.corrections.map((correction) => {
      const { was, is } = changedBy(telling, entry, correction);
      return `  ${records.correction(asTold(telling, correction), was, is, figures)}`;
    }),
  ];
}
