// Objections and questions back, in Spanish: what was checked, what the sheet or rule asks, what to do instead.

import type { SeenOfPot } from '../../../../core/batch/batch.ts';
import type { Breach } from '../../../../core/calc/climate-window.ts';
import type { NoFigure } from '../../../../core/calc/dose.ts';
import type { Objection, Unclear } from '../../../../core/objections.ts';
import type { SheetFault } from '../../../../core/products/sheet-fault.ts';
import type { RuleSource } from '../../../../core/rules.ts';
import { celsius, celsiusSpread, type Minutes } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';
import { spanishHoldReason } from './holds.ts';
import { spanishMaterialObjection, spanishMaterialUnclear } from './material.ts';
import { spanishMethods } from './methods.ts';
import { atTime, theTime } from './names.ts';
import { spanishCrewUnclear, spanishFilmObjection } from './parts.ts';
import { spanishReadingObjection } from './readings.ts';
import { spanishSessionObjection, spanishSessionUnclear } from './session-objections.ts';
import { spanishSheetProblem } from './sheet-problems.ts';
import { spanishUndoUnclear } from './undo.ts';

export const spanishRuleSources: Readonly<Record<RuleSource, string>> = {
  sheet: 'la ficha del producto',
  job: 'lo anotado en la pieza',
  employer: 'el programa de pistola de la empresa',
  regulation: '29 CFR 1910.94 y 1910.107',
  label: 'lo anotado en la lata',
  'common practice, no source': 'práctica común, sin fuente',
  'the order of the work': 'el orden del trabajo',
};

export const spanishNoFigure: Readonly<Record<NoFigure, string>> = {
  unknown: 'no hay lectura de temperatura lo bastante reciente',
  below: 'más frío de lo que cubre la ficha: preguntar al fabricante, o calentar la sala',
  above: 'más calor de lo que cubre la ficha: preguntar al fabricante, o enfriar la sala',
};

const wetInOven = '; en el horno una película húmeda hace ampollas, y su vapor de disolvente puede arder';

