// One command, one decision: sends each verb to the noun that knows.

import { decideMix, potActs } from './batch/batch-decide.ts';
import { decideDrawn } from './batch/drawn-decide.ts';
import { decideJudge } from './batch/judge-anew.ts';
import { decideStep } from './batch/step-decide.ts';
import { decideAdd, decideWeigh } from './batch/weigh-decide.ts';
import { canActs, decideOpen, decideReceived } from './can/can-decide.ts';
import { decideRecall, decideRecallOver } from './can/recall-decide.ts';
import { decideCoat } from './coat/coat-decide.ts';
import { decideFlush } from './coat/flush-decide.ts';
import type { Command, CommandOf, Verb } from './commands.ts';
import { decideAmend } from './corrections/amend.ts';
import { decideUndo } from './corrections/undo.ts';
import {
  decideAlarm,
  decideAlarmOver,
  decideAssess,
  decideBell,
  decideBreathingAir,
  decideDrill,
  decideNearMiss,
  decideNoAlarm,
  decideQualification,
} from './crew/alarm-decide.ts';
import { heldByAlarm, nameAlarmFirst } from './crew/alarm-rules.ts';
import { decideOk, decideSet, decideUsed } from './crew/crew-decide.ts';
import { decideExposure } from './crew/exposure-decide.ts';
import { decideFirstShift, decideFirstShiftDone, decideFirstShiftOff } from './crew/first-shift-decide.ts';
import { decideGas, decideGases } from './crew/gas-decide.ts';
import { decideRemind } from './crew/own-reminders.ts';
import { decideHandover, decideShift, decideTakeover } from './crew/shift-decide.ts';
import { type Deciders, type Decision, type Said, unclear } from './decision.ts';
import { isFailed } from './failed.ts';
import { farFigures } from './far-figures.ts';
import { EventBody, type NewEvent } from './history.ts';
import { decideCalibrated, decideInstrument } from './instrument/instrument-decide.ts';
import { decideDisposed } from './part/disposed-decide.ts';
import { decideFilm, decideWet } from './part/film-decide.ts';
import { decideHold, decideSeeTo } from './part/hold-decide.ts';
import { decideDoor, decideOut, decideTemp } from './part/load-decide.ts';
import {
  decideCure,
  decideDry,
  decideFilmTested,
  decidePart,
  decideRelease,
  decideShipped,
  decideTested,
} from './part/part-decide.ts';
import { decidePartSurface, decidePrep } from './part/surface-decide.ts';
import { decideAir, decideReading } from './place/place-decide.ts';
import { decideSnooze } from './reminders/snooze.ts';
import { decideBrief, decideClose, decideSprayOn, sessionActs } from './session/session-decide.ts';
import type { Shop } from './shop.ts';
import { notedFrom } from './verbs/noted.ts';
import { withInstruments } from './with-instruments.ts';

const deciders: Deciders<Verb> = {
  ...potActs,
  mix: decideMix,
  weigh: decideWeigh,
  drawn: decideDrawn,
  add: decideAdd,
  judge: decideJudge,
  ...canActs,
  recall: decideRecall,
  'recall-over': decideRecallOver,
  open: decideOpen,
  received: decideReceived,
  part: decidePart,
  prep: decidePrep,
  coat: decideCoat,
  dry: decideDry,
  cure: decideCure,
  temp: decideTemp,
  door: decideDoor,
  out: decideOut,
  shipped: decideShipped,
  wet: decideWet,
  film: decideFilm,
  adhesion: decideTested,
  rub: decideTested,
  'pull-off': decideFilmTested,
  gloss: decideFilmTested,
  hardness: decideFilmTested,
  holidays: decideFilmTested,
  visual: decideFilmTested,
  release: decideRelease,
  hold: decideHold,
  'see-to': decideSeeTo,
  rework: decideDisposed,
  concession: decideDisposed,
  scrap: decideDisposed,
  return: decideDisposed,
  surface: (shop, said) => {
    const { part } = said.command;
    return part === undefined ? decideReading(shop, said) : decidePartSurface(shop, said, part);
  },
  lel: decideGas,
  o2: decideGas,
  co: decideGas,
  h2s: decideGas,
  gases: decideGases,
  air: decideAir,
  night: decideReading,
  ...sessionActs,
  flush: decideFlush,
  brief: decideBrief,
  'spray-on': decideSprayOn,
  close: decideClose,
  ok: decideOk,
  snooze: decideSnooze,
  set: decideSet,
  used: decideUsed,
  shift: decideShift,
  handover: decideHandover,
  takeover: decideTakeover,
  'first-shift': decideFirstShift,
  'first-shift-done': decideFirstShiftDone,
  'first-shift-off': decideFirstShiftOff,
  undo: decideUndo,
  amend: decideAmend,
  assess: decideAssess,
  fit: decideQualification,
  medical: decideQualification,
  training: decideQualification,
  'breathing-check': decideBreathingAir,
  exposure: decideExposure,
  'near-miss': decideNearMiss,
  eyes: decideAlarm,
  spill: decideAlarm,
  fire: decideAlarm,
  down: decideAlarm,
  hot: decideAlarm,
  'skin-burn': decideAlarm,
  breathless: decideAlarm,
  emergency: decideAlarm,
  'no-alarm': decideNoAlarm,
  'alarm-over': decideAlarmOver,
  drill: decideDrill,
  bell: decideBell,
  remind: decideRemind,
  confirm: decideStep,
  instrument: decideInstrument,
  calibrated: decideCalibrated,
};

export function decide(shop: Shop, said: Said): Decision {
  if (said.at > said.now) return unclear({ code: 'in-the-future', at: said.at, now: said.now });
  const asHappened = () => decideVerb(shop, said.command.verb, { ...said, stance: { is: 'happened' } });
  const decided = decideVerb(shop, said.command.verb, said);
  const decision = nameAlarmFirst(shop, said, heldByAlarm(shop, said, decided), asHappened);
  if (decision.kind !== 'accepted') return decision;
  const figures = said.stance.is === 'asked' ? farFigures(shop, said.command, said.by) : [];
  if (figures.length > 0) return unclear({ code: 'far-reading', from: 'usual', figures });
  const events = withInstruments(
    shop,
    said,
    decision.events.map((event) => noting(said.command, event)),
  );
  return isFailed(events) ? unclear(events.failed) : { ...decision, events };
}

function decideVerb<V extends Verb>(shop: Shop, verb: V, said: Said<CommandOf<V>>): Decision {
  return deciders[verb](shop, said);
}

/** With what the line told besides, which no rule reads. */
function noting(command: Command, event: NewEvent): NewEvent {
  const noted = notedFrom(command, event.body.type);
  return Object.keys(noted).length === 0 ? event : { ...event, body: EventBody.parse({ ...event.body, ...noted }) };
}
