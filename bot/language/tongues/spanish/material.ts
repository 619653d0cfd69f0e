// Cans, weighing in pieces, repair, reuse, stock and plans, in Spanish.

import type { MaterialObjection, MaterialUnclear } from '../../../../core/can/can-objections.ts';
import type { Need } from '../../../../core/can/can-stock.ts';
import type { HeatSign } from '../../../../core/heat-care.ts';
import type { Handling } from '../../../../core/verbs/said.ts';
import type { Figures } from '../../figures.ts';
import type { englishMaterial } from '../english/material.ts';
import { atTime, capital, counted, inCountry, methodName, theTime, told, withMinutes } from './names.ts';
import { spanishPurge } from './purge.ts';
import { lawOf } from './sources.ts';
import type { Spoken } from './spoken.ts';
import { spanishComponents, spanishScaleTooCoarse, spanishWeighing } from './weighing.ts';

const openExample = 'abrir A lote 7731 5kg cad 2026-12 gas';
const openExampleUs = 'abrir A lote 7731 10lb cad 2026-12 gas';
const exampleOf = (figures: Figures) => (figures.units === 'us' ? openExampleUs : openExample);

const spanishReacts: Readonly<Record<HeatSign, string>> = {
  hot: 'caliente',
  smoking: 'echando humo',
  bulging: 'hinchada',
};

export function spanishMaterialObjection(say: Spoken, objection: MaterialObjection, figures: Figures): string {
  const offRatio = 'Con la relación de mezcla desviada es residuo; haga otra mezcla.';
  switch (objection.code) {
    case 'no-gas':
      return `La ${spanishComponents[objection.component]} se pierde si le queda aire encima. Tenga gas inerte a mano (argón o nitrógeno), o gaste la lata entera de una vez, y diga cuál: gas o entera.`;
    case 'lot-recalled':
      return told`El lote ${objection.lot} se retiró ${atTime(figures, objection.at)}: ${objection.why}. Apártelo y use otro.`;
    case 'can-expired':
      return `El lote ${objection.lot} está caducado: su último día fue el ${figures.date(objection.expires)}. Use otra lata.`;
    case 'can-open-too-long':
      return `La lata ${objection.can} lleva abierta demasiados días: según ${say.the('sheet')}, su último día fue el ${figures.date(objection.lastDay)}. Use otra lata.`;
    case 'can-discarded':
      return told`La lata ${objection.can} se desechó ${atTime(figures, objection.at)}.`;
    case 'can-doubtful': {
      const why =
        objection.limitMinutes === undefined
          ? 'se iba a gastar entera y sobró'
          : `estuvo sin gas ${figures.minutesUp(objection.limitMinutes)} o más`;
      return `La lata ${objection.can} ${why} (en duda desde ${theTime(figures, objection.since)}). La mira ${say.a('lead')} y escribe: revisar ${objection.can}.`;
    }
    case 'can-reacts':
      return `La lata ${objection.can} estaba ${spanishReacts[objection.seen]} (${figures.timeDown(objection.at)}): que nadie la abra, la tape, la agite ni vierta de ella, y no se admite al revisarla. Apártese; se tira, como diga el programa de la empresa, solo cuando esté fría y ya no hinchada: desechar ${objection.can} y el motivo.`;
    case 'shut-without-gas':
      return `Una lata tapada con aire se pierde: meta gas primero y escriba gas puesto ${objection.can}. Si se gastó entera, dígalo: tapar lata ${objection.can} entera.`;
    case 'whole-left-over':
      return `La lata ${objection.can} se iba a gastar entera: sobrarían ${figures.mass(objection.leftGrams)}. Meta gas primero, o gástela.`;
    case 'check-by-lead':
      return `Es ${say.a('lead')} quien mira la lata ${objection.can} y dice si todavía se usa. Llame a uno${objection.who.length === 0 ? '' : `: ${figures.list(objection.who)}`}.`;
    case 'more-than-can-holds':
      return `${figures.mass(objection.grams)} es más de lo que queda en la lata ${objection.can}: ${figures.mass(objection.leftGrams)}. Mire la báscula, o nombre la segunda lata: lata ${objection.can} y su número.`;
    case 'can-of-other-sheet':
      return `La lata ${objection.can} es de otro producto (${objection.sheet}).`;
    case 'part-a-not-stirred': {
      const then =
        objection.dueAt === undefined
          ? `Agítela ${figures.minutesUp(objection.wantedMinutes)} en su lata y, al empezar, escriba: agitar lata ${objection.can}.`
          : told`Cumple sus ${figures.minutesUp(objection.wantedMinutes)} ${atTime(figures, objection.dueAt, 'up')}.`;
      const stirred =
        objection.givenMinutes === undefined
          ? 'está sin agitar'
          : `no se agitó bastante (${figures.minutesDown(objection.givenMinutes)} de ${figures.minutesUp(objection.wantedMinutes)})`;
      return `La lata ${objection.can} ${stirred}: con sedimento en el fondo, la relación de mezcla sale mal. ${then}`;
    }
    case 'scale-too-coarse':
      return spanishScaleTooCoarse(say, objection, figures);
    case 'weighed-twice':
      return told`La ${spanishComponents[objection.component]} ya está dentro: ${figures.mass(objection.grams)} ${atTime(figures, objection.at)}. Si ese dato estaba mal, escriba corregir; si es más a propósito, añadir.`;
    case 'b-before-a':
      return 'La Parte A no está aún en el recipiente: primero A, agitador en marcha, y después B sobre A.';
    case 'adding-not-on-sheet':
      return `${capital(say.the('sheet'))} no dice nada de añadir para recuperar una mezcla. ${offRatio}`;
    case 'added-too-late':
      return objection.filtered
        ? `Ya está filtrada: no entra nada más. ${offRatio}`
        : told`Según ${say.the('sheet')} se podía añadir hasta ${theTime(figures, objection.untilAt)}. ${offRatio}`;
    case 'adding-passes-most':
      return `Con eso serían ${figures.mass(objection.mixedGrams)} en el recipiente; ${say.the('sheet')} admite como máximo ${figures.mass(objection.mostGrams)} de una vez. Una mezcla desviada es residuo: pregunte ${say.toThe('lead')} y haga otra.`;
    case 'vessel-too-small':
      return `${figures.volume(objection.mixedLitres)} no dejan sitio para agitar en un recipiente de ${figures.volume(objection.vesselLitres)}. Haga otra mezcla, en uno mayor.`;
    case 'caught-not-filtered':
      return `Se recogieron ${figures.mass(objection.grams)} ${atTime(figures, objection.at)} y no se han filtrado desde entonces. Fíltrelos y anótelo.`;
    case 'caught-more-than-mixed':
      return `Serían ${figures.mass(objection.grams)} recogidos, y se mezclaron ${figures.mass(objection.mixedGrams)}. Vuelva a pesar; si es de otra mezcla, escriba su número.`;
  }
}

