// A can's answers: opened, lid off, gas over it, stirred, looked at, discarded.

import { type Can, isCanLive, isGasSensitive, leftGrams } from '../../core/can/can.ts';
import { headspaceOf } from '../../core/can/can-clocks.ts';
import { type CanStatus, canStatus } from '../../core/can/can-status.ts';
import type { GasState } from '../../core/can/can-stock.ts';
import { purgeOfCan } from '../../core/can/purge.ts';
import type { RingingReminder } from '../../core/ports.ts';
import { type CanNow, statusOf } from '../../core/status.ts';
import { type Card, type CardFact, makeCard, type Tone } from './card.ts';
import type { Telling } from './card-context.ts';
import { clockFacts } from './clock-text.ts';
import { discardHazards } from './dead-pot.ts';
import { factsOf } from './facts.ts';
import { nextTaps } from './next-taps.ts';
import { canRings } from './overtaken.ts';
import { gasRunsLine } from './purge-card.ts';

export function canFacts(telling: Telling, { can, phase, clocks }: CanStatus): readonly CardFact[] {
  return [
    ...factsOf(telling, { 'can-left': leftGrams(can) }),
    ...(phase.is === 'doubtful' ? [] : clockFacts(telling, clocks, ['lid-off'])),
    ...gasFacts(telling, can),
  ];
}

/** Of an empty can there is nothing to fill. */
function gasFacts(telling: Telling, can: Can): readonly CardFact[] {
  const headspace = isGasSensitive(can) && isCanLive(can) ? headspaceOf(can) : undefined;
  return factsOf(telling, { headspace: headspace?.headspaceLitres, 'gas-needed': headspace?.gasLitres });
}

function gasLines(telling: Telling, can: Can): readonly string[] {
  const { material } = telling.words;
  if (!isGasSensitive(can) || !isCanLive(can)) return [];
  if (headspaceOf(can) === undefined) return [material.headspaceUnknown];
  const sum = purgeOfCan(telling.shop, can);
  return [...(sum === undefined ? [] : [gasRunsLine(telling, sum)]), material.gasSlowly];
}

/** What is said of the gas in a list; empty where it needs none. */
export function gasWords(telling: Telling, gas: GasState): string {
  const { gas: words } = telling.words.material;
  switch (gas.is) {
    case 'not-needed':
      return '';
    case 'blanketed':
      return words.blanketed(gas.at, telling.figures);
    case 'reacts':
      return words.reacts(gas.seen, gas.since, telling.figures);
    case 'lid-off':
      return words[gas.isShut ? 'without' : 'lid-off'](gas.since, telling.figures);
    case 'doubtful':
      return words.doubtful(gas.since, telling.figures);
  }
}

function doubtLines({ words, figures }: Telling, { phase }: CanStatus): readonly string[] {
  if (phase.is !== 'doubtful') return [];
  const { doubtfulSince, leftOverSince } = words.material;
  return [(phase.because === 'left-over' ? leftOverSince : doubtfulSince)(phase.since, figures)];
}

/** In doubt it has taken up moist air: nobody is told to close it. */
function lidOffLines({ words, figures }: Telling, { can, lidOffSince, phase }: CanStatus): readonly string[] {
  if (lidOffSince === undefined || phase.is === 'reacts') return [];
  const { looseLid, withoutGasSince, lidOffSince: openSince } = words.material;
  if (phase.is === 'doubtful' && phase.because === 'stood-open') return [looseLid];
  return [(can.shutOverAirAt !== undefined ? withoutGasSince : openSince)(lidOffSince, figures)];
}

function preStirLines(telling: Telling, { can, preStir, isStirred }: CanStatus): readonly string[] {
  if (preStir === undefined || isStirred) return [];
  return [telling.words.material.preStirFirst(preStir.wantedMinutes, can.number, telling.figures)];
}

export function openedCanCard(telling: Telling, status: CanNow): Card {
  const { material, replies } = telling.words;
  const { can } = status;
  const lines = [
    material.canNumber(can.number),
    ...(can.sold === undefined ? [] : [material.byDensity(can.sold.litres, can.openedGrams, telling.figures)]),
    ...preStirLines(telling, status),
    ...lidOffLines(telling, status),
    ...(can.handling === 'whole' ? [material.wholeNow] : []),
    ...(can.sheet.invented ? [replies.inventedSheet] : []),
  ];
  return canCard(telling, status, material.canOpened(can.number, can.component, can.lot), lines);
}

