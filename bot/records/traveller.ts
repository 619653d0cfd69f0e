// What stands on a traveller, put into words: steps with times and names, what went on it and from which lots, charts,
// readings and acceptance by the rule that is named, deviations, corrections as corrections.

import type { Entry } from '../../core/history.ts';
import { judgeFilm } from '../../core/part/film-acceptance.ts';
import type { Head } from '../../core/ports.ts';
import { filmLimits } from '../../core/records/curves.ts';
import type { PartTrace } from '../../core/records/trace.ts';
import { batchOf } from '../../core/shop.ts';
import { micrometres } from '../../core/units.ts';
import type { Telling } from '../cards/card-context.ts';
import { deviationLines } from '../cards/deviation-lines.ts';
import { airLine, detailsOf, judgedLines, lotLines } from '../cards/trace-cards.ts';
import type { Paper, PaperPart, PaperSection, PaperStep } from './traveller-pdf.ts';

export interface TravellerPart {
  readonly trace: PartTrace;
  readonly pictures: readonly Uint8Array[];
}

export function travellerPaper(t: Telling, parts: readonly TravellerPart[], end: Head): Paper {
  const { paper } = t.words.records;
  return {
    size: t.f.profile.paper,
    heading: `${paper.title} ${t.f.list(parts.map(({ trace }) => trace.part.name))}`,
    parts: parts.map((part) => paperPart(t, part)),
    foot: [paper.printed(t.shop.crew.name, t.now, t.f), paper.recordEnd(end.seq, end.hash)],
    page: paper.page,
    createdAt: new Date(t.now),
  };
}

function paperPart(t: Telling, { trace, pictures }: TravellerPart): PaperPart {
  const { records } = t.words;
  const { paper } = records;
  const { part } = trace;
  return {
    title: `${paper.title}: ${part.name}`,
    subtitle: detailsOf(t, part.details),
    verdict: verdictOf(t, trace),
    sections: [
      { title: paper.coats, lines: coatLines(t, trace), warn: false },
      { title: paper.acceptance, lines: acceptanceLines(t, trace), warn: false },
      deviationSection(t, trace),
    ],
    pictures,
    steps: {
      title: trace.steps.some(({ corrections }) => corrections.length > 0)
        ? `${paper.steps}. ${paper.struck}`
        : paper.steps,
      head: [paper.when, paper.who, paper.what],
      rows: trace.steps.map((entry) => stepOf(t, entry)),
    },
  };
}

function verdictOf(t: Telling, { part }: PartTrace): string {
  const { paper } = t.words.records;
  const { verdict } = part;
  if (verdict === undefined) return paper.notReleased;
  if (verdict.is === 'released') return paper.released(verdict.by, stampOf(t, verdict.at));
  return paper.held(t.words.holdReason(verdict, t.f));
}

function coatLines(t: Telling, trace: PartTrace): readonly string[] {
  const { records } = t.words;
  const invented = trace.coats.some(({ batch }) => batch?.sheet.invented === true) ? [records.paper.invented] : [];
  return [
    ...invented,
    ...trace.coats.flatMap(({ coat, batch, lots, air }, i) => [
      records.coat(
        i + 1,
        stampOf(t, coat.at),
        coat.by,
        coat.method,
        coat.batch,
        batch === undefined ? '?' : `${batch.sheet.name} rev. ${batch.sheet.revision}`,
      ),
      ...lotLines(t, lots),
      airLine(t, air),
    ]),
  ];
}

function acceptanceLines(t: Telling, { part }: PartTrace): readonly string[] {
  const { paper } = t.words.records;
  const readings = part.films.map(({ state, micrometres: films }) =>
    paper.readingLine(state, t.f.list(films.map(t.f.film))),
  );
  const dry = part.films.filter(({ state }) => state === 'dry').flatMap(({ micrometres: films }) => films);
  if (dry.length === 0) return [...readings, paper.noReadings];
  const mean = micrometres(dry.reduce<number>((sum, film) => sum + film, 0) / dry.length);
  const low = t.f.film(micrometres(Math.min(...dry)));
  const sheet = batchOf(t.shop, part)?.sheet;
  const limits = sheet === undefined ? undefined : filmLimits(sheet);
  const last = part.films.findLast(({ state }) => state === 'dry')?.micrometres ?? dry;
  return [
    ...readings,
    paper.statistics(t.f.film(mean), low, t.f.film(micrometres(Math.max(...dry))), dry.length),
    ...(limits === undefined
      ? [paper.noRule]
      : [
          paper.judged(
            paper.rule[limits.rule],
            t.f.film(limits.leastMicrometres),
            t.f.film(limits.mostMicrometres),
            limits.source,
          ),
        ]),
    ...(sheet?.filmRule === undefined
      ? []
      : [t.words.parts.film(judgeFilm(last, sheet.filmRule, part.details.areaSquareMetres), t.f)]),
  ];
}

function deviationSection(t: Telling, trace: PartTrace): PaperSection {
  const { paper } = t.words.records;
  const found = deviationLines(t, trace.deviations);
  const lines = [...(found.length === 0 ? [paper.noDeviations] : found), ...judgedLines(t, trace)];
  return { title: paper.deviations, lines, warn: found.length > 0 };
}

function stepOf(t: Telling, entry: Entry): PaperStep {
  const { paper } = t.words.records;
  return {
    time: stampOf(t, entry.happenedAt),
    who: entry.by,
    what: t.words.fact(entry.fact, t.f),
    was: entry.corrections.map(({ wasFact, wasAt, by, at, why }) => ({
      struck: `${stampOf(t, wasAt)} ${t.words.fact(wasFact, t.f)}`,
      by: paper.corrected(by, stampOf(t, at), why),
    })),
  };
}

/** With its date, always: paper outlives the day. */
function stampOf(t: Telling, at: number): string {
  return t.f.dated(at);
}
