// What a can allows when: to open it, to pour from it, to take it after a doubt.

import type { Component } from '../components.ts';
import type { Role } from '../crew/crew-commands.ts';
import type { PersonName, SheetId } from '../ids.ts';
import type { Recall } from '../lot-recalls.ts';
import type { Sheet } from '../products/sheet.ts';
import { hadHappened, type Rule } from '../rules.ts';
import { type EpochMs, type Grams, grams, minutes } from '../units.ts';
import type { Handling } from '../verbs/said.ts';
import { type Can, isCanLive, isGasSensitive, isLeftOver, isShut, leftGrams, weighable } from './can.ts';
import { type Doubt, doubtOf, preStirTimes } from './can-clocks.ts';

/** The maker's word, or the shop's own: lifted by whoever answers for what leaves. */
const recalled: Rule<{ readonly recalled: Recall | undefined }> = {
  code: 'lot-recalled',
  source: 'common practice, no source',
  liftedBy: 'supervisor',
  since: 10,
  check: ({ recalled: recall }) => recall && { code: 'lot-recalled', lot: recall.lot, at: recall.at, why: recall.why },
};

/** Of what a coat is made of, told long after it was poured. */
export const coatRecalled = recalled;

export interface OpenCase {
  readonly sheet: Sheet;
  readonly component: Component;
  readonly handling: Handling | undefined;
  readonly lot: string;
  readonly recalled: Recall | undefined;
  readonly expires: string | undefined;
  /** The local day of the act, ISO. */
  readonly onDate: string;
}

/** Common practice for the need; which part needs it is the sheet's word. */
const noGas: Rule<Pick<OpenCase, 'sheet' | 'component' | 'handling'>> = {
  code: 'no-gas',
  source: 'sheet',
  liftedBy: 'lead',
  check: (can) =>
    can.handling === undefined && isGasSensitive(can) ? { code: 'no-gas', component: can.component } : undefined,
};

/** Nobody opens, closes, stirs, pours or admits one that was cried hot, smoking or swelling: not that day, and not later. */
const reacts: Rule<Pick<PourCase, 'can' | 'at'>> = {
  code: 'can-reacts',
  source: 'common practice, no source',
  liftedBy: 'supervisor',
  since: 6,
  check: ({ can: { number, reacts: since }, at }) =>
    hadHappened(since?.at, at)
      ? { code: 'can-reacts', can: number, seen: since?.seen ?? 'hot', at: since?.at ?? at }
      : undefined,
};

/** Gas over it, the lid on. */
export const blanketRules = [reacts];

export interface LidCase extends Pick<OpenCase, 'sheet' | 'component' | 'handling'> {
  readonly can: Can;
  readonly at: EpochMs;
}

/** Each time that the lid comes off again. */
export const lidRules: readonly Rule<LidCase>[] = [reacts, { ...noGas, since: 4 }];

/** Stirred in it or poured from it, a can that the record has shut was opened first, of whatever is left to be kept from the air. */
export const wasOpenedFirst = (can: Can): boolean => isGasSensitive(can) && isCanLive(can) && isShut(can);

/** What its every opening asks, of a can that is opened for something else. */
export const openedFirstRules: readonly Rule<Pick<PourCase, 'can' | 'handling'>>[] = [
  {
    ...noGas,
    since: 5,
    check: ({ can, handling }, edition) =>
      wasOpenedFirst(can) ? noGas.check({ sheet: can.sheet, component: can.component, handling }, edition) : undefined,
  },
];

/** The stirrer in the can itself. */
export const canStirRules: readonly Rule<Pick<PourCase, 'can' | 'handling' | 'at'>>[] = [reacts, ...openedFirstRules];

/** The lid goes on without gas; `can`: as it was before. */
export interface ShutCase {
  readonly can: Can;
  readonly at: EpochMs;
  readonly handling: 'whole' | undefined;
}

export const shutRules: readonly Rule<ShutCase>[] = [
  reacts,
  {
    code: 'shut-without-gas',
    source: 'sheet',
    liftedBy: 'lead',
    since: 4,
    // Of one whose lid is on there is nothing to shut; before edition 5 it was asked about all the same.
    check: ({ can, handling }, edition) =>
      handling === undefined && isGasSensitive(can) && !(edition >= 5 && isShut(can))
        ? { code: 'shut-without-gas', can: can.number }
        : undefined,
  },
  {
    code: 'whole-left-over',
    source: 'sheet',
    liftedBy: 'lead',
    since: 4,
    check: ({ can, handling }) => (handling === 'whole' ? leftOver(can, leftGrams(can)) : undefined),
  },
];

function leftOver(can: Can, left: Grams) {
  return isGasSensitive(can) && isLeftOver(left)
    ? ({ code: 'whole-left-over', can: can.number, leftGrams: left } as const)
    : undefined;
}

