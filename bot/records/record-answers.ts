// Answers questions about the past: loads what each names, has the record's own questions asked over it, and words the
// answer as a card. What leaves a file behind goes through the paper tray.

import type { DayAsked } from '../../core/commands.ts';
import { type CanNumber, canStream, nameIn, nounOf, numberIn, partStream, type StreamId } from '../../core/ids.ts';
import { inNaturalOrder } from '../../core/natural-order.ts';
import { exportRows } from '../../core/records/export-rows.ts';
import { periodRecord } from '../../core/records/period.ts';
import type {
  ExportForm,
  FindKey,
  RecordQuestion,
  SpanAsked,
  TraceAsked,
} from '../../core/records/record-questions.ts';
import { daysOf, type Span, spanOf } from '../../core/records/span.ts';
import {
  streamsOfBatch,
  streamsOfLot,
  streamsOfPart,
  traceBatch,
  traceLot,
  tracePart,
} from '../../core/records/trace.ts';
import { type Card, makeCard } from '../cards/card.ts';
import { type Telling, tap } from '../cards/card-context.ts';
import { exposuresCard } from '../cards/exposure-card.ts';
import { type Found, findCard } from '../cards/find-card.ts';
import { periodCard } from '../cards/period-card.ts';
import { keepCard, proofCard } from '../cards/proof-cards.ts';
import { batchRunCard, partRunCard } from '../cards/run-card.ts';
import { batchTraceCard, canTraceCard, lotTraceCard, partTraceCard } from '../cards/trace-cards.ts';
import { type Asker, copyOfRecord } from './copy-of-record.ts';
import { tellingDay, tellingWrong } from './day-question.ts';
import { exportText } from './export-file.ts';
import { ledgerOf, limitsAt, solventCard } from './ledger-questions.ts';
import { loadNamed, type RecordSource } from './loading.ts';
import type { PaperTray } from './paper-tray.ts';
import { papersCard } from './papers-question.ts';
import { drawPng, pictureOf } from './pictures/draw.ts';
import { daysDrawings, partDrawings, pictureFrom, pictureRef } from './pictures/picture-refs.ts';
import { proveRecord } from './proving.ts';
import { writeTraveller } from './traveller-question.ts';

export interface RecordAnswersDeps extends RecordSource {
  readonly papers: PaperTray;
}

export interface RecordAnswers {
  readonly answer: (telling: Telling, question: RecordQuestion, asker: Asker) => Promise<Card>;
  readonly day: (telling: Telling, asked: DayAsked) => Promise<Card>;
  /** What went wrong today. */
  readonly wrong: (telling: Telling) => Promise<Card>;
  /** The day by itself, with the record's last hash; that it was given out is recorded. */
  readonly digest: (telling: Telling, date: string) => Promise<Card>;
  /** The PNG behind a card's `image`; `undefined` where there is nothing to draw. */
  readonly picture: (telling: Telling, ref: string) => Promise<Uint8Array | undefined>;
}

export function createRecordAnswers(deps: RecordAnswersDeps): RecordAnswers {
  return {
    answer: (telling, question, asker) => answer(deps, telling, question, asker),
    day: (telling, asked) => dayOf(deps, telling, asked),
    wrong: (telling) => tellingWrong(deps, telling),
    digest: (telling, date) => digest(deps, telling, date),
    picture: (telling, ref) => picture(deps, telling, ref),
  };
}

async function answer(
  deps: RecordAnswersDeps,
  telling: Telling,
  question: RecordQuestion,
  asker: Asker,
): Promise<Card> {
  const { store, crew } = deps;
  switch (question.ask) {
    case 'week':
    case 'month':
    case 'from':
      return onSpan(telling, question.span, (span) => periodOf(deps, telling, span));
    case 'card':
      return runOf(deps, telling, question.of);
    case 'trace':
      return traceOf(deps, telling, question.of);
    case 'find':
      return findCard(telling, question.value, await found(deps, question.key, question.value, telling));
    case 'traveller':
      return writeTraveller(deps, telling, question.of);
    case 'export':
      return onSpan(telling, question.span, (span) => exported(deps, telling, span, question.form));
    case 'voc':
      return onSpan(telling, question.span, (span) => solventCard(deps, telling, span));
    case 'exposures':
      return onSpan(telling, question.span, (span) => Promise.resolve(exposuresCard(telling, span, question.person)));
    case 'verify':
      return proofCard(telling, await proveRecord(store.archive, crew, question.hash));
    case 'backup':
      return copyOfRecord(deps, telling, question.file, asker);
    case 'keep':
      return keepCard(telling);
    case 'papers':
      return papersCard(deps.papers, telling, question, asker.name);
    default: {
      const never: never = question;
      return never;
    }
  }
}

