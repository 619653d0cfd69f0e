// How Spanish speakers put right what they have just said, without accents and marks.

import type { SaidOtherwise } from '../english/said-otherwise.ts';

const listed = (words: string): readonly string[] => words.split(', ');

const each = (first: string, then: string): readonly string[] =>
  listed(first).flatMap((one) => listed(then).map((other) => `${one}${other}`));

const lastSaid =
  'lo, la, le, selo, sela,  eso,  esa,  ese,  esto,  lo ultimo,  la ultima,  el ultimo,  lo anterior,  la anterior,  el anterior,  lo que dije,  lo que puse,  esa anotacion,  la ultima anotacion,  esa linea,  lo de antes,  la ultima linea';

export const spanishSaidOtherwise: SaidOtherwise = {
  takesBack: [
    ...each(
      'borra, borre, quita, quite, cancela, cancele, anula, anule, elimina, elimine, olvida, ignora, tacha',
      lastSaid,
    ),
    ...each('borrar, quitar, cancelar, anular, eliminar, deshacer', lastSaid),
    ...listed('deshazlo, deshazla, deshaz eso, deshaz lo ultimo, deshagalo, echa eso atras, regresa eso, borrame eso'),
    ...listed('quitame eso, borramelo, quitamelo, dejalo sin efecto, eso no vale, no cuentes eso'),
  ],
  wrongs: listed(
    'me equivoque, equivoque, me he equivocado, me he liado, me lie, me confundi, me he confundido, error, error mio, fallo mio, culpa mia, ups, uy, huy, chin, chispas, la regue, la cague, mal, esta mal, eso esta mal, eso estuvo mal, pieza equivocada, lote equivocado, mezcla equivocada, numero equivocado, se me fue el dedo, se me fue, me baile, me baile las cifras, mal puesto, dedazo, olvidalo, dejalo, nada nada, no es esa, no era esa',
  ),
  opens: listed(
    'no, rectifico, rectificacion, correccion, corrijo, me corrijo, perdon, perdona, disculpa, disculpe, perdone, quise decir, queria decir, queria poner, quise poner, queria escribir, quise escribir, debi decir, debi poner, debi escribir, tenia que haber dicho, tendria que haber dicho, lo que quise decir es, digo, dije, he dicho, corrijo, correccion, corrige, era, eran, fue, fueron, ha sido, han sido, eso fue, eso era, esa era, ese era, esas eran, esos eran, esa fue, ese fue, esto era, esta era, este era, seria, serian, me refiero a, me referia a, lo que queria decir era, mas bien, mejor dicho, en realidad, ponle, pon, ponga, pongale, que sea, que sean, cambialo a, cambiala a, cambia a, cambia eso a, cambielo a, dejalo en, espera, esperate, espere, esperen, un momento, oye, a ver, que diga, o sea, es decir, va de nuevo, use, usamos, lo hizo, la hizo, la verdad es que, no no, tenia que ser, tendria que ser, debia ser, deberia ser, son, marcaba, marca',
  ),
  goesOn: listed('es, son, con, en, que, la de, el de, mas bien, como, solo, nada mas, de, fue, era, eran, fueron'),
  closes: listed(
    'me he liado, me lie, me he equivocado, me equivoque, me he confundido, me confundi, perdon, perdona, disculpa, disculpen, disculpe, error mio, fallo mio, culpa mia, por favor, porfa, digo, quise decir, se me fue el dedo, se me fue, baile de cifras, me baile las cifras, lo hizo, la hizo, en vez de eso, cuando acabe, cuando termine, dedazo, que diga',
  ),
  nots: listed(
    'no, en vez de, en lugar de, y no, no era, no fue, no es, no eran, no fueron, no son, no use, no usamos, no lo hizo, no la hizo',
  ),
  instead: listed('sino, era, eran, fue, fueron, es, son, use, usamos, mas bien, sino que era'),
  explains: listed(
    'que, porque, sigue, siguen, estaba, estaban, tenia, todavia, aun, era, fue, esta, no, ya que, pues, solo, me, la, el',
  ),
  swaps: listed(
    'al reves, del reves, justo al reves, es al reves, al contrario, lo contrario, a la inversa, viceversa, cambiados, cambiadas, cambialos, cambialas, intercambiados, intercambiadas, invertidos, invertidas, inviertelos, volteados, volteadas, voltealos, voltealas, cruzados, cruzadas, los cruce, los cambie, los baile',
  ),
  beforeLetter: listed(
    'de, de la, de la parte, del, parte, la parte, la, el, el componente, de parte, componente, y, y de',
  ),
  besides: listed('tambien, otra, otro, ademas'),
  midLine: listed(
    'no miento, miento, digo, no digo, quise decir, quiero decir, mejor dicho, me corrijo, corrijo, rectifico, no perdon, perdon no, no espera, espera no, no espere, o sea no, no no, ay no, uy no, no era, no mejor, no mentira, mentira',
  ),
  midLineMarked: listed('no, perdon, perdone, perdona, espera, espere, disculpa, mejor'),
  setsRight: listed('en realidad, realmente, en verdad, de verdad, de hecho'),
  rounds: listed(
    'aqui, te, le, dije, es, era, eran, fueron, son, marcaba, con, a, el, la, los, las, al, numero, hay, tengo, tenemos, con, de, del, en, fue, pues, eh, bueno, si, ok, ahi, mira, pon, ponle, ponme, que, un, una, ya, esta, estan, ahora, quedo, por, favor, porfa, hombre, mujer, jefe, jefa, wey, guey, compa, tio, tia, obvio, claro, nomas, listo, gracias, perdon, fijate, y',
  ),
  agrees: listed(
    'si, sip, simon, sale, dale, dele, correcto, exacto, exactamente, asi es, eso, eso es, eso mero, esa, ese, esa mera, claro, claro que si, venga, vale, va, de acuerdo, hazlo, adelante, andale, orale, anda, afirmativo, confirmo, esta bien, perfecto, efectivamente',
  ),
};
