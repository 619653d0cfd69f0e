// What a part allows when. Each case holds the part as it was before the act.

import { type RestsOnReadings, readSoundly } from '../instrument/read-soundly.ts';
import { type Method, methodRows } from '../methods.ts';
import type { AirLog } from '../place/place.ts';
import type { Sheet } from '../products/sheet.ts';
import { type AirRead, airObjection } from '../products/sheet-air.ts';
import type { Rule } from '../rules.ts';
import type { StepLacking } from '../steps/step-objection.ts';
import { stepIsKept } from '../steps/step-rules.ts';
import type { EpochMs } from '../units.ts';
import type { CureWay } from '../verbs/said.ts';
import type { Coat, Part } from './part.ts';
import { cureClock, cureDue, flashTimes, openUntil, recoatTimes, roomCureEnd } from './part-clocks.ts';
import type { HeatNotKnown } from './part-heat.ts';
import { type SurfaceCase, surfaceRules } from './surface-rules.ts';

export interface CoatCase extends AirRead, SurfaceCase, RestsOnReadings {
  readonly method: Method;
  /** Said to be another pass of the coat before it. */
  readonly pass: 'same-coat' | undefined;
}

const lastCoatAt = (part: Part | undefined): EpochMs | undefined => part?.coats.at(-1)?.at;

/** The coat that a new one would lie on; another pass of the same coat lies in it. */
const coatUnder = ({ part, pass }: CoatCase): Coat | undefined =>
  pass === undefined ? (part?.coats.at(-1) ?? part?.reworked?.under) : undefined;

/** Of what is scrapped or given back. Whoever wants it after all decides so first. */
export const stillOurs: Rule<{ readonly part: Part | undefined }> = {
  code: 'disposed',
  source: 'the order of the work',
  liftedBy: 'supervisor',
  since: 9,
  check: ({ part }) => {
    const verdict = part?.verdict;
    if (verdict?.is !== 'scrapped' && verdict?.is !== 'returned') return undefined;
    return { code: 'disposed', is: verdict.is, at: verdict.at, by: verdict.by };
  },
};

export const coatOnPartRules: readonly Rule<CoatCase>[] = [
  stillOurs,
  {
    code: 'recoat-forbidden',
    source: 'sheet',
    liftedBy: 'supervisor',
    check: (situation) => {
      const coat = coatUnder(situation);
      return situation.sheet.recoat.rule === 'forbidden' && coat !== undefined
        ? { code: 'recoat-forbidden', coatedAt: coat.at }
        : undefined;
    },
  },
  {
    code: 'recoat-too-early',
    source: 'sheet',
    liftedBy: 'supervisor',
    check: (situation) => {
      const coat = coatUnder(situation);
      const times = coat && recoatTimes(situation.sheet, coat);
      return times !== undefined && situation.at < times.opensAt
        ? { code: 'recoat-too-early', opensAt: times.opensAt }
        : undefined;
    },
  },
  {
    code: 'recoat-too-late',
    source: 'sheet',
    liftedBy: 'supervisor',
    check: (situation) => {
      const coat = coatUnder(situation);
      const times = coat && recoatTimes(situation.sheet, coat);
      return times !== undefined && situation.at > times.closesAt
        ? { code: 'recoat-too-late', closedAt: times.closesAt }
        : undefined;
    },
  },
  {
    // A patch on film that has begun to dry: the line never leaves and the patch lets go (common practice).
    code: 'film-drying',
    source: 'sheet',
    liftedBy: 'supervisor',
    check: ({ part, sheet, pass, air, at }) => {
      const coat = part?.coats.at(-1);
      if (pass === undefined || coat === undefined) return undefined;
      const until = openUntil(sheet, coat, air);
      const saidDry = part?.dryAt !== undefined && part.dryAt <= at;
      return saidDry || until === undefined || at > until
        ? { code: 'film-drying', openUntil: until, saidDry }
        : undefined;
    },
  },
  {
    code: 'dip-once',
    source: 'common practice, no source',
    liftedBy: 'supervisor',
    check: ({ part, sheet, method, pass }) => {
      const coatedAt = part?.coats.at(-1)?.at ?? part?.reworked?.under?.at;
      // A sheet with a recoat window speaks for a second coat by itself; not for a second dip in the first.
      const once = pass !== undefined || sheet.recoat.rule === 'forbidden';
      return methodRows[method].once && once && coatedAt !== undefined ? { code: 'dip-once', coatedAt } : undefined;
    },
  },
  ...surfaceRules,
  {
    code: 'air-outside',
    source: 'sheet',
    liftedBy: 'supervisor',
    check: (read, edition) => airObjection(read.sheet, read, edition),
  },
  readSoundly,
];

