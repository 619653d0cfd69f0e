// Why not to spray, or not to close yet, in Spanish.

import type {
  FanShort,
  LapsedBy,
  SessionObjection,
  SessionUnclear,
} from '../../../../core/session/session-objections.ts';
import type { Figures } from '../../figures.ts';
import { spanishNames } from './names.ts';

const lapsed: Readonly<Record<LapsedBy, string>> = {
  later: 'se dio después',
  closed: 'ya se cerró',
  batch: 'era para otra mezcla',
  booth: 'era para otra cabina',
  shift: 'ha cambiado el turno',
  spell: 'se cumplió el tiempo máximo de pistola de la ficha',
};

/** What the supervisor may do, and how. */
const byAssessment =
  'Esto solo lo puede permitir antes un supervisor, con permiso y el nombre de la evaluación escrita de la empresa.';

export function spanishSessionObjection(objection: SessionObjection, f: Figures): string {
  switch (objection.code) {
    case 'no-brief':
      return 'No hay charla abierta, y esta cuadrilla la da antes de la pistola. Decir charla, y quién pinta.';
    case 'brief-lapsed':
      return `La charla de la sesión ${objection.session} ya no vale: ${lapsed[objection.because]}. Darla otra vez.`;
    case 'brief-not-acknowledged':
      return `Charla de la sesión ${objection.session}, pendiente de leer: ${f.list(objection.people)}. Cada uno dice leída, fuera de la zona de pistola.`;
    case 'inside-vessel':
      return 'Dentro de un tanque nada de esto vale: hace falta el permiso de la empresa para espacios confinados.';
    case 'may-not-spray':
      return `Por norma de la cuadrilla, sin autorización para la pistola: ${f.list(objection.people)}.`;
    case 'no-extraction-no-air': {
      const extraction =
        objection.extraction === 'off' ? 'No hay extracción' : 'Nadie ha dicho que la extracción funcione';
      const air = objection.air === 'none' ? 'no hay aire suministrado' : 'nadie ha dicho que haya aire suministrado';
      return `${extraction}, y ${air}. Sin extracción, como mínimo aire suministrado para todos los expuestos. ${byAssessment}`;
    }
    case 'fan-not-measured': {
      const missing =
        objection.missing === 'velocity'
          ? 'no se midió la velocidad frontal'
          : 'no consta el frente abierto de la cabina';
      return `El cálculo pide ${f.flowUp(objection.asks)}, y ${missing}. ${byAssessment}`;
    }
    case 'fan-too-weak':
      return `La extracción no da lo que se pide: ${f.list(objection.short.map((short) => shortOf(short, f)))}. ${byAssessment}`;
    case 'gear-not-flushed': {
      const what = objection.gear === 'gun' ? 'la pistola esté lavada' : 'los recipientes estén lavados';
      const left = objection.left.map(spanishNames.solvent);
      return `Nadie ha dicho que ${what}${left.length === 0 ? '' : `; falta: ${f.list(left)}`}.`;
    }
    case 'rags-not-canned':
      return 'Nadie ha dicho que filtros y trapos estén en su bote cerrado.';
  }
}

function shortOf(short: FanShort, f: Figures): string {
  switch (short.of) {
    case 'lel':
      return `da ${f.flowDown(short.gives)}, y se piden ${f.flowUp(short.asks)} para no pasar de la parte fijada del límite de explosividad`;
    case 'exposure':
      return `da ${f.flowDown(short.gives)}, y se piden ${f.flowUp(short.asks)} para respirar sin aire suministrado`;
    case 'face':
      return `${f.speed(short.gives)} de velocidad frontal, y se piden ${f.speed(short.asks)}`;
  }
}

export function spanishSessionUnclear(unclear: SessionUnclear, f: Figures): string {
  switch (unclear.code) {
    case 'no-such-session':
      return `No hay sesión ${unclear.session}.${unclear.live.length === 0 ? '' : ` Abiertas: ${open(unclear.live, f)}.`}`;
    case 'which-session':
      return unclear.live.length === 0
        ? 'No hay sesión de pistola abierta. Decir charla, y quién pinta.'
        : `¿Qué sesión? Abiertas: ${open(unclear.live, f)}.`;
    case 'not-exposed':
      return `${unclear.person} no está en la charla de la sesión ${unclear.session}. Decir cerca ${unclear.person} pinta, queda o fuera.`;
  }
}

const open = (live: readonly number[], f: Figures): string => f.list(live.map(String));
