// What happened in a spray session or in need, in Spanish, in half a line.

import { isGasNote } from '../../../../core/calc/monitor-limits.ts';
import type { AlarmEvent } from '../../../../core/crew/alarm-events.ts';
import type { SessionEvent } from '../../../../core/session/session-events.ts';
import type { Figures } from '../../figures.ts';
import { spanishBreathing } from './breathing.ts';
import { spanishExposure } from './exposure.ts';
import { spanishNames, spanishPlace } from './names.ts';
import { spanishSession } from './session.ts';
import type { Spoken } from './spoken.ts';
import { spanishAlarmName } from './troubles.ts';

export function spanishSessionFact(say: Spoken, fact: SessionEvent | AlarmEvent, figures: Figures): string {
  const session = spanishSession(say);
  switch (fact.type) {
    case 'SessionBriefed':
      return `${say.one('brief')} de la sesión ${fact.session}: ${spanishPlace(fact.place)}, ${fact.sprayers.length === 1 ? 'pinta' : 'pintan'} ${figures.list(fact.sprayers)}`;
    case 'PeoplePlaced':
      return session.near(fact.people, fact.goes, figures);
    case 'ExtractionSaid': {
      const { faceMetresPerSecond: face } = fact;
      if (!fact.running) return 'sin extracción';
      return `extracción en marcha, ${face === undefined ? session.notMeasured : figures.speed(face)}`;
    }
    case 'SuppliedAirSaid':
      return `aire suministrado: ${fact.supplied ? 'sí' : 'no'}`;
    case 'BriefAcknowledged':
      return `${say.one('brief')} firmada por ${fact.person}${fact.witness === undefined ? '' : `, ante ${fact.witness}`}`;
    case 'SprayedFromOutside':
      return session.fromOutside;
    case 'SprayStarted':
      return `${session.starts}, ${spanishPlace(fact.place)}`;
    case 'SprayStopped':
      return session.stops;
    case 'GearFlushed': {
      const solvent = fact.solvent === undefined ? '' : ` con ${spanishNames(say).solvent(fact.solvent)}`;
      const amount = fact.litres === undefined ? '' : `, ${figures.volume(fact.litres)}`;
      return `lavado de ${session.gears[fact.gear]}${solvent}${amount}`;
    }
    case 'WasteCanned':
      return session.ragsIn;
    case 'SessionClosed':
      return 'sesión cerrada';
    case 'AlarmRaised':
      return `${spanishAlarmName(say, fact)}${fact.note === undefined || isGasNote(fact.what, fact.note) ? '' : `: ${fact.note}`}`;
    case 'CryHeard':
      return `quizá una alarma, se preguntó: ${fact.note}`;
    case 'AlarmCalledOff':
      return 'sin alarma, no se llamó a nadie';
    case 'DrillBegun':
      return `simulacro: ${session.troubles[fact.what].title.toLowerCase()}`;
    case 'AlarmsEnded':
      return session.ended(fact, figures);
    case 'NearMissTold':
      return `casi accidente: ${fact.text}`;
    case 'BellTested':
      return `prueba de avisos: ${figures.list(fact.people)}`;
    case 'AirAssessed':
      return session.assessed(fact, figures);
    case 'BreathingAirChecked':
      return spanishBreathing.fact(fact, figures);
    case 'ExposureMeasured':
      return spanishExposure(say).fact(
        fact.person,
        fact.substance,
        figures.ppm(fact.ppm),
        figures.minutesUp(fact.taskMinutes),
      );
    case 'QualificationDated':
      return `${session.qualifications[fact.what]} de ${fact.person} hasta el ${figures.date(fact.until)}`;
  }
}
