// Why not to spray, or not to close yet, in English.

import type { PlaceName } from '../../../../core/ids.ts';
import type {
  FanShort,
  FanUnknown,
  LapsedBy,
  OnlySupplied,
  SessionObjection,
  SessionUnclear,
} from '../../../../core/session/session-objections.ts';
import { exampleIn } from '../../example-units.ts';
import type { Figures } from '../../figures.ts';
import { englishBreathing } from './breathing.ts';
import { englishLaw } from './law.ts';
import { englishQualifications, englishSensitisers } from './session.ts';
import { englishSolvents } from './solvents.ts';

const lapsed: Readonly<Record<LapsedBy, string>> = {
  later: 'it was briefed only later',
  closed: 'it was closed',
  batch: 'it was for another batch',
  booth: 'it was for another booth',
  shift: 'the shift has changed',
  alarm: 'there has been an alarm there since',
  spell: "the sheet's longest spell is over",
};

/** Of what nobody knows, or has run out. */
const byName = 'A supervisor may go on knowing it, for this session: permit, and why. It stands in the record by name.';

type NotSummedObjection = Extract<SessionObjection, { code: 'air-not-summed' }>;

/** What the supervisor may do, and how. */
const byAssessment =
  'Only a supervisor lifts this beforehand, with permit and the name of the employer’s written assessment.';

export function englishSessionObjection(objection: SessionObjection, figures: Figures): string {
  switch (objection.code) {
    case 'no-brief':
      return 'No spray brief is open, and this crew briefs before it sprays. Say brief, and who sprays.';
    case 'brief-lapsed':
      return `The brief of session ${objection.session} no longer serves: ${lapsed[objection.because]}. Brief anew.`;
    case 'brief-not-acknowledged':
      return `Not acknowledged in session ${objection.session}: ${figures.list(objection.people)}. Each says ack, outside the spray area.`;
    case 'ack-for-sprayer':
      return `${objection.person} sprays and is there: nobody says ack for them. ${objection.person} says ack ${objection.session}.`;
    case 'inside-vessel':
      return "Inside a vessel none of this serves: the employer's confined-space permit is asked for.";
    case 'may-not-spray':
      return `By the crew's own rule these may not spray: ${figures.list(objection.people)}.`;
    case 'no-extraction-no-air': {
      const extraction =
        objection.extraction === 'off' ? 'There is no extraction' : 'Nobody has said that the extraction runs';
      const air = objection.air === 'none' ? 'there is no supplied air' : 'nobody has said that there is supplied air';
      return `${extraction}, and ${air}. Where there is no extraction, supplied air at the least for everybody exposed: nobody lifts this.`;
    }
    case 'fan-not-measured': {
      const asks =
        objection.asks === undefined
          ? 'Vapour burns whatever is breathed'
          : `The sum asks for ${figures.flowUp(objection.asks)}`;
      return `${asks}, and ${fanUnknown(objection.missing, objection.place, figures)}. ${byAssessment}`;
    }
    case 'fan-too-weak':
      return `The fan does not give what is asked: ${figures.list(objection.short.map((short) => shortOf(short, figures)))}. ${byAssessment}`;
    case 'confined-place':
      return `${objection.place} is by its name a place that people are closed in. None of this serves there: the employer's confined-space permit is asked for. ${objection.session === undefined ? 'Done from outside, nobody inside: say the coat with from-outside' : `Sprayed from outside, nobody inside: say from-outside ${objection.session}`}. If the name means something else, a lead says set confined ${objection.place} off.`;
    case 'not-qualified':
      return `Out of date: ${figures.list(objection.ranOut.map(({ person, what, until }) => `${englishQualifications[what]} of ${person}, ${figures.date(until)}`))}. Move them out, or note the new date. ${byName}`;
    case 'breathing-air-not-fit':
      return englishBreathing.notFit(objection.check, figures);
    case 'breathing-air-unchecked':
      return `${englishBreathing.unchecked(objection.check, objection.because, figures)} ${byName}`;
    case 'near-not-named':
      return `Nobody was named as near in session ${objection.session}. Who else is there? Tap who has moved out or stays, or say near lia out. ${byName}`;
    case 'dates-not-known':
      return `No date known: ${figures.list(objection.undated.map(({ person, what }) => `${figures.list(what.map((each) => englishQualifications[each]))} of ${person}`))}. Note it, or move them out.${objection.forDiisocyanates === true ? ` ${englishLaw.diisocyanates}` : ''} ${byName}`;
    case 'air-not-summed':
      return `Nobody can say how much air keeps it from burning: ${notSummed(objection, figures)}. ${byName}`;
    case 'supplied-air-or-none':
      return `${onlySupplied(objection.because, figures)}. ${objection.air === 'not-said' ? 'Nobody has said that there is supplied air: say supplied yes, or do not spray' : 'Supplied air, or no spraying'}: nobody lifts this. What happened all the same is recorded against advice.`;
    case 'no-assessment': {
      const ended =
        objection.ended === undefined ? 'there is none yet' : `the last one ended on ${figures.date(objection.ended)}`;
      return `Without supplied air it rests on the supervisor's standing assessment for ${objection.place}, ${objection.product} and spraying: ${ended}. A supervisor says assess ${objection.sheet} in ${objection.place} without-supplied-air until 2027-01-31. ${byName}`;
    }
    case 'gear-not-flushed': {
      const what = objection.gear === 'gun' ? 'The gun is' : 'The vessels are';
      const left = objection.left.map((id) => englishSolvents[id]);
      return `${what} not said to be flushed${left.length === 0 ? '' : `; still to come: ${figures.list(left)}`}.`;
    }
    case 'rags-not-canned':
      return 'Nobody has said that filters and rags are in their closed can.';
  }
}

