// Readings that fail, in Spanish: which, by what rule, and what holds.

import type { Unclear } from '../../../../core/objections.ts';
import type { FailedReading } from '../../../../core/part/part-events.ts';
import type { ReadingObjection } from '../../../../core/part/part-objections.ts';
import type { Figures } from '../../figures.ts';
import { figureIn } from '../../noted-figures.ts';
import { slots } from '../../slots.ts';
import { spanishFilm } from './film.ts';
import { spanishFilmTests } from './film-tests.ts';
import { atTime } from './names.ts';
import { spanishSlots } from './slots.ts';
import type { Spoken } from './spoken.ts';

const onCoupon = ({ coupon }: { readonly coupon?: true | undefined }) => (coupon === true ? ', en su probeta' : '');

export function spanishFailed(say: Spoken, reading: FailedReading, figures: Figures): string {
  switch (reading.of) {
    case 'film':
      return reading.spot === undefined || reading.meanMicrometres === undefined
        ? `espesor de película seca (EPS) fuera de su regla: ${figures.list(reading.micrometres.map((film) => figures.film(film)))}`
        : `espesor de película seca (EPS) fuera de su regla, serie ${reading.set}, en el punto ${reading.spot}: media ${figures.film(reading.meanMicrometres)}`;
    case 'adhesion':
      return `adherencia ${reading.rating}${onCoupon(reading)}`;
    case 'heat':
      return `leída a ${figures.temperature(reading.celsius)}, más que el máximo de ${figures.temperature(reading.highestCelsius)}`;
    case 'rub':
      return `la película cedió al frotar con ${say.one('solvent')}, ${reading.doubleRubs} dobles frotes${onCoupon(reading)}`;
    case 'wet':
      return spanishFilmTests(say).read(reading, figures);
    case 'pull-off':
    case 'gloss':
    case 'hardness':
    case 'holidays':
    case 'visual':
      return `${spanishFilmTests(say).read(reading, figures)}${onCoupon(reading)}`;
  }
}

export function spanishReadingObjection(say: Spoken, objection: ReadingObjection, figures: Figures): string {
  switch (objection.code) {
    case 'film-outside':
      return spanishFilm(say, objection.finding, figures);
    case 'adhesion-failed':
      return objection.least !== undefined
        ? `Una adherencia ${objection.rating} no pasa: ${say.the('job')} pide ${objection.least} o mejor.`
        : `Una adherencia ${objection.rating} no pasa: pasan 3B o mejor y, según ISO 2409, 2 o mejor (práctica común, sin fuente).`;
    case 'overheated':
      return `La pieza estaba a ${figures.temperature(objection.celsius)}; ella o su película aguantan ${figures.temperature(objection.highestCelsius)} como máximo.`;
    case 'rubbed-through':
      return `La película cedió a los ${objection.doubleRubs} dobles frotes: así no pasa (práctica común, sin fuente).`;
    case 'test-failed':
      return spanishFilmTests(say).fails(objection.read, objection.asked, figures);
  }
}

type Far = Extract<Unclear, { code: 'far-reading' }>;

export function spanishFar(say: Spoken, unclear: Far, figures: Figures): string {
  if (unclear.from === 'before')
    return `${unclear.part} estaba a ${figures.temperature(unclear.before.celsius)} ${atTime(figures, unclear.before.at)}, y sigue en el horno según consta. ¿Está a ${figures.temperature(unclear.celsius)}?`;
  const asked = unclear.figures.map(({ slot, values, lowest, highest, bySheet }) => {
    const shown = (value: number) => figureIn(slots[slot].unit, value, figures);
    const read = `${spanishSlots(say)[slot]} ${figures.list(values.map(shown))}`;
    return bySheet
      ? `${read}, a más de tres veces de la película ${say.ofThe('sheet')}`
      : `${read}, cuando lo corriente es de ${shown(lowest)} a ${shown(highest)} (práctica común, sin fuente)`;
  });
  return `¿Es así: ${figures.list(asked)}?`;
}
