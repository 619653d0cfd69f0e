// Trouble, near misses and bell tests: told, never objected to. And people's dates, which a lead or supervisor settles.

import type { Batch } from '../batch/batch.ts';
import type { CommandOf } from '../commands.ts';
import { accepted, type Decision, onCrew, type Said, unclear } from '../decision.ts';
import { isFailed } from '../failed.ts';
import type { EventBody, NewEvent } from '../history.ts';
import { type BatchNumber, batchStream, crewStream, type PersonName } from '../ids.ts';
import { known } from '../known.ts';
import { sheetMeant } from '../products/shelf.ts';
import { namedIn } from '../session/people-named.ts';
import { placeOf } from '../session/place-meant.ts';
import type { Alarm, Qualification } from '../session/session-commands.ts';
import { liveBatches, type Shop, sheetFor } from '../shop.ts';
import { unreadUnder } from '../unread.ts';
import { alarmsOn, countdowns } from './open-alarms.ts';
import { mayNotSettle, roleMissing } from './who-may.ts';

/** Stands where a near miss was told by nobody. */
export const nobody: PersonName = 'anonymous';

/** An alarm is never asked back about, nor refused for what it names. */
export function decideAlarm(shop: Shop, said: Said<CommandOf<Alarm>>): Decision {
  const { verb, note, place, unsure = false } = said.command;
  if (unsure) return onCrew(said, { type: 'CryHeard', what: verb, note: note ?? '', ...known({ place }) });
  const named = said.command.verb === 'hot' ? said.command.batch : undefined;
  const pot = verb === 'hot' ? hotPot(shop, named, note) : undefined;
  const isUnsaid = named !== undefined && !(note ?? '').includes(`${named}`);
  const noted = pot === undefined && isUnsaid ? [named, note].filter(Boolean).join(' ') : note;
  const body: EventBody = { type: 'AlarmRaised', what: verb, ...known({ note: noted, batch: pot, place }) };
  // A cry is recorded whatever does not read any more: then it stands under the crew alone.
  const under = pot === undefined || unreadUnder(shop, batchStream(pot)).length > 0 ? [] : [batchStream(pot)];
  return accepted({ streams: [crewStream, ...under], happenedAt: said.at, body });
}

/** Anybody's, while the countdown runs; once it has rung it is an alarm like any other. */
export function decideNoAlarm({ crew: { alarms } }: Shop, said: Said<CommandOf<'no-alarm'>>): Decision {
  if (countdowns(alarms, said.at).length > 0) return onCrew(said, { type: 'AlarmCalledOff' });
  return unclear({ code: 'no-countdown', isOn: alarmsOn(alarms, said.at).length > 0 });
}

export function decideAlarmOver({ crew }: Shop, said: Said<CommandOf<'alarm-over'>>): Decision {
  const wanted = roleMissing(crew, said.by, { say: 'alarm-over' });
  if (wanted !== undefined) return unclear(mayNotSettle(crew, wanted));
  if (crew.alarms.length === 0) return unclear({ code: 'no-alarm-on' });
  const over = (drill: boolean): Alarm[] => [
    ...new Set(crew.alarms.filter(({ isDrill }) => isDrill === drill).map(({ what }) => what)),
  ];
  return onCrew(said, { type: 'AlarmsEnded', ends: over(false), drills: over(true) });
}

export function decideDrill({ crew }: Shop, said: Said<CommandOf<'drill'>>): Decision {
  const wanted = roleMissing(crew, said.by, { say: 'drill' });
  if (wanted !== undefined) return unclear(mayNotSettle(crew, wanted));
  return onCrew(said, { type: 'DrillBegun', what: said.command.what });
}

/** The pot that is named; where nothing is named the only one that anything is in. Of several none: nothing is guessed. */
function hotPot(shop: Shop, named: BatchNumber | undefined, note = ''): BatchNumber | undefined {
  if (named !== undefined) return shop.batches.has(named) ? named : undefined;
  if (saysWhich.test(note)) return undefined;
  const [pot, other] = potsInUse(shop);
  return other === undefined ? pot : undefined;
}

/** `can 5`: another thing is hot, or a number that may be another pot's. In English and Spanish, as people type it. */
const saysWhich = /\d|\b(?:cans?|drums?|latas?|botes?|bidón|bidones)\b/iu;

export function potsInUse(shop: Shop): readonly BatchNumber[] {
  const inUse = ({ inVessel }: Batch) => inVessel['part-a'] !== undefined || inVessel['part-b'] !== undefined;
  return liveBatches(shop)
    .filter(inUse)
    .map(({ number }) => number);
}

export function decideNearMiss(_: Shop, said: Said<CommandOf<'near-miss'>>): Decision {
  const { text, anonymous } = said.command;
  const event: NewEvent = {
    streams: [crewStream],
    happenedAt: said.at,
    body: { type: 'NearMissTold', text, anonymous },
  };
  return accepted(anonymous ? { ...event, by: nobody } : event);
}

export function decideBell(shop: Shop, said: Said<CommandOf<'bell'>>): Decision {
  return onCrew(said, { type: 'BellTested', people: shop.crew.people.map(({ name }) => name) });
}

export function decideAssess(shop: Shop, said: Said<CommandOf<'assess'>>): Decision {
  const { sheet: named, method, until } = said.command;
  const wanted = roleMissing(shop.crew, said.by, { say: 'assess' });
  if (wanted !== undefined) return unclear(mayNotSettle(shop.crew, wanted));
  const sheet = named === undefined ? sheetFor(shop) : sheetMeant(shop.shelf, undefined, named);
  if (isFailed(sheet)) return unclear(sheet.failed);
  const place = placeOf(shop, said.command.place);
  return onCrew(said, { type: 'AirAssessed', place, sheet: sheet.id, revision: sheet.revision, method, until });
}

export function decideQualification(shop: Shop, said: Said<CommandOf<Qualification>>): Decision {
  const { verb, person, until } = said.command;
  const wanted = roleMissing(shop.crew, said.by, { say: verb });
  if (wanted !== undefined) return unclear(mayNotSettle(shop.crew, wanted));
  const known = namedIn(shop, said, [person]);
  if (known.is === 'stranger') return known.decision;
  return onCrew(said, { type: 'QualificationDated', person: known.asFiled(person), what: verb, until });
}
