// Why the figures of a can, of the gas over it and of the stock are what they are.

import { oxygenInAir } from '../../../core/calc/gas.ts';
import { type Can, leftGrams } from '../../../core/can/can.ts';
import { blanketTimes, brimfulOf, headspaceOf, preStirTimes } from '../../../core/can/can-clocks.ts';
import { canStatus } from '../../../core/can/can-status.ts';
import { stockOf } from '../../../core/can/can-stock.ts';
import { purgeFor } from '../../../core/can/purge.ts';
import type { Component } from '../../../core/components.ts';
import { isFailed } from '../../../core/failed.ts';
import { componentDensity } from '../../../core/products/sheet.ts';
import { gramsPerLitre } from '../../../core/units.ts';
import { canFacts } from '../can-cards.ts';
import { timeShown } from '../clock-text.ts';
import type { FactId } from '../fact-ids.ts';
import { entriesOf, type FigureAsked, sheetSource, type Why, type WhyOf, why } from './why.ts';

const ofCan =
  (make: (asked: FigureAsked, can: Can) => Why | undefined): WhyOf =>
  (asked) =>
    asked.of.can === undefined ? undefined : make(asked, asked.of.can);

const shownNow = ({ telling, fact }: FigureAsked, can: Can): string | undefined =>
  canFacts(telling, canStatus(telling, can)).find(({ id }) => id === fact.id)?.shown;

/** What was weighed from it stands under the batch, too. */
const pours = (can: Can) => entriesOf(can.entries, 'CanOpened', 'PartsWeighed', 'PartWeighed', 'PartAdded', 'CanNamed');

const left = ofCan((asked, can) => {
  const { figures } = asked.telling;
  const out = can.pours.map((pour) => ` − ${figures.asRead(pour.grams)}`).join('');
  return why(
    { is: 'record' },
    {
      sum: [`${figures.mass(can.openedGrams)}${out} = ${asked.fact.shown}`],
      read: pours(can).slice(-3),
      now: shownNow(asked, can),
    },
  );
});

/** Physics; how well the gas mixes nobody knows. */
const mixedGas = { is: 'published', what: 'V = Vh ln((C0 − Cp) / (Ct − Cp))' } as const;

const headspace: WhyOf = (asked) => {
  const { telling, of, question, fact } = asked;
  const { words, figures } = telling;
  if (question?.ask === 'purge') {
    const sum = purgeFor(telling.shop, question.asked);
    if (isFailed(sum)) return undefined;
    return why(mixedGas, { sum: [fact.shown], assumed: [words.material.purge.taken(sum.of, figures)] });
  }
  const { can } = of;
  const brimful = can && brimfulOf(can);
  const density = can && componentDensity(can.sheet, can.component);
  if (can === undefined || brimful === undefined || density === undefined) return undefined;
  const filled = `${figures.mass(leftGrams(can))} ÷ ${figures.contentUp(gramsPerLitre(density * 1000))}`;
  return why(sheetSource(can.sheet, 'blanket.cans, ratio.densities', can.sheet.blanket?.source ?? ''), {
    sum: [`${figures.volume(brimful)} − ${filled} = ${fact.shown}`],
    read: pours(can).slice(-2),
    now: shownNow(asked, can),
  });
};

const gas: WhyOf = (asked) => {
  const { telling, of, question, fact } = asked;
  const { words, figures, shop } = telling;
  const sum = question?.ask === 'purge' ? purgeFor(shop, question.asked) : undefined;
  const known = sum === undefined || isFailed(sum) ? of.can && headspaceOf(of.can) : sum;
  const blanket = of.can?.sheet.blanket;
  const target = sum !== undefined && !isFailed(sum) ? sum.targetPercent : blanket?.oxygenTargetPercent;
  if (known === undefined || target === undefined) return undefined;
  const { headspaceLitres } = known;
  return why(mixedGas, {
    sum: [
      `${figures.volume(headspaceLitres)} × ln(${figures.percent(oxygenInAir, 1)} ÷ ${figures.percent(target)}) = ${fact.shown}`,
    ],
    assumed: [words.material.gasSlowly],
  });
};