export interface PartCase {
  readonly part: Part;
  /** Of the batch of its last coat; `undefined` while it is bare. */
  readonly sheet: Sheet | undefined;
  readonly air: AirLog;
  readonly at: EpochMs;
}

export interface CureCase extends PartCase, RestsOnReadings {
  readonly way: CureWay;
  readonly lacking: StepLacking | undefined;
  /** Of an oven. */
  readonly heat: HeatNotKnown | undefined;
}

/** Nothing is done to a film before there is one. */
export const coated: Rule<PartCase> = {
  code: 'not-coated',
  source: 'the order of the work',
  liftedBy: 'nobody',
  check: ({ part }) => (part.coats.length === 0 ? { code: 'not-coated' } : undefined),
};

export const dryRules: readonly Rule<PartCase>[] = [coated];

export const cureRules: readonly Rule<CureCase>[] = [
  coated,
  {
    code: 'already-curing',
    source: 'the order of the work',
    liftedBy: 'lead',
    check: ({ part: { cure } }) =>
      cure !== undefined && cure.run.to === undefined ? { code: 'already-curing', since: cure.run.from } : undefined,
  },
  {
    code: 'no-such-cure',
    source: 'sheet',
    liftedBy: 'supervisor',
    check: ({ sheet, way }) =>
      sheet !== undefined && sheet.cure[way.kind] === undefined ? { code: 'no-such-cure', way: way.kind } : undefined,
  },
  stepIsKept,
  {
    // Both the blisters and the vapour of a solvent-wet load: common practice, no source.
    code: 'flash-off-not-over',
    source: 'sheet',
    liftedBy: 'nobody',
    check: ({ part, sheet, way, at }) => {
      const coatedAt = lastCoatAt(part);
      if (sheet === undefined || coatedAt === undefined) return undefined;
      const { leastAt } = flashTimes(sheet, coatedAt);
      return at < leastAt ? { code: 'flash-off-not-over', leastAt, oven: way.kind === 'oven' } : undefined;
    },
  },
  {
    code: 'not-dry',
    source: 'common practice, no source',
    liftedBy: 'nobody',
    check: ({ part, way }) =>
      part.coats.length > 0 && part.dryAt === undefined ? { code: 'not-dry', oven: way.kind === 'oven' } : undefined,
  },
  {
    code: 'hotter-than-part-bears',
    source: 'job',
    liftedBy: 'supervisor',
    check: ({ part, sheet, way }) => {
      if (way.kind !== 'oven') return undefined;
      const ovenCelsius = way.setCelsius ?? sheet?.cure.oven?.atCelsius;
      const { highestCelsius } = part.details;
      return ovenCelsius !== undefined && highestCelsius !== undefined && ovenCelsius > highestCelsius
        ? { code: 'hotter-than-part-bears', ovenCelsius, highestCelsius }
        : undefined;
    },
  },
  {
    code: 'heat-not-known',
    source: 'sheet',
    liftedBy: 'lead',
    since: 5,
    check: ({ heat }) => heat,
  },
  {
    code: 'oven-outside-sheet',
    source: 'sheet',
    liftedBy: 'supervisor',
    check: ({ sheet, way }) => {
      const oven = sheet?.cure.oven;
      if (way.kind !== 'oven' || way.setCelsius === undefined || oven === undefined) return undefined;
      return way.setCelsius < oven.atCelsius || way.setCelsius > oven.highestCelsius
        ? {
            code: 'oven-outside-sheet',
            setCelsius: way.setCelsius,
            lowest: oven.atCelsius,
            highest: oven.highestCelsius,
          }
        : undefined;
    },
  },
  readSoundly,
];

export const cureGiven: Rule<PartCase> = {
  code: 'cure-not-given',
  source: 'sheet',
  liftedBy: 'supervisor',
  check: ({ part, sheet, air, at }) => {
    if (part.coats.length === 0 || sheet === undefined) return undefined;
    const clock = cureClock(part, sheet, air, at);
    if (clock?.doneAt !== undefined && clock.doneAt <= at) return undefined;
    const due = clock && cureDue(part, sheet, air);
    const progress = clock?.dose.progress ?? 0;
    const isInRoom = part.cure?.way === 'room' && part.cure.run.to === undefined;
    const dueAt = isInRoom ? roomCureEnd(part, sheet, air, at)?.at : due?.at;
    return { code: 'cure-not-given', progress, dueAt, measured: due?.basis === 'readings' };
  },
};

export const outRules: readonly Rule<PartCase>[] = [
  {
    code: 'not-curing',
    source: 'the order of the work',
    liftedBy: 'nobody',
    check: ({ part: { cure } }) =>
      cure === undefined || cure.run.to !== undefined ? { code: 'not-curing' } : undefined,
  },
  cureGiven,
];
