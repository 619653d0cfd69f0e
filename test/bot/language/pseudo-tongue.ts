// A third tongue, made from the English folder: every sentence and every typed word in other letters and about 40 % longer. What
// it does not say in those letters is said by no tongue's folder.

import { linesShownIn } from '../../../bot/language/line-shown.ts';
import { englishTongue } from '../../../bot/language/tongues/english/tongue.ts';
import type { Tongue } from '../../../bot/language/tongues/tongue.ts';
import type { Words } from '../../../bot/language/tongues/tongues.ts';
import type { Typed, VerbWords } from '../../../bot/language/tongues/typed.ts';

/** None of them is a letter with its accent: a thumb that leaves accents out does not come back to English. */
const letters: Readonly<Record<string, string>> = {
  ...{ a: 'ɐɐ', e: 'ɇɇ', i: 'ɨɨ', o: 'øø', u: 'ʉʉ', y: 'ɏ', d: 'đ', h: 'ħ', l: 'ł', t: 'ŧ' },
  ...{ A: 'ⱯⱯ', E: 'ɆɆ', I: 'ƗƗ', O: 'ØØ', U: 'ɄɄ', Y: 'Ɏ', D: 'Đ', H: 'Ħ', L: 'Ł', T: 'Ŧ' },
};

/** Left alone: placeholders of platforms, and codes that are no words. */
export const inPseudo = (text: string): string =>
  text.replace(/<[^<>]*>|[A-Za-z]/g, (found) => letters[found] ?? found);

function deep(value: unknown): unknown {
  if (typeof value === 'string') return inPseudo(value);
  if (Array.isArray(value)) return value.map(deep);
  if (typeof value === 'function') return (...given: unknown[]) => deep(Reflect.apply(value, undefined, given));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, deep(each)]));
}

const english = englishTongue.typed;

const wordsOf = (all: readonly string[]): ReadonlySet<string> => new Set(all.flatMap((words) => words.split(' ')));
const verbWords = wordsOf(Object.values(english.verbs).flatMap(({ words }) => words));
/** What may stand behind the verb; names, figures and units stay. */
const otherWords = wordsOf([
  ...Object.entries(english.meanings).flat(),
  ...Object.entries(english.terms).flatMap(([concept, { typed }]) => [concept, typed]),
  ...Object.values(english.methods).map(({ typed }) => typed),
]);
export const typedInPseudo = (line: string): string =>
  line
    .split(' ')
    .map((word, i) => (otherWords.has(word) || (i < 3 && verbWords.has(word)) ? inPseudo(word) : word))
    .join(' ');

const verb = ({ words, example, ignores, means }: VerbWords): VerbWords => ({
  words: words.map(inPseudo),
  example: typedInPseudo(example),
  ignores: ignores.map(inPseudo),
  means: Object.fromEntries(Object.entries(means).map(([meaning, words]) => [meaning, inPseudo(words)])),
});
const mapped = <Value, Made>(table: Readonly<Record<string, Value>>, make: (value: Value, key: string) => Made) =>
  Object.fromEntries(Object.entries(table).map(([key, value]) => [key, make(value, key)]));

const verbs = mapped(english.verbs, verb) as Typed['verbs'];
const typed: Typed = {
  ...english,
  verbs,
  openings: english.openings.map((opening) => ({ ...opening, words: inPseudo(opening.words) })),
  meanings: mapped(english.meanings, (words, key) => `${inPseudo(key)} ${inPseudo(words)}`) as Typed['meanings'],
  terms: mapped(english.terms, (term, key) => ({
    ...term,
    typed: `${inPseudo(key)} ${inPseudo(term.typed)}`,
  })) as Typed['terms'],
  methods: mapped(english.methods, (row) => ({
    ...row,
    name: inPseudo(row.name),
    typed: inPseudo(row.typed),
  })) as Typed['methods'],
  units: mapped(english.units, () => '') as Typed['units'],
  helpGroups: mapped(english.helpGroups, inPseudo) as Typed['helpGroups'],
  languages: { fi: 'pseudo' },
  cries: mapped(english.cries, inPseudo) as Typed['cries'],
  saidOtherwise: deep(english.saidOtherwise) as Typed['saidOtherwise'],
  labels: deep(english.labels) as Typed['labels'],
  offered: mapped(english.meanings, (_, key) => inPseudo(key)),
};

const [country] = englishTongue.countries.all;
if (country === undefined) throw new Error('English has no country');
// Finnish days and months, so that no English one passes for a figure.
const finland = { ...country, locale: 'fi-FI', name: 'Ꝑ' };

export const pseudoTongue: Tongue = {
  code: 'fi',
  name: 'Ꝑ',
  countries: { byUnits: { metric: finland, us: finland }, all: [finland] },
  words: (profile) => {
    const words = deep(englishTongue.words(profile)) as Words;
    return {
      ...words,
      lineShown: linesShownIn(typed),
      typed: {
        ...words.typed,
        words: (name) => verbs[name].words,
        example: (name) => inPseudo(englishTongue.typed.verbs[name].example),
      },
    };
  },
  typed,
};
