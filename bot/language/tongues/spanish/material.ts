// Cans, weighing in pieces, repair, reuse, stock and plans, in Spanish.

import type { MaterialObjection, MaterialUnclear } from '../../../../core/can/can-objections.ts';
import type { Component } from '../../../../core/components.ts';
import type { Figures } from '../../figures.ts';
import type { englishMaterial } from '../english/material.ts';
import { atTime, spanishDay, spanishMethod, theTime, withAmount } from './names.ts';

export const spanishComponents: Readonly<Record<Component, string>> = { 'part-a': 'Parte A', 'part-b': 'Parte B' };

export function spanishMaterialObjection(objection: MaterialObjection, f: Figures): string {
  switch (objection.code) {
    case 'no-gas':
      return `La ${spanishComponents[objection.component]} se pierde si le queda aire encima. Tener gas inerte a mano (argón o nitrógeno), o gastar la lata entera de una vez, y decir cuál: gas o entera.`;
    case 'can-expired':
      return `El lote ${objection.lot} está caducado: su último día fue el ${spanishDay(objection.expires)}. Usar otra lata.`;
    case 'can-discarded':
      return `La lata ${objection.can} se desechó ${atTime(f.timeDown(objection.at))}.`;
    case 'can-doubtful':
      return `La lata ${objection.can} estuvo sin gas ${f.minutesUp(objection.limitMinutes)} o más (en duda desde ${theTime(f.timeDown(objection.since))}). La mira un encargado y dice revisar ${objection.can}.`;
    case 'check-by-lead':
      return `Un encargado mira la lata ${objection.can} y dice si todavía se usa. Llamar a uno${objection.who.length === 0 ? '' : `: ${f.list(objection.who)}`}.`;
    case 'more-than-can-holds':
      return `${f.mass(objection.grams)} es más de lo que queda en la lata ${objection.can} (${f.mass(objection.leftGrams)}). Mirar la báscula, o nombrar la segunda lata: lata ${objection.can} y su número.`;
    case 'can-of-other-sheet':
      return `La lata ${objection.can} es de otro producto (${objection.sheet}).`;
    case 'part-a-not-stirred': {
      const then =
        objection.dueAt === undefined
          ? `Agitarla ${f.minutesUp(objection.wantedMinutes)} en su lata y decir agitar lata ${objection.can} al empezar.`
          : `Cumple sus ${f.minutesUp(objection.wantedMinutes)} ${atTime(f.timeUp(objection.dueAt))}.`;
      return `La lata ${objection.can} está sin agitar: con poso abajo, la proporción sale mal. ${then}`;
    }
    case 'weighed-twice':
      return `La ${spanishComponents[objection.component]} ya está dentro: ${f.mass(objection.grams)} ${atTime(f.timeDown(objection.at))}. Si ese dato estaba mal, decir corregir; si es más a propósito, añadir.`;
    case 'b-before-a':
      return 'La Parte A no está aún en el recipiente: primero A, agitador en marcha, y después B sobre A.';
    case 'adding-not-on-sheet':
      return 'La ficha no dice nada de añadir para recuperar una mezcla. Fuera de relación es residuo: hacer otra mezcla.';
    case 'added-too-late':
      return objection.filtered
        ? 'Ya está filtrada: no entra nada más. Fuera de relación es residuo; hacer otra mezcla.'
        : `Según la ficha se podía añadir hasta ${theTime(f.timeDown(objection.untilAt))}. Fuera de relación es residuo; hacer otra mezcla.`;
    case 'adding-passes-most':
      return `Con eso serían ${f.mass(objection.mixedGrams)} en el recipiente; la ficha admite como máximo ${f.mass(objection.mostGrams)} de una vez. Una mezcla desviada es residuo: preguntar a un encargado y hacer otra.`;
    case 'vessel-too-small':
      return `${f.volume(objection.mixedLitres)} no dejan sitio para agitar en un recipiente de ${f.volume(objection.vesselLitres)}. Otra mezcla, en uno mayor.`;
    case 'caught-not-filtered':
      return `Se recogieron ${f.mass(objection.grams)} ${atTime(f.timeDown(objection.at))} y no se han filtrado desde entonces. Filtrar y decir filtrar.`;
  }
}

