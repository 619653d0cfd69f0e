// Why not to spray, or not to close yet, in Spanish.

import type { PlaceName } from '../../../../core/ids.ts';
import type {
  FanShort,
  FanUnknown,
  LapsedBy,
  OnlySupplied,
  SessionObjection,
  SessionUnclear,
} from '../../../../core/session/session-objections.ts';
import type { Figures } from '../../figures.ts';
import { spanishBreathing } from './breathing.ts';
import { spanishLaw } from './law.ts';
import { capital, inCountry, spanishNames, spanishPlace } from './names.ts';
import { spanishQualifications, spanishSensitisers } from './session.ts';
import type { Spoken } from './spoken.ts';

const lapsed = (say: Spoken): Readonly<Record<LapsedBy, string>> => ({
  later: 'se dio después',
  closed: 'ya se cerró',
  batch: 'era para otra mezcla',
  booth: 'era para otra cabina',
  shift: 'ha cambiado el turno',
  alarm: 'después hubo allí una alarma',
  spell: `se cumplió el tiempo máximo de pistola ${say.ofThe('sheet')}`,
});

/** Of what nobody knows, or has run out. */
const byName =
  'Un supervisor puede seguir sabiéndolo, en esta sesión: permiso, y por qué. Queda anotado con su nombre.';

type NotSummedObjection = Extract<SessionObjection, { code: 'air-not-summed' }>;

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
      return `${extraction}, y ${air}. Sin extracción, como mínimo aire suministrado para todos los expuestos: esto no lo levanta nadie.`;
    }
    case 'fan-not-measured': {
      const asks =
        objection.asks === undefined
          ? 'El vapor arde se respire o no'
          : `Caudal requerido por cálculo: ${figures.flowUp(objection.asks)}`;
      return `${asks}, y ${fanUnknown(say, objection.missing, objection.place)}. ${byAssessment}`;
    }
    case 'fan-too-weak':
      return `La extracción no basta: ${objection.short.map((short) => shortOf(short, figures)).join('; ')}. ${byAssessment}`;
    case 'confined-place':
      return `${spanishPlace(objection.place)} es por su nombre un espacio confinado. Nada de esto vale ahí: hace falta el permiso de la empresa para espacios confinados. Si se pinta desde fuera y no hay nadie dentro, ${objection.session === undefined ? 'escriba la capa con desde-fuera' : `escriba: desde fuera ${objection.session}`}. Si el nombre dice otra cosa, lo escribe ${say.the('lead')}: fijar confinado ${objection.place} no.`;
    case 'not-qualified':
      return `Fuera de plazo: ${figures.list(objection.ranOut.map(({ person, what, until }) => `${spanishQualifications(say)[what]} de ${person}, ${figures.date(until)}`))}. Que salgan, o anote la fecha nueva. ${byName}`;
    case 'breathing-air-not-fit':
      return spanishBreathing.notFit(objection.check, figures);
    case 'breathing-air-unchecked':
      return `${spanishBreathing.unchecked(objection.check, objection.because, figures)} ${byName}`;
    case 'near-not-named':
      return `En la sesión ${objection.session} no se nombró a nadie cerca. ¿Quién más hay? Toque quién salió o quién se queda, o escriba: cerca lia fuera. ${byName}`;
    case 'dates-not-known':
      return `Sin fecha anotada: ${objection.undated.map(({ person, what }) => `${figures.list(what.map((each) => spanishQualifications(say)[each]))} de ${person}`).join('; ')}. Anótela, o que salgan.${objection.forDiisocyanates === true ? ` ${spanishLaw(say).diisocyanates}` : ''} ${byName}`;
    case 'air-not-summed':
      return `Nadie sabe cuánto aire evita que arda: ${notSummed(say, objection, figures)}. ${byName}`;
    case 'supplied-air-or-none':
      return `${onlySupplied(say, objection.because, figures)}. ${objection.air === 'not-said' ? 'Nadie ha dicho que haya aire suministrado: escriba suministrado sí, o no pinte' : 'Aire suministrado, o no se pinta'}: esto no lo levanta nadie. Lo que se haga así queda anotado en contra de lo advertido.`;
    case 'no-assessment': {
      const ended =
        objection.ended === undefined ? 'aún no hay' : `la última acabó el ${figures.date(objection.ended)}`;
      return `Sin aire suministrado hace falta la evaluación del supervisor para ${spanishPlace(objection.place)}, ${objection.product} y ${spanishNames(say).method('spray')}: ${ended}. Un supervisor escribe: evaluar ${objection.sheet} en ${spanishPlace(objection.place)} sin-aire-suministrado hasta 2027-01-31. ${byName}`;
    }
    case 'gear-not-flushed': {
      const what = objection.gear === 'gun' ? 'la pistola esté lavada' : 'los recipientes estén lavados';
      const left = objection.left.map(spanishNames(say).solvent);
      return `Nadie ha dicho que ${what}${left.length === 0 ? '' : `; falta: ${figures.list(left)}`}.`;
    }
    case 'rags-not-canned':
      return 'Nadie ha dicho que filtros y trapos estén en su contenedor cerrado.';
  }
}

