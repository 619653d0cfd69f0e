// How a batch stands at a moment: its phase, its clocks, what holds it, and what may be done with it next, the likeliest
// first. Cards, board and lists only lay it out.

import type { ClockReading } from '../calc/clock.ts';
import { splitMass } from '../calc/mixing.ts';
import { isOn } from '../calc/runs.ts';
import { coatRecalled } from '../can/can-rules.ts';
import { recalledIn } from '../can/recalled-in.ts';
import type { Command } from '../commands.ts';
import { isFailed } from '../failed.ts';
import { careFor } from '../heat-care.ts';
import { methodRows } from '../methods.ts';
import { actsOf, type Candidate, type Moment } from '../next-acts.ts';
import { type AtLeastClock, type AtMostClock, atLeast, atMost } from '../noun-clock.ts';
import type { Objection, ObjectionCode } from '../objections.ts';
import { coatOnPartRules } from '../part/part-rules.ts';
import { mixRatio } from '../products/sheet.ts';
import { editionOfToday } from '../rule-editions.ts';
import { objectionsTo } from '../rules.ts';
import { coatUnderBriefRules } from '../session/session-rules.ts';
import { airLog } from '../shop.ts';
import { type EpochMs, grams, litres, type Minutes } from '../units.ts';
import { type Batch, type BatchPhase, phaseOf } from './batch.ts';
import { blendClock, blendDueAt, blendWantedMinutes, potLifeClock, potLifeTimes } from './batch-clocks.ts';
import { potHolds } from './batch-rules.ts';
import { filterOfSheet } from './filtering.ts';
import { gearToClean } from './gear-to-clean.ts';
import { canCodes } from './weigh-rules.ts';

export interface BatchStatus {
  readonly batch: Batch;
  /** `over`: its life has ended by the clock, whatever else was said of it. */
  readonly phase: BatchPhase | { readonly is: 'over'; readonly at: EpochMs };
  /** Until the mix is filtered: after that nobody waits for its stirring. */
  readonly blend: AtLeastClock<'stir' | 'induction'> | undefined;
  /** From the first contact until it is waste or empty. */
  readonly pot: AtMostClock<'pot'> | undefined;
  readonly clocks: readonly (AtLeastClock<'stir' | 'induction'> | AtMostClock<'pot'>)[];
  /** What the blend was given so far, and what it asks at the temperature that counts now. */
  readonly given: ClockReading;
  readonly wantedMinutes: Minutes | undefined;
  /** Why nothing good comes of it any more, or nothing until somebody settles it. */
  readonly heldBy: readonly Objection[];
}

export function batchStatus({ shop, now }: Moment, batch: Batch): BatchStatus {
  const air = airLog(shop, batch.place);
  const given = blendClock(batch, air, now);
  const isUsable = batch.weighing !== undefined && batch.thickened === undefined && batch.emptied === undefined;
  const blend =
    isUsable && batch.filteredAt === undefined
      ? atLeast(batch.sheet.blend.way, now, {
          progress: given.dose.progress,
          dueAt: blendDueAt(batch, air),
          doneAt: given.doneAt,
          runs: given.running,
          noCredit: given.withoutFigure !== undefined,
        })
      : undefined;
  const times = isUsable ? potLifeTimes(batch, air) : undefined;
  const pot =
    times &&
    atMost('pot', now, {
      progress: potLifeClock(batch, air, now).dose.progress,
      nearAt: times.marginAt,
      dueAt: times.endAt,
    });
  return {
    batch,
    phase: pot !== undefined && pot.dueAt <= now ? { is: 'over', at: pot.dueAt } : phaseOf(batch),
    blend,
    pot,
    clocks: [...(blend === undefined ? [] : [blend]), ...(pot === undefined ? [] : [pot])],
    given,
    wantedMinutes: blendWantedMinutes(batch, given),
    heldBy: [
      ...objectionsTo(potHolds, { batch, air, at: now }, editionOfToday),
      ...objectionsTo([coatRecalled], { recalled: recalledIn(shop, batch, now) }, editionOfToday),
    ],
  };
}

export const isRatioOut = ({ heldBy }: BatchStatus): boolean => heldBy.some(({ code }) => code === 'ratio-out');

export type BatchActId =
  | 'weigh'
  | 'weigh-a'
  | 'weigh-b'
  | 'filter'
  | 'stop'
  | 'stir'
  | 'coat'
  | 'catch'
  | 'cover'
  | 'thick'
  | 'hot'
  | 'empty'
  | 'flush-step'
  | 'gear-cleaned';