export function spanishMaterialUnclear(unclear: MaterialUnclear, figures: Figures): string {
  const named = (numbers: readonly number[]) => (numbers.length === 0 ? 'ninguna' : figures.list(numbers.map(String)));
  switch (unclear.code) {
    case 'not-recalled':
      return `El lote ${unclear.lot} no está retirado.`;
    case 'no-such-can':
      return `No hay lata ${unclear.can}. Abiertas: ${named(unclear.live)}.`;
    case 'which-can':
      if (unclear.live.length === 0) return `No hay latas abiertas. Escriba, por ejemplo: ${exampleOf(figures)}.`;
      return `¿De qué lata${unclear.component === undefined ? '' : ` de ${spanishComponents[unclear.component]}`}? Abiertas: ${named(unclear.live)}.`;
    case 'can-not-wanted':
      return `La lata ${unclear.can} es de ${spanishComponents[unclear.component]}, y en esta línea no se pesó.`;
    case 'can-size-needed':
      return unclear.sizes.length === 0
        ? `¿Cuánto trae? Del lote ${unclear.lot} no consta ninguna lata cerrada de la ${spanishComponents[unclear.component]}. Diga el peso detrás del lote.`
        : `¿De qué tamaño? Del lote ${unclear.lot} hay latas cerradas de ${figures.list(unclear.sizes.map(figures.mass))}.`;
    case 'no-can-wanted':
      return `En la mezcla ${unclear.batch} no falta la lata de la ${spanishComponents[unclear.component]}: aún no se pesó, o ya se dijo. Si se dijo mal, deshacer.`;
    case 'other-unit':
      return unclear.readings
        .map(
          ({ component, grams, otherGrams, plannedGrams }) =>
            `${spanishComponents[component]}: se dijo ${figures.mass(grams)} y lo previsto es ${figures.mass(plannedGrams)}. ${otherGrams === undefined ? 'Parece que falta o sobra una cifra: ¿qué marca la báscula?' : `En otra unidad la báscula habría marcado ${figures.mass(otherGrams)}. ¿Cuál es?`}`,
        )
        .join(' ');
  }
}

export const spanishHandling: Readonly<Record<Handling, string>> = { gas: 'gas a mano', whole: 'se gasta entera' };

