// A word has one meaning: what is said of one thing is never read as another.

import { describe, expect, it } from 'vitest';
import { meaningOf } from '../../../bot/language/hearing.ts';
import { englishTerms } from '../../../bot/language/tongues/english/terms.ts';
import type { Profile } from '../../../bot/language/tongues/profile.ts';
import { spokenIn } from '../../../bot/language/tongues/spanish/spoken.ts';
import { spanishTerms } from '../../../bot/language/tongues/spanish/terms.ts';
import { type Concept, concepts, nounIn } from '../../../bot/language/tongues/term.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { withoutAccents } from '../../../bot/language/typed/without-accents.ts';

const locales: readonly Profile['locale'][] = ['es-ES', 'es-MX', 'es-US'];
const both = { englishTerms, spanishTerms };
const saidOf = (concept: Concept) => locales.map((locale) => nounIn(spanishTerms[concept], locale));

describe('a word of the trade', () => {
  it.each(Object.entries(both))('given %s in any country, then no two concepts are said alike', (_, terms) => {
    for (const locale of [...locales, 'en-GB', 'en-US'] as const) {
      const said = concepts.map((concept) => nounIn(terms[concept], locale).one);
      expect(new Set(said).size).toBe(concepts.length);
    }
  });

  it.each(concepts)('given the Spanish noun of %s, then it is not read as something else', (concept) => {
    for (const { one } of saidOf(concept)) {
      const word = withoutAccents(one.toLowerCase());
      // Spraying is a way as well, and so is read by its root.
      expect([word, concept, concept.replace(/ing$/, '')]).toContain(meaningOf(word, shipped.every));
    }
  });

  it.each(concepts)('given %s, then it has a gender in Spanish, and a source in both', (concept) => {
    for (const noun of saidOf(concept)) expect(noun.gender).toMatch(/^[fm]$/);
    for (const terms of Object.values(both)) expect(terms[concept].source).not.toBe('');
  });
});

describe('an article', () => {
  it('goes by the gender of what the country says', () => {
    const [spain, mexico] = [spokenIn('es-ES'), spokenIn('es-MX')];
    expect([spain.the('crew'), spain.ofThe('crew'), spain.this('crew')]).toEqual([
      'el equipo',
      'del equipo',
      'este equipo',
    ]);
    expect([mexico.the('crew'), mexico.ofThe('crew'), mexico.this('crew')]).toEqual([
      'la cuadrilla',
      'de la cuadrilla',
      'esta cuadrilla',
    ]);
    expect([spain.toThe('lead'), mexico.a('handover'), spain.theMany('lead')]).toEqual([
      'al encargado',
      'una entrega de turno',
      'los encargados',
    ]);
  });
});