// biome-ignore lint/complexity/noExcessiveLinesPerFunction: a table, a case for each code
export function spanishObjection(objection: Objection, f: Figures): string {
  switch (objection.code) {
    case 'no-brief':
    case 'brief-lapsed':
    case 'brief-not-acknowledged':
    case 'inside-vessel':
    case 'may-not-spray':
    case 'no-extraction-no-air':
    case 'fan-not-measured':
    case 'fan-too-weak':
    case 'gear-not-flushed':
    case 'rags-not-canned':
      return spanishSessionObjection(objection, f);
    case 'air-needed': {
      const what = { temperature: 'No se sabe la temperatura del aire', both: 'No se sabe cómo está el aire' }[
        objection.missing
      ];
      const old =
        objection.lastReadAt === undefined
          ? 'nadie lo ha leído aún'
          : `la última lectura es de ${theTime(f.timeDown(objection.lastReadAt))} y vale ${f.minutesDown(objection.limitMinutes)}`;
      return `${what}: ${old}. Leerlo y decir, por ejemplo, aire 24C 48%.`;
    }
    case 'air-outside':
      return `Fuera de lo que pide la ficha: ${f.list(objection.breaches.map((breach) => spanishBreach(breach, f)))}. Esperar, o acondicionar el aire.`;
    case 'more-than-sheet-mixes':
      return `${f.mass(objection.grams)} pasan del máximo de la ficha: ${f.mass(objection.mostGrams)} de una vez. Mezclar menos cada vez.`;
    case 'already-weighed':
      return `A y B se juntaron ${atTime(f.timeDown(objection.at))}. Para corregir ese pesaje, decir corregir.`;
    case 'not-weighed':
      return 'Nadie ha dicho cuánto pesaron A y B. Decir antes pesar.';
    case 'ratio-out':
      return `Relación desviada ${f.signedPercent(objection.errorPercent)}; la ficha admite ${f.percent(objection.tolerancePercent, 1)} arriba o abajo.`;
    case 'stirrer-off':
      return 'Según el registro, el agitador no está en marcha.';
    case 'already-released':
      return `Ya se liberó ${atTime(f.timeDown(objection.at))}.`;
    case 'already-filtered':
      return `Ya se filtró ${atTime(f.timeDown(objection.at))}.`;
    case 'blend-not-done': {
      const given = `lleva ${f.minutesDown(objection.givenMinutes)}, el ${f.percent(Math.floor(objection.progress * 100))} de lo que pide la ficha`;
      const what = objection.way === 'stir' ? 'Al agitado le falta' : 'A la inducción le falta';
      const then =
        objection.dueAt === undefined
          ? 'Arrancar otra vez el agitador.'
          : `Se cumple ${atTime(f.timeUp(objection.dueAt))}.`;
      const why =
        objection.withoutFigure === undefined ? '' : ` Ahora no cuenta: ${spanishNoFigure[objection.withoutFigure]}.`;
      return `${what}: ${given}.${why} ${then}`;
    }
    case 'not-filtered':
      return 'La ficha pide filtrar antes de la primera capa, y nadie ha dicho filtrar.';
    case 'past-pot-life':
      return `La vida útil acabó ${atTime(f.timeDown(objection.endedAt))}. Esta mezcla ya no sirve, es residuo; hacer otra.`;
    case 'pot-dead':
      return `La mezcla estaba ${seenAs[objection.seen]} ${atTime(f.timeDown(objection.at))}. Ya no sirve, es residuo, diga lo que diga el reloj${potInstead(objection)}`;
    case 'pot-empty':
      return `Se vació ${atTime(f.timeDown(objection.at))}.`;
    case 'method-not-on-sheet':
      return `La ficha no habla de ${spanishMethods[objection.method].name}; da ${f.list(objection.methods.map((method) => spanishMethods[method].name))}.`;
    case 'recoat-forbidden':
      return `La ficha prohíbe una capa sobre película que ya está, curada o no: la línea no se va y el parche se despega. Última capa ${atTime(f.timeDown(objection.coatedAt))}.`;
    case 'recoat-too-early':
      return `La ventana de repintado se abre ${atTime(f.timeUp(objection.opensAt))}.`;
    case 'recoat-too-late':
      return `La ventana de repintado se cerró ${atTime(f.timeDown(objection.closedAt))}. Ver antes qué hay que hacerle a la película según la ficha.`;
    case 'not-coated':
      return 'No consta ninguna capa en esta pieza.';
    case 'flash-off-not-over':
      return `El oreo dura como mínimo hasta ${theTime(f.timeUp(objection.leastAt))}${objection.oven ? wetInOven : ''}.`;
    case 'not-dry':
      return `Nadie ha dicho que la película esté seca al tacto${objection.oven ? wetInOven : ''}. Tocarla, y decir seca.`;
    case 'hotter-than-part-bears':
      return `La pieza aguanta ${f.temperature(objection.highestCelsius)}, y el horno está a ${f.temperature(objection.ovenCelsius)}. Curarla en la sala.`;
    case 'no-such-cure':
      return `La ficha no da curado en ${objection.way === 'oven' ? 'horno' : 'sala'}.`;
    case 'oven-outside-sheet':
      return `El curado en horno de la ficha es de ${f.temperature(objection.lowest)} a ${f.temperature(objection.highest)}, no ${f.temperature(objection.setCelsius)}.`;
    case 'already-curing':
      return `En curado desde ${theTime(f.timeDown(objection.since))}.`;
    case 'not-curing':
      return 'Esta pieza no está en curado.';
    case 'cure-not-given': {
      const then =
        objection.dueAt === undefined ? '' : ` Por lo que consta, lo cumple ${atTime(f.timeUp(objection.dueAt))}.`;
      return `Le falta curado: hasta ahora consta el ${f.percent(Math.floor(objection.progress * 100))}.${then}`;
    }
    case 'on-hold':
      return `Retenida: ${spanishHoldReason(objection, f)}. Un encargado la libera: la misma línea, con permiso y el motivo.`;
    case 'film-drying':
    case 'dip-once':
    case 'surface-life-over':
      return spanishFilmObjection(objection, f);
    case 'film-outside':
    case 'adhesion-failed':
    case 'rubbed-through':
      return spanishReadingObjection(objection, f);
    case 'no-gas':
    case 'can-expired':
    case 'can-discarded':
    case 'can-doubtful':
    case 'check-by-lead':
    case 'more-than-can-holds':
    case 'can-of-other-sheet':
    case 'part-a-not-stirred':
    case 'weighed-twice':
    case 'b-before-a':
    case 'adding-not-on-sheet':
    case 'added-too-late':
    case 'adding-passes-most':
    case 'vessel-too-small':
    case 'caught-not-filtered':
      return spanishMaterialObjection(objection, f);
  }
}

