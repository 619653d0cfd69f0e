// A can's answers: opened, lid off, gas over it, stirred, looked at, discarded.

import { type Can, isCanLive, isGasSensitive, leftGrams } from '../../core/can/can.ts';
import { headspaceOf } from '../../core/can/can-clocks.ts';
import { type CanStatus, canStatus } from '../../core/can/can-status.ts';
import type { GasState } from '../../core/can/can-stock.ts';
import type { ReminderKind } from '../../core/reminders/wanted-reminder.ts';
import { commonPractice } from '../../core/session/brief-lines.ts';
import { type CanNow, statusOf } from '../../core/status.ts';
import { type Card, type CardFact, makeCard, type Tone } from './card.ts';
import { massFact, minutesWantedFact, type Telling, volumeFact } from './card-context.ts';
import { clockFacts } from './clock-text.ts';
import { nextTaps } from './next-taps.ts';

export function canFacts(t: Telling, { can, phase, clocks }: CanStatus): readonly CardFact[] {
  return [
    massFact(t, 'can-left', leftGrams(can)),
    ...(phase.is === 'doubtful' ? [] : clockFacts(t, clocks, ['lid-off'])),
    ...gasFacts(t, can),
  ];
}

/** Of an empty can there is nothing to fill. */
function gasFacts(t: Telling, can: Can): readonly CardFact[] {
  const headspace = isGasSensitive(can) && isCanLive(can) ? headspaceOf(can) : undefined;
  if (headspace === undefined) return [];
  return [volumeFact(t, 'headspace', headspace.headspaceLitres), volumeFact(t, 'gas-needed', headspace.gasLitres)];
}

function gasLines(t: Telling, can: Can): readonly string[] {
  const { material } = t.words;
  if (!isGasSensitive(can) || !isCanLive(can)) return [];
  return [headspaceOf(can) === undefined ? material.headspaceUnknown : material.gasSlowly];
}

/** What is said of the gas in a list; empty where it needs none. */
export function gasWords(t: Telling, gas: GasState): string {
  const { gas: words } = t.words.material;
  switch (gas.is) {
    case 'not-needed':
      return '';
    case 'blanketed':
      return words.blanketed(gas.at, t.f);
    case 'lid-off':
    case 'doubtful':
      return words[gas.is](gas.since, t.f);
  }
}

const doubtLines = (t: Telling, { phase }: CanStatus): readonly string[] =>
  phase.is === 'doubtful' ? [t.words.material.doubtfulSince(phase.since, t.f)] : [];

const lidOffLines = (t: Telling, { lidOffSince }: CanStatus): readonly string[] =>
  lidOffSince === undefined ? [] : [t.words.material.lidOffSince(lidOffSince, t.f)];

function preStirLines(t: Telling, { can, preStir, isStirred }: CanStatus): readonly string[] {
  if (preStir === undefined || isStirred) return [];
  return [t.words.material.preStirFirst(preStir.wantedMinutes, can.number, t.f)];
}

export function openedCanCard(t: Telling, status: CanNow): Card {
  const { material, replies } = t.words;
  const { can } = status;
  const lines = [
    material.canNumber(can.number),
    ...(can.sold === undefined ? [] : [material.byDensity(can.sold.litres, can.openedGrams, t.f)]),
    ...preStirLines(t, status),
    ...lidOffLines(t, status),
    ...(can.handling === 'whole' ? [material.wholeNow] : []),
    ...(can.sheet.invented ? [replies.inventedSheet] : []),
  ];
  return canCard(t, status, material.canOpened(can.number, can.component, can.lot), lines);
}

export function lidOffCard(t: Telling, status: CanNow): Card {
  const title = t.words.material.lidOff(status.can.number);
  return canCard(t, status, title, [...preStirLines(t, status), ...lidOffLines(t, status)]);
}

export function blanketedCard(t: Telling, status: CanNow): Card {
  const { material } = t.words;
  const { can } = status;
  const doubt = doubtLines(t, status);
  const lines = isGasSensitive(can) ? gasLines(t, can) : [material.noGasNeeded];
  return canCard(t, status, material.blanketed(can.number), [...doubt, ...lines], doubt.length > 0 ? 'warn' : 'good');
}

export function checkedCard(t: Telling, status: CanNow): Card {
  const { material } = t.words;
  const lines = status.lidOffSince === undefined ? [] : [material.lidStillOff];
  return canCard(t, status, material.checked(status.can.number), [...doubtLines(t, status), ...lines]);
}

export function stirringCanCard(t: Telling, status: CanNow): Card {
  const { can, preStir, clocks } = status;
  const done = clockFacts(t, clocks, ['pre-stir']);
  const wanted =
    preStir === undefined || done.length === 0 ? [] : [minutesWantedFact(t, 'can-stir-wanted', preStir.wantedMinutes)];
  const lines = preStir !== undefined && !preStir.withinPoints ? [t.words.material.preStirBeyond] : [];
  const card = canCard(t, status, t.words.material.canStirring(can.number), lines);
  return { ...card, facts: [...wanted, ...done, ...card.facts] };
}

export function discardedCard(t: Telling, status: CanNow): Card {
  const { material, ruleSources, session } = t.words;
  const card = canCard(t, status, material.discarded(status.can.number), [session.troubles.hot.section]);
  // Whatever the reason: what has begun to react goes on in a closed can.
  return { ...card, hazards: [{ text: material.discardHeats, source: ruleSources[commonPractice] }] };
}

/** What a ring of the can tells and offers. */
export function canRing(t: Telling, can: Can, kind: ReminderKind) {
  const status = statusOf.can(t, can);
  const doubt = doubtLines(t, status);
  const checks = doubt.length === 0 ? [] : [t.words.material.leadChecks(can.number)];
  const blanket = [...doubt, ...checks, ...lidOffLines(t, status)];
  const lines = kind === 'blanket' && blanket.length > 0 ? { lines: blanket } : {};
  return { facts: canFacts(t, status), taps: nextTaps(t, status.next()), ...lines };
}

/** Of a can that air is over, or that is in doubt: a line of what runs. */
export function openCanLine(t: Telling, can: Can): readonly string[] {
  const { phase } = canStatus(t, can);
  const isOpen = phase.is === 'doubtful' || phase.is === 'lid-off';
  return isOpen ? [t.words.material.canStands(can.number, can.component, gasWords(t, phase))] : [];
}

function canCard(t: Telling, status: CanNow, title: string, lines: readonly string[], tone: Tone = 'plain'): Card {
  return makeCard(title, tone, { facts: canFacts(t, status), lines, actions: nextTaps(t, status.next()) });
}
