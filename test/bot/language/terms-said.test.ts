// A term stands once: what a tongue prints for a thing of the trade is its term, never another word that is typed for it, and where
// countries say it otherwise no sentence spells it.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { englishTerms } from '../../../bot/language/tongues/english/terms.ts';
import { spanishTerms } from '../../../bot/language/tongues/spanish/terms.ts';
import { type Concept, concepts, type Term } from '../../../bot/language/tongues/term.ts';

const folders = { english: englishTerms, spanish: spanishTerms };

/** What is typed, not said; and the names of the trade's words themselves. */
const notSentences =
  /\/(?:terms|terms-typed|lexicon|typed|lists|cries|calm|numbers|times|units|line-words|choices|verbs|asked-verbs|said-(?:acts|roots|of-pots|of-parts|of-work)|said-words|said-otherwise|labels|conjugated|methods|spoken|in-america|help-topics|parts-typed|reasons|done-said|topics-asked)\.ts$/;

/** Another word of the trade for the same thing, that a translator might reach for. */
const unsaid: Readonly<Record<keyof typeof folders, Readonly<Partial<Record<Concept, string>>>>> = {
  english: {
    'pot-life': 'potlife, working life, working time',
    'recoat-window': 'overcoat window, recoat interval',
    brief: 'briefing, toolbox talk',
    'data-sheet': 'SDS, MSDS, safety sheet, safety sheets',
    handover: 'hand-over, shift report',
    lead: 'foreman, leader',
    crew: 'team',
    part: 'workpiece, work piece',
    traveller: 'traveler, router, route card',
    'flash-off': 'flash off, flashoff',
    vessel: 'beaker, bucket',
    job: 'work order',
  },
  spanish: {
    'pot-life': 'vida útil, tiempo de vida',
    stirring: 'agitado, batido',
    stirrer: 'batidora, mezclador',
    wall: 'tabique',
    substrate: 'acero base, superficie metálica',
    'data-sheet': 'ficha de seguridad, fichas de seguridad, hoja de seguridad, hojas de seguridad',
    coupon: 'testigo de control, muestra testigo',
    oven: 'estufa, mufla',
    booth: 'caseta',
    lot: 'partida',
    vessel: 'vaso, cubo, cacharro',
    supervisor: 'jefe, jefa',
  },
};

/** Where the letters mean something else, or a line is quoted as it is typed. */
const exceptions: readonly (readonly [path: RegExp, text: RegExp, why: string])[] = [
  [/english\/.*/, /witness/, 'a person who saw somebody read; and a witness coupon, the term with its adjective'],
  [/english\/.*/, /order of the work|Order is free/, 'what comes after what, no job'],
  [/spanish\/(?:chat|slots|settings)\.ts/, /operario/, 'a role: one of the crew, where the term is all of it'],
  [/spanish\/session\.ts/, /un testigo/, 'a person who saw somebody sign'],
  [/spanish\/parts\.ts/, /probeta testigo/, 'the term with its adjective'],
  [/spanish\/.*/, /equipo (?:respiratorio|clasificado|de respiración|estaba en reposo)|usa equipo|Use equipo/, 'gear'],
  [/spanish\/unclear\.ts/, /fijar ficha/, 'a line, as it is typed everywhere'],
  [/spanish\/names\.ts/, /el relevo|relevo NOMBRE|tomar relevo/, 'lines of a country, chosen beside them'],
];

function filesOf(folder: string): readonly string[] {
  const root = join(import.meta.dirname, '../../../bot/language/tongues', folder);
  // What stands in a folder of its own are lines as they are typed.
  return readdirSync(root, { withFileTypes: true })
    .flatMap((file) => (file.isFile() ? [join(root, file.name)] : []))
    .filter((path) => !notSentences.test(path));
}

/** What its strings say, without what is put in. */
function saidIn(path: string): readonly string[] {
  const source = readFileSync(path, 'utf8')
    .replace(/\/\*[\s\S]*?\*\/|(?<![:'"`])\/\/[^\n]*/g, ' ')
    .replace(/^(?:import|export) [^;]*? from '[^']*';/gm, ' ');
  return (source.match(/'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`/g) ?? [])
    .map((literal) => literal.slice(1, -1).replace(/\$\{[^{}]*\}/g, ' … '))
    .filter((text) => !isCode(text));
}

/** A key, not a sentence: a concept, a locale, a code. */
const isCode = (text: string): boolean => /^[a-z]{2}-[A-Z]{2}$/.test(text) || concepts.some((name) => name === text);

const plain = (noun: string): string => noun.replace(/ \([^)]*\)$/, '');

/** Every form of it that may not stand in a sentence. */
function otherWords(
  concept: Concept,
  term: Term,
  terms: Readonly<Record<Concept, Term>>,
  never: string,
): readonly string[] {
  const abroad = Object.values(term.in ?? {}).filter((noun) => noun !== undefined);
  const forms = [term, ...abroad].flatMap(({ one, many }) => [plain(one), plain(many)]);
  const ofOthers = concepts
    .filter((other) => other !== concept)
    .flatMap((other) => [terms[other].one, terms[other].many]);
  const synonyms = term.typed.split(' ').filter((word) => word !== '' && !forms.some((form) => form.includes(word)));
  return [...(abroad.length > 0 ? forms : []), ...synonyms, ...never.split(', ')].filter(
    (word) => word !== '' && !ofOthers.includes(word),
  );
}

const wholeWord = (word: string): RegExp => new RegExp(`(?<![\\p{L}-])${word}(?![\\p{L}-])`, 'iu');

describe.each(Object.entries(folders))('what is said in %s', (folder, terms) => {
  const said = filesOf(folder).flatMap((path) => saidIn(path).map((text) => [path, text] as const));

  it.each(concepts)('given %s, then no other word stands for it', (concept) => {
    const never = unsaid[folder as keyof typeof folders][concept] ?? '';
    const others = otherWords(concept, terms[concept], terms, never).map(wholeWord);
    const found = said.filter(
      ([path, text]) =>
        others.some((word) => word.test(text)) &&
        !exceptions.some(([where, what]) => where.test(path) && what.test(text)),
    );
    expect(found.map(([path, text]) => `${path.split('/').slice(-2).join('/')}: ${text}`)).toEqual([]);
  });

  it('given an exception, then it is still needed', () => {
    const mine = exceptions.filter(([where]) => where.source.startsWith(folder));
    for (const [where, what] of mine)
      expect(
        said.some(([path, text]) => where.test(path) && what.test(text)),
        what.source,
      ).toBe(true);
  });
});
