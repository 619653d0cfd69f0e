// How much is in a pot or a can, how much of A there is, and how much is to be mixed: what was weighed, and that nobody
// weighs what is left of a pot before it is empty.

import { potsAtRisk } from '../../../core/asked/pots-at-risk.ts';
import { isComponent, type ThingMeant } from '../../../core/asked/things-meant.ts';
import type { Batch } from '../../../core/batch/batch.ts';
import { planCoating } from '../../../core/batch/coating-plan.ts';
import { leftGrams } from '../../../core/can/can.ts';
import type { PlanAsked, StateQuestion } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { methods } from '../../../core/methods.ts';
import { liveCans, sheetFor } from '../../../core/shop.ts';
import { grams } from '../../../core/units.ts';
import { type Card, type CardAction, makeCard } from '../card.ts';
import type { Telling } from '../card-context.ts';
import { planCard } from '../plan-card.ts';
import { stockCard } from '../stock-card.ts';
import { tapsThatAsk, thingTold } from './things-told.ts';

type HowMuch = Extract<StateQuestion, { ask: 'how-much' }>;

/** `line`: as it was asked; its taps ask the whole plan. */
export function howMuchCard(
  telling: Telling,
  { plan, of }: HowMuch,
  things: readonly ThingMeant[],
  line: string,
): Card {
  if (plan !== undefined) return toMixCard(telling, plan, line);
  const asked = of.flatMap((each) => (each.is === 'name' && isComponent(each) ? [each.name] : []))[0];
  if (asked !== undefined && things.length === 0) {
    const { topics, material } = telling.words;
    const component = asked === 'a' ? 'part-a' : 'part-b';
    const cans = liveCans(telling.shop).filter((can) => can.component === component);
    const mass = grams(cans.reduce((sum, can) => sum + leftGrams(can), 0));
    const title = topics.inCans(material.component[component], mass, telling.figures);
    return { ...stockCard(telling), actions: [], title };
  }
  const parts = things.flatMap((thing) => (thing.is === 'part' ? [{ part: thing.part.name }] : []));
  if (parts.length > 0 && parts.length === things.length) return toMixCard(telling, { parts }, line);
  const [thing] = things;
  if (thing?.is === 'batch') {
    const batch = telling.shop.batches.get(thing.number);
    if (batch !== undefined) return potCard(telling, batch);
  }
  if (thing?.is === 'can') return canCard(telling, thing.number);
  if (thing === undefined && potsAtRisk(telling).length > 0) {
    const pots = potsAtRisk(telling).map(({ batch }) => potCard(telling, batch));
    const stock = stockCard(telling);
    const [first, ...others] = pots.map(({ title }) => title);
    return {
      ...stock,
      actions: [],
      title: first ?? stock.title,
      lines: [...others, telling.words.asked.leftUnknown, ...stock.lines],
    };
  }
  return { ...stockCard(telling), actions: [] };
}

export function massOf({ words: { asked }, figures }: Telling, { weighing, plannedGrams, emptied }: Batch): string {
  if (emptied?.leftGrams !== undefined) return asked.leftInIt(emptied.leftGrams, figures);
  if (weighing === undefined) return asked.notWeighed(plannedGrams, figures);
  return asked.weighedIn(grams(weighing.partAGrams + weighing.partBGrams), figures);
}

function potCard(telling: Telling, batch: Batch): Card {
  const { asked, page } = telling.words;
  const told = thingTold(telling, { is: 'batch', number: batch.number });
  return makeCard(asked.titled(page.batch(batch.number), massOf(telling, batch)), 'plain', {
    facts: told?.facts ?? [],
    lines: [
      told?.phase ?? '',
      ...(batch.weighing === undefined ? [] : [asked.coatsFrom(batch.coats.length, telling.figures)]),
      ...(batch.weighing === undefined || batch.emptied !== undefined ? [] : [asked.leftUnknown]),
    ],
  });
}

function canCard(telling: Telling, number: number): Card {
  const { asked, page } = telling.words;
  const told = thingTold(telling, { is: 'can', number });
  const can = telling.shop.cans.get(number);
  const title =
    can === undefined
      ? page.can(number)
      : asked.titled(page.can(number), asked.leftInIt(leftGrams(can), telling.figures));
  return makeCard(title, 'plain', {
    facts: told?.facts ?? [],
    lines: told === undefined ? [] : [told.phase],
    actions: tapsThatAsk(told?.taps ?? []),
  });
}

/** For each way that the sheet allows: what is lost by it decides how much. */
function toMixCard(telling: Telling, plan: Omit<PlanAsked, 'method'>, line: string): Card {
  const { asked } = telling.words;
  const sheet = sheetFor(telling.shop, plan.sheet);
  const ways = isFailed(sheet) ? [] : methods.filter((method) => sheet.methods.includes(method));
  const sums = ways.flatMap((method) => {
    const sum = planCoating(telling.shop, { ...plan, method }, telling.now);
    return isFailed(sum) ? [] : [{ method, mass: sum.mixedGrams }];
  });
  const strict = (method: string): string => `${line.replace(/^\S+/, 'plan')} ${method}`;
  const [first = 'brush'] = methods;
  if (sums.length === 0) return planCard(telling, { ...plan, method: first }, strict(first));
  const masses = sums.map(({ mass }) => mass);
  const ask = ({ method }: (typeof sums)[number]): CardAction => ({
    id: `plan-${method}`,
    label: telling.words.names.method(method),
    line: strict(method),
  });
  const title = asked.toMixTitle(grams(Math.min(...masses)), grams(Math.max(...masses)), telling.figures);
  return makeCard(title, 'plain', {
    lines: sums.map(({ method, mass }) => asked.toMix(method, mass, telling.figures)),
    actions: sums.map(ask),
  });
}