function onlySupplied(say: Spoken, because: OnlySupplied, figures: Figures): string {
  switch (because.is) {
    case 'sensitiser':
      return `${capital(say.the('sheet'))} ${because.sheet} nombra un sensibilizante respiratorio: ${figures.list(because.kinds.map((kind) => spanishSensitisers[kind]))}`;
    case 'sensitiser-open':
      return `${capital(say.the('sheet'))} ${because.sheet} no dice si lleva un sensibilizante respiratorio`;
    case 'not-measured':
      return 'Nadie sabe el caudal del extractor';
    case 'not-summed':
      return 'No hay cálculo del aire para respirar';
    case 'falls-short':
      return 'El extractor no da lo que hace falta para respirar';
  }
}

function fanUnknown(say: Spoken, missing: FanUnknown, place: PlaceName): string {
  switch (missing) {
    case 'extraction':
      return 'nadie ha dicho si hay extracción';
    case 'velocity':
      return 'no se midió la velocidad frontal';
    case 'booth':
      return `no consta el frente abierto de la cabina: escriba fijar cabina ${place === 'booth' ? '' : `${spanishPlace(place)} `}${say.locale === 'es-US' ? '40ft2' : '4m2'}`;
  }
}

function notSummed(say: Spoken, { because, sheet, session }: NotSummedObjection, figures: Figures): string {
  switch (because.is) {
    case 'sheet-silent':
      return `${say.the('sheet')} ${sheet} no da ${say.many('solvent')}. Pida al fabricante la sección 9 ${say.ofThe('data-sheet')}`;
    case 'without-limit':
      return `no se leyó ningún límite de explosividad de ${figures.list(because.solvents.map(spanishNames(say).solvent))}, que lleva ${sheet}`;
    case 'rate-unknown':
      return `la sesión ${session} no tiene mezcla ni cuánto se pinta por hora. Escriba ${say.one('brief')} con la mezcla, o con ${inCountry(say, '1,2kg')}`;
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
    case 'not-spraying':
      return `Nadie ha dicho que en la sesión ${unclear.session} se pinte. Si se pintó, escriba: empezar pistola ${unclear.session} con su hora, a las 9:40, y después parar pistola.`;
    case 'watcher-sprays':
      return `${unclear.person} pinta, y no puede vigilar desde fuera a la vez. ¿Quién queda afuera con los avisos? Escriba otra vez la ${say.one('brief')}: quién pinta y quién afuera.`;
    case 'not-exposed':
      if (unclear.isOut)
        return `${unclear.person} queda fuera de la zona en la sesión ${unclear.session} y no tiene nada que firmar. Si entra, escriba: cerca ${unclear.person} pinta, o queda.`;
      return `${unclear.person} no está en la ${say.one('brief')} de la sesión ${unclear.session}. Escriba: cerca ${unclear.person} pinta, queda o fuera.`;
  }
}

const open = (live: readonly number[], figures: Figures): string => figures.list(live.map(String));