const oxygen: WhyOf = ({ telling, question, fact }) => {
  const { words, figures, shop } = telling;
  const start = figures.percent(oxygenInAir, 1);
  if (question?.ask === 'purge') {
    const sum = purgeFor(shop, question.asked);
    if (isFailed(sum)) return undefined;
    const flow = `${figures.gasFlow(sum.litresPerMinute)} × ${figures.minutesUp(sum.minutes)}`;
    return why(mixedGas, {
      sum: [`${start} × exp(−${flow} ÷ ${figures.volume(sum.headspaceLitres)}) = ${fact.shown}`],
      assumed: [words.material.gasSlowly],
    });
  }
  if (question?.ask !== 'vent' || question.asked.of !== 'purge') return undefined;
  const { gasLitres, roomLitres } = question.asked;
  return why(
    { is: 'law', of: 'purge' },
    {
      sum: [`${start} × exp(−${figures.volume(gasLitres)} ÷ ${figures.volume(roomLitres)}) = ${fact.shown}`],
      assumed: [words.session.purgeMixed],
    },
  );
};

const blanketBy = ofCan((asked, can) => {
  const { telling, fact } = asked;
  const times = blanketTimes(can);
  const { blanket } = can.sheet;
  if (times === undefined || blanket === undefined) return undefined;
  const since = timeShown(telling, { errs: 'at-most', dueAt: times.since });
  return why(sheetSource(can.sheet, 'blanket.doubtfulMinutes', blanket.source), {
    sum: [`${since} + ${telling.figures.minutesUp(blanket.doubtfulMinutes)} = ${fact.shown}`],
    read: entriesOf(can.entries, 'CanOpened', 'LidOff', 'CanChecked').slice(-2),
    now: shownNow(asked, can),
  });
});

const preStir = ofCan(({ telling, fact }, can) => {
  const { words, figures, now } = telling;
  const asked = can.sheet.preStir;
  const times = preStirTimes(can, now);
  const stir = can.stirs.findLast(({ at }) => at <= now);
  if (asked === undefined || times === undefined) return undefined;
  const isEnd = fact.id === 'can-stir-done-at' && stir !== undefined;
  const from = isEnd
    ? timeShown(telling, { errs: 'at-least', dueAt: stir.at })
    : figures.mass(stir?.grams ?? leftGrams(can));
  const end = isEnd
    ? `${from} + ${figures.minutesUp(times.wantedMinutes)}`
    : `${from} → ${figures.minutesUp(times.wantedMinutes)}`;
  return why(sheetSource(can.sheet, 'preStir.points', asked.source), {
    sum: [words.why.preStirPoints(asked.points, figures), isEnd ? `${end} = ${fact.shown}` : end],
    read: entriesOf(can.entries, 'CanOpened', 'CanStirred').slice(-2),
    assumed: times.withinPoints ? [] : [words.material.preStirBeyond],
  });
});

const stock =
  (component: Component | undefined): WhyOf =>
  ({ telling: { shop, figures, now }, fact }) => {
    const rows = stockOf(shop, now).filter(({ can }) => component === undefined || can.component === component);
    const told = rows.map(({ can, leftGrams: grams }) => `${can.number}: ${figures.mass(grams)}`);
    return why({ is: 'record' }, { sum: told.length === 0 ? [] : [`${told.join(' + ')} → ${fact.shown}`] });
  };

export const canWhys = {
  'can-left': left,
  headspace,
  'gas-needed': gas,
  'oxygen-left': oxygen,
  'blanket-by': blanketBy,
  'can-stir-wanted': preStir,
  'can-stir-done-at': preStir,
  cans: stock(undefined),
  'part-a-stock': stock('part-a'),
  'part-b-stock': stock('part-b'),
} as const satisfies Partial<Record<FactId, WhyOf>>;