export function lidOffCard(telling: Telling, status: CanNow): Card {
  const title = telling.words.material.lidOff(status.can.number);
  return canCard(telling, status, title, [...preStirLines(telling, status), ...lidOffLines(telling, status)]);
}

/** With gas under it, that is what is told of it; of a part that needs none only that its lid is on. */
export function shutCard(telling: Telling, status: CanNow): Card {
  const open = lidOffLines(telling, status);
  if (open.length === 0 && isGasSensitive(status.can)) return blanketedCard(telling, status);
  const title = telling.words.material.lidOn(status.can.number);
  const lines = [...doubtLines(telling, status), ...open];
  return canCard(telling, status, title, lines, lines.length === 0 ? 'good' : 'warn');
}

export function blanketedCard(telling: Telling, status: CanNow): Card {
  const { material } = telling.words;
  const { can } = status;
  const doubt = doubtLines(telling, status);
  // Its minutes run on: the gas was from before.
  if (
    isGasSensitive(can) &&
    !can.entries.some(({ fact, happenedAt }) => fact.type === 'CanBlanketed' && happenedAt >= can.openedAt)
  ) {
    return canCard(
      telling,
      status,
      material.gasBefore(can.number),
      [...doubt, ...lidOffLines(telling, status)],
      'warn',
    );
  }
  const lines = isGasSensitive(can) ? gasLines(telling, can) : [material.noGasNeeded];
  return canCard(
    telling,
    status,
    material.blanketed(can.number),
    [...doubt, ...lines],
    doubt.length > 0 ? 'warn' : 'good',
  );
}

export function checkedCard(telling: Telling, status: CanNow): Card {
  const { material } = telling.words;
  const lines = status.lidOffSince === undefined ? [] : [material.minutesAnew];
  return canCard(telling, status, material.checked(status.can.number), [...doubtLines(telling, status), ...lines]);
}

export function stirringCanCard(telling: Telling, status: CanNow): Card {
  const { can, preStir, clocks } = status;
  const done = clockFacts(telling, clocks, ['pre-stir']);
  const wanted = factsOf(telling, { 'can-stir-wanted': done.length === 0 ? undefined : preStir?.wantedMinutes });
  const lines = preStir !== undefined && !preStir.withinPoints ? [telling.words.material.preStirBeyond] : [];
  const card = canCard(telling, status, telling.words.material.canStirring(can.number), lines);
  return { ...card, facts: [...wanted, ...done, ...card.facts] };
}

export function discardedCard(telling: Telling, status: CanNow): Card {
  const { material, session } = telling.words;
  const card = canCard(telling, status, material.discarded(status.can.number), [session.troubles.hot.section]);
  return { ...card, hazards: discardHazards(telling, status.can) };
}

/** What a ring of the can tells and offers. */
export function canRing(telling: Telling, can: Can, ringing: RingingReminder) {
  const status = statusOf.can(telling, can);
  const doubt = doubtLines(telling, status);
  const checks = doubt.length === 0 ? [] : [telling.words.material.leadChecks(can.number)];
  const blanket = [...doubt, ...checks, ...lidOffLines(telling, status)];
  const lines = ringing.reminder.kind === 'blanket' && blanket.length > 0 ? { lines: blanket } : {};
  return {
    rings: canRings(telling, status, ringing),
    facts: canFacts(telling, status),
    taps: nextTaps(telling, status.next()),
    ...lines,
  };
}

/** Of a can that air is over, or that is in doubt: a line of what runs. */
export function openCanLine(telling: Telling, can: Can): readonly string[] {
  const { phase } = canStatus(telling, can);
  const isOpen = phase.is === 'doubtful' || phase.is === 'lid-off' || phase.is === 'reacts';
  return isOpen ? [telling.words.material.canStands(can.number, can.component, gasWords(telling, phase))] : [];
}

function canCard(
  telling: Telling,
  status: CanNow,
  title: string,
  lines: readonly string[],
  tone: Tone = 'plain',
): Card {
  return makeCard(title, tone, { facts: canFacts(telling, status), lines, actions: nextTaps(telling, status.next()) });
}
