// Which locales there are, and which is meant where a language alone is named: then the units tell of the country.

import type { UnitSystem } from '../../../core/crew/unit-system.ts';
import { ownValue } from '../../../core/own-key.ts';
import * as english from './english/profiles.ts';
import type { Profile } from './profile.ts';
import * as spanish from './spanish/profiles.ts';

interface Countries {
  readonly byUnits: Readonly<Record<UnitSystem, Profile>>;
  readonly all: readonly Profile[];
}

const countries: Readonly<Record<string, Countries>> = {
  en: { byUnits: { metric: english.britain, us: english.unitedStates }, all: [english.britain, english.unitedStates] },
  es: {
    byUnits: { metric: spanish.spain, us: spanish.unitedStates },
    all: [spanish.spain, spanish.mexico, spanish.unitedStates],
  },
};

const named: ReadonlyMap<string, Profile> = new Map(
  Object.values(countries).flatMap(({ all }) => all.map((profile) => [profile.locale.toLowerCase(), profile] as const)),
);

/** `es` of `es-US`; what is no language here, in small letters. */
export const tongueOf = (language: string): string => language.toLowerCase().split('-')[0] ?? '';

/** What may be set: a language, or that of one country. */
export const languages: readonly string[] = Object.entries(countries).flatMap(([tongue, { all }]) => [
  tongue,
  ...all.map(({ locale }) => locale),
]);

/** As it is filed, whatever letters were typed; `undefined` for a language that is not here. */
export function languageTyped(word: string): string | undefined {
  const plain = word.toLowerCase().replace('_', '-');
  return languages.find((language) => language.toLowerCase() === plain);
}

export function profileOf(language: string, units: UnitSystem): Profile {
  const { byUnits } = ownValue(countries, tongueOf(language)) ?? { byUnits: undefined };
  return named.get(language.toLowerCase()) ?? byUnits?.[units] ?? english.britain;
}
