// What a batch and the cans allow of a weighing, and of adding more to bring an off-ratio mix back.

import { type PourCase, pourRules } from '../can/can-rules.ts';
import type { Component } from '../components.ts';
import type { ObjectionCode } from '../objections.ts';
import { hadHappened, type Rule } from '../rules.ts';
import type { StepLacking } from '../steps/step-objection.ts';
import { stepIsKept } from '../steps/step-rules.ts';
import { type Grams, grams, minutesAfter } from '../units.ts';
import { type BatchCase, potIsThere, weighed } from './batch-rules.ts';
import { vesselTooSmall } from './vessel.ts';

export interface WeighCase extends BatchCase {
  /** Which parts are said to have gone in. */
  readonly components: readonly Component[];
  /** From which cans, where the crew keeps track of them. */
  readonly pours: readonly PourCase[];
  readonly lacking: StepLacking | undefined;
}

/** A can's rule over all the cans of a weighing: the first that objects speaks. */
const overCans: readonly Rule<{ readonly pours: readonly PourCase[] }>[] = pourRules.map((rule) => ({
  ...rule,
  check: ({ pours }, edition) =>
    pours.map((pour) => rule.check(pour, edition)).find((objection) => objection !== undefined),
}));

/** Of a pour whose can is named afterwards: what was at hand then nobody was asked. */
export const namedRules = overCans.filter(({ code }) => code !== 'no-gas');

/** What may be said of the cans of a weighing. */
export const canCodes: readonly ObjectionCode[] = overCans.map(({ code }) => code);

export const weighRules: readonly Rule<WeighCase>[] = [
  ...potIsThere,
  {
    code: 'already-weighed',
    source: 'the order of the work',
    liftedBy: 'nobody',
    check: ({ batch: { weighing }, at }) =>
      hadHappened(weighing?.at, at) ? { code: 'already-weighed', at: weighing?.at ?? at } : undefined,
  },
  {
    code: 'weighed-twice',
    source: 'the order of the work',
    liftedBy: 'nobody',
    check: ({ batch: { inVessel, weighing }, components, at }) => {
      const twice = components.find((component) => hadHappened(inVessel[component]?.at, at));
      const before = twice === undefined ? undefined : inVessel[twice];
      // Both in: the rule above has said so.
      if (twice === undefined || before === undefined || hadHappened(weighing?.at, at)) return undefined;
      return { code: 'weighed-twice', component: twice, at: before.at, grams: before.grams };
    },
  },
  {
    code: 'b-before-a',
    source: 'common practice, no source',
    liftedBy: 'lead',
    check: ({ batch: { inVessel }, components, at }) =>
      components.includes('part-b') && !components.includes('part-a') && !hadHappened(inVessel['part-a']?.at, at)
        ? { code: 'b-before-a' }
        : undefined,
  },
  stepIsKept,
  ...overCans,
];

export interface AddCase extends WeighCase {
  readonly component: Component;
  readonly grams: Grams;
}

export const addRules: readonly Rule<AddCase>[] = [
  ...potIsThere,
  weighed,
  {
    code: 'adding-not-on-sheet',
    source: 'sheet',
    liftedBy: 'supervisor',
    check: ({ batch: { sheet } }) => (sheet.repair === undefined ? { code: 'adding-not-on-sheet' } : undefined),
  },
  {
    code: 'added-too-late',
    source: 'sheet',
    liftedBy: 'supervisor',
    check: ({ batch: { sheet, weighing, filteredAt }, at }) => {
      if (sheet.repair === undefined || weighing === undefined) return undefined;
      const untilAt = minutesAfter(weighing.at, sheet.repair.withinMinutes);
      const filtered = hadHappened(filteredAt, at);
      return filtered || at > untilAt ? { code: 'added-too-late', untilAt, filtered } : undefined;
    },
  },
  {
    // As the sheet's most in one pot is of a mix: what heats is the pot, however it came to hold so much.
    code: 'adding-passes-most',
    since: 2,
    source: 'sheet',
    liftedBy: 'lead',
    check: ({ batch: { weighing, sheet }, grams: more }) => {
      const mostGrams = sheet.mostMixGrams?.value;
      if (weighing === undefined || mostGrams === undefined) return undefined;
      const mixedGrams = grams(weighing.partAGrams + weighing.partBGrams + more);
      return mixedGrams > mostGrams ? { code: 'adding-passes-most', mixedGrams, mostGrams } : undefined;
    },
  },
  {
    code: 'vessel-too-small',
    source: 'the order of the work',
    liftedBy: 'nobody',
    check: ({ batch: { weighing, vesselLitres, sheet }, component, grams: more }) =>
      weighing &&
      vesselTooSmall(sheet, vesselLitres, {
        partAGrams: grams(weighing.partAGrams + (component === 'part-a' ? more : 0)),
        partBGrams: grams(weighing.partBGrams + (component === 'part-b' ? more : 0)),
      }),
  },
  ...overCans,
];
