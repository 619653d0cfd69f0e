// Who reads which event: one row a type. A new event does not compile without its row, and each reader that the row names
// does not compile without a case for it. Whatever tells any event (its card, the day, the trace, the traveller) has it from
// the tongues, which do not compile without its words. By name single types are looked for only by what is about them: the
// test of the bell, a handover, a hold, by which rules a batch is judged.

import type { Fact } from './history.ts';
import { keysOf } from './own-key.ts';

export type Reader =
  /** It makes its noun: it stays the first of its stream, and gives the next of the crew's numbers. */
  | 'opening'
  /** The folds: what is known of a noun changes with it. An opening makes the noun and is no change of it. */
  | 'batch'
  | 'can'
  | 'part'
  | 'place'
  | 'session'
  | 'shifts'
  | 'first-shift'
  | 'rings'
  /** Begins something in a place, or goes on with it: not where an alarm is on. */
  | 'begins'
  /** What is on of the alarms. */
  | 'alarms'
  /** What stands of the crew's settings, and of those for spraying. */
  | 'crew'
  | 'spraying'
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
  /** How earlier acts look may change with it: what they then come to holds their parts. */
  | 'rewrites'
  /** Begins a clock: whoever hands over afterwards hands on its bells. */
  | 'clock'
  /** Stands beside the work: it rests on nothing, and answers no bell. */
  | 'aside'
  /** Counted or listed by the day, the week and the month. */
  | 'period'
  /** Stands in the ledger of solvents and VOC. */
  | 'ledger'
  /** A mark of its own on the drawn timeline. */
  | 'timeline'
  /** Columns of its own in an export, beside those that every event has. */
  | 'export';

export const readersOf = {
  BatchOpened: ['opening', 'batch-rules', 'air', 'night', 'clock', 'export', 'begins'],
  PartsWeighed: ['batch', 'can', 'batch-rules', 'air', 'night', 'export', 'begins'],
  PartWeighed: ['batch', 'can', 'batch-rules', 'air', 'night', 'export', 'begins'],
  PartAdded: ['batch', 'can', 'batch-rules', 'air', 'night', 'export', 'begins'],
  CanNamed: ['can', 'batch-rules'],
  StirrerStarted: ['batch', 'batch-rules', 'begins'],
  StirrerStopped: ['batch', 'batch-rules'],
  PotUncovered: ['batch', 'batch-rules'],
  PotCovered: ['batch'],
  MixFiltered: ['batch', 'batch-rules', 'begins'],
  MixCaught: ['batch', 'batch-rules', 'export'],
  MixThickened: ['batch', 'timeline', 'export'],
  PotEmptied: ['batch', 'batch-rules', 'export'],
  JudgedAnew: [],
  CanOpened: ['opening', 'can-rules', 'clock', 'export', 'begins'],
  StockReceived: ['export'],
  LotRecalled: ['export'],
  RecallEnded: ['export'],
  LidOff: ['can', 'can-rules'],
  LidOn: ['can', 'can-rules'],
  CanBlanketed: ['can', 'can-rules'],
  CanStirred: ['can', 'can-rules', 'begins'],
  CanChecked: ['can', 'can-rules'],
  CanDiscarded: ['can', 'export'],
  PartReceived: ['part', 'rewrites', 'export'],
  SurfacePrepared: ['crew', 'part', 'clock'],
  CoatApplied: [
    'batch',
    'part',
    'session',
    'part-rules',
    'air',
    'night',
    'steel',
    'clock',
    'period',
    'timeline',
    'export',
    'begins',
  ],
  FilmDry: ['part', 'part-rules'],
  CureStarted: ['part', 'part-rules', 'air', 'night', 'clock', 'export', 'begins'],
  PartTemperatureRead: ['part', 'part-rules', 'export'],
  DoorOpened: ['part'],
  CureEnded: ['part', 'part-rules', 'night'],
  FilmRead: ['part', 'part-rules', 'export'],
  AdhesionTested: ['part-rules'],
  SolventRubbed: ['part-rules'],
  FilmTested: ['part-rules', 'export'],
  PhotoFiled: ['aside', 'export'],
  PartReleased: ['part', 'part-rules', 'night', 'period', 'timeline'],
  PartLeft: ['part', 'part-rules'],
  PartHeld: ['part', 'period', 'timeline', 'export'],
  HoldAssigned: ['part', 'part-rules', 'export'],
  PartDisposed: ['part', 'part-rules', 'period', 'export'],
  FailureAnswered: ['part', 'export'],
  AirRead: ['place', 'period', 'export'],
  SurfaceRead: ['part', 'place', 'export'],
  GasRead: ['place'],
  LowestRead: ['place', 'export'],
  SettingChanged: ['crew', 'spraying'],
  Rang: ['rings', 'export'],
  RingAnswered: ['rings', 'export'],
  RingSnoozed: ['rings'],
  ReminderWanted: ['aside'],
  ShiftBegun: ['shifts', 'spraying'],
  ShiftEnded: ['shifts', 'spraying'],
  HandedOver: ['shifts'],
  TakenOver: ['shifts', 'spraying'],
  FirstShiftBegun: ['first-shift', 'period'],
  FirstShiftCountersigned: ['first-shift', 'period'],
  FirstShiftLeft: ['first-shift', 'period'],
  SolventUsed: ['ledger', 'export'],
  HashGiven: [],
  InstrumentKept: ['aside', 'export'],
  InstrumentChecked: ['aside', 'rewrites', 'export'],
  InstrumentTaken: ['aside'],
  SessionBriefed: ['opening', 'crew', 'spraying', 'begins'],
  PeoplePlaced: ['session'],
  ExtractionSaid: ['session'],
  SuppliedAirSaid: ['session'],
  BriefAcknowledged: ['session', 'session-rules'],
  SprayedFromOutside: ['session'],
  SprayStarted: ['session', 'session-rules', 'begins'],
  SprayStopped: ['session', 'session-rules'],
  GearFlushed: ['session', 'batch-rules', 'session-rules', 'ledger'],
  WasteCanned: ['session'],
  SessionClosed: ['session', 'session-rules'],
  AlarmRaised: ['batch', 'can', 'period', 'alarms'],
  CryHeard: ['period', 'alarms'],
  AlarmCalledOff: ['period', 'alarms'],
  DrillBegun: ['period', 'alarms'],
  AlarmsEnded: ['period', 'alarms'],
  NearMissTold: ['period'],
  BellTested: [],
  QualificationDated: ['spraying'],
  BreathingAirChecked: ['spraying'],
  ExposureMeasured: ['spraying'],
  AirAssessed: ['spraying'],
  StepAnswered: [],
} as const satisfies { readonly [Type in Fact['type']]: readonly Reader[] };

type Rows = typeof readersOf;
type TypeFor<R extends Reader> = { [Type in keyof Rows]: R extends Rows[Type][number] ? Type : never }[keyof Rows];

/** What this reader must decide on, every one of it. */
export type FactFor<R extends Reader> = Extract<Fact, { type: TypeFor<R> }>;

export function isFor<R extends Reader>(reader: R, fact: Fact): fact is FactFor<R> {
  return reads(reader, fact.type);
}

function reads(reader: Reader, type: Fact['type']): boolean {
  const readers: readonly Reader[] = readersOf[type];
  return readers.includes(reader);
}

/** All that this reader must decide on, by name. */
export const typesFor = (reader: Reader): readonly Fact['type'][] =>
  keysOf(readersOf).filter((type) => reads(reader, type));
