// What Spanish-speaking crews say of a part, besides the verbs that begin a line.

import type { Acts } from '../said-words.ts';
import { formsOf, saidOf } from './conjugated.ts';
import { all, brushes, ended, given, made, outside, ovens, put, rollers, taken, without } from './said-roots.ts';

/** What a dry film no longer does. */
const grips = [
  ...['pega', 'pegan', 'pegaba', 'pegaban', 'agarra', 'agarran', 'agarraba', 'muerde', 'muerden', 'mordia', 'mordian'],
  ...['pringa', 'pringan', 'pringaba', 'mancha', 'manchan', 'manchaba', 'ensucia', 'tizna', 'embarra', 'embarraba'],
  ...['deja marca', 'deja huella', 'dejaba marca', 'dejaba huella', 'deja marcas', 'dejan marca', 'esta pegajosa'],
  ...['esta pegajoso', 'estan pegajosas', 'se queda pegada', 'esta fresca', 'esta mojada'],
];
const coats = ['capa', 'mano', 'pasada', 'manita', 'capita', 'primera', 'primera capa', 'primera mano'];
const aside = [
  'a un lado',
  'aparte',
  'cuarentena',
  'en cuarentena',
  'en espera',
  'retencion',
  'en retencion',
  'de lado',
];
const tagged = ['etiqueta roja', 'tarjeta roja', 'tarjeta', 'en rojo', 'cinta roja'];
const rooms = [
  ...[
    'al aire',
    'al ambiente',
    'a temperatura ambiente',
    'en sala',
    'en el taller',
    'en taller',
    'en banco',
    'en mesa',
  ],
  ...['en estante', 'en rack', 'a temperatura de taller', 'sin horno', 'en el shop'],
];

