// What stands on a traveller, put into words: steps with times and names, what went on it and from which lots, charts,
// readings and acceptance by the rule that is named, deviations, corrections as corrections.

import type { Entry } from '../../core/history.ts';
import { judgeFilm } from '../../core/part/film-acceptance.ts';
import { filmSheet } from '../../core/part/film-rule.ts';
import { setsJudged } from '../../core/part/film-set-failed.ts';
import { partStatus } from '../../core/part/part-status.ts';
import type { Head } from '../../core/ports.ts';
import { filmLimits } from '../../core/records/curves.ts';
import type { PartTrace } from '../../core/records/trace.ts';
import { micrometres } from '../../core/units.ts';
import { afterCureLines } from '../cards/after-cure-lines.ts';
import type { Telling } from '../cards/card-context.ts';
import { concessionLines } from '../cards/concession-lines.ts';
import { provedLines } from '../cards/cure-facts.ts';
import { deviationLines } from '../cards/deviation-lines.ts';
import { readWithTold } from '../cards/instrument-cards.ts';
import { papersLines } from '../cards/papers-lines.ts';
import { setLines } from '../cards/spot-cards.ts';
import { surfaceOnPaper } from '../cards/surface-asked.ts';
import { detailsOf, judgedLines, lotLines, potsOf } from '../cards/trace-cards.ts';
import type { Paper, PaperPart, PaperSection, PaperStep } from './traveller-pdf.ts';

export interface TravellerPart {
  readonly trace: PartTrace;
  readonly pictures: readonly Uint8Array[];
}

export function travellerPaper(telling: Telling, parts: readonly TravellerPart[], end: Head): Paper {
  const { paper } = telling.words.records;
  return {
    size: telling.figures.profile.paper,
    heading: paper.heading(
      parts.map(({ trace }) => trace.part.name),
      telling.figures,
    ),
    parts: parts.map((part) => paperPart(telling, part)),
    foot: [paper.printed(telling.shop.crew.name, telling.now, telling.figures), paper.recordEnd(end.seq, end.hash)],
    page: paper.page,
    createdAt: new Date(telling.now),
  };
}

function paperPart(telling: Telling, { trace, pictures }: TravellerPart): PaperPart {
  const { records } = telling.words;
  const { paper } = records;
  const { part } = trace;
  return {
    title: `${paper.title}: ${part.name}`,
    subtitle: telling.figures.list(detailsOf(telling, part.details)),
    verdict: verdictOf(telling, trace),
    sections: [
      { title: paper.coats, lines: coatLines(telling, trace), warn: false },
      { title: paper.acceptance, lines: acceptanceLines(telling, trace), warn: false },
      deviationSection(telling, trace),
    ],
    pictures,
    steps: {
      title: trace.steps.some(({ corrections }) => corrections.length > 0)
        ? `${paper.steps}. ${paper.struck}`
        : paper.steps,
      head: [paper.when, paper.who, paper.what],
      rows: trace.steps.map((entry) => stepOf(telling, entry)),
    },
  };
}

function verdictOf(telling: Telling, { part }: PartTrace): string {
  const { paper } = telling.words.records;
  const { verdict } = part;
  if (verdict === undefined) return paper.notReleased;
  switch (verdict.is) {
    case 'released':
      return [
        paper.released(verdict.by, verdict.at, telling.figures),
        ...concessionLines(telling, verdict.concession, { ...telling.figures, timeDown: telling.figures.dated }),
      ].join(' ');
    case 'held':
      return paper.held(telling.words.holdReason(verdict, telling.figures));
    case 'scrapped':
    case 'returned':
      return telling.words.parts.held.disposed(verdict, { ...telling.figures, timeDown: telling.figures.dated });
  }
}

function coatLines(telling: Telling, trace: PartTrace): readonly string[] {
  const { records } = telling.words;
  const invented = trace.coats.some(({ batch }) => batch?.sheet.invented === true) ? [records.paper.invented] : [];
  return [
    ...invented,
    surfaceOnPaper(telling, trace.part),
    ...papersLines(telling, potsOf(trace), { ...telling.figures, timeDown: telling.figures.dated }),
    ...trace.coats.flatMap(({ coat, batch, applied, lots, unnamed, air }, i) => [
      records.coat(
        i + 1,
        coat,
        applied,
        batch === undefined ? '?' : `${batch.sheet.name} rev. ${batch.sheet.revision}`,
        // With its date, always: paper outlives the day.
        { ...telling.figures, timeDown: telling.figures.dated },
      ),
      ...lotLines(telling, { lots, unnamed }),
      records.airThen(air, telling.figures),
    ]),
    ...provedLines(telling, partStatus(telling, trace.part)),
    ...afterCureLines(telling, partStatus(telling, trace.part), { ...telling.figures, timeUp: telling.figures.dated }),
  ];
}

function acceptanceLines(telling: Telling, { part }: PartTrace): readonly string[] {
  const { paper } = telling.words.records;
  const sheet = filmSheet(telling.shop, part, telling.now);
  const limits = sheet === undefined ? undefined : filmLimits(sheet);
  const sets = setsJudged(part, sheet);
  const ofSets = sets.flatMap((set) => setLines(telling, part, set));
  const numbers = sets.map(({ set }) => set.number);
  const films = part.films.filter(({ told }) => told === undefined || !numbers.includes(told.set));
  const readings = films.map(({ state, micrometres: read }) => paper.readingLine(state, read, telling.figures));
  const dry = films.filter(({ state }) => state === 'dry').flatMap(({ micrometres: read }) => read);
  const judged = limits === undefined ? [paper.noRule] : [paper.judged(limits, telling.figures)];
  if (dry.length === 0) return [...readings, ...ofSets, ...(sets.length === 0 ? [paper.noReadings] : judged)];
  const mean = micrometres(dry.reduce<number>((sum, film) => sum + film, 0) / dry.length);
  const last = films.findLast(({ state }) => state === 'dry')?.micrometres ?? dry;
  return [
    ...readings,
    ...ofSets,
    paper.statistics(
      { mean, lowest: micrometres(Math.min(...dry)), highest: micrometres(Math.max(...dry)), count: dry.length },
      telling.figures,
    ),
    ...judged,
    ...(sheet?.filmRule === undefined
      ? []
      : [telling.words.parts.film(judgeFilm(last, sheet.filmRule, part.details.areaSquareMetres), telling.figures)]),
  ];
}

function deviationSection(telling: Telling, trace: PartTrace): PaperSection {
  const { paper } = telling.words.records;
  const found = deviationLines(telling, trace.deviations);
  const lines = [...(found.length === 0 ? [paper.noDeviations] : found), ...judgedLines(telling, trace)];
  return { title: paper.deviations, lines, warn: found.length > 0 };
}

function stepOf(telling: Telling, entry: Entry): PaperStep {
  const { paper } = telling.words.records;
  return {
    time: telling.figures.dated(entry.happenedAt),
    who: entry.by,
    what: `${telling.words.fact(entry.fact, telling.figures)}${readWithTold(telling, entry)}`,
    was: entry.corrections.map((correction) => ({
      struck: `${telling.figures.dated(correction.wasAt)} ${telling.words.fact(correction.wasFact, telling.figures)}`,
      by: paper.corrected(correction, telling.figures),
    })),
  };
}
