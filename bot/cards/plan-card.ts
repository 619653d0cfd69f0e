// What a job needs, as a card: masses, batches and their times, what the stock lacks, and one tap a batch.

import { type CoatingPlan, type NoPlan, planCoating } from '../../core/batch/coating-plan.ts';
import { wetFilmFor } from '../../core/calc/film-build.ts';
import type { PlanAsked } from '../../core/commands.ts';
import { isFailed } from '../../core/failed.ts';
import { defaultPlace } from '../../core/ids.ts';
import { sheetMeant } from '../../core/products/shelf.ts';
import { lastSaid } from '../../core/settled.ts';
import { fraction, grams } from '../../core/units.ts';
import { writeLine } from '../language/write-line.ts';
import { airFacts } from './air-facts.ts';
import { type Card, type CardAction, type CardFact, makeCard } from './card.ts';
import { areaFact, countFact, efficiencyFact, filmFact, massFact, type Telling, volumeFact } from './card-context.ts';
import { sheetTaps } from './sheet-taps.ts';

/** `line`: as it was asked, for the taps that ask it again by a sheet. */
export function planCard(t: Telling, asked: PlanAsked, line: string): Card {
  const plan = planCoating(t.shop, asked, t.now);
  if (plan.kind !== 'planned')
    return makeCard(t.words.material.plan(asked.method), 'warn', {
      lines: [noPlanLine(t, plan)],
      actions: plan.kind === 'no-sheet' ? sheetTaps(t, plan.unclear, (id) => `${line} ${id}`) : [],
    });
  const stock = stockLines(t, plan);
  const isLate = plan.batches.some((batch) => batch.weighAt < t.now);
  return makeCard(t.words.material.plan(plan.method), stock.short || isLate || plan.filmOutside ? 'warn' : 'plain', {
    facts: planFacts(t, plan),
    lines: [...batchLines(t, plan), ...stock.lines, ...groundLines(t, plan)],
    actions: plan.batches.slice(0, mostTaps).map((batch, i) => mixTap(t, plan, batch.grams, i)),
  });
}

/** More would not fit under a card. */
const mostTaps = 4;

/** Rounded up to ten grams: a plan never comes up short. */
function mixTap(t: Telling, plan: CoatingPlan, mass: number, index: number): CardAction {
  const amount = { kind: 'mass' as const, grams: grams(Math.ceil(mass / 10) * 10) };
  const usual = sheetMeant(t.shop.shelf, lastSaid(t.shop.crew, 'sheet')?.sheet);
  const sheet = !isFailed(usual) && usual.id === plan.sheet.id ? {} : { sheet: plan.sheet.id };
  const line = writeLine({ command: { verb: 'mix', amount, ...sheet } }, t.shop.crew.zone);
  return { id: `mix-${index + 1}`, label: `${t.words.buttons.mix} ${index + 1}`, line };
}

function planFacts(t: Telling, plan: CoatingPlan): readonly CardFact[] {
  const { need, dryFilmMicrometres, sheet } = plan;
  const solids = sheet.film === undefined ? undefined : fraction(sheet.film.volumeSolidsPercent / 100);
  const wet = solids && wetFilmFor(dryFilmMicrometres, { volumeSolids: solids, thinnerShare: fraction(0) });
  const total = (pick: 'partAGrams' | 'partBGrams') => grams(plan.batches.reduce((sum, batch) => sum + batch[pick], 0));
  return [
    areaFact(t, need.squareMetres),
    filmFact(t, 'film-wanted', dryFilmMicrometres),
    ...(wet === undefined || isFailed(wet) ? [] : [filmFact(t, 'wet-film-wanted', wet)]),
    volumeFact(t, 'mixed-volume', need.mixedLitres),
    massFact(t, 'mixed-mass', plan.mixedGrams),
    massFact(t, 'part-a', total('partAGrams')),
    massFact(t, 'part-b', total('partBGrams')),
    countFact(t, 'batches', plan.batches.length),
    efficiencyFact(t, plan.efficiency),
    ...airFacts(t, defaultPlace),
  ];
}

function batchLines(t: Telling, { batches }: CoatingPlan): readonly string[] {
  const { material } = t.words;
  return batches.flatMap((batch, i) => {
    return [
      material.planBatch(i + 1, batch, t.f),
      batch.weighAt < t.now
        ? material.planLate(i + 1, batch.weighAt, t.f)
        : material.planStart(i + 1, batch.weighAt, batch.readyAt, t.f),
    ];
  });
}

function stockLines(t: Telling, plan: CoatingPlan): { readonly lines: readonly string[]; readonly short: boolean } {
  const { material } = t.words;
  const short = plan.stock.flatMap(({ component, neededGrams, leftGrams }) =>
    leftGrams !== undefined && leftGrams < neededGrams
      ? [material.planStockShort(component, neededGrams, leftGrams, t.f)]
      : [],
  );
  const unknown = plan.stock.every(({ leftGrams }) => leftGrams === undefined);
  return { lines: unknown ? [material.planStockUnknown] : short, short: short.length > 0 };
}

/** On what the figures stand. */
function groundLines(t: Telling, plan: CoatingPlan): readonly string[] {
  const { material, replies } = t.words;
  const { sheet, need, usableMinutes, dryFilmMicrometres } = plan;
  const { film } = sheet;
  return [
    ...(plan.filmAssumed ? [material.planFilmAssumed(dryFilmMicrometres, t.f)] : []),
    ...(plan.filmOutside && film !== undefined
      ? [material.planFilmOutside(film.lowestDryMicrometres, film.highestDryMicrometres, t.f)]
      : []),
    ...(sheet.methods.includes(plan.method) ? [] : [material.planMethodNot(plan.method)]),
    material.planLoss(plan.efficiency, plan.efficiencyFrom, t.f),
    ...(need.gearLitres > 0 ? [material.planGear(need.gearLitres, t.f)] : []),
    usableMinutes === undefined ? material.planNoRate(t.f) : material.planByTime(usableMinutes, t.f),
    ...(plan.celsius === undefined ? [material.planNotRead] : []),
    material.planGoesBy,
    ...(sheet.invented ? [replies.inventedSheet] : []),
  ];
}

function noPlanLine(t: Telling, plan: NoPlan): string {
  const { material, unclear } = t.words;
  switch (plan.kind) {
    case 'no-sheet':
      return unclear(plan.unclear, t.f);
    case 'no-film':
      return material.planNoFilm;
    case 'no-densities':
      return material.planNoDensities;
    case 'no-area':
      return material.planNoArea(plan.parts, t.f);
    case 'no-time-left':
      return material.planNoTime;
    case 'too-much':
      return material.planTooMuch;
  }
}
