// English: the tongue that every other one is made after.

import type { Tongue } from '../tongue.ts';
import { englishCountries } from './profiles.ts';
import { english } from './sentences.ts';
import { englishTyped } from './typed.ts';

export const englishTongue: Tongue = {
  code: 'en',
  name: 'English',
  countries: englishCountries,
  words: () => english,
  typed: englishTyped,
};
