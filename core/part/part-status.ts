// How a part stands at a moment: its phase, its clocks, what holds it, and what may be done with it next, the likeliest
// first. Cards, board and lists only lay it out.

import type { CommandOf, Stance } from '../commands.ts';
import type { PartName } from '../ids.ts';
import { methodRows } from '../methods.ts';
import { actsOf, type Candidate, type Moment } from '../next-acts.ts';
import { type AtLeastClock, atLeast, lasts, mayLast, type NounClock } from '../noun-clock.ts';
import type { Objection, ObjectionCode } from '../objections.ts';
import type { AirLog } from '../place/place.ts';
import type { Sheet } from '../products/sheet.ts';
import type { FilmRule, StageName } from '../products/sheet-part.ts';
import { editionOfToday } from '../rule-editions.ts';
import { objectionsTo } from '../rules.ts';
import { airLog, batchOf } from '../shop.ts';
import { celsius, type EpochMs, micrometres, minutes, minutesAfter } from '../units.ts';
import type { CureWay } from '../verbs/said.ts';
import { filmSheet } from './film-rule.ts';
import { halfSet } from './film-set-failed.ts';
import type { SetJudged } from './film-set-judge.ts';
import { filmTerms } from './film-terms.ts';
import { type HeatUp, heatUp } from './heat-up.ts';
import { awaitsFirstCoat, type Coat, type Part, type PartPhase, phaseOfPart } from './part.ts';
import {
  cureClock,
  cureDue,
  flashTimes,
  openUntil,
  type RoomCureEnd,
  recoatTimes,
  roomCureEnd,
  stagesDue,
} from './part-clocks.ts';
import { surfaceNotice } from './part-reminders.ts';
import { partHolds } from './release-rules.ts';
import { earliestSurfaceEnd, type SurfaceEnd, sheetsAtHand } from './surface-life.ts';

export type PartClockId =
  | 'surface'
  | 'flash'
  | 'flash-most'
  | 'open'
  | 'recoat-opens'
  | 'recoat-closes'
  | 'warm'
  | `stage-${StageName}`
  | 'cure';

export interface PartStatus {
  readonly part: Part;
  readonly phase: PartPhase;
  /** Of the batch of its last coat; `undefined` while it is bare. */
  readonly sheet: Sheet | undefined;
  readonly air: AirLog;
  readonly clocks: readonly NounClock<PartClockId>[];
  /** While it waits for its first coat: by which sheet its preparation serves the shortest time. */
  readonly surface: SurfaceEnd | undefined;
  readonly cure: CureStatus | undefined;
  /** Of the old film of a part that is reworked. */
  readonly under: Sheet | undefined;
  readonly heldBy: readonly Objection[];
  /** Of a dry film that is told spot by spot, and not to its end. */
  readonly half: SetJudged | undefined;
  /** Its sheet's, or its job's in place of it. */
  readonly filmRule: FilmRule | undefined;
}

export interface CureStatus {
  readonly clock: AtLeastClock<'cure'>;
  /** `undefined` where the sheet knows no such cure. */
  readonly given: ReturnType<typeof cureClock>;
  readonly warming: HeatUp | undefined;
  /** Of one in the room that is not given yet: its end as it looks now, never in the past. */
  readonly roomEnd: RoomCureEnd | undefined;
}

export function partStatus(moment: Moment, part: Part): PartStatus {
  const { shop, now } = moment;
  const batch = batchOf(shop, part);
  const sheet = batch?.sheet;
  const ofFilm = filmSheet(shop, part, now);
  const air = airLog(shop, batch?.place);
  const phase = phaseOfPart(part);
  const surface = awaitsFirstCoat(phase) ? earliestSurfaceEnd(part, sheetsAtHand(shop), air) : undefined;
  const cure = sheet && cureStatus(part, sheet, air, now);
  const coat = part.coats.at(-1);
  const under = phase.is === 'rework' ? shop.batches.get(phase.under.batch)?.sheet : undefined;
  return {
    ...{ part, phase, sheet, air, surface, cure, under },
    clocks: [
      ...(surface === undefined ? [] : surfaceClocks(part, surface, now)),
      ...(sheet === undefined || coat === undefined ? [] : coatClocks(part, sheet, coat, air, now)),
      ...(cure === undefined || sheet === undefined ? [] : cureClocks(part, sheet, air, cure, now)),
    ],
    half: halfSet(part, ofFilm),
    filmRule: ofFilm?.filmRule,
    heldBy: objectionsTo(partHolds, { part, unlifted: [] }, editionOfToday),
  };
}

