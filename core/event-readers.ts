// Who reads which event: one row a type. A new event does not compile without its row, and each reader that the row names
// does not compile without a case for it. Besides these only what looks for single types by name reads events: the crew's
// settings, the log of rings, the ledger, by which rules a batch is judged (core/batch/judge-anew.ts).

import type { Fact } from './history.ts';

export type Reader =
  /** The folds: what is known of a noun changes with it. An opening makes the noun and is no change of it. */
  | 'batch'
  | 'can'
  | 'part'
  | 'place'
  | 'session'
  | 'shifts'
  /** Asked again by the rules of its noun: a deviation may stand on it, and a hold follow from it. */
  | 'batch-rules'
  | 'can-rules'
  | 'part-rules'
  | 'session-rules'
  /** Judged by the air of its place, or begins a clock that runs by it: it rests on the reading that held then. */
  | 'air'
  /** The same of what a night was at the lowest: a cure in the room is proved by it. */
  | 'night'
  /** Judged by how far the steel was from the dew point. */
  | 'steel'
  /** A mark of its own on the drawn timeline. */
  | 'timeline'
  /** Columns of its own in an export, beside those that every event has. */
  | 'export';

export const readersOf = {
  BatchOpened: ['batch-rules', 'air', 'night', 'export'],
  PartsWeighed: ['batch', 'can', 'batch-rules', 'air', 'night', 'export'],
  PartWeighed: ['batch', 'can', 'batch-rules', 'air', 'night', 'export'],
  PartAdded: ['batch', 'can', 'batch-rules', 'air', 'night', 'export'],
  StirrerStarted: ['batch', 'batch-rules'],
  StirrerStopped: ['batch', 'batch-rules'],
  PotUncovered: ['batch'],
  PotCovered: ['batch'],
  MixFiltered: ['batch', 'batch-rules'],
  MixCaught: ['batch', 'batch-rules', 'export'],
  MixThickened: ['batch', 'timeline', 'export'],
  PotEmptied: ['batch', 'export'],
  JudgedAnew: [],
  CanOpened: ['can-rules', 'export'],
  LidOff: ['can'],
  CanBlanketed: ['can'],
  CanStirred: ['can'],
  CanChecked: ['can', 'can-rules'],
  CanDiscarded: ['can', 'export'],
  PartReceived: ['part', 'export'],
  SurfacePrepared: ['part'],
  CoatApplied: ['batch', 'part', 'session', 'part-rules', 'air', 'night', 'steel', 'timeline', 'export'],
  FilmDry: ['part', 'part-rules'],
  CureStarted: ['part', 'part-rules', 'air', 'night', 'export'],
  PartTemperatureRead: ['part', 'export'],
  DoorOpened: ['part'],
  CureEnded: ['part', 'part-rules', 'night'],
  FilmRead: ['part', 'part-rules', 'export'],
  AdhesionTested: ['part-rules'],
  SolventRubbed: ['part-rules'],
  PhotoFiled: ['export'],
  PartReleased: ['part', 'part-rules', 'night', 'timeline'],
  PartHeld: ['part', 'timeline', 'export'],
  AirRead: ['place', 'export'],
  SurfaceRead: ['part', 'place', 'export'],
  LowestRead: ['place', 'export'],
  SettingChanged: [],
  Rang: ['export'],
  RingAnswered: ['export'],
  RingSnoozed: [],
  ShiftBegun: ['shifts'],
  ShiftEnded: ['shifts'],
  HandedOver: ['shifts'],
  TakenOver: ['shifts'],
  SolventUsed: ['export'],
  HashGiven: [],
  SessionBriefed: [],
  PeoplePlaced: ['session'],
  ExtractionSaid: ['session'],
  SuppliedAirSaid: ['session'],
  BriefAcknowledged: ['session'],
  SprayStarted: ['session', 'session-rules'],
  SprayStopped: ['session'],
  GearFlushed: ['session'],
  WasteCanned: ['session'],
  SessionClosed: ['session', 'session-rules'],
  AlarmRaised: ['batch'],
  NearMissTold: [],
  BellTested: [],
  QualificationDated: [],
} as const satisfies { readonly [Type in Fact['type']]: readonly Reader[] };

type Rows = typeof readersOf;
type TypeFor<R extends Reader> = { [Type in keyof Rows]: R extends Rows[Type][number] ? Type : never }[keyof Rows];

/** What this reader must decide on, every one of it. */
export type FactFor<R extends Reader> = Extract<Fact, { type: TypeFor<R> }>;

export function isFor<R extends Reader>(reader: R, fact: Fact): fact is FactFor<R> {
  const readers: readonly Reader[] = readersOf[fact.type];
  return readers.includes(reader);
}
