// How Spanish-speaking crews say their acts, besides the verbs that begin a line, and the words that stand round them.

import type { SaidWords } from '../said-words.ts';

export const spanishSaid: SaidWords = {
  acts: {
    'cure oven': 'al horno, en el horno, en horno, horno, entro al horno',
    out: 'salió del horno, saqué, sacada del horno, fuera del horno',
    dry: 'seca, seco, secas, secos, seca al tacto',
    filter: 'filtré, filtrada, filtrado',
    coat: 'pinté, pintada, pintado, pintadas, pintados, apliqué',
  },
  readings: 'marca, está a, lee, llegó a, da, a',
  light: 'el, la, los, las, un, una, es, está, están, ya, se, lo, le, me, ha, he, hemos, han, quedó, quedaron, al, del',
  fillers:
    'oye, hola, buenas, buenos, días, tardes, por favor, porfa, gracias, ok, vale, bueno, pues, de, del, con, en, y, para, a, mezcla, pieza, piezas, grados, por ciento, humedad',
  denials: 'no, nunca, nadie, ninguna, ninguno, tampoco, sin, todavía no, aún no',
  hedges: 'creo, quizá, quizás, tal vez, a lo mejor, parece, casi, puede que, si, cuando, igual',
  plans: 'voy a, vamos a, va a, luego, mañana, después, hay que, tengo que, quiero, por hacer, habrá que, toca',
  asks: 'quién, cuándo, cómo, cuánto, cuánta, cuántos, cuántas, dónde, por qué, cuál, qué',
  asksFirst: 'se puede, puedo, podemos',
  roughly: 'como, unos, unas, alrededor de, más o menos, aproximadamente',
  pronouns: 'ella, eso, esa, ese',
  ranges: 'a, al, hasta',
  joints: 'y, e, luego',
};