/** What cans, part and brief say of it is told when it is pressed: which ones are meant is not known before. */
const saidOfPart: readonly ObjectionCode[] = [...coatOnPartRules, ...coatUnderBriefRules].map(({ code }) => code);

export function batchActs({ batch, phase, given }: BatchStatus): readonly Candidate<BatchActId>[] {
  const { number, sheet } = batch;
  const act = actsOf<BatchActId>(String(number));
  const onPot = (verb: 'empty' | 'stir' | 'stop' | 'cover' | 'thick' | 'hot') => act(verb, { verb, batch: number });
  switch (phase.is) {
    case 'to-weigh':
      return [act(...weighing(batch), { despite: canCodes })];
    case 'blending':
    case 'paused':
    case 'filtered': {
      const { caught, coats, uncovered, filteredAt } = batch;
      const toFilter = caught.some((each) => each.filteredAt === undefined);
      const lastCoat = coats.at(-1);
      const drains = lastCoat !== undefined && methodRows[lastCoat.method].drains;
      const isOpen = isOn(uncovered);
      // Filtered too early, it is stirred on: nothing else comes of it.
      const turns = sheet.blend.way === 'stir' && (phase.is !== 'filtered' || given.doneAt === undefined);
      const isInUse = filteredAt !== undefined || sheet.filter === undefined;
      return [
        ...(toFilter || sheet.filter !== undefined
          ? [act('filter', { verb: 'filter', batch: number, ...filterOfSheet(sheet) })]
          : []),
        ...(turns ? [onPot(batch.stirring.at(-1)?.to === undefined ? 'stop' : 'stir')] : []),
        ...coating(batch),
        ...(drains && !toFilter ? [act('catch', { verb: 'catch', batch: number, grams: grams(1) })] : []),
        ...(isOpen ? [onPot('cover')] : []),
        onPot('thick'),
        ...(isInUse ? [onPot('empty')] : []),
      ];
    }
    case 'dead':
      // Of one that heats already nothing is offered: it is left alone.
      if (careFor(phase.seen) === 'feel-first') return [onPot('empty'), onPot('hot'), ...cleaningActs(batch)];
      return phase.seen === 'gelled'
        ? [onPot('hot'), act('empty', { verb: 'empty', batch: number }, { despite: ['pot-dead'] })]
        : [];
    case 'over':
      return [onPot('empty'), ...cleaningActs(batch)];
    case 'emptied':
      return cleaningActs(batch);
  }
}

/** Both parts, or the one that is still to come. */
function weighing({ number: batch, inVessel, plannedGrams, sheet }: Batch): readonly [BatchActId, Command] {
  const split = splitMass(plannedGrams, mixRatio(sheet.ratio));
  const { partAGrams, partBGrams } = isFailed(split) ? { partAGrams: grams(1), partBGrams: grams(1) } : split;
  if (inVessel['part-a'] !== undefined) return ['weigh-b', { verb: 'weigh', batch, partBGrams }];
  if (inVessel['part-b'] !== undefined) return ['weigh-a', { verb: 'weigh', batch, partAGrams }];
  return ['weigh', { verb: 'weigh', batch, partAGrams, partBGrams }];
}

/** Of what is still to be cleaned the first: with the next solvent of the sheet, or all of it. */
export function cleaningActs(batch: Batch): readonly Candidate<'flush-step' | 'gear-cleaned'>[] {
  const [first] = gearToClean(batch);
  if (first === undefined) return [];
  const act = actsOf<'flush-step' | 'gear-cleaned'>(String(batch.number));
  const whole = { verb: 'flush', session: batch.number, gear: first.gear } as const;
  const [solvent] = first.left;
  return [
    ...(solvent === undefined ? [] : [act('flush-step', { ...whole, solvent, litres: litres(0.3) })]),
    act('gear-cleaned', whole),
  ];
}

/** On which part and by which method is asked first. */
function coating({ number: batch, sheet: { methods } }: Batch): readonly Candidate<BatchActId>[] {
  const [first, ...others] = methods.map(
    (method) => ({ verb: 'coat', parts: ['-'], asNew: true, batch, method }) as const,
  );
  return first === undefined ? [] : [{ id: 'coat', of: String(batch), said: [first, ...others], despite: saidOfPart }];
}
