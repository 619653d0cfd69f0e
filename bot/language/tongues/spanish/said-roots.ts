// The words of which Spanish phrases for acts are made: verbs in every form, and what they are said of. The words of Spain’s shops and of
// those in America stand side by side.

import { formsOf, saidOf } from './conjugated.ts';

export const all = (...phrases: readonly string[]): string => phrases.join(', ');
/** `lavé la pistola` and `la pistola lavada`. */
export const inEitherOrder = (done: readonly string[], things: readonly string[]): string =>
  all(saidOf(done, ...things), saidOf(things, ...done));
export const isOf = (whats: readonly string[], how: readonly string[]): string => saidOf(whats, ...how);
export const without = (forms: readonly string[], ...left: readonly string[]): readonly string[] =>
  forms.filter((form) => !left.includes(form));

export const begun = [
  ...formsOf('empezar', { stressed: 'empiez' }),
  ...formsOf('comenzar', { stressed: 'comienz' }),
  ...formsOf('arrancar'),
  ...formsOf('iniciar'),
];
export const ended = [...formsOf('terminar'), ...formsOf('acabar'), ...formsOf('dejar'), ...formsOf('parar')];
export const given = [...formsOf('dar', { past: 'd', first: 'doy' }), 'di', 'dio', 'dimos', 'dieron', 'dado'];
export const put = [
  ...formsOf('echar'),
  ...formsOf('poner', { past: 'pus', participle: 'puest', first: 'pongo' }),
  ...['pon', 'ponga', 'pongan'],
  ...formsOf('meter'),
  ...formsOf('colocar'),
  ...given,
];
export const taken = [
  ...formsOf('sacar'),
  ...formsOf('quitar'),
  ...formsOf('retirar'),
  ...formsOf('jalar'),
  ...formsOf('levantar'),
  ...['salio', 'sale', 'salieron', 'salen', 'saliendo', 'salido'],
];
export const outside = [
  ...[...formsOf('sacar'), ...formsOf('retirar'), ...formsOf('jalar')],
  ...['salio', 'sale', 'salieron', 'salen', 'salido', 'ha salido', 'han salido', 'ya salio'],
];
export const switched = [
  ...formsOf('prender'),
  ...formsOf('encender', { stressed: 'enciend' }),
  ...formsOf('arrancar'),
  ...formsOf('conectar'),
  ...formsOf('enchufar'),
];
export const on = [...switched, ...put];
export const off = [
  ...formsOf('apagar'),
  ...formsOf('parar'),
  ...formsOf('detener', { past: 'detuv' }),
  ...formsOf('desconectar'),
  ...formsOf('desenchufar'),
  ...formsOf('cortar'),
];
export const made = [
  ...formsOf('hacer', { past: 'hic', participle: 'hech', first: 'hago' }),
  'hizo',
  ...formsOf('preparar'),
  ...formsOf('armar'),
];
export const thrown = [
  ...formsOf('tirar'),
  ...formsOf('botar'),
  ...formsOf('vaciar'),
  ...formsOf('desechar'),
  ...formsOf('echar'),
];
export const usedUp = [
  ...without(formsOf('acabar'), 'acabo', 'acabamos', 'acaba', 'acaban'),
  ...['se acabo', 'acabada', 'acabado'],
  ...formsOf('terminar'),
  ...formsOf('gastar'),
  ...formsOf('agotar'),
];
export const washed = [
  ...formsOf('lavar'),
  ...formsOf('limpiar'),
  ...formsOf('enjuagar'),
  ...formsOf('aclarar'),
  ...formsOf('purgar'),
  ...['limpio', 'limpia', 'limpios', 'limpias'],
];
/** `le corrí solvente a la pistola`. */
export const rinsed = saidOf(
  [...put, ...formsOf('correr'), ...formsOf('pasar'), 'paso', ...formsOf('tirar')],
  ...['solvente', 'thinner', 'tiner', 'disolvente', 'diluyente'],
).split(', ');
export const put_away = [
  ...formsOf('guardar'),
  ...formsOf('recoger', { first: 'recojo' }),
  ...formsOf('tirar'),
  ...formsOf('meter'),
  ...formsOf('echar'),
  ...formsOf('poner', { past: 'pus', participle: 'puest', first: 'pongo' }),
  ...formsOf('botar'),
];

export const lids = ['tapa', 'tapas', 'tapadera', 'tapon'];
export const gases = ['gas', 'argon', 'nitrogeno', 'gas inerte'];
export const guns = ['pistola', 'pistolas', 'manguera', 'equipo', 'soplete'];
export const brushes = ['brocha', 'brochas', 'pincel', 'pinceles'];
export const rollers = ['rodillo', 'rodillos', 'roller'];
export const rags = ['trapo', 'trapos', 'estopa', 'estopas', 'trapos sucios', 'trapos usados', 'panos', 'toallas'];
const vessels = ['bidon', 'bote', 'lata', 'tambo', 'cubo', 'cubeta', 'balde', 'contenedor', 'agua', 'tinaco'];
export const bins = vessels.flatMap((bin) => [`a ${bin}`, `al ${bin}`, `en ${bin}`, `a la ${bin}`]);
export const waste = [
  ...['bidon', 'tambo', 'cubo', 'bote'].flatMap((bin) => [`al ${bin} de residuos`, `a ${bin} de residuos`]),
  ...['a residuos', 'a la basura', 'a basura', 'al desecho', 'a desecho', 'al tambo'],
];
export const fans = [
  ...['extractor', 'extractores', 'extraccion', 'ventilador', 'ventiladores', 'ventilacion', 'abanico', 'abanicos'],
  ...['campana', 'aspiracion', 'turbina'],
];
export const stirrers = [
  ...['agitador', 'batidora', 'batidor', 'mezclador', 'mezcladora', 'paletas', 'aspas', 'taladro', 'revolvedora'],
];
export const runs = [
  ...['andando', 'jalando', 'funcionando', 'encendido', 'encendida', 'prendido', 'prendida', 'en marcha', 'puesto'],
  ...['puesta', 'girando', 'dando vueltas', 'corriendo', 'trabajando', 'conectado', 'conectada', 'dandole', 'a tope'],
];
/** Of what draws air. */
export const draws = ['tira', 'tirando', 'aspira', 'aspirando', 'jala', 'chupa', 'chupando', 'corre', 'sopla', 'anda'];
export const stands = [
  ...['apagado', 'apagada', 'parado', 'parada', 'desconectado', 'desconectada', 'fuera de servicio', 'descompuesto'],
  ...['se paro', 'se apago', 'se murio', 'se detuvo', 'se descompuso', 'quieto', 'quieta', 'detenido', 'detenida'],
];
export const pots = ['mezcla', 'olla', 'tanda', 'batch', 'lote', 'cubeta', 'carga'];
export const pistols = ['con pistola', 'a pistola', 'pistola', 'con soplete', 'soplete'];
/** What is done with a gun, in the form that stands behind `empiezo a` and `terminé de`. */
export const spraying = [
  ...['pintar', 'pistolear', 'sopletear', 'rociar', 'pulverizar', 'atomizar', 'disparar', 'tirar', 'esprayar'],
  ...['pintar con pistola', 'aplicar con pistola', 'tirar pistola', 'tirar con pistola', 'aplicar', 'espreyar'],
];
export const sticks = ['palo', 'palito', 'paleta', 'espatula', 'vara', 'varilla', 'agitador de mano'];
export const ovens = ['horno', 'estufa'];
