// Questions back, in Spanish: what is not clear, what there is, what to type.

import type { Unclear } from '../../../../core/objections.ts';
import type { SheetFault } from '../../../../core/products/sheet-fault.ts';
import type { EpochMs } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';
import { spanishInstrumentUnclear } from './instruments.ts';
import { spanishMaterialUnclear } from './material.ts';
import { capital, mixExample, spanishPlace, theTime, told } from './names.ts';
import { spanishObjection } from './objections.ts';
import { spanishCrewUnclear } from './parts.ts';
import { spanishPartsIn } from './parts-in.ts';
import { spanishFar } from './readings.ts';
import { spanishSessionUnclear } from './session-objections.ts';
import { spanishSheetProblem } from './sheet-problems.ts';
import type { Spoken } from './spoken.ts';
import { spanishSpots, spanishSpotTold } from './spots.ts';
import { actNamed, spanishUndoUnclear } from './undo.ts';

/** `son las 10:15`, `es la 1:15`. */
const nowIs = (figures: Figures, at: EpochMs): string =>
  `${figures.moment(at, 'down').hour === 1 ? 'es' : 'son'} ${theTime(figures, at)}`;

const named = (names: readonly (string | number)[], figures: Figures, none: string): string =>
  names.length === 0 ? none : figures.list(names.map(String));

