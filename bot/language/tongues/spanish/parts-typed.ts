// Cómo se cuentan las piezas que llegan, muchas a la vez.

import type { PartsInWords } from '../typed.ts';

export const spanishPartsTyped: PartsInWords = {
  arrived:
    'nos han traido, han traido, ha traido, me han traido, trajeron, trajo, acaban de traer, acaban de descargar, descargaron, nos dejaron, han dejado, ha dejado, nos cayeron, cayeron, me trajeron, nos trajeron, me llego, llego, entra, acaban de llegar, nos han llegado, han llegado, nos llegaron, me llegaron, ya llegaron, llegaron, llegan, ya entraron, entraron, han entrado, recibimos, hemos recibido',
  dozens: { 'media docena de': 6, 'media docena': 6, 'una docena de': 12, 'una docena': 12, 'la docena de': 12 },
  numbered:
    'numerados, numeradas, marcados, marcadas, numero, numeros, llamadas, llamados, desde, van, nombradas, nombrados',
  isNew:
    'pieza nueva, piezas nuevas, nueva pieza, otra pieza, una pieza que entra, pieza que entra, parte nueva, hemos recibido, recibido, recibida, recibi, recibimos, acaba de entrar, acaba de llegar, ya entro, ya llego, entro, llego, ha llegado, ha entrado, ha venido, han traido, me han traido, nos han traido, han entrado, nos trajeron, da de alta, dar de alta, alta, apunta, anota, registra, anade, agrega',
  columns: {
    name: 'pieza, nombre, nombre pieza, nombre de pieza, nombre de la pieza, parte, marca, referencia, ref, codigo, id, articulo, num pieza, numero de pieza, no de parte, numero de parte',
    serial: 'serie, num serie, no serie, numero serie, numero de serie, no de serie, n serie, n de serie',
    job: 'trabajo, obra, orden, orden de trabajo, no de orden, numero de orden, ot',
    customer: 'cliente',
    metal: 'material, metal, sustrato, aleacion',
    wall: 'espesor, pared, grosor, grueso, espesor de pared, espesor pared, calibre',
    area: 'area, superficie',
    highest:
      'max, maxima, temp max, temp maxima, temperatura max, temperatura maxima, max temp, t max, aguanta, soporta, calor',
  },
  told: {
    serial:
      'numero de serie es, numero de serie, n.º de serie, n.º serie, nº de serie, nº serie, nº, num de serie, num. de serie, num serie, no de serie, no. de serie, n de serie, su serie es, serie es, serie, series, serial number, serial, s/n, sn, marcada, grabada',
    job: 'orden de trabajo, numero de orden, trabajo, encargo, pedido, orden, obra, job, chamba, ot',
    max: 'temperatura maxima, temp max, maximo, maxima, max, aguanta hasta, aguanta, aguantan, soporta hasta, soportan hasta, aguantan hasta, soporta, soportan, resiste hasta, resiste, no pasar de, no puede pasar de, no pase de, no debe pasar de, que no pase de, no mas de, tope, hasta, limite',
  },
};
