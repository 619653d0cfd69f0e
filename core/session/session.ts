// A spray session as the fold of its facts: from the brief to the closing. Who is exposed, what was said of the air,
// when the gun ran, what it was flushed with.

import { asItStoodAt } from '../as-it-stands.ts';
import type { Run } from '../calc/clock.ts';
import { begun, ended, isOn } from '../calc/runs.ts';
import type { SolventId } from '../calc/solvents.ts';
import { isFor } from '../event-readers.ts';
import type { Entry } from '../history.ts';
import type { BatchNumber, PersonName, PlaceName, SessionNumber } from '../ids.ts';
import type { Sheet } from '../products/sheet.ts';
import { foldRings, type RingLog } from '../ring-log.ts';
import { type EpochMs, type Grams, type Litres, type MetresPerSecond, type Minutes, minutesAfter } from '../units.ts';
import { type FirstCleaning, type FlushState, flushedBy } from './flush-state.ts';
import type { Gear, SessionGear, Whereabouts } from './session-commands.ts';

export interface Extraction {
  readonly running: boolean;
  /** `undefined`: not measured. */
  readonly faceMetresPerSecond: MetresPerSecond | undefined;
  readonly at: EpochMs;
  readonly by: PersonName;
}

export interface GearFlush {
  readonly at: EpochMs;
  readonly gear: Gear;
  readonly solvent: SolventId | undefined;
  readonly litres: Litres | undefined;
}

export interface Session {
  readonly number: SessionNumber;
  readonly sheet: Sheet;
  /** `undefined`: of whichever batch is sprayed first. */
  readonly batch: BatchNumber | undefined;
  readonly place: PlaceName;
  readonly sprayers: readonly PersonName[];
  /** Near, and exposed like who sprays. */
  readonly stays: readonly PersonName[];
  readonly movedOut: readonly PersonName[];
  readonly attendant: PersonName | undefined;
  readonly insideVessel: boolean;
  /** Said in this session: what is sprayed is a vessel's inside, and nobody is in it. */
  readonly fromOutside: { readonly at: EpochMs; readonly by: PersonName } | undefined;
  readonly gramsPerHour: Grams | undefined;
  readonly startsAt: EpochMs | undefined;
  /** The one before it in this booth on this day: what was answered in it may still stand. */
  readonly after: SessionNumber | undefined;
  readonly briefedAt: EpochMs;
  readonly briefedBy: PersonName;
  readonly extraction: Extraction | undefined;
  readonly suppliedAir: { readonly supplied: boolean; readonly at: EpochMs; readonly by: PersonName } | undefined;
  readonly acknowledged: readonly {
    readonly person: PersonName;
    readonly at: EpochMs;
    readonly witness: PersonName | undefined;
  }[];
  readonly spraying: readonly Run[];
  readonly flushes: readonly GearFlush[];
  readonly rags: EpochMs | undefined;
  readonly closedAt: EpochMs | undefined;
  readonly closedBy: PersonName | undefined;
  /** How long the fan stays on after the closing. */
  readonly fanMinutes: Minutes | undefined;
  readonly rings: RingLog;
  readonly entries: readonly Entry[];
}

/** `undefined` while the history does not open a session. */
export function foldSession(entries: readonly Entry[]): Session | undefined {
  const opening = entries.find((entry) => entry.fact.type === 'SessionBriefed');
  if (opening?.fact.type !== 'SessionBriefed') return undefined;
  const { fact, happenedAt, by } = opening;
  let session: Session = {
    number: fact.session,
    sheet: fact.sheet,
    batch: fact.batch,
    place: fact.place,
    sprayers: fact.sprayers,
    stays: fact.stays,
    movedOut: fact.out,
    attendant: fact.attendant,
    insideVessel: fact.insideVessel,
    fromOutside: undefined,
    gramsPerHour: fact.gramsPerHour,
    startsAt: fact.startsAt,
    after: fact.after,
    briefedAt: happenedAt,
    briefedBy: by,
    extraction: undefined,
    suppliedAir: undefined,
    acknowledged: [],
    spraying: [],
    flushes: [],
    rags: undefined,
    closedAt: undefined,
    closedBy: undefined,
    fanMinutes: undefined,
    rings: foldRings(entries),
    entries,
  };
  for (const entry of entries) session = evolveSession(session, entry);
  return session;
}

/** As it was by `at`; said late, what came after does not count. Without anything but its brief where that came later. */
export function sessionAsOf(session: Session, at: EpochMs): Session {
  return foldSession(asItStoodAt(session.entries, at)) ?? session;
}

