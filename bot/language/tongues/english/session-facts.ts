// What happened in a spray session or in need, in English, in half a line.

import { isGasNote } from '../../../../core/calc/monitor-limits.ts';
import type { AlarmEvent } from '../../../../core/crew/alarm-events.ts';
import type { SessionEvent } from '../../../../core/session/session-events.ts';
import type { Figures } from '../../figures.ts';
import { englishAlarmName } from './alarms.ts';
import { englishBreathing } from './breathing.ts';
import { englishExposure } from './exposure.ts';
import { englishSession } from './session.ts';
import { englishSolvents } from './solvents.ts';

export function englishSessionFact(fact: SessionEvent | AlarmEvent, figures: Figures): string {
  switch (fact.type) {
    case 'SessionBriefed':
      return `session ${fact.session} briefed: ${fact.place}, sprays ${figures.list(fact.sprayers)}`;
    case 'PeoplePlaced':
      return `${figures.list(fact.people)} ${englishSession.goes[fact.goes]}`;
    case 'ExtractionSaid': {
      const { faceMetresPerSecond: face } = fact;
      if (!fact.running) return 'no extraction';
      return `extraction running, ${face === undefined ? englishSession.notMeasured : figures.speed(face)}`;
    }
    case 'SuppliedAirSaid':
      return `supplied air: ${fact.supplied ? 'yes' : 'no'}`;
    case 'BriefAcknowledged':
      return `brief read by ${fact.person}${fact.witness === undefined ? '' : `, before ${fact.witness}`}`;
    case 'SprayedFromOutside':
      return englishSession.fromOutside;
    case 'SprayStarted':
      return `spraying starts, ${fact.place}`;
    case 'SprayStopped':
      return 'spraying stops';
    case 'GearFlushed': {
      const solvent = fact.solvent === undefined ? '' : ` with ${englishSolvents[fact.solvent]}`;
      const amount = fact.litres === undefined ? '' : `, ${figures.volume(fact.litres)}`;
      return `${englishSession.gears[fact.gear]} flushed${solvent}${amount}`;
    }
    case 'WasteCanned':
      return 'filters and rags in their closed can';
    case 'SessionClosed':
      return 'session closed';
    case 'AlarmRaised':
      return `${englishAlarmName(fact)}${fact.note === undefined || isGasNote(fact.what, fact.note) ? '' : `: ${fact.note}`}`;
    case 'CryHeard':
      return `may be a cry, asked about: ${fact.note}`;
    case 'AlarmCalledOff':
      return 'no alarm, nobody called';
    case 'DrillBegun':
      return `drill: ${englishSession.troubles[fact.what].title.toLowerCase()}`;
    case 'AlarmsEnded':
      return englishSession.ended(fact, figures);
    case 'NearMissTold':
      return `near miss: ${fact.text}`;
    case 'BellTested':
      return `bell test: ${figures.list(fact.people)}`;
    case 'AirAssessed':
      return englishSession.assessed(fact, figures);
    case 'BreathingAirChecked':
      return englishBreathing.fact(fact, figures);
    case 'ExposureMeasured':
      return englishExposure.fact(
        fact.person,
        fact.substance,
        figures.ppm(fact.ppm),
        figures.minutesUp(fact.taskMinutes),
      );
    case 'QualificationDated':
      return `${englishSession.qualifications[fact.what]} of ${fact.person} until ${figures.date(fact.until)}`;
  }
}
