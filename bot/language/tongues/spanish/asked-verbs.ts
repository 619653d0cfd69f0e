// The lines of questions about how things stand, in Spanish: what a question in words comes to, and what its taps say.

import { verbWords } from '../typed.ts';

export const spanishAskedVerbs = {
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
};
