// Cómo se cuentan las piezas que llegan, muchas a la vez.

import type { PartsInWords } from '../typed.ts';

export const spanishPartsTyped: PartsInWords = {
  arrived:
    'me trajeron, nos trajeron, me llego, llego, entra, acaban de llegar, nos han llegado, han llegado, nos llegaron, me llegaron, ya llegaron, llegaron, llegan, ya entraron, entraron, han entrado, recibimos, hemos recibido',
  columns: {
    name: 'pieza, nombre, nombre pieza, nombre de pieza, nombre de la pieza, parte, marca, referencia, ref, codigo, id, articulo, num pieza, numero de pieza, no de parte, numero de parte',
    serial: 'serie, num serie, no serie, numero serie, numero de serie, no de serie, n serie, n de serie',
    job: 'trabajo, obra, orden, orden de trabajo, no de orden, numero de orden, ot',
    customer: 'cliente',
    metal: 'material, metal, sustrato, aleacion',
    wall: 'espesor, pared, grosor, espesor de pared, espesor pared, calibre',
    area: 'area, superficie',
    highest:
      'max, maxima, temp max, temp maxima, temperatura max, temperatura maxima, max temp, t max, aguanta, soporta, calor',
  },
};
