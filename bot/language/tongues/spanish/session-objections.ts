// Why not to spray, or not to close yet, in Spanish.

import type {
  FanShort,
  LapsedBy,
  SessionObjection,
  SessionUnclear,
} from '../../../../core/session/session-objections.ts';
import type { Figures } from '../../figures.ts';
import { spanishNames } from './names.ts';
import type { Spoken } from './spoken.ts';

const lapsed = (say: Spoken): Readonly<Record<LapsedBy, string>> => ({
  later: 'se dio después',
  closed: 'ya se cerró',
  batch: 'era para otra mezcla',
  booth: 'era para otra cabina',
  shift: 'ha cambiado el turno',
  spell: `se cumplió el tiempo máximo de pistola ${say.ofThe('sheet')}`,
});

/** What the supervisor may do, and how. */
const byAssessment =
  'Solo lo puede permitir antes un supervisor: la misma línea, con permiso y el nombre de la evaluación escrita de la empresa.';

export function spanishSessionObjection(say: Spoken, objection: SessionObjection, figures: Figures): string {
  switch (objection.code) {
    case 'no-brief':
      return `No hay ${say.one('brief')} abierta, y ${say.this('crew')} la da antes de pintar a pistola. Escriba: ${say.one('brief')}, y quién pinta.`;
    case 'brief-lapsed':
      return `La ${say.one('brief')} de la sesión ${objection.session} ya no vale: ${lapsed(say)[objection.because]}. Dela otra vez.`;
    case 'brief-not-acknowledged':
      return `Sesión ${objection.session}, falta por firmar la ${say.one('brief')}: ${figures.list(objection.people)}. Cada uno escribe firmada, fuera de la zona.`;
    case 'ack-for-sprayer':
      return `${objection.person} pinta y está aquí: nadie firma en su lugar. Lo escribe ${objection.person}: firmada ${objection.session}.`;
    case 'inside-vessel':
      return 'Dentro de un tanque nada de esto vale: hace falta el permiso de la empresa para espacios confinados.';
    case 'may-not-spray':
      return `Por norma ${say.ofThe('crew')}, sin autorización para pintar: ${figures.list(objection.people)}.`;
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
      return `Caudal requerido por cálculo: ${figures.flowUp(objection.asks)}, y ${missing}. ${byAssessment}`;
    }
    case 'fan-too-weak':
      return `La extracción no basta: ${objection.short.map((short) => shortOf(short, figures)).join('; ')}. ${byAssessment}`;
    case 'gear-not-flushed': {
      const what = objection.gear === 'gun' ? 'la pistola esté lavada' : 'los recipientes estén lavados';
      const left = objection.left.map(spanishNames(say).solvent);
      return `Nadie ha dicho que ${what}${left.length === 0 ? '' : `; falta: ${figures.list(left)}`}.`;
    }
    case 'rags-not-canned':
      return 'Nadie ha dicho que filtros y trapos estén en su contenedor cerrado.';
  }
}

function shortOf(short: FanShort, figures: Figures): string {
  switch (short.of) {
    case 'lel':
      return `caudal disponible ${figures.flowDown(short.gives)}, requerido por el LIE ${figures.flowUp(short.asks)}`;
    case 'exposure':
      return `caudal disponible ${figures.flowDown(short.gives)}, requerido para respirar sin aire suministrado ${figures.flowUp(short.asks)}`;
    case 'face':
      return `velocidad frontal ${figures.speed(short.gives)}, requerida ${figures.speed(short.asks)}`;
  }
}

export function spanishSessionUnclear(say: Spoken, unclear: SessionUnclear, figures: Figures): string {
  switch (unclear.code) {
    case 'no-such-session':
      return `No hay sesión ${unclear.session}.${unclear.live.length === 0 ? '' : ` Abiertas: ${open(unclear.live, figures)}.`}`;
    case 'which-session':
      return unclear.live.length === 0
        ? `No hay sesión de pintado abierta. Escriba: ${say.one('brief')}, y quién pinta.`
        : `¿Qué sesión? Abiertas: ${open(unclear.live, figures)}.`;
    case 'not-exposed':
      if (unclear.isOut)
        return `${unclear.person} queda fuera de la zona en la sesión ${unclear.session} y no tiene nada que firmar. Si entra, escriba: cerca ${unclear.person} pinta, o queda.`;
      return `${unclear.person} no está en la ${say.one('brief')} de la sesión ${unclear.session}. Escriba: cerca ${unclear.person} pinta, queda o fuera.`;
  }
}

const open = (live: readonly number[], figures: Figures): string => figures.list(live.map(String));
