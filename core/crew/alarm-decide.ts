// Trouble, near misses and bell tests: told, never objected to. And people's dates, which a lead or supervisor settles.

import type { Batch } from '../batch/batch.ts';
import type { CommandOf } from '../commands.ts';
import { accepted, type Decision, onCrew, type Said, unclear } from '../decision.ts';
import { isFailed } from '../failed.ts';
import type { EventBody, NewEvent } from '../history.ts';
import { type BatchNumber, batchStream, type CanNumber, canStream, crewStream, type PersonName } from '../ids.ts';
import { known } from '../known.ts';
import { sheetMeant } from '../products/shelf.ts';
import { namedIn } from '../session/people-named.ts';
import { placeOf } from '../session/place-meant.ts';
import type { Alarm, Qualification } from '../session/session-commands.ts';
import { airServingIn, liveBatches, liveCans, type Shop, sheetFor } from '../shop.ts';
import { partsPerMillion } from '../units.ts';
import { unreadUnder } from '../unread.ts';
import { alarmsMeant } from './alarms-meant.ts';
import { alarmsOn, countdowns } from './open-alarms.ts';
import { mayNotSettle, roleMissing } from './who-may.ts';

/** Stands where a near miss was told by nobody. */
export const nobody: PersonName = 'anonymous';

/** An alarm is never asked back about, nor refused for what it names. */
export function decideAlarm(shop: Shop, said: Said<CommandOf<Alarm>>): Decision {
  const { verb, note, place, unsure = false } = said.command;
  if (unsure) return onCrew(said, { type: 'CryHeard', what: verb, note: note ?? '', ...known({ place }) });
  const hot = said.command.verb === 'hot' ? said.command : undefined;
  const { batch, can } = hot === undefined ? {} : whatHeats(shop, hot);
  const isUnsaid = hot?.batch !== undefined && !(note ?? '').includes(`${hot.batch}`);
  const noted = batch === undefined && isUnsaid ? [hot.batch, note].filter(Boolean).join(' ') : note;
  const seen = hot?.seen === 'hot' ? undefined : hot?.seen;
  const body: EventBody = { type: 'AlarmRaised', what: verb, ...known({ note: noted, batch, can, seen, place }) };
  const of = [...(batch === undefined ? [] : [batchStream(batch)]), ...(can === undefined ? [] : [canStream(can)])];
  // A cry is recorded whatever does not read any more: then it stands under the crew alone.
  const under = of.filter((stream) => unreadUnder(shop, stream).length === 0);
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
  const ended = alarmsMeant(crew.alarms, said.command);
  if (ended === 'several' || ended.length === 0) {
    return unclear({ code: 'which-alarm', alarms: crew.alarms, isOther: ended !== 'several' });
  }
  const over = (drill: boolean): Alarm[] => [
    ...new Set(ended.filter(({ isDrill }) => isDrill === drill).map(({ what }) => what)),
  ];
  const of = ended
    .filter(({ isDrill }) => !isDrill)
    .map(({ what, note, batch, can, seen, place }) => ({ what, ...known({ note, batch, can, seen, place }) }));
  return onCrew(said, {
    ...{ type: 'AlarmsEnded', ends: over(false), drills: over(true) },
    ...(of.length > 0 && { of }),
    ...(ended.length < crew.alarms.length && { seqs: ended.map(({ seq }) => seq) }),
  });
}

export function decideDrill({ crew }: Shop, said: Said<CommandOf<'drill'>>): Decision {
  const wanted = roleMissing(crew, said.by, { say: 'drill' });
  if (wanted !== undefined) return unclear(mayNotSettle(crew, wanted));
  return onCrew(said, { type: 'DrillBegun', what: said.command.what });
}

export interface Heating {
  readonly batch?: BatchNumber;
  readonly can?: CanNumber;
}

/** What is named; where nothing is, the only thing that it can be. Of several none: nothing is guessed. */
function whatHeats(shop: Shop, { batch, can, heats, note = '' }: CommandOf<'hot'>): Heating {
  if (batch !== undefined) return shop.batches.has(batch) ? { batch } : {};
  if (can !== undefined) return shop.cans.has(can) ? { can } : {};
  // A number that nobody understood may be another one's.
  const [only, other] = /\d/u.test(note) ? [] : mayHeatNow(shop, heats);
  return only === undefined || other !== undefined ? {} : only;
}

/** A lid that swells may be a can's as well; what is only hot is a pot. */
export const mayHeatNow = (shop: Shop, heats: CommandOf<'hot'>['heats']): readonly Heating[] => [
  ...(heats === 'can' ? [] : potsInUse(shop).map((batch) => ({ batch }))),
  ...(heats === undefined ? [] : liveCans(shop).map(({ number: can }) => ({ can }))),
];

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
  const { sheet: named, method, suppliedAir, until } = said.command;
  const wanted = roleMissing(shop.crew, said.by, { say: 'assess' });
  if (wanted !== undefined) return unclear(mayNotSettle(shop.crew, wanted));
  const sheet = named === undefined ? sheetFor(shop) : sheetMeant(shop.shelf, undefined, named);
  if (isFailed(sheet)) return unclear(sheet.failed);
  const place = placeOf(shop, said.command.place);
  const supplied = suppliedAir === 'with' ? { supplied: true as const } : {};
  return onCrew(said, {
    ...{ type: 'AirAssessed', place, sheet: sheet.id, revision: sheet.revision, method, ...supplied, until },
  });
}

/** By grade D where the law of the United States is known to hold, else by the stricter EN 12021; a compressor's dew point is held against the air that was read last. */
export function decideBreathingAir(shop: Shop, said: Said<CommandOf<'breathing-check'>>): Decision {
  const { verb: _, carbonMonoxide, carbonDioxide, ...read } = said.command;
  const { frame, assumed } = shop.crew.spray.law;
  const standard = frame === 'us' && !assumed ? 'grade-d' : 'en-12021';
  const ambientCelsius = airServingIn(shop, undefined, said.at).celsius;
  const gases = {
    carbonMonoxide: carbonMonoxide === undefined ? undefined : partsPerMillion(carbonMonoxide),
    carbonDioxide: carbonDioxide === undefined ? undefined : partsPerMillion(carbonDioxide),
  };
  return onCrew(said, { type: 'BreathingAirChecked', standard, ...read, ...known({ ...gases, ambientCelsius }) });
}

export function decideQualification(shop: Shop, said: Said<CommandOf<Qualification>>): Decision {
  const { verb, person, until } = said.command;
  const wanted = roleMissing(shop.crew, said.by, { say: verb });
  if (wanted !== undefined) return unclear(mayNotSettle(shop.crew, wanted));
  const known = namedIn(shop, said, [person]);
  if (known.is === 'stranger') return known.decision;
  return onCrew(said, { type: 'QualificationDated', person: known.asFiled(person), what: verb, until });
}
