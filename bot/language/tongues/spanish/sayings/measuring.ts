// How Spanish speakers say that they are about to measure a dry film. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfMeasuring: Sayings<SaidMeaning> = {
  'measure film': `
    medir la 7 / medir el cubo / mide la 7 / mide la tapa / midamos la 7 / midamos el impulsor / a medir la 7
    a medir el cubo / vamos a medir la 7 / vamos a medir el cubo / vamos a medir la tapa / vamos midiendo la 7
    voy a medir la 7 / voy a medir el cubo ahora / voy a medirle el espesor a la 7 / vamos a medirle a la 7
    vamos a tomarle espesores a la 7 / tomar espesores de la 7 / tomar el espesor del cubo / toma el espesor de la 7
    tomemos espesores en la 7 / sacar espesores de la 7 / sacar el espesor de la tapa / vamos a sacar espesores de la 7
    toca medir la 7 / toca medir el cubo / toca el espesor de la 7 / ahora toca medir la tapa / ahora la 7, a medir
    midiendo la 7 / midiendo el cubo ahora / estoy por medir la 7 / estoy midiendo la 7 / quiero medir la 7
    quiero medir el cubo / quiero tomar espesores de la 7 / listo para medir la 7 / lista para medir el cubo
    listos para los espesores de la 7 / ya tengo el medidor, la 7 / medidor en mano para la 7 / con el medidor en la 7
    empezar a medir la 7 / empiezo a medir la 7 / empezamos a medir el cubo / empezamos los espesores de la 7
    empieza la serie de la 7 / empezar la serie del cubo / arrancamos con los espesores de la 7 / arranco a medir la 7
    vamos con los espesores de la 7 / vamos con la 7, espesores / vamos con los puntos de la 7 / vamos con los puntos
    los puntos de la 7 / los puntos del cubo / los espesores de la 7 / los espesores del cubo / hagamos los puntos de la 7
    hacer los puntos de la 7 / hacer los espesores del cubo / hacemos el espesor de la 7 / haz los puntos de la tapa
    pregúntame los puntos de la 7 / pregúntame los espesores del cubo / pídeme los puntos de la 7
    pídeme las lecturas de la 7 / guíame con los espesores de la 7 / guíame para medir la 7 / llévame punto por punto
    punto por punto en la 7 / punto por punto, el cubo / siguiente punto de la 7 / siguiente punto del cubo
    el punto que sigue de la 7 / seguir con los puntos de la 7 / seguimos con los puntos de la 7 / sigo midiendo la 7
    seguimos midiendo el cubo / seguir midiendo la tapa / continuar con los espesores de la 7 / continúo con la 7, puntos
    continuamos con los puntos del cubo / retomo los espesores de la 7 / retomamos los puntos de la 7
    terminar los puntos de la 7 / terminemos de medir la 7 / acabar de medir el cubo / acabo los espesores de la 7
    otra serie en la 7 / otra serie de espesores del cubo / una serie nueva de la 7 / segunda serie de la tapa
    medir otra vez la 7 / medir de nuevo el cubo / remedir la 7 / repetir los espesores de la 7 / a medir la capa de la 7
    a ver el espesor de la 7, voy / checar espesores de la 7 / vamos a checar el espesor de la 7 / revisemos espesor de la 7
    revisar micras de la 7 / tomar micras de la 7 / vamos a tomar micras a la 7 / tomarle las micras al cubo
  `,
};
