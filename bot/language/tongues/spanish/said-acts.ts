// What Spanish-speaking crews call their acts, besides the verbs that begin a line: every form of the verb, and what it is said of.
// The words of Spain's shops and of those in America stand side by side.

import type { SaidWords } from '../said-words.ts';
import { formsOf, saidOf } from './conjugated.ts';

const begun = [
  ...formsOf('empezar', { stressed: 'empiez' }),
  ...formsOf('comenzar', { stressed: 'comienz' }),
  ...formsOf('arrancar'),
  ...formsOf('iniciar'),
];
const ended = [...formsOf('terminar'), ...formsOf('acabar'), ...formsOf('dejar'), ...formsOf('parar')];
const put = [
  ...formsOf('echar'),
  ...formsOf('poner', { past: 'pus', participle: 'puest', first: 'pongo' }),
  ...['pon', 'ponga', 'pongan'],
  ...formsOf('meter'),
  ...formsOf('dar', { past: 'd', first: 'doy' }),
  ...['le di', 'le dimos', 'di', 'dio', 'dimos', 'dieron'],
];
const taken = [
  ...formsOf('sacar'),
  ...formsOf('quitar'),
  ...formsOf('retirar'),
  ...['salio', 'sale', 'salieron', 'salen', 'saliendo', 'salido'],
];
const on = [...formsOf('prender'), ...formsOf('encender', { stressed: 'enciend' }), ...formsOf('arrancar'), ...put];
const off = [...formsOf('apagar'), ...formsOf('parar'), ...formsOf('detener', { past: 'detuv' })];
const made = [...formsOf('hacer', { past: 'hic', participle: 'hech', first: 'hago' }), 'hizo', ...formsOf('preparar')];
const thrown = [...formsOf('tirar'), ...formsOf('botar'), ...formsOf('vaciar')];
const washed = [...formsOf('lavar'), ...formsOf('limpiar'), ...formsOf('enjuagar')];
const put_away = [
  ...formsOf('guardar'),
  ...formsOf('recoger', { first: 'recojo' }),
  ...formsOf('tirar'),
  ...formsOf('meter'),
];
const fans = ['extractor', 'extraccion', 'ventilador', 'abanico', 'campana'];
const runs = [
  'andando',
  'jalando',
  'funcionando',
  'encendido',
  'encendida',
  'prendido',
  'prendida',
  'en marcha',
  'puesto',
];
const stands = ['apagado', 'apagada', 'parado', 'parada'];
const pots = ['mezcla', 'olla', 'tanda'];
const stirrers = ['agitador', 'batidora', 'mezclador'];
const isOf = (whats: readonly string[], how: readonly string[]): string => saidOf(whats, ...how);
const all = (...phrases: readonly string[]): string => phrases.join(', ');

