// Readings that fail, in Spanish: which, by what rule, and what holds.

import type { FailedReading } from '../../../../core/part/part-events.ts';
import type { ReadingObjection } from '../../../../core/part/part-objections.ts';
import type { Figures } from '../../figures.ts';
import { spanishFilm } from './film.ts';
import type { Spoken } from './spoken.ts';

const onCoupon = ({ coupon }: { readonly coupon?: true | undefined }) => (coupon === true ? ', en su probeta' : '');

export function spanishFailed(say: Spoken, reading: FailedReading, figures: Figures): string {
  switch (reading.of) {
    case 'film':
      return `espesor de película seca (EPS) fuera de su regla: ${figures.list(reading.micrometres.map((film) => figures.film(film)))}`;
    case 'adhesion':
      return `adherencia ${reading.rating}${onCoupon(reading)}`;
    case 'heat':
      return `leída a ${figures.temperature(reading.celsius)}, más que el máximo de ${figures.temperature(reading.highestCelsius)}`;
    case 'rub':
      return `la película cedió al frotar con ${say.one('solvent')}, ${reading.doubleRubs} dobles frotes${onCoupon(reading)}`;
  }
}

export function spanishReadingObjection(say: Spoken, objection: ReadingObjection, figures: Figures): string {
  switch (objection.code) {
    case 'film-outside':
      return spanishFilm(say, objection.finding, figures);
    case 'adhesion-failed':
      return `Una adherencia ${objection.rating} no pasa: pasan 3B o mejor y, según ISO 2409, 2 o mejor (práctica común, sin fuente).`;
    case 'overheated':
      return `La pieza estaba a ${figures.temperature(objection.celsius)}; ella o su película aguantan ${figures.temperature(objection.highestCelsius)} como máximo.`;
    case 'rubbed-through':
      return `La película cedió a los ${objection.doubleRubs} dobles frotes: así no pasa (práctica común, sin fuente).`;
  }
}