/** Nothing is coated any more that is in such a state. */
const ended: ReadonlySet<PartPhase['is']> = new Set(['released', 'left', 'scrapped', 'returned']);

/** Prepared steel dies like a pot does. */
function surfaceClocks({ prepared }: Part, { at }: SurfaceEnd, now: EpochMs): PartStatus['clocks'] {
  const nearAt = minutesAfter(at, minutes(-surfaceNotice));
  return prepared === undefined ? [] : [mayLast('surface', now, prepared.at, at, nearAt)];
}

function coatClocks(part: Part, sheet: Sheet, coat: Coat, air: AirLog, now: EpochMs): PartStatus['clocks'] {
  const { is } = phaseOfPart(part);
  const { leastAt, mostAt } = flashTimes(sheet, coat.at);
  const until = is === 'flashing' ? openUntil(sheet, coat, air) : undefined;
  const recoat = ended.has(is) ? undefined : recoatTimes(sheet, coat);
  return [
    ...(is === 'flashing' || is === 'dry'
      ? [lasts('flash', now, coat.at, leastAt), mayLast('flash-most', now, coat.at, mostAt, leastAt)]
      : []),
    ...(until === undefined || until < now ? [] : [mayLast('open', now, coat.firstAt, until)]),
    ...(recoat === undefined
      ? []
      : [
          lasts('recoat-opens', now, coat.at, recoat.opensAt),
          mayLast('recoat-closes', now, recoat.opensAt, recoat.closesAt),
        ]),
  ];
}

function cureStatus(part: Part, sheet: Sheet, air: AirLog, now: EpochMs): CureStatus | undefined {
  if (part.cure === undefined) return undefined;
  const given = cureClock(part, sheet, air, now);
  const due = cureDue(part, sheet, air);
  const clock = atLeast('cure', now, {
    progress: given?.dose.progress ?? 0,
    dueAt: due?.at,
    doneAt: given?.doneAt,
    runs: given?.running ?? part.cure.run.to === undefined,
    noCredit: given === undefined || given.withoutFigure !== undefined,
    assumed: due !== undefined && due.basis !== 'readings',
  });
  const warming = part.cure.run.to === undefined ? heatUp(part, sheet, air) : undefined;
  const isInRoom = part.cure.way === 'room' && part.cure.run.to === undefined && clock.goes !== 'given';
  const roomEnd = isInRoom ? roomCureEnd(part, sheet, air, now) : undefined;
  return { clock: roomEnd === undefined ? clock : { ...clock, dueAt: roomEnd.at }, given, warming, roomEnd };
}

function cureClocks(
  part: Part,
  sheet: Sheet,
  air: AirLog,
  { clock, warming }: CureStatus,
  now: EpochMs,
): PartStatus['clocks'] {
  const from = part.cure?.run.from ?? now;
  return [
    ...(warming === undefined ? [] : [{ ...lasts('warm', now, from, warming.reachesAt), assumed: true }]),
    ...stagesDue(part, sheet, air, now).map(({ stage, at, proved }) => {
      const clock = lasts(`stage-${stage}` as const, now, from, at);
      return clock.goes === 'given' && !proved ? { ...clock, goes: 'unproved' as const } : clock;
    }),
    clock,
  ];
}

export type PartActId =
  | 'surface'
  | 'prep'
  | 'dry'
  | 'touch-up'
  | 'wet'
  | 'cure-oven'
  | 'cure-room'
  | 'temp'
  | 'door'
  | 'out'
  | 'release'
  | 'lift'
  | 'film'
  | 'hold'
  | 'strip'
  | 'abrade'
  | 'rework'
  | 'concession'
  | 'scrap'
  | 'return';

/** The film waits for it; pressed too early it says for how long still. */
const afterFlashOff: readonly ObjectionCode[] = ['flash-off-not-over'];
/** Whatever is proved, somebody takes it out. */
const beforeProof: readonly ObjectionCode[] = ['cure-not-given'];

const liftsHold: Stance = { is: 'permitted', why: '-', lifts: [{ of: 'hold', why: '-' }] };

/** What stands against its release besides, and is lifted by its own name. */
const besidesHold: readonly ObjectionCode[] = ['cure-not-given', 'not-given', 'film-half'];

