// Spanish, of Spain and of Mexico alike.

import type { Tongue } from '../tongue.ts';
import { spanishCountries } from './profiles.ts';
import { spanish } from './sentences.ts';
import { spanishTyped } from './typed.ts';

export const spanishTongue: Tongue = {
  code: 'es',
  countries: spanishCountries,
  words: () => spanish,
  typed: spanishTyped,
};
