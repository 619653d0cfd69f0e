// What speaks against an act with a cure, in Spanish.

import type { CureObjection } from '../../../../core/part/part-objections.ts';
import type { Figures } from '../../figures.ts';
import { atTime, capital, theTime, told } from './names.ts';
import type { Spoken } from './spoken.ts';

export function spanishCureObjection(say: Spoken, objection: CureObjection, figures: Figures): string {
  switch (objection.code) {
    case 'hotter-than-part-bears':
      return `La pieza aguanta ${figures.temperature(objection.highestCelsius)}, y el horno está a ${figures.temperature(objection.ovenCelsius)}. Cúrela en la sala.`;
    case 'no-such-cure':
      return `${capital(say.the('sheet'))} no da curado en ${objection.way === 'oven' ? 'horno' : 'sala'}.`;
    case 'oven-outside-sheet':
      return `El curado en horno ${say.ofThe('sheet')} es de ${figures.temperature(objection.lowest)} a ${figures.temperature(objection.highest)}, no ${figures.temperature(objection.setCelsius)}.`;
    case 'already-curing':
      return told`En curado desde ${theTime(figures, objection.since)}.`;
    case 'not-curing':
      return 'Esta pieza no está en curado.';
    case 'cure-not-given': {
      const then =
        objection.dueAt === undefined
          ? ''
          : objection.measured
            ? told` Por lo que consta, lo cumple ${atTime(figures, objection.dueAt, 'up')}.`
            : told` Estimado, sin medir: ${atTime(figures, objection.dueAt, 'up')}.`;
      return `Le falta curado: hasta ahora consta el ${figures.percent(Math.floor(objection.progress * 100))}.${then}`;
    }
    case 'still-in-oven':
      return told`Sigue en el horno, desde ${theTime(figures, objection.since)}. Sáquela antes, y escriba fuera.`;
  }
}
