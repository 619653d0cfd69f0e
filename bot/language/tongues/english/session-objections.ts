// Why not to spray, or not to close yet, in English.

import type {
  FanShort,
  LapsedBy,
  SessionObjection,
  SessionUnclear,
} from '../../../../core/session/session-objections.ts';
import type { Figures } from '../../figures.ts';
import { englishSolvents } from './solvents.ts';

const lapsed: Readonly<Record<LapsedBy, string>> = {
  later: 'it was briefed only later',
  closed: 'it was closed',
  batch: 'it was for another batch',
  booth: 'it was for another booth',
  shift: 'the shift has changed',
  spell: "the sheet's longest spell is over",
};

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
      return `${extraction}, and ${air}. Where there is no extraction, supplied air at the least for everybody exposed. ${byAssessment}`;
    }
    case 'fan-not-measured': {
      const missing =
        objection.missing === 'velocity'
          ? 'the face velocity was not measured'
          : 'the open face of the booth is not set';
      return `The sum asks for ${figures.flowUp(objection.asks)}, and ${missing}. ${byAssessment}`;
    }
    case 'fan-too-weak':
      return `The fan does not give what is asked: ${figures.list(objection.short.map((short) => shortOf(short, figures)))}. ${byAssessment}`;
    case 'gear-not-flushed': {
      const what = objection.gear === 'gun' ? 'The gun is' : 'The vessels are';
      const left = objection.left.map((id) => englishSolvents[id]);
      return `${what} not said to be flushed${left.length === 0 ? '' : `; still to come: ${figures.list(left)}`}.`;
    }
    case 'rags-not-canned':
      return 'Nobody has said that filters and rags are in their closed can.';
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
    case 'not-exposed':
      if (unclear.isOut)
        return `${unclear.person} stands outside in session ${unclear.session} and has nothing to acknowledge. Coming in: say near ${unclear.person} sprays, or stays.`;
      return `${unclear.person} is not on the brief of session ${unclear.session}. Say near ${unclear.person} sprays, stays or out.`;
  }
}

const open = (live: readonly number[], figures: Figures): string => figures.list(live.map(String));