async function exported(
  { store, crew, papers }: RecordAnswersDeps,
  telling: Telling,
  span: Span,
  form: ExportForm,
): Promise<Card> {
  const { records } = telling.words;
  const streams = store.archive.filedBetween(crew, span.from, span.to);
  const envelopes = await Promise.all(streams.map((stream) => store.eventsUnder(crew, stream)));
  const rows = exportRows(envelopes, span, telling.shop.crew);
  const days = span.first === span.last ? span.first : `${span.first}_${span.last}`;
  const text = await exportText(rows, form, telling);
  // A file of nothing is nothing to hand out.
  if (text === '') return makeCard(records.exported(0), 'plain');
  return makeCard(records.exported(rows.length), 'plain', {
    lines: [records.exportHow],
    paper: papers.put('exports', `${records.export.file(crew)}-${days}.${form}`, text),
    paperAgain: tap(telling, 'ask-again', `export ${span.first} to ${span.last} ${form}`),
  });
}

async function onSpan(telling: Telling, asked: SpanAsked, make: (span: Span) => Promise<Card>): Promise<Card> {
  const span = spanOf(asked, telling.now, telling.shop.crew.zone);
  return span === undefined ? makeCard(telling.words.records.noSuchSpan, 'warn') : make(span);
}

async function periodOf(deps: RecordAnswersDeps, telling: Telling, span: Span): Promise<Card> {
  const { executor, store, crew } = deps;
  const shop = await executor.look(store.archive.filedBetween(crew, span.from, span.to));
  const told = { ...telling, shop };
  const period = periodRecord(shop, span, telling.now);
  const { totals, limits } = await ledgerOf(deps, told, span);
  const card = periodCard(told, { period, ledger: totals, limits, end: await store.head(crew) });
  // A month of bars is a carpet.
  const drawn = !period.idle && daysOf(span, shop.crew.zone).length <= 7;
  return drawn ? { ...card, image: pictureRef({ of: 'days', first: span.first, last: span.last }) } : card;
}

async function traceOf({ executor, store, crew }: RecordAnswersDeps, telling: Telling, of: TraceAsked): Promise<Card> {
  const { records } = telling.words;
  const nothing = (what: string) => makeCard(records.nothingKnown(what), 'plain');
  if ('part' in of) {
    const shop = await loadNamed(executor, (loaded) => streamsOfPart(loaded, of.part));
    const trace = tracePart(shop, of.part);
    if (trace === undefined) return nothing(of.part);
    const card = partTraceCard({ ...telling, shop }, trace);
    const drawn = trace.part.cure !== undefined || trace.part.films.length > 0;
    return drawn ? { ...card, image: pictureRef({ of: 'part', part: of.part }) } : card;
  }
  if ('batch' in of) {
    const shop = await loadNamed(executor, (loaded) => streamsOfBatch(loaded, of.batch));
    const trace = traceBatch(shop, of.batch);
    return trace === undefined ? nothing(records.batchLabel(of.batch)) : batchTraceCard({ ...telling, shop }, trace);
  }
  if ('can' in of) return canOf(executor, telling, of.can);
  const cans = store.archive.bookedUnder(crew, 'lot', of.lot);
  const shop = await loadNamed(executor, (loaded) => streamsOfLot(loaded, cans));
  const trace = traceLot(shop, of.lot, cans);
  return trace === undefined ? nothing(records.lotLabel(of.lot)) : lotTraceCard({ ...telling, shop }, trace);
}

/** A can's trace is how it stands as well. */
async function canOf(executor: RecordAnswersDeps['executor'], telling: Telling, number: CanNumber): Promise<Card> {
  const shop = await loadNamed(executor, () => [canStream(number)]);
  const can = shop.cans.get(number);
  const { nothingKnown, canLabel } = telling.words.records;
  return can === undefined
    ? makeCard(nothingKnown(canLabel(number)), 'plain')
    : canTraceCard({ ...telling, shop }, can);
}