function evolveSession(session: Session, entry: Entry): Session {
  const { fact, happenedAt: at, by } = entry;
  if (!isFor('session', fact)) return session;
  switch (fact.type) {
    case 'PeoplePlaced':
      return fact.people.reduce((moved, person) => placed(moved, person, fact.goes), session);
    case 'ExtractionSaid':
      return {
        ...session,
        extraction: { running: fact.running, faceMetresPerSecond: fact.faceMetresPerSecond, at, by },
      };
    case 'SuppliedAirSaid':
      return { ...session, suppliedAir: { supplied: fact.supplied, at, by } };
    case 'SprayedFromOutside':
      return { ...session, fromOutside: { at, by } };
    case 'BriefAcknowledged':
      return {
        ...session,
        acknowledged: [...session.acknowledged, { person: fact.person, at, witness: fact.witness }],
      };
    case 'SprayStarted':
      return { ...session, spraying: begun(session.spraying, at) };
    case 'SprayStopped':
      return { ...session, spraying: ended(session.spraying, at) };
    case 'CoatApplied':
      return coated(sprayedBy(session, fact.appliedBy), fact.batch, at);
    case 'GearFlushed': {
      const { gear, solvent, litres } = fact;
      return { ...session, flushes: [...session.flushes, { at, gear, solvent, litres }] };
    }
    case 'WasteCanned':
      return { ...session, rags: at };
    case 'SessionClosed':
      return {
        ...session,
        spraying: ended(session.spraying, at),
        closedAt: session.closedAt ?? at,
        closedBy: session.closedBy ?? by,
        fanMinutes: session.fanMinutes ?? fact.fanMinutes,
      };
  }
}

/** A coat said while nobody had said that the gun runs: it ran all the same. */
function coated(session: Session, batch: BatchNumber, at: EpochMs): Session {
  const bound = { ...session, batch: session.batch ?? batch };
  return isRunning(bound) ? bound : { ...bound, spraying: [...bound.spraying, { from: at, to: at }] };
}

/** Whoever was said to have sprayed breathes there from then on, whatever the brief said. */
export function sprayedBy(session: Session, person: PersonName | undefined): Session {
  return person === undefined || session.sprayers.includes(person) ? session : placed(session, person, 'sprays');
}

/** Somebody who is not among the sprayers of the brief, nor of any where there is none. */
export function newcomerTo(session: Session | undefined, person: PersonName | undefined): PersonName | undefined {
  return person === undefined || session?.sprayers.includes(person) === true ? undefined : person;
}

function placed(session: Session, person: PersonName, goes: Whereabouts): Session {
  const without = (people: readonly PersonName[]) => people.filter((other) => other !== person);
  const { sprayers, stays, movedOut } = session;
  return {
    ...session,
    sprayers: goes === 'sprays' ? [...without(sprayers), person] : without(sprayers),
    stays: goes === 'stays' ? [...without(stays), person] : without(stays),
    movedOut: goes === 'out' ? [...without(movedOut), person] : without(movedOut),
  };
}

/** The pots that it sprays from: the one of its brief, and whichever a coat was from. */
export function potsOf({ batch, entries }: Session): readonly BatchNumber[] {
  const coated = entries.flatMap(({ fact }) => (fact.type === 'CoatApplied' ? [fact.batch] : []));
  return [...new Set([...(batch === undefined ? [] : [batch]), ...coated])];
}

export function isRunning({ spraying }: Pick<Session, 'spraying'>): boolean {
  return isOn(spraying);
}

/** Everybody who breathes there: sprayers and who stays. */
export function exposedIn({ sprayers, stays }: Pick<Session, 'sprayers' | 'stays'>): readonly PersonName[] {
  return [...new Set([...sprayers, ...stays])];
}

export function unacknowledged(session: Session): readonly PersonName[] {
  const said = new Set(session.acknowledged.map(({ person }) => person));
  return exposedIn(session).filter((person) => !said.has(person));
}

/** When the gun came to rest; `undefined` while it runs and where it never ran. */
export function stoppedAt({ spraying }: Session): EpochMs | undefined {
  return spraying.at(-1)?.to;
}

const laterOf = (one: EpochMs, other: EpochMs | undefined): EpochMs =>
  other === undefined || other < one ? one : other;

/** What a gear has still to be flushed with since it was last used. */
export function flushState(session: Session, gear: SessionGear): FlushState {
  const usedAt = session.spraying.at(-1)?.from;
  if (usedAt === undefined) return { done: true, left: [] };
  const since = session.flushes.filter((flush) => flush.gear === gear && flush.at >= usedAt);
  return flushedBy(session.sheet, since);
}

/**
 * Whether a flush at `at` is the first one since this gear came to rest, in a session as it was before. Vessels rest once
 * a pot is over, `freeAt`.
 */
export function firstFlush(
  session: Session,
  gear: Gear,
  at: EpochMs,
  freeAt: EpochMs | undefined,
): FirstCleaning | undefined {
  const stopped = stoppedAt(session);
  const restsFrom = stopped && (gear === 'vessels' ? laterOf(stopped, freeAt) : stopped);
  const isBegun = session.flushes.some((flush) => flush.gear === gear && flush.at >= (restsFrom ?? flush.at));
  return restsFrom === undefined || isBegun ? undefined : { sheet: session.sheet, gear, restsFrom, at };
}

/** Until when the fan stays on after the closing; `undefined` before it. */
export function fanUntil({ closedAt, fanMinutes, spraying }: Session): EpochMs | undefined {
  if (closedAt === undefined || fanMinutes === undefined || spraying.length === 0) return undefined;
  return minutesAfter(closedAt, fanMinutes);
}

export function isSessionOpen({ closedAt }: Session): boolean {
  return closedAt === undefined;
}

/** A closed one still waits for its fan. */
export function isSessionLive(session: Session): boolean {
  const until = fanUntil(session);
  if (session.closedAt === undefined) return true;
  return (
    until !== undefined &&
    until > session.closedAt &&
    ![...session.rings.keys()].some((key) => key.endsWith('/fan-off'))
  );
}
