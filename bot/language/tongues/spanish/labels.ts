// What stands on a can in Spanish, and what people say round it when they read it off; without accents.

import type { LabelWords } from '../../labels/label-table.ts';

export const spanishLabels: LabelWords = {
  component: 'parte, componente, comp, comp., la parte, el componente',
  lot: 'lote, lote no, lote no., lote num, lote num., lote numero, lote n, n de lote, num de lote, lote es',
  lotElse: 'tanda, partida',
  expiry:
    'cad, cad., caduca, caduca en, caduca el, caducan, caducan en, caduca a, caducidad, fecha de caducidad, fecha cad, fecha cad., vence, vence en, vence el, vencen, vencen en, buena hasta, bueno hasta, vencimiento, fecha de vencimiento, vto, vto., venc, venc., expira, expira en, exp, consumir antes de, consumir preferentemente antes de, consumo preferente, usar antes de, valido hasta, valida hasta, hasta, val',
  asOpen:
    'abri, abrimos, abro, abierta, abierto, abiertas, abriendo, he abierto, hemos abierto, acabo de abrir, destape, destapada, abrio, abrir, destapar, destapado, destapo, destapamos, recien abierto, recien abierta, desprecinte, desprecinto, desprecintada, estreno, rompi el sello, quito precinto, quite el precinto',
  asReceived:
    'recibida, recibido, recibi, recibimos, llego, llegaron, llega, entro, ha llegado, entrada, entregada, acaban de llegar, trajeron, nos trajeron, han llegado, recibimos, entregaron, descargamos, cerrada, cerradas, cerrado, cerrados, sin abrir, precintada, precintadas, precintado, precintados',
  gas: 'gas, argon, nitrogeno',
  gasThere:
    'con, a, la, mano, al, lado, junto, aqui, mismo, listo, puesto, pongo, puse, conectado, enchufado, corriendo, encendido, le, y, el, tengo, tenemos, bajo, dentro, encima, si, ya, botella, pegado, mi',
  rounds:
    'el, la, los, las, un, una, otra, otro, nueva, nuevo, ya, he, hemos, acabo de, acabamos de, de, del, bote, lata, en, con, que, y, dice, pone, marca, lee, etiqueta, la etiqueta, es, esta, este, neto, net, peso, peso neto, wt, net wt, contenido, a, a la mano, mano, a mano, listo, si, tenemos, tengo, hay, tenia, teniamos, libras, bajo, n, num, num., numero, puse, puesto, pues, oye, ahora, aqui, porfa, gracias, fecha, hoy, me, se, abrimos, recien, cada uno, cada una, cada, uno, una, x, latas, botes, cubeta, cubetas, tambos, etiqueta dice',
  dayJoints: 'de, del, en, el, final, finales, fin, fines, a',
  vessels: 'cubeta, tambo, tarro, frasco, botella, garrafa',
  calledBack:
    'retira, retiran, retiro, retiraron, retirado, retiramos, retirando, ha retirado, han retirado, esta retirado, llama a devolver, piden de vuelta, pide de vuelta, reclaman, recall',
  calledOver: 'levantado, levantada, levantan, levanta, anulado, anulada, readmitido, readmiten, ya no esta',
};