export const saidOfParts = (): Acts => ({
  coat: all(
    saidOf(formsOf('pintar'), ''),
    saidOf(formsOf('aplicar'), ''),
    saidOf(formsOf('recubrir', { participle: 'recubiert' }), ''),
    saidOf(formsOf('barnizar'), ''),
    saidOf(put, ...coats, 'pintura', 'recubrimiento'),
    saidOf(
      ['llevan', 'lleva', 'tiene', 'tienen', 'trae', 'traen', 'pegado', 'pegue', 'pegamos', 'he pegado'],
      ...coats.flatMap((coat) => [coat, `su ${coat}`]),
    ),
    saidOf(
      [...given, 'dada', 'dadas', 'lleva', 'llevan', 'trae', 'traen'],
      ...[...brushes, ...rollers].flatMap((tool) => [tool, `a ${tool}`, `con ${tool}`, `de ${tool}`]),
      ...['brochazo', 'brochazos', 'pistola', 'a pistola', 'con pistola'],
    ),
    saidOf([...formsOf('sumergir'), ...formsOf('banar'), 'sumerjo', 'zambulli', 'inmersion'], ''),
    saidOf(formsOf('embarnizar'), ''),
    saidOf(formsOf('rodillar'), ''),
    saidOf(formsOf('brochear'), ''),
  ),
  'touch-up': all(
    saidOf(formsOf('retocar'), ''),
    saidOf([...put, ...made, 'pegue'], ...['retoque', 'retoquito', 'retoques', 'retocada', 'repaso', 'repasadita']),
    saidOf(
      [
        ...formsOf('repasar'),
        ...formsOf('tapar'),
        ...formsOf('cubrir', { participle: 'cubiert' }),
        ...formsOf('corregir'),
      ],
      ...['claro', 'claros', 'calva', 'calvas', 'hueco', 'huecos', 'falla', 'fallas', 'zona fina', 'escurrido'],
      ...['escurrimiento', 'poro', 'poros', 'chorreo', 'manchon', 'descuelgue', 'falta', 'faltas'],
    ),
  ),
  dry: all(
    saidOf(without(formsOf('secar'), 'secado'), ''),
    saidOf(['ya no', 'no'], ...grips),
    saidOf(formsOf('orear'), ''),
    saidOf(formsOf('salir'), 'seca', 'seco', 'secas', 'secos', 'bien seca', 'bien seco', 'ya seca', 'ya seco'),
    saidOf(['paso', 'pasa', 'pasaron'], 'prueba de guante', 'prueba de dedo', 'guante', 'prueba del dedo'),
    'no deja marca en guante, sin tack, ya no pringan, ya seco, ya secaron, seca, seco, secas, secos, seca al tacto, seco al tacto, secas al tacto, oreada, oreado, oreadas, oreo, oreados, guante sale limpio, guante limpio, ya perdio tack, ya hizo piel',
  ),
  'cure oven': all(
    saidOf(
      [...put, ...formsOf('entrar'), ...formsOf('cargar')],
      ...ovens.flatMap((oven) => [oven, `a ${oven}`, `al ${oven}`, `en ${oven}`, `dentro de ${oven}`]),
    ),
    saidOf(formsOf('hornear'), ''),
    saidOf([...put, ...formsOf('entrar')], 'curar', 'a curar', 'a hornear', 'a cocer'),
    saidOf(ovens, ''),
    ovens.flatMap((oven) => [`al ${oven}`, `a ${oven}`, `en ${oven}`, `en el ${oven}`, `dentro de ${oven}`]).join(', '),
  ),
  'cure room': all(
    saidOf(formsOf('curar'), ...rooms),
    saidOf(
      [...formsOf('dejar'), 'queda', 'quedo', ...put],
      ...rooms.flatMap((room) => [`curando ${room}`, `curar ${room}`, `a curar ${room}`]),
    ),
    saidOf([...rooms.map((room) => `${room} a curar`), ...rooms.map((room) => `${room} curando`)], ''),
  ),
  out: all(
    saidOf(
      taken,
      ...ovens.flatMap((oven) => [`del ${oven}`, `de ${oven}`, oven]),
      'de curado',
      'de curar',
      'de hornear',
    ),
    saidOf(outside, ''),
    'fuera, afuera',
    saidOf(['fuera', 'afuera'], ...ovens.flatMap((oven) => [`del ${oven}`, `de ${oven}`])),
    saidOf(ended, 'de hornear', 'de curar', 'de cocerse', 'horneado'),
  ),
  temp: all(
    'mero metal, mero fierro, mero acero, mera pieza, en pieza, en la pieza, medidos en pieza, medidos en la pieza, medido en la pieza, sonda da en',
    saidOf(
      [
        'sonda',
        'termometro',
        'pirometro',
        'termopar',
        'pistola laser',
        'pistola de temperatura',
        'laser',
        'infrarrojo',
      ],
      ...['marca', 'da', 'dice', 'marco', 'dio', 'lee', 'en'],
    ),
    'sonda, temperatura de pieza, temperatura pieza, temperatura de la pieza, temperatura',
  ),
  wet: 'mojado, mils mojado, espesor humedo, pelicula humeda, galga, peine, peine marca, peine da, peine dio, en humedo, eph, humedo, humeda, galga marca, galga da',
  film: 'espesor seco, espesor, espesores, eps, pelicula seca, en seco, medidor de espesor, micras',
  adhesion: 'adherencia clase, prueba de adherencia, corte enrejado, ensayo de cinta, prueba de cinta',
  release: all(
    'quita retencion, quito retencion, quitar retencion, quitada retencion, quite retencion, quitamos retencion, levanta retencion, levanto retencion, levantar retencion, levantada retencion, levante retencion, levantamos retencion, retencion levantada, retencion quitada, fuera de retencion',
    saidOf(formsOf('liberar'), ''),
    saidOf(formsOf('aprobar', { stressed: 'aprueb' }), ''),
    saidOf(put, 'por buena', 'por buenas', 'por bueno', 'por buenos', 'visto bueno', 'salida', 'el ok', 'palomita'),
    'paso inspeccion, paso la inspeccion, lista para entregar, listo para entregar, lista para embarcar, listo para embarcar, ya se puede ir, ya puede salir, ya se puede entregar, se puede entregar, puede salir, lista para salir, listo para salir',
  ),
  shipped: all(
    'se la llevo el cliente, se lo llevo el cliente, se las llevo el cliente, se fue con el cliente, se fue en el camion, ya se fue con el cliente, la recogio el cliente, lo recogio el cliente, entregue al cliente, entregamos al cliente, se entrego al cliente, salio para el cliente, salio por la puerta',
  ),
  hold: all(
    saidOf(formsOf('retener', { past: 'retuv', first: 'retengo' }), ''),
    'reten, retenga, retengan, retenido, retenida, retenidos, retenidas, deten, detenga, detengan, aparta, aparte',
    saidOf(without(formsOf('apartar')), ''),
    saidOf(formsOf('rechazar'), ''),
    saidOf(formsOf('bloquear'), ''),
    saidOf(
      ['haz', 'haga', 'hagan', 'deja', 'deje', 'dejen', ...made, ...put, ...formsOf('dejar')],
      ...aside,
      ...tagged,
    ),
    saidOf(tagged.slice(0, 2), ''),
    'en cuarentena, cuarentena, en retencion, retencion, no se embarca, no se entrega, no entregues, no entreguen, no embarquen, no embarques',
  ),
  prep: 'preparada, preparadas, preparado, preparados, prepare, preparamos',
  'prep blasting': all(
    saidOf(formsOf('granallar'), ''),
    saidOf(formsOf('chorrear'), ''),
    saidOf(formsOf('arenar'), ''),
    saidOf(formsOf('sandblastear'), ''),
    'sandblast, sandblasting, chorro de arena, sandblasteo, granallado, chorro abrasivo, a chorro',
  ),
  'prep sanding': all(
    saidOf(formsOf('lijar'), ''),
    saidOf(put, 'lija', 'con lija', 'scotch'),
    saidOf(formsOf('amolar'), ''),
  ),
  'prep wiping': all(
    saidOf([...formsOf('pasar'), 'paso', 'pase', ...given], 'trapo', 'trapito', 'panuelo', 'con trapo', 'pano'),
    saidOf(
      formsOf('limpiar'),
      ...['con acetona', 'con alcohol', 'con solvente', 'con thinner', 'con trapo', 'con pano'],
    ),
    'trapeada, trapeado, trapeadas, limpia con trapo, limpias con trapo',
  ),
  'prep old-coat-off': all(
    saidOf([...formsOf('quitar'), ...formsOf('sacar')], 'capa vieja', 'recubrimiento viejo', 'pintura vieja'),
    'decapada, decapado, decapadas, decapados, decape, sin la capa vieja, ya sin capa vieja, ya sin pintura vieja',
  ),
  'prep grease-off': all(
    saidOf(formsOf('desengrasar'), ''),
    saidOf([...formsOf('quitar'), ...formsOf('sacar')], 'grasa', 'aceite'),
    'sin grasa, libre de grasa, libres de grasa, sin aceite',
  ),
  surface:
    'superficie, sustrato, acero, chapa, lamina, metal, placa, fierro, temperatura de superficie, temperatura del acero, termometro de contacto, termometro de iman',
});
