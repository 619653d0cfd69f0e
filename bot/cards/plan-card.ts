// What a job needs, as a card: masses, batches and their times, what the stock lacks, and one tap a batch.

import { type CoatingPlan, type NoPlan, planCoating } from '../../core/batch/coating-plan.ts';
import { type ToWeigh, toWeigh } from '../../core/batch/to-weigh.ts';
import { wetFilmFor } from '../../core/calc/film-build.ts';
import type { PlanAsked } from '../../core/commands.ts';
import { scalesAt } from '../../core/crew/scales.ts';
import { isFailed } from '../../core/failed.ts';
import { defaultPlace } from '../../core/ids.ts';
import { sheetFor } from '../../core/shop.ts';
import { fraction, type Grams, grams } from '../../core/units.ts';
import { airFacts } from './air-facts.ts';
import { type Card, type CardAction, type CardFact, makeCard } from './card.ts';
import { lineOf, type Telling } from './card-context.ts';
import { factsOf } from './facts.ts';
import { massBeforeLines } from './pot-mass-lines.ts';
import { sheetTaps } from './sheet-taps.ts';

/** `line`: as it was asked, for the taps that ask it again by a sheet. */
export function planCard(telling: Telling, asked: PlanAsked, line: string): Card {
  const plan = planCoating(telling.shop, asked, telling.now);
  if (isFailed(plan))
    return makeCard(telling.words.material.plan(asked.method), 'warn', {
      lines: [noPlanLine(telling, plan.failed)],
      actions: plan.failed.kind === 'no-sheet' ? sheetTaps(telling, plan.failed.unclear, (id) => `${line} ${id}`) : [],
    });
  const stock = stockLines(telling, plan);
  const isLate = plan.batches.some((batch) => batch.weighAt < telling.now);
  return makeCard(
    telling.words.material.plan(plan.method),
    stock.short || isLate || plan.filmOutside ? 'warn' : 'plain',
    {
      facts: planFacts(telling, plan),
      lines: [
        ...batchLines(telling, plan),
        ...massOfEach(telling, plan),
        ...stock.lines,
        ...groundLines(telling, plan),
      ],
      actions: plan.batches.slice(0, mostTaps).map((batch, i) => mixTap(telling, plan, batch.grams, i)),
    },
  );
}

/** More would not fit under a card. */
const mostTaps = 4;

/** Rounded up to ten grams: a plan never comes up short. */
function mixTap(telling: Telling, plan: CoatingPlan, mass: number, index: number): CardAction {
  const amount = { kind: 'mass' as const, grams: grams(Math.ceil(mass / 10) * 10) };
  const usual = sheetFor(telling.shop);
  const sheet = !isFailed(usual) && usual.id === plan.sheet.id ? {} : { sheet: plan.sheet.id };
  const line = lineOf(telling, { command: { verb: 'mix', amount, ...sheet } });
  return { id: `mix-${index + 1}`, label: `${telling.words.buttons.mix} ${index + 1}`, line };
}

function planFacts(telling: Telling, plan: CoatingPlan): readonly CardFact[] {
  const { need, dryFilmMicrometres, sheet } = plan;
  const solids = sheet.film === undefined ? undefined : fraction(sheet.film.volumeSolidsPercent / 100);
  const wet = solids && wetFilmFor(dryFilmMicrometres, { volumeSolids: solids, thinnerShare: fraction(0) });
  const total = (pick: 'partAGrams' | 'partBGrams') => grams(plan.batches.reduce((sum, batch) => sum + batch[pick], 0));
  return [
    ...factsOf(telling, {
      area: need.squareMetres,
      'film-wanted': dryFilmMicrometres,
      'wet-film-wanted': wet === undefined || isFailed(wet) ? undefined : wet,
      'mixed-volume': need.mixedLitres,
      'mixed-mass': plan.mixedGrams,
      'part-a': total('partAGrams'),
      'part-b': total('partBGrams'),
      batches: plan.batches.length,
      'transfer-efficiency': plan.efficiency,
    }),
    ...airFacts(telling, defaultPlace),
  ];
}

function batchLines(telling: Telling, { batches, sheet }: CoatingPlan): readonly string[] {
  const { material } = telling.words;
  const scales = scalesAt(telling.shop.crew, telling.now);
  return batches.flatMap((batch, i) => [
    ...weighLines(telling, i + 1, batch.grams, toWeigh(sheet, batch.grams, scales)),
    batch.weighAt < telling.now
      ? material.planLate(i + 1, batch.weighAt, telling.figures)
      : material.planStart(i + 1, batch.weighAt, batch.readyAt, telling.figures),
  ]);
}

/** All pots of a plan are of one size. */
const massOfEach = (telling: Telling, { sheet, batches, celsius }: CoatingPlan): readonly string[] =>
  batches.slice(0, 1).flatMap((batch) => massBeforeLines(telling, sheet, batch.grams, celsius));

function weighLines(
  { words, figures }: Telling,
  number: number,
  total: Grams,
  weigh: ToWeigh | undefined,
): readonly string[] {
  if (weigh === undefined) return [];
  const { pair, tooCoarse } = weigh;
  const coarse = tooCoarse === undefined ? [] : [words.objection(tooCoarse, figures)];
  return [words.material.planBatch(number, total, pair, figures), ...coarse];
}

function stockLines(
  telling: Telling,
  plan: CoatingPlan,
): { readonly lines: readonly string[]; readonly short: boolean } {
  const { material } = telling.words;
  const short = plan.stock.flatMap(({ component, neededGrams, leftGrams }) =>
    leftGrams !== undefined && leftGrams < neededGrams
      ? [material.planStockShort(component, neededGrams, leftGrams, telling.figures)]
      : [],
  );
  const unknown = plan.stock.every(({ leftGrams }) => leftGrams === undefined);
  return { lines: unknown ? [material.planStockUnknown] : short, short: short.length > 0 };
}

/** On what the figures stand. */
function groundLines(telling: Telling, plan: CoatingPlan): readonly string[] {
  const { material, replies } = telling.words;
  const { sheet, need, usableMinutes, dryFilmMicrometres } = plan;
  const { film } = sheet;
  return [
    ...(plan.filmAssumed ? [material.planFilmAssumed(dryFilmMicrometres, telling.figures)] : []),
    ...(plan.filmOutside && film !== undefined
      ? [material.planFilmOutside(film.lowestDryMicrometres, film.highestDryMicrometres, telling.figures)]
      : []),
    ...(sheet.methods.includes(plan.method) ? [] : [material.planMethodNot(plan.method)]),
    material.planLoss(plan.efficiency, plan.efficiencyFrom, telling.figures),
    ...(need.gearLitres > 0 ? [material.planGear(need.gearLitres, telling.figures)] : []),
    usableMinutes === undefined
      ? material.planNoRate(telling.figures)
      : material.planByTime(usableMinutes, telling.figures),
    ...(plan.celsius === undefined ? [material.planNotRead] : []),
    material.planGoesBy,
    ...(sheet.invented ? [replies.inventedSheet] : []),
  ];
}

function noPlanLine(telling: Telling, plan: NoPlan): string {
  const { material, unclear } = telling.words;
  switch (plan.kind) {
    case 'no-sheet':
      return unclear(plan.unclear, telling.figures);
    case 'no-film':
      return material.planNoFilm;
    case 'no-densities':
      return material.planNoDensities;
    case 'no-area':
      return material.planNoArea(plan.parts, telling.figures);
    case 'no-time-left':
      return material.planNoTime;
    case 'too-much':
      return material.planTooMuch;
  }
}
