// The tongues that a bot speaks and hears: made where the bot is put together, and handed to whoever asks.

import type { UnitSystem } from '../../../core/crew/unit-system.ts';
import { type Hearing, hearingOf } from '../hearing.ts';
import type { Words } from './english/sentences.ts';
import { englishTongue } from './english/tongue.ts';
import type { Profile } from './profile.ts';
import { spanishTongue } from './spanish/tongue.ts';
import type { Tongue } from './tongue.ts';

export type { Words };

const typedOf = ({ typed }: Tongue) => typed;

export interface Tongues {
  /** What may be set, a language or that of one country, with what it calls itself. */
  readonly languages: ReadonlyMap<string, string>;
  /** As it is filed, whatever letters were typed; `undefined` for a language that is not here. */
  readonly languageTyped: (word: string) => string | undefined;
  readonly profileOf: (language: string, units: UnitSystem) => Profile;
  readonly wordsIn: (language: string, units?: UnitSystem) => Words;
  /** What somebody of these languages may type; English always. */
  readonly hearingIn: (...languages: readonly string[]) => Hearing;
  /** What anybody may type: what a name may be does not hang on who speaks. */
  readonly every: Hearing;
}

/** A person whose language is not here is told in the first one. */
export function tonguesOf(first: Tongue, ...others: readonly Tongue[]): Tongues {
  const all = [first, ...others];
  const languages = new Map(
    all.flatMap(({ code, name, countries }) => [
      [code, name] as const,
      ...countries.all.map((country) => [country.locale, country.name] as const),
    ]),
  );
  const codes = [...languages.keys()];
  const tongueIn = (language: string): Tongue =>
    all.find(({ code }) => code === language.toLowerCase().split('-')[0]) ?? first;
  const profileOf = (language: string, units: UnitSystem): Profile => {
    const { countries } = tongueIn(language);
    const named = countries.all.find(({ locale }) => locale.toLowerCase() === language.toLowerCase());
    return named ?? countries.byUnits[units];
  };
  const every = hearingOf(all.map(typedOf), codes);
  const hearings = new Map<string, Hearing>();
  return {
    languages,
    languageTyped: (word) => {
      const plain = word.toLowerCase().replace('_', '-');
      return codes.find((language) => language.toLowerCase() === plain);
    },
    profileOf,
    wordsIn: (language, units = 'metric') => tongueIn(language).words(profileOf(language, units)),
    hearingIn: (...spoken) => {
      const heard = [first, ...others.filter((tongue) => spoken.some((language) => tongueIn(language) === tongue))];
      const key = heard.map(({ code }) => code).join(' ');
      const hearing = hearings.get(key) ?? hearingOf(heard.map(typedOf), codes, every);
      hearings.set(key, hearing);
      return hearing;
    },
    every,
  };
}

/** One folder each. */
export const shipped: Tongues = tonguesOf(englishTongue, spanishTongue);