const concession = (name: PartName) =>
  actsOf<PartActId>(name)(
    'concession',
    { verb: 'concession', parts: [name], person: '-', document: '-', date: '2026-03-02' },
    { despite: besidesHold },
  );

/** A held part waits for what is decided of it, wherever it stands; what hands do next with it stands first. */
export function partActs(status: PartStatus): readonly Candidate<PartActId>[] {
  const { name, verdict } = status.part;
  const works = worksOn(status);
  if (verdict?.is !== 'held') return works;
  const act = actsOf<PartActId>(name);
  const parts = [name];
  return [
    ...works,
    act('rework', { verb: 'rework', parts, why: '-' }),
    ...(status.phase.is === 'cured' ? [concession(name)] : []),
    act('scrap', { verb: 'scrap', parts, why: '-' }),
    act('return', { verb: 'return', parts, to: 'customer', why: '-' }),
  ];
}

/** Of a set that is told spot by spot, the next spot. */
function filmNext({ part, filmRule, half }: PartStatus): CommandOf<'film'> {
  const { name: of, details } = part;
  const terms = filmRule && filmTerms(filmRule, details.areaSquareMetres);
  const readings = [micrometres(12)];
  return terms === undefined || (terms.rule.rule === 'own' && half === undefined)
    ? { verb: 'film', part: of, dryFilmMicrometres: readings }
    : { verb: 'film', part: of, spots: [{ spot: half?.next?.spot ?? 1, micrometres: readings }] };
}

function worksOn(status: PartStatus): readonly Candidate<PartActId>[] {
  const { part, phase, sheet, cure, under } = status;
  const { name, verdict } = part;
  const act = actsOf<PartActId>(name);
  const parts = [name];
  switch (phase.is) {
    case 'bare':
      return [
        act('surface', { verb: 'surface', part: name, celsius: celsius(20) }),
        act('prep', { verb: 'prep', parts, grade: 'sa2.5' }),
      ];
    case 'flashing': {
      const { batch, method } = phase.coat;
      return [
        act('dry', { verb: 'dry', parts }),
        // Only where the sheet gives it a time, and never as a second pass of what is poured or dipped.
        ...(sheet?.openTime === undefined || methodRows[method].drains || methodRows[method].once
          ? []
          : [act('touch-up', { verb: 'coat', parts, batch, method, pass: 'same-coat' })]),
        act('wet', { verb: 'wet', part: name, wetFilmMicrometres: [micrometres(60)] }),
      ];
    }
    case 'dry': {
      const { oven, room } = sheet?.cure ?? {};
      const cured = (of: 'oven' | 'room', way: CureWay) =>
        act(`cure-${of}`, { verb: 'cure', parts, way }, { despite: afterFlashOff });
      return [
        ...(oven === undefined ? [] : [cured('oven', { kind: 'oven', setCelsius: oven.atCelsius })]),
        ...(room === undefined ? [] : [cured('room', { kind: 'room' })]),
      ];
    }
    case 'curing': {
      const out = act('out', { verb: 'out', parts }, { despite: beforeProof });
      const inOven =
        phase.cure.way === 'oven'
          ? [act('temp', { verb: 'temp', part: name, celsius: celsius(90) }), act('door', { verb: 'door', parts })]
          : [];
      // Proved, it only waits to be taken out.
      return cure?.clock.goes === 'given' ? [out, ...inOven] : [...inOven, out];
    }
    case 'cured':
      return [
        act('release', { verb: 'release', parts }),
        // What holds it a lead may lift, with a reason, and nothing else with it.
        ...(verdict?.is === 'held'
          ? [act('lift', { verb: 'release', parts }, { stance: liftsHold, despite: besidesHold })]
          : []),
        act('film', filmNext(status)),
        ...(verdict?.is === 'held' ? [] : [act('hold', { verb: 'hold', parts, why: '-' })]),
      ];
    case 'rework':
      return [
        act('strip', { verb: 'prep', parts, removed: ['old-coat'] }),
        // A sheet that lets nothing lie on its film wants it off first.
        ...(under?.recoat.rule === 'forbidden' ? [] : [act('abrade', { verb: 'prep', parts, prepWays: ['sanding'] })]),
        act('prep', { verb: 'prep', parts, grade: 'sa2.5' }),
      ];
    case 'released':
    // Nobody can do anything with what is not here.
    case 'left':
    case 'scrapped':
    case 'returned':
      return [];
  }
}
