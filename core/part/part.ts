// A part as the fold of its facts: coats, flash-off, cure, films, release.

import type { Run, TemperatureReading } from '../calc/clock.ts';
import type { SolventId } from '../calc/solvents.ts';
import type { Concession } from '../disposition.ts';
import { isFor } from '../event-readers.ts';
import {
  type Contaminant,
  type Grit,
  type PrepWay,
  type SurfaceGrade,
  takenOffTo,
  type WaterBreak,
} from '../grades.ts';
import type { Entry, FactOf } from '../history.ts';
import type { BatchNumber, PartName, PersonName } from '../ids.ts';
import { known } from '../known.ts';
import type { Method } from '../methods.ts';
import { saltsTold } from '../patch-test.ts';
import { foldRings, type RingLog } from '../ring-log.ts';
import type { Celsius, EpochMs, Micrometres, MilligramsPerSquareMetre, Minutes } from '../units.ts';
import { minutesAfter } from '../units.ts';
import type { PartDetails } from '../verbs/said.ts';
import { becomes } from './disposed.ts';
import { answeredBy, assigned, heldBy } from './held.ts';
import type { Verdict } from './verdict.ts';

export interface Coat {
  readonly seq: number;
  /** When its last pass ended: flash-off runs from here. */
  readonly at: EpochMs;
  /** When its first pass ended: the film has been drying since. */
  readonly firstAt: EpochMs;
  readonly passes: number;
  readonly by: PersonName;
  readonly batch: BatchNumber;
  readonly method: Method;
  readonly entry: Entry;
}

export interface Prepared {
  readonly at: EpochMs;
  readonly by: PersonName;
  readonly grade: SurfaceGrade | undefined;
  readonly profileMicrometres: Micrometres | undefined;
  readonly saltsMilligramsPerSquareMetre: MilligramsPerSquareMetre | undefined;
  readonly dustRating: number | undefined;
  /** ISO 8502-3, how big. */
  readonly dustSize: number | undefined;
  readonly waterBreak: WaterBreak | undefined;
  readonly removed: readonly Contaminant[] | undefined;
  readonly solvents: readonly SolventId[] | undefined;
  readonly prepWays: readonly PrepWay[] | undefined;
  readonly grit: Grit | undefined;
}

export interface Door {
  readonly at: EpochMs;
  readonly openMinutes: Minutes | undefined;
}

export interface Cure {
  readonly way: 'oven' | 'room';
  readonly setCelsius: Celsius | undefined;
  readonly run: Run;
  /** The oven's door, opened with the part inside. */
  readonly doors: readonly Door[];
  readonly entry: Entry;
}

export interface FilmReading {
  readonly at: EpochMs;
  readonly state: 'wet' | 'dry';
  readonly micrometres: readonly Micrometres[];
  readonly told: SpotTold | undefined;
}

/** Of which spot of which set, where it was told spot by spot. */
export interface SpotTold {
  readonly set: number;
  readonly spot: number;
  readonly each?: true | undefined;
  readonly near?: number | undefined;
  readonly dropped?: readonly Micrometres[] | undefined;
  readonly baseMicrometres?: Micrometres | undefined;
  readonly retest?: string | undefined;
}

export interface Reworked {
  readonly at: EpochMs;
  readonly by: PersonName;
  readonly why: string;
  /** What is recorded before it is of the coats before it. */
  readonly seq: number;
  /** The old film, until somebody said that it is off. */
  readonly under: Coat | undefined;
}

export interface Part {
  readonly name: PartName;
  readonly details: PartDetails;
  readonly prepared: Prepared | undefined;
  readonly coats: readonly Coat[];
  /** Those before it was reworked, which nothing is asked of any more. */
  readonly earlier: readonly Coat[];
  readonly reworked: Reworked | undefined;
  readonly concession: Concession | undefined;
  /** Said dry to the touch, after the last coat. */
  readonly dryAt: EpochMs | undefined;
  /** The cure of the last coat. */
  readonly cure: Cure | undefined;
  /** Of the bare part, before a coat; in order of time. */
  readonly surfaces: readonly TemperatureReading[];
  /** Read on the part itself, in order of time. */
  readonly temperatures: readonly TemperatureReading[];
  readonly films: readonly FilmReading[];
  readonly verdict: Verdict | undefined;
  /** When it left the shop, by what somebody said. A coat says that it is back. */
  readonly leftAt: EpochMs | undefined;
  readonly rings: RingLog;
  readonly entries: readonly Entry[];
}