const seenAs: Readonly<Record<SeenOfPot, string>> = { thick: 'espesa', gelled: 'gelificada', hot: 'caliente' };

/** What to do with a dead pot, in place of what was asked. */
function potInstead({ seen, batch }: Extract<Objection, { code: 'pot-dead' }>): string {
  switch (seen) {
    case 'thick':
      return '.';
    case 'gelled':
      return `: no entra ni sale nada más. Tapa suelta; si se calienta, apartarse y decir caliente ${batch}.`;
    case 'hot':
      return ': no entra ni sale nada más. Apartarse hasta que esté fría.';
  }
}

/** `son las 10:15`, `es la 01:15`. */
const nowIs = (time: string): string => `${/^01:/.test(time) ? 'es' : 'son'} ${theTime(time)}`;

function spanishBreach(breach: Breach, f: Figures): string {
  const { given, allowed } = breach;
  const read = (show: (value: number) => string) => (given === 'not-read' ? 'sin leer' : show(given));
  const temperature = (value: number) => f.temperature(celsius(value));
  const spread = (value: number) => f.spread(celsiusSpread(value));
  switch (breach.limit) {
    case 'lowestAirCelsius':
      return `aire ${read(temperature)}, mínimo ${temperature(allowed)}`;
    case 'highestAirCelsius':
      return `aire ${read(temperature)}, máximo ${temperature(allowed)}`;
    case 'lowestSurfaceCelsius':
      return `acero ${read(temperature)}, mínimo ${temperature(allowed)}`;
    case 'highestSurfaceCelsius':
      return `acero ${read(temperature)}, máximo ${temperature(allowed)}`;
    case 'lowestHumidityPercent':
      return `humedad ${read(f.percent)}, mínimo ${f.percent(allowed)}`;
    case 'highestHumidityPercent':
      return `humedad ${read(f.percent)}, máximo ${f.percent(allowed)}`;
    case 'leastSpreadCelsius':
      return `acero ${given === 'not-read' ? 'sin leer' : `${spread(Math.abs(given))} ${given < 0 ? 'por debajo' : 'por encima'} del punto de rocío`}, mínimo ${spread(allowed)} por encima`;
  }
}

const named = (names: readonly (string | number)[], f: Figures, none: string): string =>
  names.length === 0 ? none : f.list(names.map(String));

