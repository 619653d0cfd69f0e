// English: the tongue that every other one is made after.

import type { Tongue } from '../tongue.ts';
import { englishIn } from './by-country.ts';
import { englishCountries } from './profiles.ts';
import { englishTyped } from './typed.ts';

export const englishTongue: Tongue = {
  code: 'en',
  name: 'English',
  countries: englishCountries,
  words: ({ locale }) => englishIn(locale),
  typed: englishTyped,
};
