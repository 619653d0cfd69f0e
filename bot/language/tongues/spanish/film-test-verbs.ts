// What a Spanish speaker types of tests on a coated part.

import { verbWords } from '../typed.ts';

export const spanishFilmTestVerbs = {
  'pull-off': verbWords(
    'arrancamiento, tracción, pull-off, ensayo tracción',
    'arrancamiento impulsor-7 7MPa',
    'dolly, sufridera, ensayo, a',
    { glue: 'pegamento adhesivo', 'in-coat': 'cohesivo', 'off-metal': 'metal' },
  ),
  gloss: verbWords('brillo, lectura brillo', 'brillo impulsor-7 85GU', 'unidades, lectura, grados'),
  hardness: verbWords('dureza, lápiz, dureza lápiz', 'dureza impulsor-7 2H', 'lápiz'),
  holidays: verbWords(
    'poros, porosidad, ensayo poros, holidays',
    'poros impulsor-7 0 500V',
    'hay, ensayo, chispa, poros',
  ),
  visual: verbWords('aspecto, visual', 'aspecto impulsor-7 bueno', 'tiene, con, algo', {
    good: 'bueno buen bien',
    specks: 'grumos grumo',
    'orange-peel': 'piel-naranja piel',
    mottle: 'moteado',
    runs: 'descuelgues descuelgue chorreras',
    lines: 'rayas raya',
    bubbles: 'burbujas burbuja',
    craters: 'cráteres cráter',
    'bare-spots': 'calvas calva',
    dirt: 'suciedad sucio',
    blush: 'velado',
  }),
};
