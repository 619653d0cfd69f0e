// What a Spanish speaker asks with: masks, hazards, help; and the lines that a question in words about how things stand comes to.

import { verbWords } from '../typed.ts';
import { helpTopics } from './help-topics.ts';
import { spanishPracticeVerbs } from './practice.ts';

export const spanishAskedVerbs = {
  'what-is': verbWords(
    'qué es, qué son, qué significa, qué quiere, define, definir, definición, significado, explica',
    'qué es el tiempo de oreo',
    'el, la, los, las, un, una, de, del, decir, lo',
  ),
  why: verbWords(
    'por qué, porqué, de dónde',
    'por qué el punto de rocío',
    'es, eso, esto, está, la, las, el, los, a, sale, salen, dice, tan, tanto, tarde, pronto, de, un, una, y, pero, entonces, oye',
  ),
  cartridge: verbWords(
    'cambio filtro, cambio filtros, cambiar filtro, cambiar filtros',
    'cambio de filtro tolueno 40ppm 60%',
    'trabajo, humedad',
  ),
  mask: verbWords('máscara, mascarilla, respirador, qué máscara, qué mascarilla', 'máscara media filtro'),
  hazards: verbWords('peligros, riesgos, peligro', 'peligros inmersión', '', { mix: 'mezclar mezcla' }),
  help: verbWords('ayuda, ayúdame, comandos, hola', 'ayuda mezclar', '', helpTopics),
  'what-now': verbWords('siguiente-paso, qué hago, qué toca, y ahora, ahora qué, qué sigue', 'qué toca'),
  ...spanishPracticeVerbs,
  'can-i': verbWords('se-puede', 'se-puede aplicar impulsor-7'),
  'how-long': verbWords('cuánto-falta', 'cuánto-falta impulsor-7'),
  'who-did': verbWords('quién-fue', 'quién-fue impulsor-7'),
  'where-is': verbWords('dónde-está', 'dónde-está impulsor-7'),
  'how-hot': verbWords('a-cuánto', 'a-cuánto impulsor-7'),
  'how-much': verbWords('cuánto-queda', 'cuánto-queda mezcla 1'),
  'to-do': verbWords('por-hacer', 'por-hacer impulsor-7'),
  'what-late': verbWords('con-retraso', 'con-retraso'),
  'went-wrong': verbWords('qué-falló', 'qué-falló'),
  'at-risk': verbWords('en-riesgo', 'en-riesgo'),
  'how-stands': verbWords('cómo-está', 'cómo-está coats impulsor-7'),
};