// biome-ignore lint/complexity/noExcessiveLinesPerFunction: a table, a case for each code
export function spanishUnclear(unclear: Unclear, f: Figures): string {
  switch (unclear.code) {
    case 'no-such-session':
    case 'which-session':
    case 'not-exposed':
      return spanishSessionUnclear(unclear, f);
    case 'no-such-person':
    case 'may-not-settle':
    case 'may-not-judge':
    case 'handover-to-self':
    case 'nothing-to-take-over':
    case 'not-snoozed':
    case 'which-load':
      return spanishCrewUnclear(unclear, f);
    case 'no-such-can':
    case 'which-can':
    case 'can-not-wanted':
    case 'other-unit':
      return spanishMaterialUnclear(unclear, f);
    case 'no-such-batch':
      return `No hay mezcla ${unclear.batch}. Abiertas: ${named(unclear.live, f, 'ninguna; abrir una con mezclar 2,4kg')}.`;
    case 'which-batch':
      return unclear.live.length === 0
        ? 'No hay ninguna mezcla abierta. Abrir una con mezclar 2,4kg.'
        : `¿Qué mezcla? Abiertas: ${named(unclear.live, f, '')}.`;
    case 'no-such-part':
      return `No hay pieza ${unclear.part}. Conocidas: ${named(unclear.live, f, 'ninguna todavía')}.`;
    case 'which-part':
      return `¿Qué pieza? Conocidas: ${named(unclear.live, f, 'ninguna todavía')}.`;
    case 'new-part': {
      const names = named(
        unclear.unknown.map(({ part }) => part),
        f,
        '',
      );
      const near = [...new Set(unclear.unknown.flatMap((each) => each.near))];
      const isOne = unclear.unknown.length === 1;
      const unknown = `${names}: ${isOne ? 'no consta aquí' : 'no constan aquí'}.`;
      if (near.length > 0) return `${unknown} Nombres parecidos: ${named(near, f, '')}. ¿Cuál es?`;
      return `${unknown} ${isOne ? '¿Es una pieza nueva?' : '¿Son piezas nuevas?'}`;
    }
    case 'no-such-sheet':
      return `No hay ficha ${unclear.sheet}. Fichas: ${named(unclear.known, f, 'ninguna')}.`;
    case 'sheet-faulty':
      return `La ficha ${unclear.sheet} tiene errores y no abre mezclas hasta que se corrijan: ${faultsTold(unclear.faults)}.`;
    case 'which-sheet': {
      const faults = unclear.faults.length === 0 ? '' : ` No se puede leer: ${faultsTold(unclear.faults)}.`;
      const invented =
        unclear.invented === undefined
          ? ''
          : `${unclear.invented} es un producto inventado: si el taller tiene fichas propias, nunca es el habitual. `;
      return unclear.known.length === 0
        ? `${invented}Ninguna ficha propia del taller se puede leer, y ninguna otra la sustituye.${faults}`
        : `${invented}¿Qué producto? Fichas: ${named(unclear.known, f, '')}. Nombrar una, o fijar la habitual: fijar ficha ${unclear.known[0]}.${faults}`;
    }
    case 'no-densities':
      return `La ficha ${unclear.sheet} no da densidades: los litros no se pueden pasar a gramos. Decirlo en kg.`;
    case 'in-the-future':
      return `Aún no ha llegado ${theTime(f.timeDown(unclear.at))}; ahora ${nowIs(f.timeDown(unclear.now))}.`;
    case 'may-not-permit': {
      const whose = {
        crew: 'Eso lo puede permitir cualquiera',
        lead: 'Eso lo puede permitir un encargado o un supervisor',
        supervisor: 'Eso solo lo puede permitir un supervisor',
        nobody: 'Eso nadie lo puede permitir antes',
      }[unclear.wanted];
      const who = unclear.wanted === 'nobody' ? '' : `: ${f.list(unclear.who)}`;
      return `${whose}${who}. ${spanishObjection(unclear.because, f)}`;
    }
    case 'nothing-to-undo':
    case 'undo-too-late':
    case 'undo-not-last':
    case 'undo-rests':
    case 'undo-asks':
      return spanishUndoUnclear(unclear, f);
    case 'nothing-to-amend':
      return 'No hay ninguna anotación así que corregir.';
    case 'nothing-changed':
      return 'Eso es lo que ya dice el registro. Decir el dato o la hora que estaba mal: corregir 1 pesar 1201g 1189g báscula equivocada.';
    case 'decision-stands':
      return 'Una liberación cuenta desde que se da: ninguna corrección la hace ni la mueve. Decir de nuevo liberar, o retener.';
    case 'nothing-rang':
      return 'No hay avisos por contestar.';
  }
}

/** How a dose was held back, for the cards that show one. */
export function spanishHeldBack(without: Readonly<Record<NoFigure, Minutes>>, f: Figures): readonly string[] {
  return (['unknown', 'below', 'above'] as const)
    .filter((why) => without[why] >= 1)
    .map((why) => `${f.minutesDown(without[why])} sin dato: ${spanishNoFigure[why]}.`);
}

const faultsTold = (faults: readonly SheetFault[]): string =>
  faults
    .map(({ file, field, problem }) => `${file} ${field === '' ? '' : `${field}: `}${spanishSheetProblem(problem)}`)
    .join('; ');
