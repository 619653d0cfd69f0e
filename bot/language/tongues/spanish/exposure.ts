// What people breathed over a day, in Spanish.

import type { SubstanceId } from '../../../../core/calc/exposure-limits.ts';
import type { Verdict } from '../../../../core/session/exposure-day.ts';
import type { Figures } from '../../figures.ts';
import { amountOf, type englishExposure, hoursOf } from '../english/exposure.ts';
import { inCountry, spanishSolvents } from './names.ts';
import type { Spoken } from './spoken.ts';

export const spanishSubstances: Readonly<Record<SubstanceId, string>> = { ...spanishSolvents, hdi: 'HDI', mdi: 'MDI' };

const verdicts: Readonly<Record<Verdict, string>> = {
  over: ': SUPERADO',
  'may-be': ': quizá SUPERADO',
  'not-measured': '',
  within: '',
};

const timesOf = (times: number, figures: Figures): string =>
  times < 1 ? `el ${figures.percent(times * 100)} de` : `${figures.decimal(times)} veces`;

export const spanishExposure = (say: Spoken): typeof englishExposure => ({
  title: (person, day, figures) => `Lo que respiró ${person}, ${figures.date(day)}`,
  titleOfAll: 'Lo que se respiró',
  nothing: `No se midió entonces el aire de nadie. Escriba: ${inCountry(say, 'exposición kari 12ppm acetona 2h')}.`,
  setHere: 'como se fijó aquí',
  substance: (breathed, source, figures) => {
    const { substance, assumed, limit, is } = breathed;
    const name = spanishSubstances[substance];
    const amount = amountOf(breathed, figures);
    if (limit === undefined) return `${name}: ${amount} en 8 h; no consta ningún límite`;
    const share = figures.percent((assumed / limit.ppm) * 100);
    const law = limit.stands === 'stand-in' ? `el más bajo que se conoce, ${source}` : source;
    return `${name}: ${amount} en 8 h, ${share} de ${figures.ppm(limit.ppm)} (${law})${verdicts[is]}`;
  },
  rest: ({ substance, rest, highest, measured }, figures) =>
    `${hoursOf(rest, figures)} de ${spanishSubstances[substance]} sin medir: se toman al valor más alto dicho, ${figures.ppm(highest)}. Como aire limpio serían ${figures.ppm(measured)}.`,
  noneInRest: (rest, substance, figures) => `Sin ${spanishSubstances[substance]} las otras ${hoursOf(rest, figures)}`,
  advised: ({ assumed, limit }, figures) =>
    limit?.advised === undefined
      ? ''
      : `NIOSH aconseja ${figures.ppm(limit.advised.ppm)} de media al día: esto es ${timesOf(assumed / limit.advised.ppm, figures)} eso.`,
  short: ({ limit, highest, is }, source, figures) => {
    const what = limit.kind === 'ceiling' ? 'Nunca más de' : 'En 15 min como máximo';
    const peak =
      limit.peak &&
      `, salvo hasta ${figures.ppm(limit.peak.ppm)} durante ${figures.minutesUp(limit.peak.minutes)} por turno`;
    const asked = `${what} ${figures.ppm(limit.ppm)}${peak ?? ''} (${source})`;
    if (is === 'not-measured') return `${asked}: una media de más tiempo no lo muestra. Sin medir.`;
    return `${asked}, lo más alto dicho ${figures.ppm(highest)}${verdicts[is]}`;
  },
  advisedShort: ({ limit, highest }, figures) =>
    `NIOSH aconseja ${figures.ppm(limit.ppm)}${limit.kind === 'ceiling' ? ' como máximo' : ' en 15 min'}: lo más alto dicho es ${timesOf(highest / limit.ppm, figures)} eso.`,
  mixture: ({ assumed, is }, source, figures) =>
    `juntas: ${figures.percent(assumed * 100)} de sus límites (fracciones sumadas, ${source})${verdicts[is]}`,
  over: 'Límite superado: salga ya de ese aire. Nadie sigue en él hasta que mejore, o solo con un respirador del programa de la empresa: escriba máscara.',
  mayBe:
    'Quizá superado: mida el resto, y mientras trabaje como si lo fuera: más extracción, menos tiempo, o un respirador del programa de la empresa.',
  outsideMask: 'Medido fuera de la máscara: lo que una máscara retiene no se descuenta.',
  kept: (years, source) => `Se guarda ${years} años (${source}).`,
  tooLong: (person, total, figures) =>
    `Con esto serían ${hoursOf(total, figures)} en la jornada de ${person}, que tiene 24. Deshaga lo que no es, o diga cuánto duró esta tarea.`,
  fact: (person, substance, ppm, taskTime) =>
    `${person} respiró ${ppm} de ${spanishSubstances[substance]} durante ${taskTime}`,
});
