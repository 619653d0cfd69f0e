// What an English speaker types of tests on a coated part.

import { verbWords } from '../typed.ts';

export const englishFilmTestVerbs = {
  'pull-off': verbWords(
    'pull-off, pull off, pulloff, pull test, dolly, dollies',
    'pull-off impeller-7 7MPa',
    'dolly, test, pulled, adhesion, at, to',
  ),
  gloss: verbWords('gloss, gloss reading, gloss meter', 'gloss impeller-7 85GU', 'units, reading, at, degrees'),
  hardness: verbWords('hardness, pencil, pencil hardness, pencil test', 'hardness impeller-7 2H', 'pencil, hardness'),
  holidays: verbWords(
    'holidays, holiday test, holiday, spark test',
    'holidays impeller-7 0 500V',
    'found, holidays, test, at, spots',
  ),
  visual: verbWords('visual, looked over, look over, visual check', 'visual impeller-7 good', 'like, ok, has, some'),
};
