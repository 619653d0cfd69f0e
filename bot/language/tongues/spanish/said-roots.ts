// The words of which Spanish phrases for acts are made: verbs in every form, and what they are said of.

import { formsOf, saidOf } from './conjugated.ts';

export const begun = [
  ...formsOf('empezar', { stressed: 'empiez' }),
  ...formsOf('comenzar', { stressed: 'comienz' }),
  ...formsOf('arrancar'),
  ...formsOf('iniciar'),
];
export const ended = [...formsOf('terminar'), ...formsOf('acabar'), ...formsOf('dejar'), ...formsOf('parar')];
export const put = [
  ...formsOf('echar'),
  ...formsOf('poner', { past: 'pus', participle: 'puest', first: 'pongo' }),
  ...['pon', 'ponga', 'pongan'],
  ...formsOf('meter'),
  ...formsOf('dar', { past: 'd', first: 'doy' }),
  ...['le di', 'le dimos', 'di', 'dio', 'dimos', 'dieron'],
];
export const taken = [
  ...formsOf('sacar'),
  ...formsOf('quitar'),
  ...formsOf('retirar'),
  ...formsOf('jalar'),
  ...['salio', 'sale', 'salieron', 'salen', 'saliendo', 'salido'],
];
export const outside = [
  ...[...formsOf('sacar'), ...formsOf('retirar'), ...formsOf('jalar')],
  ...['salio', 'sale', 'salieron', 'salen', 'salido', 'ha salido', 'han salido', 'ya salio'],
];
export const brushes = ['brocha', 'brochas', 'pincel'];
export const on = [
  ...formsOf('prender'),
  ...formsOf('encender', { stressed: 'enciend' }),
  ...formsOf('arrancar'),
  ...put,
];
export const off = [...formsOf('apagar'), ...formsOf('parar'), ...formsOf('detener', { past: 'detuv' })];
export const made = [
  ...formsOf('hacer', { past: 'hic', participle: 'hech', first: 'hago' }),
  'hizo',
  ...formsOf('preparar'),
];
export const thrown = [...formsOf('tirar'), ...formsOf('botar'), ...formsOf('vaciar')];
export const washed = [...formsOf('lavar'), ...formsOf('limpiar'), ...formsOf('enjuagar')];
export const put_away = [
  ...formsOf('guardar'),
  ...formsOf('recoger', { first: 'recojo' }),
  ...formsOf('tirar'),
  ...formsOf('meter'),
];
export const fans = ['extractor', 'extraccion', 'ventilador', 'abanico', 'campana'];
export const runs = [
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
export const stands = ['apagado', 'apagada', 'parado', 'parada'];
export const pots = ['mezcla', 'olla', 'tanda'];
export const stirrers = ['agitador', 'batidora', 'mezclador'];
export const isOf = (whats: readonly string[], how: readonly string[]): string => saidOf(whats, ...how);
export const all = (...phrases: readonly string[]): string => phrases.join(', ');
