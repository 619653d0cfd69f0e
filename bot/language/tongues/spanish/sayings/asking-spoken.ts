// How Spanish speakers ask in passing, on a phone, in Spain and in American shops. Invented lines.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning } from '../../sayings-typed.ts';

export const spanishAskingsSpoken: Sayings<AskedMeaning> = {
  day: `
    dame el día / todo lo de hoy en una hoja / lo de hoy en una sola página / sácame lo que llevamos hoy / a ver todo lo que hicimos hoy
    ponme el turno en una hoja para el jefe / échame un resumen de lo de hoy
  `,
  'how-long': `
    cuánto lleva la 3 dentro / hace cuánto entró la tapa al horno / desde cuándo está la tapa en el horno / hasta cuándo no se puede tocar la 3
    cuánto más dejo quieta la tapa antes de tocarla / ya cumplió su curado la tapa / ha tenido la 3 todo su curado / está curada del todo la tapa
    ya tuvo su hora completa la 3
  `,
  'can-i': `
    hasta cuándo puedo retocar la tapa / todavía puedo corregir un punto en la 3 / aún se le puede dar un retoque a la tapa / es tarde para retocar la 3
  `,
  'where-is': `
    qué piezas están ahora metidas en el horno / qué hay en el horno ahorita / hay algo en el horno / cuáles están dentro del horno
  `,
  'to-do': `
    qué sigue ahora / qué hago ya, compa / me queda algo por hacer hoy / hay algo más para mí / qué me toca ahora / ya terminé, qué más hay
  `,
  lot: `
    lote de la lata 5 / qué lote lleva la lata 5 / de qué lote es el B / el lote del bote de A cuál es
  `,
  why: `
    tanto agitar, eso de dónde lo sacas / de dónde sacas ese tiempo / de dónde salen esos minutos / quién dice que sean noventa minutos / en qué se basa eso
    por qué tanto tiempo removiendo
  `,
  'how-hot': `
    qué humedad hay en el taller / cuánta humedad tenemos aquí / qué temperatura tenemos en la nave / cómo está el ambiente en el taller
    qué dio la tapa en la última medición
  `,
  'who-did': `
    quién anda rociando / quién fue el que pintó la tapa / quién le dio la brocha a la 3
  `,
  enough: `
    cuánto hago para las cuatro que faltan / cuánta mezcla preparo para dos tapas / qué cantidad mezclo para las que quedan
  `,
};