/** A lot has no run of its own. */
async function runOf({ executor }: RecordAnswersDeps, telling: Telling, of: TraceAsked): Promise<Card> {
  const { records } = telling.words;
  const nothing = (what: string) => makeCard(records.nothingKnown(what), 'plain');
  if ('lot' in of) return nothing(records.lotLabel(of.lot));
  if ('can' in of) return canOf(executor, telling, of.can);
  const shop = await loadNamed(executor, (loaded) =>
    'part' in of ? streamsOfPart(loaded, of.part) : streamsOfBatch(loaded, of.batch),
  );
  const told = { ...telling, shop };
  if ('part' in of) {
    const part = shop.parts.get(of.part);
    return part === undefined ? nothing(of.part) : partRunCard(told, part);
  }
  const batch = shop.batches.get(of.batch);
  return batch === undefined ? nothing(records.batchLabel(of.batch)) : batchRunCard(told, batch);
}

async function found(deps: RecordAnswersDeps, key: FindKey, value: string, telling: Telling): Promise<Found> {
  const streams = streamsFound(deps, key, value, telling);
  const shop = await deps.executor.look(streams);
  return {
    parts: streams
      .flatMap((stream) => (nounOf(stream) === 'part' ? (shop.parts.get(nameIn(stream)) ?? []) : []))
      .sort((a, b) => inNaturalOrder(a.name, b.name)),
    cans: streams.flatMap((stream) => (nounOf(stream) === 'can' ? (shop.cans.get(numberIn(stream)) ?? []) : [])),
  };
}

function streamsFound(
  { store, crew }: RecordAnswersDeps,
  key: FindKey,
  value: string,
  telling: Telling,
): readonly StreamId[] {
  const { archive } = store;
  if (key === 'date') {
    const span = spanOf({ kind: 'day', day: { date: value } }, telling.now, telling.shop.crew.zone);
    const filed = span === undefined ? [] : archive.filedBetween(crew, span.from, span.to);
    return filed.filter((stream) => nounOf(stream) === 'part' || nounOf(stream) === 'can');
  }
  const keys = key === 'any' ? (['serial', 'job', 'customer', 'lot'] as const) : [key];
  const booked = keys.flatMap((each) => archive.bookedUnder(crew, each, value));
  const named = key === 'any' ? [partStream(value.toLowerCase())] : [];
  const can = key === 'any' && /^\d{1,7}$/.test(value) ? [canStream(Number(value))] : [];
  return [...new Set([...named, ...booked, ...can])].slice(0, mostFound);
}

async function dayOf(deps: RecordAnswersDeps, telling: Telling, asked: DayAsked): Promise<Card> {
  const card = await tellingDay(deps, telling, asked);
  const wanted = asked.kind === 'date' ? { date: asked.date } : asked.kind;
  const span = spanOf({ kind: 'day', day: wanted }, telling.now, telling.shop.crew.zone);
  if (span === undefined || card.facts.length === 0) return card;
  const { lines, facts } = await limitsAt(deps, telling, span);
  return {
    ...card,
    facts: [...card.facts, ...facts],
    lines: [...card.lines, ...lines],
    actions: [...card.actions, tap(telling, 'whole-day', `from ${span.first} to ${span.last}`)],
    image: pictureRef({ of: 'days', first: span.first, last: span.last }),
  };
}

/** With the record's last hash, since nobody asked for this one. */
async function digest(deps: RecordAnswersDeps, telling: Telling, date: string): Promise<Card> {
  const card = await dayOf(deps, telling, { kind: 'date', date });
  const end = await deps.executor.giveHash('digest', telling.now);
  return end === undefined
    ? card
    : { ...card, lines: [...card.lines, telling.words.records.lastHashShort(end.seq, end.hash)] };
}

async function picture(
  { executor, store, crew }: RecordAnswersDeps,
  telling: Telling,
  ref: string,
): Promise<Uint8Array | undefined> {
  const wanted = pictureFrom(ref);
  if (wanted === undefined) return undefined;
  if (wanted.of === 'part') {
    const shop = await loadNamed(executor, (loaded) => streamsOfPart(loaded, wanted.part));
    const part = shop.parts.get(wanted.part);
    return part === undefined ? undefined : drawn(partDrawings({ ...telling, shop }, part), telling);
  }
  const span = spanOf({ kind: 'range', from: wanted.first, to: wanted.last }, telling.now, telling.shop.crew.zone);
  if (span === undefined) return undefined;
  const shop = await executor.look(store.archive.filedBetween(crew, span.from, span.to));
  return drawn(daysDrawings({ ...telling, shop }, span), telling);
}

/** More is no answer: the line must say more. */
const mostFound = 200;

async function drawn(
  drawings: ReturnType<typeof daysDrawings>,
  { figures: { profile } }: Telling,
): Promise<Uint8Array | undefined> {
  return drawings.length === 0 ? undefined : drawPng(pictureOf(drawings, profile));
}