export function spanishMaterialUnclear(unclear: MaterialUnclear, f: Figures): string {
  const named = (numbers: readonly number[]) => (numbers.length === 0 ? 'ninguna' : f.list(numbers.map(String)));
  switch (unclear.code) {
    case 'no-such-can':
      return `No hay lata ${unclear.can}. Abiertas: ${named(unclear.live)}.`;
    case 'which-can':
      if (unclear.live.length === 0) return 'No hay latas abiertas. Decir, por ejemplo, abrir A lote 7731 5kg gas.';
      return `¿De qué lata${unclear.component === undefined ? '' : ` de ${spanishComponents[unclear.component]}`}? Abiertas: ${named(unclear.live)}.`;
    case 'can-not-wanted':
      return `La lata ${unclear.can} es de ${spanishComponents[unclear.component]}, y en esta línea no se pesó.`;
    case 'other-unit':
      return unclear.readings
        .map(
          ({ component, grams, otherGrams, plannedGrams }) =>
            `${spanishComponents[component]}: se dijo ${f.mass(grams)} y lo previsto es ${f.mass(plannedGrams)}. En otra unidad la báscula habría marcado ${f.mass(otherGrams)}. ¿Cuál es?`,
        )
        .join(' ');
  }
}

export const spanishMaterial: typeof englishMaterial = {
  component: spanishComponents,
  handling: { gas: 'gas a mano', whole: 'se gasta entera' },
  canOpened: (can, component, lot) => `Lata ${can}: ${spanishComponents[component]}, lote ${lot}`,
  canNumber: (can) => `Escribir ${can} en la lata.`,
  lidOffSince: (time) => `Destapada desde ${theTime(time)}. Meter gas, tapar y decir gas puesto.`,
  wholeNow: 'Se gasta entera: si sobra algo después de verter, pide gas igual.',
  lidOff: (can) => `Lata ${can}: destapada`,
  blanketed: (can) => `Lata ${can}: gas puesto y tapada`,
  noGasNeeded: 'La ficha no pide gas para esta.',
  checked: (can) => `Lata ${can}: revisada y admitida`,
  doubtfulSince: (time) => `En duda desde ${theTime(time)}: demasiado tiempo sin gas.`,
  leadChecks: (can) => `No se vierte nada de ella hasta que un encargado la mire y diga revisar ${can}.`,
  lidStillOff: 'Sigue destapada: los minutos vuelven a contar desde ahora.',
  headspaceUnknown: 'No consta en la ficha ni en el registro la capacidad de la lata: no hay dato de gas.',
  gasSlowly: 'Meter el gas despacio, para que se mezcle; si vuelve a salir a chorro, no basta.',
  canStirring: (can) => `Lata ${can}: agitándose antes de verter`,
  preStirBeyond: 'La ficha no da tiempo para tanta cantidad; vale el más largo que da.',
  discarded: (can) => `Lata ${can}: desechada`,
  discardHeats:
    'Si se ha gelificado o está caliente puede seguir calentándose: lejos de la gente y de lo que arde, con la tapa suelta, si todavía se puede mover; después, apartarse. No cerrarla hermética.',
  preStirFirst: (minutes, can) => `Agitarla ${minutes} en su lata antes de verter: agitar lata ${can}.`,
  fromCan: (can, lot, left) => `De la lata ${can} (lote ${lot}): quedan ${left}.`,
  canEmpty: (can, lot) => `De la lata ${can} (lote ${lot}): vacía según el registro.`,
  blanketNow: (can, time) => `Gas en la lata ${can} ahora: destapada desde ${theTime(time)}.`,
  noCanKnown: 'No consta ninguna lata para esto: no habrá trazabilidad de lotes.',
  partIn: (batch, component) => `Mezcla ${batch}: ${spanishComponents[component]} dentro`,
  nextB: (exact, least, most) =>
    `Ahora la Parte B: ${exact} (de ${least} a ${most}). Al tocar A empiezan a correr los tiempos.`,
  nextA: 'Lo normal es que la Parte A vaya primero. Los tiempos corren cuando están las dos.',
  repairAdd: (what, component, until) =>
    `Para recuperarla: añadir ${what} de ${spanishComponents[component]}, hasta ${theTime(until)}. El agitado vuelve a empezar para todo; la vida útil no.`,
  repairBeyondPlan: (needed, planned) =>
    `Para recuperarla harían falta ${needed} en el recipiente, y lo previsto eran ${planned}: no se recupera. Revisar la báscula; esta mezcla es residuo, preguntar a un encargado.`,
  repairVesselUnknown: (needed) => `Nadie dijo la capacidad del recipiente: mirar si caben ${needed}.`,
  added: (batch, what, component) => `Mezcla ${batch}: añadidos ${what} de ${spanishComponents[component]}`,
  stirAgain: 'El agitado vuelve a empezar para todo. La vida útil sigue desde el primer contacto.',
  covered: (batch) => `Mezcla ${batch}: tapada`,
  uncovered: (batch) => `Mezcla ${batch}: destapada`,
  uncoveredSoFar: (minutes) => `Lleva ${minutes} destapada: el aire acorta la vida útil.`,
  caught: (batch, what) => `Mezcla ${batch}: recogidos ${what}`,
  caughtFilter: 'Conserva la edad y la vida útil de la mezcla. Filtrarla otra vez antes de usarla.',
  setAsideVented:
    'La mezcla sobrante puede calentarse y soltar gas: en envase con respiradero, nunca con tapa hermética, como dice la ficha.',
  setAside: 'La mezcla sobrante puede calentarse. Apartarla como dice la ficha.',
  potLifeByMass: (percent) => `Con tanta cantidad junta, la ficha le da el ${percent} de la vida útil normal.`,
  potLifeBeyondMass: 'Es más de lo que contempla la ficha: vale su vida útil más corta.',
  stock: 'Existencias',
  noStock: 'Según el registro no hay latas abiertas. Decir, por ejemplo, abrir A lote 7731 5kg cad 2026-12 gas.',
  stockRow: (can, component, lot, sheet, left, details) =>
    `${can} ${spanishComponents[component]} ${sheet}, lote ${lot}: ${left}${details}`,
  openDays: (days) => (days === 0 ? 'abierta hoy' : days === 1 ? 'abierta hace 1 día' : `abierta hace ${days} días`),
  expiresIn: (days) => (days < 0 ? `caducada hace ${-days} d` : days === 0 ? 'caduca hoy' : `caduca en ${days} d`),
  gas: {
    'not-needed': '',
    blanketed: (time) => `con gas desde ${theTime(time)}`,
    'lid-off': (time) => `destapada desde ${theTime(time)}`,
    doubtful: (time) => `en duda desde ${theTime(time)}`,
  },
  gasFor: (headspace, gas) => `espacio libre ${headspace}, gas ${gas}`,
  low: 'queda poco',
  morning: 'Repaso de la mañana',
  morningNothing: 'Ninguna lata pide nada.',
  plan: (method) => `Plan (${spanishMethod(method)})`,
  planBatch: (n, mass, a, b) => `Mezcla ${n}: mezclar ${mass} (A ${a}, B ${b})`,
  planStart: (n, weigh, ready) => `Mezcla ${n}: B sobre A ${atTime(weigh)}, lista ${atTime(ready)}`,
  planLate: (n, weigh) => `La mezcla ${n} tendría que haberse pesado ${atTime(weigh)}: irá tarde.`,
  planFilmAssumed: (film) => `No se dijo espesor de película: se toma el mayor de la ficha, ${film}.`,
  planFilmOutside: (lowest, highest) => `La película de la ficha va de ${lowest} a ${highest}.`,
  planMethodNot: (method) => `La ficha no habla de ${spanishMethod(method)}.`,
  planLoss: (efficiency, source) => `El ${efficiency} de lo que sale del equipo se queda en la pieza (${source}).`,
  planSources: {
    rule: 'la menor de dos normas, 40 CFR 60.313 y 60.453',
    memory: 'de memoria, sin fuente',
  },
  planGear: (gear) => `En manguera, pistola y filtro: ${gear}.`,
  planNoRate:
    'No se sabe el ritmo de la cuadrilla: decir fijar ritmo 4m2/h. Las mezclas se cuentan solo por la mayor que admite la ficha.',
  planByTime: (minutes) =>
    `De la vida útil de cada mezcla ${withAmount('queda', 'quedan', minutes)} para aplicar, quitados el agitado y el tiempo de acabar.`,
  planNoTime: 'A esta temperatura no queda vida útil para aplicar.',
  planStockShort: (component, needed, left) =>
    `Falta ${spanishComponents[component]}: hacen falta ${needed}, quedan ${left} en las latas abiertas.`,
  planStockUnknown: 'No consta ninguna lata abierta: no se compararon las existencias.',
  planNoFilm: 'La ficha no da sólidos en volumen ni película: no se puede calcular.',
  planNoDensities: 'La ficha no da densidades: los litros no se pueden pasar a gramos.',
  planNoArea: (parts) => `No se sabe el área de ${parts}. Decirla: pieza impulsor-7 0,8m2.`,
  planTooMuch: 'Estas cifras pasan de lo que se puede calcular.',
  planNotRead: 'Sin lectura del aire: los tiempos toman el lado prudente.',
  planGoesBy: 'Las cifras van por la ficha; pesando lo que se gasta, el próximo plan saldrá mejor.',
  dayCan: (can, component, lot, taken, left) =>
    `Lata ${can} ${spanishComponents[component]}, lote ${lot}: gastados ${taken}, quedan ${left}`,
  dayAdded: (batch, what, component) =>
    `Mezcla ${batch}: ${what} de ${spanishComponents[component]} añadidos para recuperarla`,
  dayUncovered: (batch, minutes) => `Mezcla ${batch}: destapada ${minutes}`,
  dayYield: (batch, mixed, caught, left) =>
    `Mezcla ${batch}: mezclados ${mixed}, recogidos y filtrados otra vez ${caught}, sobran ${left}`,
};
