// A part as the fold of its facts: coats, flash-off, cure, films, release.

import type { Run, TemperatureReading } from '../calc/clock.ts';
import type { Method, PartDetails } from '../commands.ts';
import type { Entry } from '../history.ts';
import type { BatchNumber, PartName, PersonName } from '../ids.ts';
import { foldRings, type RingLog } from '../reminders/ring-log.ts';
import type { Celsius, EpochMs, Micrometres } from '../units.ts';
import type { HoldingCode } from './holding.ts';

export interface Coat {
  readonly seq: number;
  readonly at: EpochMs;
  readonly by: PersonName;
  readonly batch: BatchNumber;
  readonly method: Method;
  readonly entry: Entry;
}

export interface Cure {
  readonly way: 'oven' | 'room';
  readonly setCelsius: Celsius | undefined;
  readonly run: Run;
  readonly entry: Entry;
}

export interface FilmReading {
  readonly at: EpochMs;
  readonly state: 'wet' | 'dry';
  readonly micrometres: readonly Micrometres[];
}

/** A hold stops the release, never a clock: a held film flashes off and cures like any other. */
export type Verdict =
  | { readonly is: 'released'; readonly at: EpochMs; readonly by: PersonName }
  | {
      readonly is: 'held';
      readonly at: EpochMs;
      readonly by: PersonName;
      readonly why: string;
      /** The deviations that hold it by themselves; empty where somebody said hold. */
      readonly because: readonly HoldingCode[];
    };

export interface Part {
  readonly name: PartName;
  readonly details: PartDetails;
  readonly coats: readonly Coat[];
  /** Said dry to the touch, after the last coat. */
  readonly dryAt: EpochMs | undefined;
  /** The cure of the last coat. */
  readonly cure: Cure | undefined;
  /** Read on the part itself, in order of time. */
  readonly temperatures: readonly TemperatureReading[];
  readonly films: readonly FilmReading[];
  readonly verdict: Verdict | undefined;
  readonly rings: RingLog;
  readonly entries: readonly Entry[];
}

export type PartPhase =
  | { readonly is: 'bare' }
  | { readonly is: 'flashing'; readonly coat: Coat }
  | { readonly is: 'dry'; readonly coat: Coat; readonly dryAt: EpochMs }
  | { readonly is: 'curing'; readonly coat: Coat; readonly cure: Cure }
  | { readonly is: 'cured'; readonly coat: Coat; readonly cure: Cure }
  | { readonly is: 'released'; readonly at: EpochMs };

/** Without entries: a part of which nothing has been said yet. */
export function foldPart(name: PartName, entries: readonly Entry[]): Part {
  let part: Part = {
    name,
    details: {},
    coats: [],
    dryAt: undefined,
    cure: undefined,
    temperatures: [],
    films: [],
    verdict: undefined,
    rings: foldRings(entries),
    entries,
  };
  for (const entry of entries) part = evolvePart(part, entry);
  return part;
}

function evolvePart(part: Part, entry: Entry): Part {
  const { fact, happenedAt: at, by } = entry;
  switch (fact.type) {
    case 'PartReceived': {
      const { type: _, ...said } = fact;
      const details: PartDetails = { ...part.details, ...withoutUndefined(said) };
      return { ...part, details };
    }
    case 'CoatApplied': {
      const coat = { seq: entry.seq, at, by, batch: fact.batch, method: fact.method, entry };
      // A new coat undoes a release; a hold stays until somebody releases.
      const verdict = part.verdict?.is === 'held' ? part.verdict : undefined;
      return { ...part, coats: [...part.coats, coat], dryAt: undefined, cure: undefined, verdict };
    }
    case 'FilmDry':
      return { ...part, dryAt: part.dryAt ?? at };
    case 'CureStarted':
      return { ...part, cure: { way: fact.way, setCelsius: fact.setCelsius, run: { from: at, to: undefined }, entry } };
    case 'CureEnded':
      return part.cure === undefined ? part : { ...part, cure: { ...part.cure, run: { ...part.cure.run, to: at } } };
    case 'PartTemperatureRead':
      return { ...part, temperatures: [...part.temperatures, { at, celsius: fact.celsius }] };
    case 'FilmRead':
      return { ...part, films: [...part.films, { at, state: fact.state, micrometres: fact.micrometres }] };
    case 'PartReleased':
      return { ...part, verdict: { is: 'released', at, by } };
    case 'PartHeld':
      return { ...part, verdict: { is: 'held', at, by, why: fact.why, because: fact.because ?? [] } };
    default:
      return part;
  }
}

/** Drops the keys without a value, so that a later line adds to what is known and erases nothing. */
function withoutUndefined<T extends object>(said: T): { [K in keyof T]: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(said).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]: Exclude<T[K], undefined>;
  };
}

export function phaseOfPart(part: Part): PartPhase {
  if (part.verdict?.is === 'released') return { is: 'released', at: part.verdict.at };
  const coat = part.coats.at(-1);
  if (coat === undefined) return { is: 'bare' };
  if (part.cure !== undefined) {
    return { is: part.cure.run.to === undefined ? 'curing' : 'cured', coat, cure: part.cure };
  }
  if (part.dryAt !== undefined) return { is: 'dry', coat, dryAt: part.dryAt };
  return { is: 'flashing', coat };
}

/** A released part needs nobody any more; a held one does. */
export function isPartLive(part: Part): boolean {
  return part.verdict?.is !== 'released';
}