export const spanishActs: SaidWords['acts'] = {
  mix: all(
    saidOf(formsOf('mezclar'), ''),
    saidOf([...made, ...begun], ...pots),
    'mezcla nueva, nueva mezcla, otra mezcla, tanda nueva, nueva tanda, otra tanda',
  ),
  weigh: all(
    saidOf(formsOf('pesar'), ''),
    'bascula marca, bascula da, bascula dice, balanza marca, balanza da, peso de',
  ),
  stir: all(
    saidOf(formsOf('agitar'), ''),
    saidOf(formsOf('batir'), ''),
    saidOf(formsOf('remover', { stressed: 'remuev' }), ''),
    saidOf(formsOf('revolver', { stressed: 'revuelv', participle: 'revuelt' }), ''),
    saidOf([...on, ...begun], ...stirrers),
    saidOf(begun, 'agitar', 'batir', 'revolver', 'remover'),
    saidOf(put, 'agitar', 'batir'),
    isOf(stirrers, runs),
  ),
  stop: all(
    saidOf([...off, ...formsOf('quitar')], ...stirrers),
    saidOf(ended, 'de agitar', 'de batir', 'de revolver', 'de remover'),
    isOf(stirrers, stands),
  ),
  filter: all(
    saidOf(formsOf('filtrar'), ''),
    saidOf(formsOf('tamizar'), ''),
    saidOf(formsOf('cernir', { stressed: 'ciern' }), ''),
    saidOf(
      formsOf('colar', { stressed: 'cuel' }).filter((form) => !['cola', 'colas', 'colada', 'coladas'].includes(form)),
      '',
    ),
    saidOf([...formsOf('pasar'), 'paso'], 'por filtro', 'por colador', 'por malla'),
  ),
  thick: all(
    saidOf(formsOf('espesar'), ''),
    'se puso espesa, puso espesa, puso gruesa, esta gruesa, puso pastosa, pastosa, chiclosa, poniendo espesa, se espeso',
  ),
  gel: all(
    saidOf(formsOf('gelar'), ''),
    saidOf(formsOf('gelificar'), ''),
    saidOf(formsOf('cuajar'), ''),
    saidOf(formsOf('endurecer'), ''),
    'hecha gelatina, hizo gelatina, hecha gel, hizo gel, puso dura, esta dura, se puso dura, dura',
  ),
  empty: all(
    saidOf(
      thrown,
      ...pots,
      ...['resto', 'sobrante', 'sobro', 'sobra', 'lo que sobro', 'lo que quedo', 'lo que quedaba', 'lo que sobraba'],
    ),
    saidOf(formsOf('vaciar'), ''),
    saidOf([...formsOf('acabar'), ...formsOf('terminar'), ...formsOf('gastar')], ...pots),
    'ya no queda mezcla',
  ),
  cover: all(saidOf(formsOf('tapar'), ''), saidOf(put, 'tapa', 'tapadera')),
  uncover: all(saidOf(formsOf('destapar'), ''), saidOf(taken, 'tapa', 'tapadera')),
  catch: all(
    saidOf(formsOf('recuperar'), ''),
    saidOf([...formsOf('recoger', { first: 'recojo' })], ''),
    'escurrio, escurrieron',
  ),
  lid: all(saidOf(formsOf('abrir', { participle: 'abiert' }), ''), 'sin tapa'),
  shut: saidOf(formsOf('cerrar', { stressed: 'cierr' }), ''),
  blanket: all(
    saidOf(put, 'gas', 'argon', 'nitrogeno'),
    saidOf(formsOf('gasear'), ''),
    saidOf(formsOf('inertizar'), ''),
    saidOf(
      [...formsOf('cubrir', { participle: 'cubiert' }), ...formsOf('tapar')],
      'con gas',
      'con argon',
      'con nitrogeno',
    ),
    saidOf(['gas', 'argon', 'nitrogeno'], 'puesto', 'echado', 'encima'),
    'con gas encima, con gas',
  ),
  prestir: all(
    saidOf(formsOf('menear'), ''),
    saidOf(formsOf('sacudir'), ''),
    saidOf(formsOf('agitar'), 'parte a', 'lata', 'bote'),
  ),
  coat: all(
    saidOf(formsOf('pintar'), ''),
    saidOf(formsOf('aplicar'), ''),
    saidOf(formsOf('recubrir', { participle: 'recubiert' }), ''),
    saidOf(formsOf('barnizar'), ''),
    saidOf(put, 'capa', 'mano', 'pasada', 'primera', 'primera capa', 'primera mano', 'pintura', 'recubrimiento'),
    saidOf(
      ['llevan', 'lleva', 'tiene', 'tienen'],
      ...['capa', 'mano', 'su capa', 'su mano', 'primera capa', 'primera mano'],
    ),
  ),
  'touch-up': saidOf(formsOf('retocar'), ''),
  dry: all(
    saidOf(
      formsOf('secar').filter((form) => form !== 'secado'),
      '',
    ),
    'seca, seco, secas, secos, seca al tacto, seco al tacto, secas al tacto, ya no pega, ya no pegan, ya no mancha, no mancha, oreada, oreado, oreadas, oreo, oreados',
  ),
  'cure oven': all(
    saidOf(
      [...put, ...formsOf('entrar')],
      'horno',
      'a horno',
      'al horno',
      'en horno',
      'en el horno',
      'dentro del horno',
    ),
    saidOf(formsOf('hornear'), ''),
    saidOf([...put, ...formsOf('entrar')], 'curar', 'a curar'),
    'al horno, en el horno, en horno, horno',
  ),
  'cure room': all(
    saidOf(formsOf('curar'), 'al aire', 'al ambiente', 'a temperatura ambiente', 'en sala', 'en el taller'),
    saidOf(
      formsOf('dejar'),
      'curando al aire',
      'curar al aire',
      'curando al ambiente',
      'curando a temperatura ambiente',
    ),
  ),
  out: all(
    saidOf(taken, 'del horno', 'de horno', 'horno', 'de curado'),
    saidOf([...formsOf('sacar'), ...formsOf('retirar'), 'salio', 'sale', 'salieron', 'salen'], ''),
    'fuera del horno, afuera del horno, ya salio, fuera',
  ),
  temp: all(
    'sonda marca, sonda da, sonda dice, sonda, termometro marca, pirometro marca, termopar marca, pistola laser marca',
    'temperatura de pieza, temperatura pieza, temperatura de la pieza, temperatura',
  ),
  wet: 'espesor humedo, pelicula humeda, galga, peine, en humedo, eph, humedo, humeda',
  film: 'espesor seco, espesor, espesores, eps, pelicula seca, en seco, medidor de espesor, micras',
  release: all(
    saidOf(formsOf('liberar'), ''),
    saidOf(formsOf('aprobar', { stressed: 'aprueb' }), ''),
    saidOf(put, 'por buena', 'por buenas', 'por bueno', 'visto bueno', 'salida'),
  ),
  hold: all(
    saidOf(formsOf('retener', { past: 'retuv', first: 'retengo' }), ''),
    'reten, retenga, retengan, retenido, retenida, retenidos, retenidas',
    saidOf(formsOf('apartar'), ''),
    saidOf(formsOf('rechazar'), ''),
    saidOf([...put, ...formsOf('dejar')], 'cuarentena', 'en cuarentena', 'en espera', 'retencion', 'en retencion'),
    'en cuarentena, cuarentena, en retencion, retencion',
  ),
  prep: all(
    saidOf(formsOf('lijar'), ''),
    saidOf(formsOf('granallar'), ''),
    saidOf(formsOf('chorrear'), ''),
    saidOf(formsOf('arenar'), ''),
    saidOf(formsOf('sandblastear'), ''),
    saidOf(formsOf('desengrasar'), ''),
  ),
  surface: 'superficie, sustrato, acero, chapa, lamina, metal, temperatura de superficie, temperatura del acero',
  air: 'aire, clima, ambiente, higrometro marca, higrometro, en el taller, en taller, en cabina, en la cabina, aqui, aqui hace, hace aqui, aqui adentro, aqui dentro, estamos a, temperatura ambiente, hace, tenemos',
  'fan on': all(saidOf(on, ...fans), isOf(fans, runs)),
  'fan off': all(saidOf(off, ...fans), isOf(fans, stands)),
  'supplied yes': all(
    'con aire suministrado, con aire de linea, con linea de aire, con suministrado, aire suministrado puesto, aire de linea puesto',
    saidOf(put, 'aire suministrado', 'aire de linea', 'linea de aire'),
  ),
  'supplied no': 'sin aire suministrado, sin aire de linea, sin linea de aire',
  'spray on': saidOf(
    begun,
    'a pintar',
    'pintar',
    'pintar con pistola',
    'a pintar con pistola',
    'pistola',
    'a sopletear',
    'a rociar',
    'a aplicar con pistola',
  ),
  'spray off': saidOf(
    ended,
    'de pintar',
    'de pintar con pistola',
    'con pistola',
    'pistola',
    'de sopletear',
    'de rociar',
    'de aplicar',
  ),
  flush: saidOf(washed, ''),
  'flush gun': all(
    saidOf(washed, 'pistola', 'manguera', 'equipo'),
    saidOf(['pistola'], 'lavada', 'limpia', 'enjuagada'),
  ),
  rags: all(
    saidOf(put_away, 'trapos', 'estopa', 'trapo'),
    'trapos guardados, trapos al bote, trapos en el bote, trapos tirados',
  ),
  close: saidOf([...formsOf('cerrar', { stressed: 'cierr' }), ...ended], 'sesion', 'charla', 'platica'),
  ack: all(saidOf(formsOf('firmar'), ''), 'lei la charla, lei charla, ya lei, enterado de la charla'),
};