export type PartPhase =
  | { readonly is: 'bare' }
  | { readonly is: 'flashing'; readonly coat: Coat }
  | { readonly is: 'dry'; readonly coat: Coat; readonly dryAt: EpochMs }
  | { readonly is: 'curing'; readonly coat: Coat; readonly cure: Cure }
  | { readonly is: 'cured'; readonly coat: Coat; readonly cure: Cure }
  | { readonly is: 'released'; readonly at: EpochMs }
  /** Out of the shop, released or not. */
  | { readonly is: 'left'; readonly at: EpochMs }
  /** To be coated anew, with the old film still on it. */
  | { readonly is: 'rework'; readonly at: EpochMs; readonly under: Coat }
  | { readonly is: 'scrapped'; readonly at: EpochMs }
  | { readonly is: 'returned'; readonly at: EpochMs };

/** Without entries: a part of which nothing has been said yet. */
export function foldPart(name: PartName, entries: readonly Entry[]): Part {
  let part: Part = {
    name,
    details: {},
    prepared: undefined,
    coats: [],
    earlier: [],
    reworked: undefined,
    concession: undefined,
    dryAt: undefined,
    cure: undefined,
    surfaces: [],
    temperatures: [],
    films: [],
    verdict: undefined,
    leftAt: undefined,
    rings: foldRings(entries),
    entries,
  };
  for (const entry of entries) part = evolvePart(part, entry);
  return part;
}

function evolvePart(part: Part, entry: Entry): Part {
  const { fact, happenedAt: at, by } = entry;
  if (!isFor('part', fact)) return part;
  switch (fact.type) {
    case 'PartReceived': {
      const { type: _, ...said } = fact;
      // A later line adds to what is known and erases nothing.
      return { ...part, details: { ...part.details, ...known(said) } };
    }
    case 'SurfacePrepared':
      return { ...part, prepared: preparedBy(part, fact, at, by), reworked: stripped(part.reworked, fact) };
    case 'SurfaceRead':
      return { ...part, surfaces: [...part.surfaces, { at, celsius: fact.celsius }] };
    case 'CoatApplied': {
      const wet = fact.pass === 'same-coat' ? part.coats.at(-1) : undefined;
      const { batch, method } = fact;
      const firstAt = wet?.firstAt ?? at;
      const coat = { seq: entry.seq, at, firstAt, passes: (wet?.passes ?? 0) + 1, by, batch, method, entry };
      // A new coat undoes a release; a hold stays until somebody releases.
      const verdict = part.verdict?.is === 'held' ? part.verdict : undefined;
      const earlier = wet === undefined ? part.coats : part.coats.slice(0, -1);
      return {
        ...part,
        ...{ coats: [...earlier, coat], dryAt: undefined, cure: undefined, verdict },
        ...{ leftAt: undefined, concession: undefined },
      };
    }
    case 'FilmDry':
      return { ...part, dryAt: part.dryAt ?? at };
    case 'CureStarted': {
      const { way, setCelsius } = fact;
      return { ...part, cure: { way, setCelsius, run: { from: at, to: undefined }, doors: [], entry } };
    }
    case 'DoorOpened': {
      if (part.cure === undefined) return part;
      const doors = [...part.cure.doors, { at, openMinutes: fact.openMinutes }];
      return { ...part, cure: { ...part.cure, doors } };
    }
    case 'CureEnded':
      return part.cure === undefined ? part : { ...part, cure: { ...part.cure, run: { ...part.cure.run, to: at } } };
    case 'PartTemperatureRead':
      return { ...part, temperatures: [...part.temperatures, { at, celsius: fact.celsius }] };
    case 'FilmRead':
      return { ...part, films: [...part.films, filmReading(fact, at)] };
    case 'PartReleased':
      return { ...part, verdict: { is: 'released', at, by, concession: part.concession } };
    case 'PartLeft':
      return { ...part, leftAt: at, cure: endedBy(part.cure, at) };
    case 'PartHeld':
      return { ...part, verdict: heldBy(part.verdict, fact, entry) };
    case 'PartDisposed':
      return { ...part, ...becomes(part, fact, entry) };
    case 'FailureAnswered':
      return { ...part, verdict: answeredBy(part.verdict, fact) };
    case 'HoldAssigned':
      return { ...part, verdict: assigned(part.verdict, fact) };
  }
}

