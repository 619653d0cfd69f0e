// What happened in a spray session or in need, in Spanish, in half a line.

import type { AlarmEvent } from '../../../../core/crew/alarm-events.ts';
import type { SessionEvent } from '../../../../core/session/session-events.ts';
import type { Figures } from '../../figures.ts';
import { spanishDay, spanishNames, spanishPlace } from './names.ts';
import { spanishSession } from './session.ts';

export function spanishSessionFact(fact: SessionEvent | AlarmEvent, f: Figures): string {
  switch (fact.type) {
    case 'SessionBriefed':
      return `charla de la sesión ${fact.session}: ${spanishPlace(fact.place)}, pistola ${f.list(fact.sprayers)}`;
    case 'PeoplePlaced':
      return `${f.list(fact.people)} ${spanishSession.goes[fact.goes]}`;
    case 'ExtractionSaid': {
      const { faceMetresPerSecond: face } = fact;
      if (!fact.running) return 'sin extracción';
      return `extracción en marcha, ${face === undefined ? spanishSession.notMeasured : f.speed(face)}`;
    }
    case 'SuppliedAirSaid':
      return `aire suministrado: ${fact.supplied ? 'sí' : 'no'}`;
    case 'BriefAcknowledged':
      return `charla leída por ${fact.person}${fact.witness === undefined ? '' : `, ante ${fact.witness}`}`;
    case 'SprayStarted':
      return `empieza la pistola, ${spanishPlace(fact.place)}`;
    case 'SprayStopped':
      return 'para la pistola';
    case 'GearFlushed': {
      const solvent = fact.solvent === undefined ? '' : ` con ${spanishNames.solvent(fact.solvent)}`;
      const amount = fact.litres === undefined ? '' : `, ${f.volume(fact.litres)}`;
      return `lavado de ${spanishSession.gears[fact.gear]}${solvent}${amount}`;
    }
    case 'WasteCanned':
      return 'filtros y trapos en su bote cerrado';
    case 'SessionClosed':
      return 'sesión cerrada';
    case 'AlarmRaised':
      return `${spanishSession.troubles[fact.what].title.toLowerCase()}${fact.batch === undefined ? '' : `, mezcla ${fact.batch}`}${fact.note === undefined ? '' : `: ${fact.note}`}`;
    case 'NearMissTold':
      return `casi accidente: ${fact.text}`;
    case 'BellTested':
      return `prueba de avisos: ${f.list(fact.people)}`;
    case 'QualificationDated':
      return `${spanishSession.qualifications[fact.what]} de ${fact.person} hasta el ${spanishDay(fact.until)}`;
  }
}
