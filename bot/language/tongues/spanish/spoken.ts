// The terms as one country says them, with the articles that they want.

import type { Profile } from '../profile.ts';
import { type Concept, type Noun, nounIn } from '../term.ts';
import { spanishTerms } from './terms.ts';

export interface Spoken {
  readonly locale: Profile['locale'];
  readonly one: (concept: Concept) => string;
  readonly many: (concept: Concept) => string;
  /** `el equipo`, `la cuadrilla`. */
  readonly the: (concept: Concept) => string;
  readonly theMany: (concept: Concept) => string;
  /** `del equipo`, `de la cuadrilla`. */
  readonly ofThe: (concept: Concept) => string;
  /** `al encargado`, `a la cuadrilla`. */
  readonly toThe: (concept: Concept) => string;
  readonly a: (concept: Concept) => string;
  /** `este equipo`, `esta cuadrilla`. */
  readonly this: (concept: Concept) => string;
  /** What ends otherwise with its gender: `ninguno` or `ninguna`. */
  readonly by: (concept: Concept, masculine: string, feminine: string) => string;
}

export function spokenIn(locale: Profile['locale']): Spoken {
  const noun = (concept: Concept): Noun => nounIn(spanishTerms[concept], locale);
  const by = (concept: Concept, masculine: string, feminine: string) =>
    noun(concept).gender === 'f' ? feminine : masculine;
  const before = (concept: Concept, masculine: string, feminine: string) =>
    `${by(concept, masculine, feminine)} ${noun(concept).one}`;
  return {
    locale,
    one: (concept) => noun(concept).one,
    many: (concept) => noun(concept).many,
    the: (concept) => before(concept, 'el', 'la'),
    theMany: (concept) => `${by(concept, 'los', 'las')} ${noun(concept).many}`,
    ofThe: (concept) => before(concept, 'del', 'de la'),
    toThe: (concept) => before(concept, 'al', 'a la'),
    a: (concept) => before(concept, 'un', 'una'),
    this: (concept) => before(concept, 'este', 'esta'),
    by,
  };
}
