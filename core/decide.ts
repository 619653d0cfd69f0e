// One command, one decision: sends each verb to the noun that knows.

import { decideMix, decidePotAct, isPotAct } from './batch/batch-decide.ts';
import { decideJudge } from './batch/judge-anew.ts';
import { decideAdd, decideWeigh } from './batch/weigh-decide.ts';
import { decideCanAct, decideOpen } from './can/can-decide.ts';
import { decideCoat } from './coat/coat-decide.ts';
import type { Command, CommandOf, Verb } from './commands.ts';
import { decideAmend } from './corrections/amend.ts';
import { decideUndo } from './corrections/undo.ts';
import { decideAlarm, decideBell, decideNearMiss, decideQualification } from './crew/alarm-decide.ts';
import { decideOk, decideSet } from './crew/crew-decide.ts';
import { decideHandover, decideShift, decideTakeover } from './crew/shift-decide.ts';
import { decideUsed } from './crew/solvent-decide.ts';
import { type Decision, type Said, unclear } from './decision.ts';
import { EventBody, type NewEvent } from './history.ts';
import { decideDoor, decideOut, decideTemp } from './part/load-decide.ts';
import {
  decideCure,
  decideDry,
  decideFilm,
  decideHold,
  decidePart,
  decideRelease,
  decideTested,
} from './part/part-decide.ts';
import { decidePartSurface, decidePrep } from './part/surface-decide.ts';
import { decideReading } from './place/place-decide.ts';
import { decideSnooze } from './reminders/snooze.ts';
import { decideBrief, decideClose, decideSessionAct, decideSprayOn } from './session/session-decide.ts';
import type { Shop } from './shop.ts';
import { notedFrom } from './verbs/noted.ts';

export function decide(shop: Shop, said: Said): Decision {
  const decision = decideVerb(shop, said);
  if (decision.kind !== 'accepted') return decision;
  return { ...decision, events: decision.events.map((event) => noting(said.command, event)) };
}

/** With what the line told besides, which no rule reads. */
function noting(command: Command, event: NewEvent): NewEvent {
  const noted = notedFrom(command, event.body.type);
  return Object.keys(noted).length === 0 ? event : { ...event, body: EventBody.parse({ ...event.body, ...noted }) };
}

// biome-ignore lint/complexity/noExcessiveLinesPerFunction: a table, a case for each verb
function decideVerb(shop: Shop, said: Said): Decision {
  if (said.at > said.now) return unclear({ code: 'in-the-future', at: said.at, now: said.now });
  const { command } = said;
  if (isPotAct(command)) return decidePotAct(shop, { ...said, command });
  switch (command.verb) {
    case 'mix':
      return decideMix(shop, saidAs(said, command));
    case 'weigh':
      return decideWeigh(shop, saidAs(said, command));
    case 'add':
      return decideAdd(shop, saidAs(said, command));
    case 'open':
      return decideOpen(shop, saidAs(said, command));
    case 'lid':
    case 'blanket':
    case 'check':
    case 'prestir':
    case 'discard':
      return decideCanAct(shop, saidAs(said, command));
    case 'judge':
      return decideJudge(shop, saidAs(said, command));
    case 'part':
      return decidePart(saidAs(said, command));
    case 'prep':
      return decidePrep(shop, saidAs(said, command));
    case 'coat':
      return decideCoat(shop, saidAs(said, command));
    case 'dry':
      return decideDry(shop, saidAs(said, command));
    case 'cure':
      return decideCure(shop, saidAs(said, command));
    case 'temp':
      return decideTemp(shop, saidAs(said, command));
    case 'door':
      return decideDoor(shop, saidAs(said, command));
    case 'out':
      return decideOut(shop, saidAs(said, command));
    case 'wet':
    case 'film':
      return decideFilm(shop, saidAs(said, command));
    case 'adhesion':
    case 'rub':
      return decideTested(shop, saidAs(said, command));
    case 'release':
      return decideRelease(shop, saidAs(said, command));
    case 'hold':
      return decideHold(shop, saidAs(said, command));
    case 'surface':
      return command.part === undefined
        ? decideReading(shop, saidAs(said, command))
        : decidePartSurface(shop, saidAs(said, command), command.part);
    case 'air':
    case 'night':
      return decideReading(shop, saidAs(said, command));
    case 'ok':
      return decideOk(shop, saidAs(said, command));
    case 'snooze':
      return decideSnooze(shop, saidAs(said, command));
    case 'shift':
      return decideShift(saidAs(said, command));
    case 'handover':
      return decideHandover(shop, saidAs(said, command));
    case 'takeover':
      return decideTakeover(shop, saidAs(said, command));
    case 'undo':
      return decideUndo(shop, saidAs(said, command));
    case 'amend':
      return decideAmend(shop, saidAs(said, command));
    case 'used':
      return decideUsed(saidAs(said, command));
    case 'brief':
      return decideBrief(shop, saidAs(said, command));
    case 'near':
    case 'ack':
    case 'fan':
    case 'supplied':
    case 'spray-off':
    case 'flush':
    case 'rags':
      return decideSessionAct(shop, saidAs(said, command));
    case 'spray-on':
      return decideSprayOn(shop, saidAs(said, command));
    case 'close':
      return decideClose(shop, saidAs(said, command));
    case 'fit':
    case 'medical':
    case 'training':
      return decideQualification(shop, saidAs(said, command));
    case 'near-miss':
      return decideNearMiss(saidAs(said, command));
    case 'eyes':
    case 'spill':
    case 'fire':
    case 'down':
    case 'hot':
      return decideAlarm(shop, saidAs(said, command));
    case 'bell':
      return decideBell(shop, saidAs(said, command));
    case 'set':
      return decideSet(shop, saidAs(said, command));
  }
}

/** The same saying with its command narrowed to the verb at hand. */
function saidAs<V extends Verb>(said: Said<Command>, command: CommandOf<V>): Said<CommandOf<V>> {
  return { ...said, command };
}