export const openRules: readonly Rule<OpenCase>[] = [
  noGas,
  recalled,
  {
    code: 'can-expired',
    source: 'label',
    liftedBy: 'supervisor',
    check: ({ lot, expires, onDate }) => expiredOn(lot, expires, onDate),
  },
];

/** The last day counts as within. ISO dates sort as text. */
function expiredOn(lot: string, expires: string | undefined, onDate: string) {
  return expires !== undefined && onDate > expires ? ({ code: 'can-expired', lot, expires } as const) : undefined;
}

/** So much taken from a can at `at`, the can as it was before. */
export interface PourCase {
  readonly can: Can;
  readonly grams: Grams;
  readonly leftGrams: Grams;
  /** Said with it, where the can is opened for it. */
  readonly handling: Handling | undefined;
  /** Of the batch that it goes into. */
  readonly sheet: SheetId;
  readonly at: EpochMs;
  readonly onDate: string;
  readonly recalled: Recall | undefined;
  /** The last day of its standing open, by the sheet. */
  readonly openUntil: string | undefined;
}

const doubtful: Rule<Pick<PourCase, 'can' | 'at'>> = {
  code: 'can-doubtful',
  source: 'sheet',
  liftedBy: 'lead',
  check: ({ can, at }) => {
    const doubt = doubtOf(can, at);
    return doubt && { code: 'can-doubtful', can: can.number, since: doubt.since, limitMinutes: limitOf(can, doubt) };
  },
};

const limitOf = ({ sheet }: Can, doubt: Doubt) =>
  doubt.because === 'left-over' ? undefined : (sheet.blanket?.doubtfulMinutes ?? minutes(0));

/** What keeps a can until a lead has looked at it. */
export const canHolds = [reacts, doubtful];

export const pourRules: readonly Rule<PourCase>[] = [
  reacts,
  recalled,
  {
    code: 'can-discarded',
    source: 'the order of the work',
    liftedBy: 'nobody',
    check: ({ can: { number, discarded }, at }) =>
      hadHappened(discarded?.at, at) ? { code: 'can-discarded', can: number, at: discarded?.at ?? at } : undefined,
  },
  {
    code: 'can-of-other-sheet',
    source: 'the order of the work',
    liftedBy: 'nobody',
    check: ({ can, sheet }) =>
      can.sheet.id === sheet ? undefined : { code: 'can-of-other-sheet', can: can.number, sheet: can.sheet.id },
  },
  {
    code: 'can-expired',
    source: 'label',
    liftedBy: 'supervisor',
    check: ({ can: { lot, expires }, onDate }) => expiredOn(lot, expires, onDate),
  },
  {
    code: 'can-open-too-long',
    source: 'sheet',
    liftedBy: 'supervisor',
    since: 4,
    check: ({ can, openUntil: lastDay, onDate }) =>
      lastDay !== undefined && onDate > lastDay ? { code: 'can-open-too-long', can: can.number, lastDay } : undefined,
  },
  doubtful,
  {
    code: 'more-than-can-holds',
    source: 'the order of the work',
    liftedBy: 'nobody',
    check: ({ can, grams, leftGrams }) =>
      grams > leftGrams + weighable ? { code: 'more-than-can-holds', can: can.number, grams, leftGrams } : undefined,
  },
  {
    code: 'whole-left-over',
    source: 'sheet',
    liftedBy: 'lead',
    since: 4,
    check: ({ can, handling = can.handling, grams: taken, leftGrams }) =>
      handling === 'whole' ? leftOver(can, grams(Math.max(0, leftGrams - taken))) : undefined,
  },
  {
    code: 'part-a-not-stirred',
    source: 'sheet',
    liftedBy: 'lead',
    check: ({ can, at }, edition) => {
      const stir = preStirTimes(can, at, edition);
      if (stir === undefined) return undefined;
      const { wantedMinutes, doneAt, servesUntil } = stir;
      const givenMinutes = doneAt === undefined ? stir.givenMinutes : undefined;
      const serves = doneAt !== undefined && servesUntil !== undefined && doneAt <= at && at <= servesUntil;
      const dueAt = doneAt !== undefined && doneAt > at ? doneAt : undefined;
      return serves ? undefined : { code: 'part-a-not-stirred', can: can.number, wantedMinutes, givenMinutes, dueAt };
    },
  },
  ...openedFirstRules,
];

/** `can`: as it was before. */
export interface CheckCase {
  readonly can: Can;
  readonly at: EpochMs;
  readonly role: Role;
  readonly nobodyLeads: boolean;
  /** Who may. */
  readonly who: readonly PersonName[];
}

export const checkRules: readonly Rule<CheckCase>[] = [
  reacts,
  {
    code: 'check-by-lead',
    source: 'the order of the work',
    liftedBy: 'lead',
    check: ({ can, role, nobodyLeads, who }) =>
      role === 'crew' && !nobodyLeads ? { code: 'check-by-lead', can: can.number, who } : undefined,
  },
];
