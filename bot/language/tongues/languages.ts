// Every word that is read, by language and country. A person whose language is not here is told in English.

import type { UnitSystem } from '../../../core/crew/unit-system.ts';
import { english, type Words } from './english/sentences.ts';
import type { Profile } from './profile.ts';
import { profileOf } from './profiles.ts';
import { spanish } from './spanish/sentences.ts';

export type { Words };

const catalogues: Readonly<Record<Profile['locale'], Words>> = {
  'en-GB': english,
  'en-US': english,
  'es-ES': spanish,
  'es-MX': spanish,
  'es-US': spanish,
};

export function wordsIn(language: string, units: UnitSystem = 'metric'): Words {
  return catalogues[profileOf(language, units).locale];
}
