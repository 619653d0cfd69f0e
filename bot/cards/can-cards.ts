// A can's answers: opened, lid off, gas over it, stirred, looked at, discarded.

import { type Can, isCanLive, isGasSensitive, leftGrams } from '../../core/can/can.ts';
import { blanketTimes, doubtfulSince, headspaceOf, preStirTimes } from '../../core/can/can-clocks.ts';
import type { ReminderKind } from '../../core/reminders/wanted-reminder.ts';
import { commonPractice } from '../../core/session/brief-lines.ts';
import { type Card, type CardAction, type CardFact, makeCard, type Tone } from './card.ts';
import {
  massFact,
  minutesWantedFact,
  notAfterFact,
  notBeforeFact,
  type Telling,
  tap,
  volumeFact,
} from './card-context.ts';

/** The taps that this can allows next. */
export function canTaps(t: Telling, can: Can): readonly CardAction[] {
  const n = can.number;
  if (!isCanLive(can)) return [];
  const doubtful = doubtfulSince(can, t.now) !== undefined;
  const lidOff = blanketTimes(can) !== undefined;
  const stir = preStirTimes(can, t.now);
  const stirred = stir?.servesUntil !== undefined && stir.servesUntil >= t.now;
  return [
    ...(doubtful ? [tap(t, 'check', `check ${n}`)] : []),
    ...(lidOff ? [tap(t, 'blanket', `blanket ${n}`)] : []),
    ...(stir !== undefined && !stirred ? [tap(t, 'prestir', `prestir ${n}`)] : []),
    ...(!lidOff && isGasSensitive(can) ? [tap(t, 'lid', `lid ${n}`)] : []),
    ...(doubtful ? [tap(t, 'discard', `discard ${n} {why}`)] : []),
  ];
}

export function canFacts(t: Telling, can: Can): readonly CardFact[] {
  const times = blanketTimes(can);
  const doubtful = doubtfulSince(can, t.now) !== undefined;
  return [
    massFact(t, 'can-left', leftGrams(can)),
    ...(times === undefined || doubtful ? [] : [notAfterFact(t, 'blanket-by', times.doubtfulAt)]),
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

function doubtLines(t: Telling, can: Can): readonly string[] {
  const since = doubtfulSince(can, t.now);
  return since === undefined ? [] : [t.words.material.doubtfulSince(t.f.timeDown(since))];
}

function preStirLines(t: Telling, can: Can): readonly string[] {
  const stir = preStirTimes(can, t.now);
  if (stir === undefined || (stir.servesUntil !== undefined && stir.servesUntil >= t.now)) return [];
  return [t.words.material.preStirFirst(t.f.minutesUp(stir.wantedMinutes), can.number)];
}

export function openedCanCard(t: Telling, can: Can): Card {
  const { material, replies } = t.words;
  const since = blanketTimes(can)?.since;
  const lines = [
    material.canNumber(can.number),
    ...preStirLines(t, can),
    ...(since === undefined ? [] : [material.lidOffSince(t.f.timeDown(since))]),
    ...(can.handling === 'whole' ? [material.wholeNow] : []),
    ...(can.sheet.invented ? [replies.inventedSheet] : []),
  ];
  return canCard(t, can, material.canOpened(can.number, can.component, can.lot), lines);
}

export function lidOffCard(t: Telling, can: Can): Card {
  const { material } = t.words;
  const since = blanketTimes(can)?.since;
  const lines = since === undefined ? [] : [material.lidOffSince(t.f.timeDown(since))];
  return canCard(t, can, material.lidOff(can.number), [...preStirLines(t, can), ...lines]);
}

export function blanketedCard(t: Telling, can: Can): Card {
  const { material } = t.words;
  const doubt = doubtLines(t, can);
  const lines = isGasSensitive(can) ? gasLines(t, can) : [material.noGasNeeded];
  return canCard(t, can, material.blanketed(can.number), [...doubt, ...lines], doubt.length > 0 ? 'warn' : 'good');
}

export function checkedCard(t: Telling, can: Can): Card {
  const { material } = t.words;
  const isOff = blanketTimes(can) !== undefined;
  const lines = isOff ? [material.lidStillOff] : [];
  return canCard(t, can, material.checked(can.number), [...doubtLines(t, can), ...lines]);
}

export function stirringCanCard(t: Telling, can: Can): Card {
  const stir = preStirTimes(can, t.now);
  const facts =
    stir?.doneAt === undefined
      ? []
      : [
          minutesWantedFact(t, 'can-stir-wanted', stir.wantedMinutes),
          notBeforeFact(t, 'can-stir-done-at', stir.doneAt),
        ];
  const lines = stir !== undefined && !stir.withinPoints ? [t.words.material.preStirBeyond] : [];
  const card = canCard(t, can, t.words.material.canStirring(can.number), lines);
  return { ...card, facts: [...facts, ...card.facts] };
}

export function discardedCard(t: Telling, can: Can): Card {
  const { material, ruleSources, session } = t.words;
  const card = canCard(t, can, material.discarded(can.number), [session.troubles.hot.section]);
  // Whatever the reason: what has begun to react goes on in a closed can.
  return { ...card, hazards: [{ text: material.discardHeats, source: ruleSources[commonPractice] }] };
}

/** What a ring of the can tells and offers. */
export function canRing(t: Telling, can: Can, kind: ReminderKind) {
  const { material } = t.words;
  const since = blanketTimes(can)?.since;
  const blanket = [
    ...doubtLines(t, can),
    ...(doubtfulSince(can, t.now) === undefined ? [] : [material.leadChecks(can.number)]),
    ...(since === undefined ? [] : [material.lidOffSince(t.f.timeDown(since))]),
  ];
  const lines = kind === 'blanket' && blanket.length > 0 ? { lines: blanket } : {};
  return { facts: canFacts(t, can), taps: canTaps(t, can), ...lines };
}

/** Of a can that air is over, or that is in doubt: a line of what runs. */
export function openCanLine(t: Telling, can: Can): readonly string[] {
  const { gas } = t.words.material;
  const doubtful = doubtfulSince(can, t.now);
  const since = blanketTimes(can)?.since;
  const state =
    doubtful !== undefined
      ? gas.doubtful(t.f.timeDown(doubtful))
      : since === undefined
        ? undefined
        : gas['lid-off'](t.f.timeDown(since));
  return state === undefined ? [] : [`${can.number} ${t.words.material.component[can.component]}: ${state}`];
}

function canCard(t: Telling, can: Can, title: string, lines: readonly string[], tone: Tone = 'plain'): Card {
  return makeCard(title, tone, { facts: canFacts(t, can), lines, actions: canTaps(t, can) });
}