const needs: Readonly<Record<Need['is'], string>> = {
  doubtful: 'en duda',
  reacts: 'caliente o hinchada',
  'lid-off': 'sin gas',
  low: 'con poco dentro',
  'expires-soon': 'cerca de caducar',
  expired: 'pasada la fecha de caducidad',
  'open-long': 'cerca del último día tras abrir',
  'open-too-long': 'pasado el último día tras abrir',
};

export const spanishMaterial = (say: Spoken): typeof englishMaterial => ({
  ...spanishWeighing(say),
  component: spanishComponents,
  handling: spanishHandling,
  canOpened: (can, component, lot) => `Lata ${can}: ${spanishComponents[component]}, lote ${lot}`,
  byDensity: (sold, filled, figures) =>
    `${figures.volume(sold)}: ${figures.mass(filled)} por la densidad de ${say.the('sheet')}.`,
  canNumber: (can) => `Escriba ${can} en la lata.`,
  lidOffSince: (at, figures) => told`Destapada desde ${theTime(figures, at)}. Meta gas, tape y escriba gas puesto.`,
  wholeNow: 'Se gasta entera: si sobra algo después de verter, pide gas igual.',
  lidOn: (can) => `Lata ${can}: tapada`,
  withoutGasSince: (at, figures) =>
    told`Sin gas desde ${theTime(figures, at)}. Destape, meta gas, tape y escriba gas puesto.`,
  leftOverSince: (at, figures) => `En duda desde ${theTime(figures, at)}: se iba a gastar entera y sobró.`,
  lidOff: (can) => `Lata ${can}: destapada`,
  gasBefore: (can) => `Lata ${can}: gas de antes de destaparla`,
  blanketed: (can) => `Lata ${can}: gas puesto y tapada`,
  noGasNeeded: `${capital(say.the('sheet'))} no pide gas para esta.`,
  checked: (can) => `Lata ${can}: revisada y admitida`,
  doubtfulSince: (at, figures) => `En duda desde ${theTime(figures, at)}: demasiado tiempo sin gas.`,
  canLeft: (can) =>
    `Lata ${can}: que nadie la abra, la tape, la agite ni vierta de ella. Cuando esté fría y ya no hinchada: desechar ${can} y el motivo.`,
  canUnknown: (can) =>
    `No consta ninguna lata ${can}: miren de lejos cuál es. Que nadie la abra ni la mueva, tenga el número que tenga.`,
  looseLid: 'Póngale gas igual, con la tapa suelta, no hermética: con aire húmedo dentro puede hincharse.',
  leadChecks: (can) => `No se vierte nada de ella hasta que ${say.a('lead')} la mire y escriba: revisar ${can}.`,
  minutesAnew: 'Sigue sin gas: los minutos vuelven a contar desde ahora.',
  headspaceUnknown: `No consta en ${say.the('sheet')} ni en el registro la capacidad de la lata: no hay dato de gas. Dígala en la siguiente, hasta el borde: ${inCountry(say, 'abrir A lote 7731 5kg 6L')}.`,
  purge: spanishPurge(say),
  gasSlowly: 'Meta el gas despacio, para que se mezcle; si vuelve a salir a chorro, no basta.',
  canStirring: (can) => `Lata ${can}: agitándose antes de verter`,
  preStirBeyond: `${capital(say.the('sheet'))} no da tiempo para tanta cantidad; vale el más largo que da.`,
  discarded: (can) => `Lata ${can}: desechada`,
  discardHeats:
    'Si se ha gelificado o está caliente puede seguir calentándose: lejos de la gente y de lo que arde, con la tapa suelta, si todavía se puede mover; después, apártese. No la cierre hermética.',
  swellsShut:
    'Con aire húmedo dentro y la tapa hermética puede hincharse y reventar: tapa suelta, y esa lata no se vuelve a usar para nada.',
  swellsSource: 'DGUV Information 213-078, de isocianatos; práctica común',
  preStirFirst: (minutes, can, figures) =>
    `Agítela ${figures.minutesUp(minutes)} en su lata antes de verter: agitar lata ${can}.`,
  fromCan: (can, lot, left, figures) => `De la lata ${can} (lote ${lot}): quedan ${figures.mass(left)}.`,
  canEmpty: (can, lot) => `De la lata ${can} (lote ${lot}): vacía según el registro.`,
  blanketNow: (can, at, figures) => told`Gas en la lata ${can} ahora: destapada desde ${theTime(figures, at)}.`,
  noCanKnown: 'No consta ninguna lata para esto: no habrá trazabilidad de lotes.',
  whichCan: (component) => `¿De qué lata salió la ${spanishComponents[component]}?`,
  canNamed: (batch, component) => `Mezcla ${batch}: anotada la lata de la ${spanishComponents[component]}`,
  wentInto: (batch) => `Vertida en la mezcla ${batch}`,
  partIn: (batch, component) => `Mezcla ${batch}: ${spanishComponents[component]} dentro`,
  nextA: 'Lo normal es que la Parte A vaya primero. Los tiempos corren cuando están las dos.',
  repairBeyondPlan: (needed, planned, figures) =>
    `Para recuperarla harían falta ${figures.mass(needed)} en el recipiente, y lo previsto eran ${figures.mass(planned)}: no se recupera. Revise la báscula; esta mezcla es residuo, pregunte ${say.toThe('lead')}.`,
  repairVesselUnknown: (needed, figures) =>
    `Nadie dijo la capacidad del recipiente: mire si caben ${figures.volume(needed)}.`,
  canStands: (can, component, state) => `Lata ${can}, ${spanishComponents[component]}: ${state}`,
  added: (batch, grams, component, figures) =>
    `Mezcla ${batch}: añadidos ${figures.mass(grams)} de ${spanishComponents[component]}`,
  stirAgain: 'La agitación vuelve a empezar para todo. La vida de la mezcla sigue desde el primer contacto.',
  uncoveredSoFar: (minutes, figures) =>
    `Destapada ${figures.minutesUp(minutes)} hasta ahora: el aire acorta la vida de la mezcla.`,
  caught: (batch, grams, figures) => `Mezcla ${batch}: recogidos ${figures.mass(grams)}`,
  caughtFilter: 'Conserva la edad y la vida de la mezcla. Fíltrela otra vez antes de usarla.',
  setAsideVented: `La mezcla sobrante puede calentarse y soltar gas: en envase con respiradero, nunca con tapa hermética, como dice ${say.the('sheet')}.`,
  setAsideLoose: 'Puede reaccionar con la humedad: nunca con tapa hermética, puede hincharse y reventar.',
  setAside: `La mezcla sobrante puede calentarse. Apártela como dice ${say.the('sheet')}.`,
  stock: 'Existencias',
  noStock: (figures) => `Según el registro no hay latas abiertas. Escriba, por ejemplo: ${exampleOf(figures)}.`,
  stockRow: (can, component, lot, sheet, left, details, figures) =>
    `Lata ${can}, ${spanishComponents[component]} ${sheet}, lote ${lot}: ${figures.mass(left)}${details.length === 0 ? '' : `; ${details.join(', ')}`}`,
  received: (count, component, lot, each, figures) =>
    `Recibidas: ${count} × ${figures.mass(each)} de ${spanishComponents[component]}, lote ${lot}`,
  sealedRow: ({ left, component, lot, grams, sheet }, details, figures) =>
    `Cerradas: ${left} × ${figures.mass(grams)} ${spanishComponents[component]} ${sheet}, lote ${lot}${details.length === 0 ? '' : `; ${details.join(', ')}`}`,
  sealedLeft: (lot, left) => `Latas cerradas que constan del lote ${lot}: ${left === 0 ? 'ninguna' : left}.`,
  noneSealed: (lot) =>
    `No consta ninguna lata así cerrada del lote ${lot}: no se anotó al recibirla, o ya se abrieron todas.`,
  openDays: (days) => (days === 0 ? 'abierta hoy' : `abierta hace ${counted(days, 'día', 'días')}`),
  openLeft: (days) =>
    days < 0
      ? `abierta demasiados días según ${say.the('sheet')}`
      : days === 0
        ? 'gastar hoy'
        : `gastar en ${counted(days, 'día', 'días')}`,
  expiresIn: (days) =>
    days < 0
      ? `caducada hace ${counted(-days, 'día', 'días')}`
      : days === 0
        ? 'caduca hoy'
        : `caduca en ${counted(days, 'día', 'días')}`,
  gas: {
    reacts: (seen, at, figures) => `${spanishReacts[seen]} desde ${theTime(figures, at)}: apártese`,
    blanketed: (at, figures) => `con gas desde ${theTime(figures, at)}`,
    'lid-off': (at, figures) => `destapada desde ${theTime(figures, at)}`,
    without: (at, figures) => `sin gas desde ${theTime(figures, at)}`,
    doubtful: (at, figures) => `en duda desde ${theTime(figures, at)}`,
  },
  gasFor: (headspace, gas, figures) => `espacio libre ${figures.volume(headspace)}, gas ${figures.volume(gas)}`,
  low: 'queda poco',
  morningCans: (is, cans, figures) =>
    `${cans.length === 0 ? 'latas sin abrir' : cans.length === 1 ? 'lata' : 'latas'} ${figures.list(cans.map(String))}, ${needs[is]}`.replace(
      ' ,',
      ',',
    ),
  morningCure: 'lo que cura en sala',
  morning: 'Repaso de la mañana',
  morningNothing: 'Ninguna lata pide nada.',
  plan: (method) => `Plan (${methodName(say, method)})`,
  planStart: (n, weighAt, readyAt, figures) =>
    `Mezcla ${n}: B sobre A ${atTime(figures, weighAt)}, lista ${atTime(figures, readyAt, 'up')}`,
  planLate: (n, weighAt, figures) =>
    `La mezcla ${n} tendría que haberse pesado ${atTime(figures, weighAt)}: irá tarde.`,
  planFilmAssumed: (film, figures) =>
    `No se dijo el espesor de película: se toma el mayor ${say.ofThe('sheet')}, ${figures.film(film)}.`,
  planFilmOutside: (lowest, highest, figures) =>
    `El espesor de película seca ${say.ofThe('sheet')} va de ${figures.film(lowest)} a ${figures.film(highest)}.`,
  planMethodNot: (method) => `${capital(say.the('sheet'))} no habla de ${methodName(say, method)}.`,
  planLoss: (efficiency, from, figures) =>
    `Eficiencia de transferencia: ${figures.percent(efficiency * 100)} (${from === 'rule' ? lawOf(say, 'la menor de dos normas, 40 CFR 60.313 y 60.453') : 'de memoria, sin fuente'}).`,
  planGear: (litres, figures) => `En manguera, pistola y filtro: ${figures.volume(litres)}.`,
  planNoRate: (figures) =>
    `No se sabe el ritmo ${say.ofThe('crew')}: fijar ritmo ${figures.units === 'us' ? '40ft2/h' : '4m2/h'}. Las mezclas se cuentan solo por la mayor que admite ${say.the('sheet')}.`,
  planByTime: (minutes, figures) =>
    `De la vida de cada mezcla ${withMinutes('queda', 'quedan', minutes)} ${figures.minutesDown(minutes)} para aplicar, quitados la agitación y el tiempo de terminar.`,
  planNoTime: 'A esta temperatura no queda vida de la mezcla para aplicar.',
  planStockShort: (component, needed, left, figures) =>
    `Falta ${spanishComponents[component]}: hacen falta ${figures.mass(needed)}, quedan ${figures.mass(left)} en las latas abiertas.`,
  planStockUnknown: 'No consta ninguna lata abierta: no se compararon las existencias.',
  planNoFilm: `${capital(say.the('sheet'))} no da sólidos en volumen ni espesor: no se puede calcular.`,
  planNoDensities: `${capital(say.the('sheet'))} no da densidades: el volumen no se puede pasar a peso.`,
  planNoArea: (parts, figures) =>
    `No se sabe el área de ${figures.list(parts)}. Escriba: pieza ${parts[0] ?? ''} ${figures.units === 'us' ? '8ft2' : `${figures.decimal(0.8)}m2`}.`,
  planTooMuch: 'Estas cifras pasan de lo que se puede calcular.',
  planNotRead: 'Sin lectura del aire: los tiempos toman el lado prudente.',
  planGoesBy: `Las cifras van por ${say.the('sheet')}; si pesa lo que gasta, el próximo plan saldrá mejor.`,
  dayCan: (can, component, lot, taken, left, figures) =>
    `Lata ${can} ${spanishComponents[component]}, lote ${lot}: gastados ${figures.mass(taken)}, quedan ${figures.mass(left)}`,
  dayAdded: (batch, grams, component, figures) =>
    `Mezcla ${batch}: ${figures.mass(grams)} de ${spanishComponents[component]} añadidos para recuperarla`,
  dayUncovered: (batch, minutes, figures) => `Mezcla ${batch}: destapada ${figures.minutesUp(minutes)}`,
  dayYield: (batch, { mixedGrams, caughtGrams, unfilteredGrams, leftOverGrams }, figures) => {
    const refiltered =
      unfilteredGrams > 0 ? `, ${figures.mass(unfilteredGrams)} sin filtrar otra vez` : ' y filtrados otra vez';
    const caught = caughtGrams > 0 ? `, ${figures.mass(caughtGrams)} recogidos${refiltered}` : '';
    const left = leftOverGrams === undefined ? '' : `, sobran ${figures.mass(leftOverGrams)}`;
    return `Mezcla ${batch}: mezclados ${figures.mass(mixedGrams)}${caught}${left}`;
  },
});
