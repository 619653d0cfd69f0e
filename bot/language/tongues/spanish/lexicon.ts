// The small words of a Spanish line, put into the one spelling that the readers know: `ya` is `already`, `horno` is `oven`.
// Verbs are not here, they have their rows. What a person typed stays in the token's text.

import { type Method, methods } from '../../../../core/methods.ts';
import { concepts } from '../term.ts';
import { spanishMethods } from './methods.ts';
import { spanishTerms } from './terms.ts';

const beyondPlain = /[^\x20-\x7e]/;

/** Without accents: `día` is `dia`, `año` is `ano`. */
export function withoutAccents(word: string): string {
  return beyondPlain.test(word) ? word.normalize('NFD').replace(/\p{M}/gu, '') : word;
}

const meanings: readonly (readonly [string, string])[] = [
  // When and how.
  ['already', 'ya'],
  ['permit', 'permiso autoriza autorizado'],
  ['yesterday', 'ayer'],
  ['today', 'hoy'],
  ['noon', 'mediodia'],
  ['midnight', 'medianoche'],
  ['until', 'hasta'],
  ['ready', 'lista listo'],
  ['ago', 'atras'],
  // What rounds a sentence off.
  ['in', 'en'],
  ['of', 'de del parte'],
  ['with', 'con'],
  ['for', 'para por'],
  ['and', 'y'],
  ['to', 'al'],
  ['the', 'el la los las un una se'],
  ['please', 'favor porfa porfavor gracias'],
  ['because', 'porque'],
  // Things and places.
  ['all', 'todo todos toda todas'],
  ['both', 'ambas ambos'],
  ['cans', 'botes'],
  ['new', 'nueva nuevo nuevas nuevos'],
  ['parts', 'piezas'],
  ['no', 'num numero'],
  ['shop', 'taller'],
  ['store', 'almacen'],
  ['hall', 'nave'],
  ['vessels', 'recipientes cubos'],
  ['tools', 'herramientas'],
  ['tank', 'tanque cisterna'],
  ['inside', 'dentro adentro'],
  ['touch', 'tacto'],
  ['left', 'sobra sobran sobro resto'],
  ['touch-up', 'retoque retocar retocada retocado'],
  ['lowest', 'minimo'],
  // The terms of the trade.
  ...concepts.map((concept) => [concept, withoutAccents(spanishTerms[concept].typed)] as const),
  // How a coat goes on.
  ...methods.map((method) => [method, spanishMethods[method].typed] as const),
  // Of a can.
  ['exp', 'cad caduca caducidad vence vencimiento'],
  ['argon', 'argon'],
  ['nitrogen', 'nitrogeno'],
  ['whole', 'entera entero completa'],
  ['hand', 'mano'],
  // Of a part.
  ['serial', 'serie'],
  ['metal', 'material'],
  ['max', 'max maximo aguanta soporta'],
  ['grey', 'gris'],
  ['ductile', 'nodular ductil'],
  ['steel', 'acero'],
  ['stainless', 'inoxidable acero-inoxidable'],
  ['cast-iron', 'fundicion'],
  ['iron', 'hierro'],
  ['aluminium', 'aluminio'],
  ['copper', 'cobre'],
  ['brass', 'laton'],
  ['bronze', 'bronce'],
  ['titanium', 'titanio'],
  ['nickel', 'niquel'],
  ['magnesium', 'magnesio'],
  ['galvanised', 'galvanizado'],
  ['mild', 'dulce'],
  ['carbon', 'carbono'],
  ['none', 'nada ninguno'],
  ['softened', 'ablandada ablandado blanda blando'],
  ['through', 'atraviesa pasa'],
  ['double', 'dobles'],
  // Of people and a session.
  ['yes', 'si'],
  ['on', 'encendida encendido prendida prendido entra entro activa empieza empiezo'],
  ['off', 'apagada apagado sale salgo salio inactiva termina termino acaba acabo'],
  ['out', 'fuera afuera'],
  ['stays', 'queda quedan quedo'],
  ['sprays', 'pinta pintan'],
  ['sprayers', 'pintor pintores'],
  ['near', 'cerca'],
  ['attendant', 'vigila vigilante vigia'],
  ['nobody', 'nadie'],
  ['hour', 'hora'],
  ['gun', 'manguera mangueras'],
  ['measured', 'medida medido'],
  ['velocity', 'velocidad'],
  ['brief', 'charla'],
  ['purge', 'purga'],
  ['anonymous', 'anonimo anonima'],
  ['wipe', 'limpiar trapear'],
  ['cleaning', 'limpieza'],
  ['eyes', 'ojos ojo'],
  ['spill', 'derrame'],
  ['fire', 'fuego incendio'],
  ['down', 'caido'],
  ['hot', 'caliente'],
  ['acetone', 'acetona'],
  ['toluene', 'tolueno'],
  ['xylene', 'xileno'],
  ['ethanol', 'etanol'],
  ['methyl-ethyl-ketone', 'metiletilcetona'],
  // Of the past.
  ['last', 'pasada pasado anterior ultima ultimo'],
  ['this', 'esta este'],
  ['week', 'semana'],
  ['month', 'mes'],
  ['year', 'ano'],
  ['from', 'desde'],
  ['date', 'fecha'],
  // Settings.
  ['digest', 'resumen'],
  ['morning', 'manana'],
  ['rate', 'ritmo'],
  ['units', 'unidades'],
  ['metric', 'metrico metrica metricas'],
  ['us', 'eeuu'],
  ['lel', 'lie'],
  ['quiet', 'silencio'],
  ['bell', 'campana'],
  ['emergency', 'emergencia'],
  ['zone', 'zona'],
  ['role', 'puesto'],
  ['language', 'idioma'],
  ['rings', 'avisos'],
  ['thread', 'hilo'],
  ['direct', 'directo'],
  ['call', 'telefono telefonos'],
];

/** Every word with what it means, each as often as it stands in a table. */
export const spanishMeanings: readonly (readonly [string, string])[] = meanings.flatMap(([meaning, words]) =>
  words.split(' ').flatMap((word) => (word === '' ? [] : [[word, meaning] as const])),
);

const byWord: ReadonlyMap<string, string> = new Map(spanishMeanings);
/** For near words: the Spanish ones by the method that they mean. */
export const spanishMethodWords: ReadonlyMap<string, Method> = new Map(
  methods.flatMap((method) =>
    [...byWord].filter(([, meaning]) => meaning === method).map(([word]) => [word, method] as const),
  ),
);

/** `cabina-2` is `booth-2`, whoever typed it: a crew has one booth in two languages. */
const numberedPlace = /^(horno|sala|cabina|taller|almacen|nave)([-_]?\d+)$/;

/** The spelling that the readers know; any other word as it is. */
export function meaningOf(word: string): string {
  const plain = withoutAccents(word);
  const meaning = byWord.get(plain);
  if (meaning !== undefined) return meaning;
  const [, root, number] = numberedPlace.exec(plain) ?? [];
  return root === undefined ? word : `${byWord.get(root) ?? root}${number}`;
}

/** True for a word that would be read as another: no name can be spelt so. */
export function isSpanishWord(word: string): boolean {
  return meaningOf(word) !== word;
}
