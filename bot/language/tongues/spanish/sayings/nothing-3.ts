// How Spanish speakers say it: nothing. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfNothing3: Sayings<SaidMeaning> = {
  nothing: `
    Omar, close the lid / Lia please wipe la 8 / quillo no está seca ni de lejos / parce todavía no la filtremos
    boludo no abras la lata / mi pana mañana pintamos / mijo no la toques / coño no la metas mojada
    quillo luego la pinto / parce ahorita la saco / boludo después la lijo / mijo ponle la tapa a la lata
    el can 2 is empty, ni modo / can 5 is empty, hay que pedir / the can is empty compa / ese can está empty
    otro can empty en el rack / la lata 3 quedó vacía, al reciclaje / lata vacía la 6 / can vacío, pidan más
    se vació la lata 2 / la lata 5 ya no trae nada / la lata 3 se acabó / empty cans afuera / tirar las latas vacías
    ya no queda A en la lata 2 / the fan on my truck is broken / el fan de la izquierda está roto
    el fan on the left hace ruido / the oven is hot, cuidado / el oven is ready when you are / the load is big hoy
    the moon is full / la luna está llena / so am I / and so what / the coffee is ready / the game is on
    the boss is in / is what it is / it is what it is / so far so good / everybody is ok / la pinto cuando esté seca
    pinto la 8 cuando acabe de secar / meto la 7 cuando esté seca / filtro cuando pare de batir / la saco cuando suene
    lijo la 5 cuando esté dura / tapo cuando acabe de servir / te aviso cuando esté seca / cuando esté lista la pinto
    mezclo cuando lleguen las tapas / le doy a la 9 cuando salga Omar de la cabina / la suelto cuando esté curada
    peso cuando llegue la báscula / pinto cuando baje la humedad / entro cuando esté el fan / abro la A cuando haya gas
    la toco cuando pasen diez minutos / cuando esté curada la mido / pintamos la voluta cuando esté limpia
  `,
};
