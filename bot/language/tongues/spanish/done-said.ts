// How Spanish tells that something was done and not what is to be done, and what says when. Accents tell the past from an order, so that
// they are kept. Common practice and our own choice, no source.

import type { DoneWords } from '../done-words.ts';

const lead = '(?:(?:ya|pues|y|luego|también|tambien|vale|ok|hola|oye|jefe|jefa|sí|si|solo|después|despues)[,:]? )*';
const pronouns = '(?:(?:me|te|se|le|les|lo|la|los|las|nos) )*';
const noSubject =
  '(?!(?:que|a|hay|por|para|si|no|está|esta|están|estan|debe|deben|puede|tiene|va|vamos|voy)(?![\\p{L}]))';
const subject = `(?:(?:yo|~|nosotros|el|la|los|las|mi|nuestra|todas|todos|ambas|[\\p{L}-]*\\d[\\p{L}\\d-]*|impulsor|mezcla|lata|bote)(?: ${noSubject}[\\p{L}\\d-]+){0,3} )?`;
/** `preparé`, of a verb that ends so anyway; `lavaré` is still to come. */
const past = `(?!(?:café|así|aquí|allí|ahí|qué|sé|sí|mí|té|dé|esté)(?![\\p{L}]))(?:\\p{L}*(?:par|separ|tir|mir|gir|esper)é|(?!\\p{L}*[aei]ré(?![\\p{L}]))\\p{L}{2,}(?:é|ó|í)|\\p{L}{2,}(?:aron|ieron))`;
const irregular =
  '(?:puse|pusimos|puso|pusieron|hice|hicimos|hizo|hicieron|di|dio|dimos|dieron|fui|fue|fuimos|tuve|tuvo|tuvimos|traje|trajo)';
const perfect =
  '(?:he|ha|has|hemos|han|había|habia|habíamos) (?:ya )?(?:\\p{L}+(?:ad|id)[oa]s?|puesto|hecho|abierto|cubierto|recubierto|vuelto|visto|dicho|escrito)';
const told = `(?:${past}|${irregular}|${perfect}|ya \\p{L}+[ai]mos|llevaban?|estaban?(?! (?:por|para|a punto)))(?![\\p{L}])(?! \\p{L}+[aei]r(?:l[aoe]s?)?(?![\\p{L}]))`;

const is = new RegExp(`^${lead}${subject}${pronouns}${told}`, 'u');

export const spanishDone: DoneWords = {
  is,
  // A verb says of whom it is told.
  byItself: is,
  when: 'en cuanto, nada mas, justo antes de, justo despues de, antes de, antes que, despues de, luego de, al poco de, tan pronto como, una vez que, hasta que, hasta, desde que, desde, cuando, mientras, tras, apenas',
  notYet: 'todavia, aun',
  which:
    'el que, la que, los que, las que, el del, la del, los del, las del, el grande, la grande, el chico, la chica, o sea la, o sea el',
  thereupon: 'luego, despues, mas tarde, al rato, enseguida',
};