export function filmReading({ state, micrometres, set, spot, ...more }: FactOf<'FilmRead'>, at: EpochMs): FilmReading {
  const told = set === undefined || spot === undefined ? undefined : { set, spot, ...more };
  return { at, state, micrometres, told };
}

/** What is out of the shop is in no oven of it. */
const endedBy = (cure: Cure | undefined, at: EpochMs): Cure | undefined =>
  cure === undefined || cure.run.to !== undefined ? cure : { ...cure, run: { ...cure.run, to: at } };

/** Off by what was said of it, or by the grade to which it was prepared. */
function stripped(reworked: Reworked | undefined, fact: FactOf<'SurfacePrepared'>): Reworked | undefined {
  const off = [...(fact.removed ?? []), ...(fact.grade === undefined ? [] : takenOffTo(fact.grade))];
  return reworked === undefined || !off.includes('old-coat') ? reworked : { ...reworked, under: undefined };
}

/** Said in several lines, before one coat: each adds to what is known of the surface. */
function preparedBy({ prepared, coats }: Part, fact: FactOf<'SurfacePrepared'>, at: EpochMs, by: PersonName): Prepared {
  const coatedAt = coats.at(-1)?.at;
  const before = prepared !== undefined && (coatedAt === undefined || prepared.at > coatedAt) ? prepared : undefined;
  // Steel that is only wiped, or measured, is no younger for it.
  const isWorked = fact.grade !== undefined || worksSteel(fact);
  // What was measured on it before it was worked says nothing of how it is now.
  const measured = isWorked ? undefined : before;
  return {
    at: isWorked ? at : (before?.at ?? at),
    by: isWorked ? by : (before?.by ?? by),
    grade: fact.grade ?? before?.grade,
    profileMicrometres: fact.profileMicrometres ?? measured?.profileMicrometres,
    saltsMilligramsPerSquareMetre: saltsTold(fact) ?? measured?.saltsMilligramsPerSquareMetre,
    dustRating: fact.dustRating ?? measured?.dustRating,
    dustSize: fact.dustSize ?? measured?.dustSize,
    waterBreak: fact.waterBreak ?? measured?.waterBreak,
    removed: together(before?.removed, fact.removed),
    solvents: together(before?.solvents, fact.solvents),
    prepWays: together(before?.prepWays, fact.prepWays),
    grit: fact.grit ?? before?.grit,
  };
}

function worksSteel({ removed = [], prepWays = [], grit }: FactOf<'SurfacePrepared'>): boolean {
  const isSteel = removed.includes('rust') || removed.includes('old-coat');
  return isSteel || grit !== undefined || prepWays.some((way) => way !== 'wiping');
}

function together<T>(before: readonly T[] = [], now: readonly T[] = []): readonly T[] | undefined {
  const all = [...new Set([...before, ...now])];
  return all.length === 0 ? undefined : all;
}

export function phaseOfPart(part: Part): PartPhase {
  const { verdict, reworked } = part;
  if (verdict?.is === 'scrapped' || verdict?.is === 'returned') return { is: verdict.is, at: verdict.at };
  if (part.leftAt !== undefined) return { is: 'left', at: part.leftAt };
  if (verdict?.is === 'released') return { is: 'released', at: verdict.at };
  const coat = part.coats.at(-1);
  if (coat === undefined) {
    return reworked?.under === undefined ? { is: 'bare' } : { is: 'rework', at: reworked.at, under: reworked.under };
  }
  if (part.cure !== undefined) {
    return { is: part.cure.run.to === undefined ? 'curing' : 'cured', coat, cure: part.cure };
  }
  if (part.dryAt !== undefined) return { is: 'dry', coat, dryAt: part.dryAt };
  return { is: 'flashing', coat };
}

/** A released part needs nobody any more, nor one that is scrapped or given back; a held one does. */
export function isPartLive({ verdict }: Part): boolean {
  return verdict === undefined || verdict.is === 'held';
}

/** Without any film of ours, or with an old one that is to be coated anew. */
export const awaitsFirstCoat = ({ is }: PartPhase): boolean => is === 'bare' || is === 'rework';

/** The part's own surface, read and still fresh at `at`. */
export function surfaceServing(part: Part | undefined, at: EpochMs, limit: Minutes): Celsius | undefined {
  const read = part?.surfaces.findLast((reading) => reading.at <= at);
  return read !== undefined && at <= minutesAfter(read.at, limit) ? read.celsius : undefined;
}
