// Why the figures of a plan are what they are: area and film to wet volume, what is lost on the way, volume to mass.

import { type CoatingPlan, planCoating } from '../../../core/batch/coating-plan.ts';
import { isFailed } from '../../../core/failed.ts';
import { partStream } from '../../../core/ids.ts';
import type { FactId } from '../fact-ids.ts';
import { batchWhys } from './of-batch.ts';
import { entriesOf, type FigureAsked, sheetSource, type Why, type WhyOf, why } from './why.ts';

const ofPlan =
  (make: (asked: FigureAsked, plan: CoatingPlan) => Why | undefined): WhyOf =>
  (asked) => {
    const { question, telling } = asked;
    if (question?.ask !== 'plan') return undefined;
    const plan = planCoating(telling.shop, question, telling.now);
    return isFailed(plan) ? undefined : make(asked, plan);
  };

const filmSource = ({ sheet }: CoatingPlan) => sheetSource(sheet, 'film', sheet.film?.source ?? '');

const area = ofPlan(({ telling: { figures, shop }, question, fact }) => {
  const parts = question?.ask === 'plan' ? question.parts : [];
  const told = parts.flatMap((part) => {
    if ('count' in part) return [`${part.count} × ${figures.area(part.eachSquareMetres)}`];
    const own = shop.parts.get(part.part)?.details.areaSquareMetres;
    return own === undefined ? [] : [`${part.part} ${figures.area(own)}`];
  });
  const named = parts.flatMap((part) => ('part' in part ? [partStream(part.part)] : []));
  const read = [...shop.parts.values()].filter(({ name }) => named.includes(partStream(name)));
  return why(
    { is: 'reading' },
    {
      sum: [`${told.join(' + ')} = ${fact.shown}`],
      read: read.flatMap(({ entries }) => entriesOf(entries, 'PartReceived').slice(-1)).slice(-3),
    },
  );
});

const film = ofPlan(({ telling: { words, figures } }, plan) =>
  plan.filmAssumed
    ? why(filmSource(plan), { assumed: [words.material.planFilmAssumed(plan.dryFilmMicrometres, figures)] })
    : why({ is: 'reading' }),
);

const wet = ofPlan(({ telling: { figures }, fact }, plan) => {
  const solids = plan.sheet.film?.volumeSolidsPercent;
  const dry = figures.film(plan.dryFilmMicrometres);
  return why(filmSource(plan), {
    sum: solids === undefined ? [] : [`${dry} ÷ ${figures.percent(solids, 1)} = ${fact.shown}`],
  });
});

const volume = ofPlan(({ telling: { words, figures }, fact }, plan) => {
  const { filmLitres, oversprayLitres, gearLitres } = plan.need;
  const parts = [filmLitres, oversprayLitres, gearLitres].map((each) => figures.volume(each));
  return why(filmSource(plan), {
    sum: [words.why.planVolume, `${parts.join(' + ')} = ${fact.shown}`],
    assumed: [words.material.planLoss(plan.efficiency, plan.efficiencyFrom, figures)],
  });
});

const mass = ofPlan(({ telling: { words, figures }, fact }, plan) =>
  why(sheetSource(plan.sheet, 'ratio.densities', plan.sheet.ratio.source), {
    sum: [`${figures.volume(plan.need.mixedLitres)} → ${fact.shown}`],
    assumed: [words.why.throughDensities],
  }),
);

const efficiency = ofPlan(({ telling: { words, figures } }, plan) =>
  why(plan.efficiencyFrom === 'rule' ? { is: 'published', what: '40 CFR 60.313, 40 CFR 60.453' } : { is: 'memory' }, {
    assumed: [words.material.planLoss(plan.efficiency, plan.efficiencyFrom, figures)],
  }),
);

/** Of a plan the whole need by the sheet's ratio; of a batch its own. */
const share = (which: 'part-a' | 'part-b'): WhyOf => {
  const own = which === 'part-a' ? 'partAGrams' : 'partBGrams';
  const planned = ofPlan(({ telling: { words, figures }, fact }, plan) => {
    const told = plan.batches.map((batch) => figures.mass(batch[own]));
    return why(sheetSource(plan.sheet, 'ratio', plan.sheet.ratio.source), {
      sum: [`${told.join(' + ')} = ${fact.shown}`],
      assumed: [words.why.toTheStep],
    });
  });
  return (asked) => planned(asked) ?? batchWhys[which](asked);
};

export const planWhys = {
  area,
  'film-wanted': film,
  'wet-film-wanted': wet,
  'mixed-volume': volume,
  'mixed-mass': mass,
  'transfer-efficiency': efficiency,
  'part-a': share('part-a'),
  'part-b': share('part-b'),
} as const satisfies Partial<Record<FactId, WhyOf>>;
