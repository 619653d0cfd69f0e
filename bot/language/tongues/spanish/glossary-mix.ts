// What the words round A, B, their pot and their cans mean, in our own words of Spanish.

import type { TermSaid } from '../glossary.ts';

export const spanishGlossaryOfMix = {
  'part-a': {
    means: 'La primera de las dos partes del recubrimiento; aquí, la que la humedad estropea.',
    bot: 'Dice cuánta pesar, pide gas sobre la que queda y lleva la cuenta de cada lata.',
  },
  'part-b': {
    means: 'La segunda parte: en cuanto toca a la A reaccionan y corre la vida de la mezcla.',
    bot: 'Dice cuánta va con la A pesada, y pone en marcha los relojes cuando está dentro.',
  },
  ratio: {
    means: 'Cuánta A va con cuánta B, en peso o en volumen, y cuánto puede desviarse.',
    bot: 'Calcula cuánto se desvía lo pesado, y qué añadir mientras se pueda.',
  },
  batch: {
    means: 'A y B juntas en un recipiente, con su propio número.',
    bot: 'Tiene sus relojes, lotes, capas y mensaje.',
  },
  'pot-life': {
    means: 'Cuánto se puede usar una mezcla desde que A y B se tocan; el calor y una masa grande la acortan.',
    bot: 'La suma sobre las temperaturas leídas y avisa antes de que acabe. Espesa o gelificada acaba, diga lo que diga el reloj.',
  },
  margin: {
    means: 'El último momento para dejar de aplicar y tener tiempo de vaciar y lavar.',
    bot: 'Avisa entonces, antes de que acabe la vida de la mezcla.',
  },
  stirring: {
    means: 'Tener el agitador en marcha hasta que las dos partes sean una; cuanto más frío, más tiempo.',
    bot: 'Cuenta solo los minutos con el agitador en marcha.',
  },
  induction: {
    means: 'Dejar reposar la mezcla ya hecha para que empiece a reaccionar antes de aplicarla.',
    bot: 'Cuenta desde que B toca A, y la vida de la mezcla también la cuenta.',
  },
  vortex: {
    means: 'El embudo que hace el agitador; si es hondo mete aire y humedad.',
    bot: 'Recuerda la velocidad indicada, y acorta la vida de la mezcla si así está escrito.',
  },
  filter: {
    means: 'Una malla fina por la que se pasa la mezcla para que no queden motas.',
    bot: 'Ofrece el paso y dice de qué grado.',
  },
  vessel: {
    means: 'Donde se mezclan A y B.',
    bot: 'Pregunta si su material y tamaño son los permitidos.',
  },
  'pre-stir': {
    means: 'Agitar la parte A en su lata antes de verter: lo posado da una porción falsa.',
    bot: 'Dice cuánto según lo que hay en la lata, y se opone a verter sin ello donde se pide.',
  },
  blanket: {
    means: 'Gas seco, argón o nitrógeno, sobre lo que queda en la lata, para que no le llegue aire húmedo.',
    bot: 'Avisa desde que se quita la tapa hasta que alguien dice que tiene gas encima.',
  },
  headspace: {
    means: 'El espacio de la lata por encima del líquido.',
    bot: 'Calcula cuánto gas lo llena.',
  },
  purge: {
    means: 'Meter gas hasta que ha echado el aire.',
    bot: 'Calcula cuánto corre el gas y qué oxígeno queda; no es un medidor.',
  },
  can: {
    means: 'Un envase de A o de B tal como se compró, con su lote.',
    bot: 'Tiene número, y su peso baja con cada vertido.',
  },
  lot: {
    means: 'El número del fabricante para una producción de A o de B.',
    bot: 'Lleva de cualquier pieza a sus latas, y de un lote a todas sus piezas.',
  },
  caught: {
    means: 'Mezcla que escurre de una capa vertida y se vuelve a usar.',
    bot: 'Pide filtrarla antes de otra pieza.',
  },
  'left-over': {
    means: 'Mezcla que no se usa: puede calentarse sola y es residuo.',
    bot: 'Anota cuánta, y dice cómo guardarla.',
  },
} as const satisfies Readonly<Record<string, TermSaid>>;
