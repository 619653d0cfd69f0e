// From the first word or two of a line to its row in the vocabulary. A method stands for the coat it makes.

import type { Method } from '../../core/methods.ts';
import { englishVerbs } from './tongues/english/verbs.ts';
import { spanishMethodWords, withoutAccents } from './tongues/spanish/lexicon.ts';
import { spanishVerbs } from './tongues/spanish/verbs.ts';
import { methodsByWord } from './trade-words.ts';
import type { Token, Word } from './typed/tokens.ts';
import { type VocabularyName, type VocabularyRow, vocabulary } from './vocabulary.ts';

export interface VerbNamed {
  readonly row: VocabularyRow;
  /** As it is printed. */
  readonly printed: string;
  readonly method?: Method;
  /** Where the word itself says where it cures: `al horno impulsor-7 90C`. */
  readonly way?: 'oven';
  /** `sin extracción`, `apagar el extractor`. */
  readonly says?: 'yes' | 'no';
  /** Another pass of the coat that is still wet. */
  readonly pass?: 'same-coat';
}

/** In Spanish a touch-up, the oven and what is missing begin lines of their own. */
const fans = ['extracción', 'extractor', 'ventilador'];
const fanOff = ['sin', 'apagar', 'apago', 'apagué', 'parar', 'paro'];
const fanOn = ['prender', 'prendo', 'encender', 'enciendo', 'arrancar', 'arranco', 'poner', 'pongo'];
const saying: readonly (readonly [string, 'fan' | 'supplied', 'yes' | 'no'])[] = [
  ...fans.flatMap((fan) => fanOff.map((verb) => [`${verb} ${fan}`, 'fan', 'no'] as const)),
  ...fans.flatMap((fan) => fanOn.map((verb) => [`${verb} ${fan}`, 'fan', 'yes'] as const)),
  ['sin aire', 'supplied', 'no'],
];
const touchUps = ['touch-up', 'retocar', 'retocada', 'retocado', 'retoco', 'retoque'];
const intoOven = [
  'horno',
  'al horno',
  'meter horno',
  'meto horno',
  'meti horno',
  'metida horno',
  'metido horno',
  'entra horno',
];

const verbs: ReadonlyMap<string, VerbNamed> = new Map([
  ...[...methodsByWord].map(([word, method]): [string, VerbNamed] => [
    word,
    { row: vocabulary.coat, printed: method, method },
  ]),
  ...Object.values(vocabulary).flatMap((row: VocabularyRow) => {
    const { words } = englishVerbs[row.name];
    return words.map((word): [string, VerbNamed] => [word, { row, printed: words[0] ?? row.name }]);
  }),
  ...[...spanishMethodWords].map(([word, method]): [string, VerbNamed] => [
    word,
    { row: vocabulary.coat, printed: word, method },
  ]),
  ...touchUps.map((word): [string, VerbNamed] => [
    word,
    { row: vocabulary.coat, printed: word === 'touch-up' ? word : 'retocar', pass: 'same-coat' },
  ]),
  ...saying.map(([word, name, says]): [string, VerbNamed] => [
    withoutAccents(word),
    { row: vocabulary[name], printed: word, says },
  ]),
  ...intoOven.map((word): [string, VerbNamed] => [word, { row: vocabulary.cure, printed: 'al horno', way: 'oven' }]),
  ...Object.values(vocabulary).flatMap((row: VocabularyRow) => {
    const { words } = spanishVerbs[row.name];
    return words.map((word): [string, VerbNamed] => [withoutAccents(word), { row, printed: words[0] ?? row.name }]);
  }),
]);
const firstOfTwo: ReadonlySet<string> = new Set(
  [...verbs.keys()].filter((word) => word.includes(' ')).map((word) => word.slice(0, word.indexOf(' '))),
);

export const verbWords: readonly string[] = [...verbs.keys()];

const ignored: ReadonlyMap<VocabularyName, ReadonlySet<string>> = new Map(
  Object.values(vocabulary).map(({ name }) => [
    name,
    new Set([...englishVerbs[name].ignores, ...spanishVerbs[name].ignores]),
  ]),
);

/** True for a word that only rounds a sentence off on this row. */
export const isIgnoredOn = (name: VocabularyName, word: string): boolean => ignored.get(name)?.has(word) ?? false;

export function verbNamed(word: string): VerbNamed | undefined {
  return verbs.get(word) ?? verbs.get(withoutAccents(word));
}

/** `wet film`, `got it`. */
function verbOfTwoWords(first: Word, second: Word): VerbNamed | undefined {
  const typed = asTyped(first);
  if (firstOfTwo.has(first.word)) {
    const verb = verbs.get(`${first.word} ${second.word}`);
    if (verb !== undefined) return verb;
  }
  return firstOfTwo.has(typed) ? verbs.get(`${typed} ${asTyped(second)}`) : undefined;
}

export interface VerbAt extends VerbNamed {
  /** Index of the token after it. */
  readonly to: number;
}

/** What may stand inside a verb of two words: `parar la pistola`, `agitador en marcha`, `close the session`. */
const smallWords: ReadonlySet<string> = new Set(['the', 'of', 'in', 'to', 'a']);
const mostSmallWords = 2;

/** The verb that begins at token `from`, of two words before one. */
export function verbAt(tokens: readonly Token[], from: number): VerbAt | undefined {
  const first = tokens[from];
  if (first?.kind !== 'word') return undefined;
  for (let next = from + 1; next <= from + 1 + mostSmallWords; next++) {
    const other = tokens[next];
    if (other?.kind !== 'word') break;
    const pair = verbOfTwoWords(first, other);
    if (pair !== undefined) return { ...pair, to: next + 1 };
    if (!smallWords.has(other.word)) break;
  }
  const verb = verbOfWord(first);
  return verb === undefined ? undefined : { ...verb, to: from + 1 };
}

/** By what the word means, else by the word itself: `resumen` is a setting's name and asks for the day. */
export function verbOfWord(word: Word): VerbNamed | undefined {
  return verbNamed(word.word) ?? verbs.get(asTyped(word));
}

const asTyped = ({ text }: Word): string => withoutAccents(text.toLowerCase());
