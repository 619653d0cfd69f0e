// Spanish, of Spain and of Mexico alike.

import type { Words } from '../english/sentences.ts';
import type { Profile } from '../profile.ts';
import type { Tongue } from '../tongue.ts';
import { spanishCountries } from './profiles.ts';
import { spanishIn } from './sentences.ts';
import { spanishTyped } from './typed.ts';

/** One catalogue a country, made when it is first asked for. */
const made = new Map<Profile['locale'], Words>();

export const spanishTongue: Tongue = {
  code: 'es',
  name: 'Español',
  countries: spanishCountries,
  words: ({ locale }) => {
    const words = made.get(locale) ?? spanishIn(locale);
    made.set(locale, words);
    return words;
  },
  typed: spanishTyped,
};