export function spanishUnclear(say: Spoken, unclear: Unclear, figures: Figures): string {
  switch (unclear.code) {
    case 'no-such-session':
    case 'which-session':
    case 'not-spraying':
    case 'not-exposed':
    case 'watcher-sprays':
      return spanishSessionUnclear(say, unclear, figures);
    case 'no-such-person':
    case 'may-not-settle':
    case 'may-not-judge':
    case 'handover-to-self':
    case 'nothing-to-take-over':
    case 'not-snoozed':
    case 'no-countdown':
    case 'no-alarm-on':
    case 'which-alarm':
    case 'more-than-a-day':
    case 'no-first-shift':
    case 'which-load':
      return spanishCrewUnclear(say, unclear, figures);
    case 'no-such-instrument':
    case 'which-kind':
      return spanishInstrumentUnclear(unclear, figures);
    case 'film-asked':
      return spanishSpots(say).asksReadings;
    case 'spot-told':
      return spanishSpotTold(unclear, figures);
    case 'far-reading':
      return spanishFar(say, unclear, figures);
    case 'not-recalled':
    case 'no-such-can':
    case 'which-can':
    case 'can-not-wanted':
    case 'no-can-wanted':
    case 'can-size-needed':
    case 'other-unit':
      return spanishMaterialUnclear(unclear, figures);
    case 'wet-bulb-cannot-be':
      return `Aire a ${figures.temperature(unclear.celsius)} con el bulbo húmedo a ${figures.temperature(unclear.wetBulbCelsius)} no puede ser: el húmedo es el más frío, nunca más de lo que da el aire seco, y bajo cero nadie lo sabe. Lea los dos de nuevo, primero el seco.`;
    case 'no-such-batch':
      if (unclear.areNoneFit) return `No hay mezcla ${unclear.batch}, y eso no se puede hacer con ninguna abierta.`;
      return `No hay mezcla ${unclear.batch}. Abiertas: ${named(unclear.live, figures, `ninguna; escriba: ${mixExample(figures)}`)}.`;
    case 'which-batch':
      if (unclear.areNoneFit) return 'Eso no se puede hacer con ninguna mezcla abierta: diga cuál, o empiece otra.';
      return unclear.live.length === 0
        ? `No hay ninguna mezcla abierta. Escriba: ${mixExample(figures)}.`
        : `¿Qué mezcla? Abiertas: ${named(unclear.live, figures, '')}.`;
    case 'no-such-part':
      return `No hay pieza ${unclear.part}. Conocidas: ${named(unclear.live, figures, 'ninguna todavía')}.`;
    case 'which-part':
      return `¿Qué pieza? Conocidas: ${named(unclear.live, figures, 'ninguna todavía')}.`;
    case 'new-part': {
      const names = spanishPartsIn.named(
        unclear.unknown.map(({ part }) => part),
        figures,
      );
      const near = [...new Set(unclear.unknown.flatMap((each) => each.near))];
      const isOne = unclear.unknown.length === 1;
      const unknown = `${names}: ${isOne ? 'no consta aquí' : 'no constan aquí'}.`;
      if (near.length > 0) return `${unknown} Nombres parecidos: ${named(near, figures, '')}. ¿Cuál es?`;
      return `${unknown} ${isOne ? '¿Es una pieza nueva?' : '¿Son piezas nuevas?'}`;
    }
    case 'new-place': {
      const unknown = `Aquí nadie ha nombrado un lugar ${spanishPlace(unclear.place)}.`;
      if (unclear.near.length === 0) return `${unknown} ¿Es uno nuevo?`;
      return `${unknown} Parecidos: ${named(unclear.near.map(spanishPlace), figures, '')}. ¿Cuál es?`;
    }
    case 'parts-in':
      return spanishPartsIn.asked(unclear.fresh.length);
    case 'no-such-sheet':
      return `No hay ${say.one('sheet')} ${unclear.sheet}. Las que hay: ${named(unclear.known, figures, 'ninguna')}.`;
    case 'sheet-faulty':
      return `${capital(say.the('sheet'))} ${unclear.sheet} tiene errores y no abre mezclas hasta que se corrijan: ${faultsTold(say, unclear.faults)}.`;
    case 'which-sheet': {
      const faults = unclear.faults.length === 0 ? '' : ` No se puede leer: ${faultsTold(say, unclear.faults)}.`;
      const invented =
        unclear.invented === undefined
          ? ''
          : `${unclear.invented} es un producto inventado: si el taller tiene ${say.many('sheet')} propias, nunca es el habitual. `;
      return unclear.known.length === 0
        ? `${invented}Ninguna ${say.one('sheet')} propia del taller se puede leer, y ninguna otra la sustituye.${faults}`
        : `${invented}¿Qué producto? Las que hay: ${named(unclear.known, figures, '')}. Nombre una, o fije la habitual: fijar ficha ${unclear.known[0]}.${faults}`;
    }
    case 'no-densities':
      return `${capital(say.the('sheet'))} ${unclear.sheet} no da densidades: el volumen no se puede pasar a peso. Dígalo en ${figures.units === 'us' ? 'lb' : 'kg'}.`;
    case 'in-the-future':
      return told`Aún no ha llegado ${theTime(figures, unclear.at)}; ahora ${nowIs(figures, unclear.now)}.`;
    case 'may-not-permit': {
      const whose = {
        crew: 'Eso lo puede permitir cualquiera',
        lead: `Eso lo puede permitir ${say.a('lead')} o un supervisor`,
        supervisor: 'Eso solo lo puede permitir un supervisor',
        nobody: 'Eso nadie lo puede permitir antes',
      }[unclear.wanted];
      const who = unclear.wanted === 'nobody' ? '' : `: ${figures.list(unclear.who)}`;
      return `${whose}${who}. ${spanishObjection(say, unclear.because, figures)}`;
    }
    case 'nothing-to-undo':
    case 'undo-too-late':
    case 'undo-not-last':
    case 'undo-rests':
    case 'undo-asks':
      return spanishUndoUnclear(say, unclear, figures);
    case 'nothing-to-amend':
      return 'No hay ninguna anotación así que corregir.';
    case 'nothing-changed':
      return 'Eso es lo que ya dice el registro. Diga el dato o la hora que estaba mal: corregir 1 pesar 1201g 1189g báscula equivocada.';
    case 'not-own-entry': {
      const { by } = unclear.act.entry;
      const whose = unclear.wanted === 'supervisor' ? 'un supervisor' : say.a('lead');
      return `Eso lo anotó ${by}: ${actNamed(say, unclear.act, figures)}. Lo corrige ${by}, o ${whose}: ${figures.list(unclear.who)}.`;
    }
    case 'product-stands':
      return `La mezcla ${unclear.batch} tiene ya una parte pesada desde ${theTime(figures, unclear.at)}: lo pesado es del producto con que se empezó. Vacíela y empiece otra.`;
    case 'decision-stands':
      return 'Una liberación cuenta desde que se da: ninguna corrección la hace ni la mueve. Escriba de nuevo liberar, o retener.';
    case 'nothing-rang':
      return 'No hay avisos por contestar.';
  }
}

const faultsTold = (say: Spoken, faults: readonly SheetFault[]): string =>
  faults
    .map(
      ({ file, field, problem }) => `${file} ${field === '' ? '' : `${field}: `}${spanishSheetProblem(say, problem)}`,
    )
    .join('; ');
