// How Spanish speakers put right what they have just said, without accents and marks.

import type { SaidOtherwise } from '../english/said-otherwise.ts';

const listed = (words: string): readonly string[] => words.split(', ');

export const spanishSaidOtherwise: SaidOtherwise = {
  takesBack: listed(
    'borralo, borrala, borra eso, borra lo ultimo, quitalo, quitala, quita eso, cancelalo, cancela eso, anulalo, anula eso, deshazlo, deshaz eso, olvidalo, olvida eso',
  ),
  opens: listed(
    'no, perdon, perdona, disculpa, me equivoque, equivoque, error, quise decir, queria decir, digo, corrijo, correccion, era, eran, fue, eso fue, eso era, mas bien, mejor dicho, en realidad, ponle, que sea, que sean',
  ),
  goesOn: listed('es, son, con'),
  nots: listed('no, en vez de, y no, sino'),
  rounds: listed('es, era, con, a, el, la, numero'),
};