function onlySupplied(because: OnlySupplied, figures: Figures): string {
  switch (because.is) {
    case 'sensitiser':
      return `The sheet ${because.sheet} names a respiratory sensitiser: ${figures.list(because.kinds.map((kind) => englishSensitisers[kind]))}`;
    case 'sensitiser-open':
      return `The sheet ${because.sheet} does not say whether it holds a respiratory sensitiser`;
    case 'not-measured':
      return 'Nobody knows what the fan gives';
    case 'not-summed':
      return 'There is no sum of the air for breathing';
    case 'falls-short':
      return 'The fan does not give what breathing asks for';
  }
}

function fanUnknown(missing: FanUnknown, place: PlaceName, { units }: Figures): string {
  switch (missing) {
    case 'extraction':
      return 'nobody has said whether the extraction runs';
    case 'velocity':
      return 'the face velocity was not measured';
    case 'booth':
      return `the open face of the booth is not set: say set booth ${place} ${exampleIn('4m2', units)}`;
  }
}

function notSummed({ because, sheet, session }: NotSummedObjection, figures: Figures): string {
  switch (because.is) {
    case 'sheet-silent':
      return `the sheet ${sheet} does not give its solvents. Ask the maker for section 9 of the safety data sheet`;
    case 'without-limit':
      return `no explosive limit was read of ${figures.list(because.solvents.map((id) => englishSolvents[id]))}, which is in ${sheet}`;
    case 'rate-unknown':
      return `session ${session} has neither a batch nor how much is sprayed in an hour. Say brief with the batch, or with ${exampleIn('1.2kg', figures.units)}`;
  }
}

function shortOf(short: FanShort, figures: Figures): string {
  switch (short.of) {
    case 'lel':
      return `${figures.flowDown(short.gives)} against ${figures.flowUp(short.asks)} to stay below the share of the explosive limit`;
    case 'exposure':
      return `${figures.flowDown(short.gives)} against ${figures.flowUp(short.asks)} for breathing without supplied air`;
    case 'face':
      return `${figures.speed(short.gives)} over the face against ${figures.speed(short.asks)}`;
  }
}

export function englishSessionUnclear(unclear: SessionUnclear, figures: Figures): string {
  switch (unclear.code) {
    case 'no-such-session':
      return `There is no session ${unclear.session}.${unclear.live.length === 0 ? '' : ` Open: ${open(unclear.live, figures)}.`}`;
    case 'which-session':
      return unclear.live.length === 0
        ? 'No spray session is open. Say brief, and who sprays.'
        : `Which session? Open: ${open(unclear.live, figures)}.`;
    case 'not-spraying':
      return `Nobody has said that session ${unclear.session} sprays. If it did, say spray on ${unclear.session} with its time, at 9:40, and then spray off.`;
    case 'watcher-sprays':
      return `${unclear.person} sprays, and cannot watch from outside too. Who is outside with the timers? Say brief again, with spray and outside.`;
    case 'not-exposed':
      if (unclear.isOut)
        return `${unclear.person} stands outside in session ${unclear.session} and has nothing to acknowledge. Coming in: say near ${unclear.person} sprays, or stays.`;
      return `${unclear.person} is not on the brief of session ${unclear.session}. Say near ${unclear.person} sprays, stays or out.`;
  }
}

const open = (live: readonly number[], figures: Figures): string => figures.list(live.map(String));
