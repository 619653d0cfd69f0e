// How Spanish speakers put right what they have just said, without accents and marks.

import type { SaidOtherwise } from '../english/said-otherwise.ts';

const listed = (words: string): readonly string[] => words.split(', ');

export const spanishSaidOtherwise: SaidOtherwise = {
  takesBack: listed(
    'borralo, borrala, borra eso, borra lo ultimo, quitalo, quitala, quita eso, cancelalo, cancela eso, anulalo, anula eso, deshazlo, deshaz eso, olvidalo, olvida eso',
  ),
  opens: listed(
    'no, perdon, perdona, disculpa, me equivoque, equivoque, error, quise decir, queria decir, digo, corrijo, correccion, era, eran, fue, fueron, ha sido, eso fue, eso era, esa era, ese era, esas eran, esos eran, esa fue, ese fue, esto era, esta era, este era, me he equivocado, me he liado, me lie, me confundi, me he confundido, me refiero a, me referia a, lo que queria decir era, no era, perdone, mas bien, mejor dicho, en realidad, ponle, que sea, que sean',
  ),
  goesOn: listed('es, son, con, en, que, la de, el de'),
  closes: listed(
    'me he liado, me lie, me he equivocado, me equivoque, me he confundido, me confundi, perdon, perdona, disculpa, disculpen, error mio, fallo mio, culpa mia, por favor, porfa',
  ),
  nots: listed('no, en vez de, y no, sino'),
  rounds: listed('es, era, con, a, el, la, numero'),
};
