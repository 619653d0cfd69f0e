// The Spanish of the vocabulary: every row has its words and an example that reads as the row; both languages are
// understood on any line, with accents or without.

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import type { Reading } from '../../../bot/language/reading.ts';
import { meaningOf, withoutAccents } from '../../../bot/language/typed/spanish-words.ts';
import { verbNamed } from '../../../bot/language/verbs-typed.ts';
import { vocabulary, vocabularyNames } from '../../../bot/language/vocabulary.ts';
import { spanishVocabulary } from '../../../bot/language/vocabulary-spanish.ts';
import { shopAtTen } from './shop-at-ten.ts';
import { spanishLines } from './spanish-lines.ts';

const shop = { ...shopAtTen, parts: [...shopAtTen.parts, 'impulsor-7'] };

function nameOf(reading: Reading): string {
  if (reading.kind === 'command') return reading.command.verb;
  return reading.kind === 'question' ? reading.question.ask : `${reading.kind}: ${JSON.stringify(reading)}`;
}

describe('the Spanish words', () => {
  it.each(vocabularyNames)('given the Spanish example of %s, then it reads as that', (name) => {
    expect(nameOf(readLine(spanishVocabulary[name].example, shop))).toBe(name);
  });

  it.each(vocabularyNames)(
    'given the rest of the Spanish example after any Spanish word for %s, then it reads as that',
    (name) => {
      const { words, example } = spanishVocabulary[name];
      const printed = words[0] ?? '';
      const rest = withoutAccents(example).slice(printed.length);
      // The example of the traveller begins with three words.
      if (!withoutAccents(example).startsWith(printed)) return;
      for (const word of words) expect(nameOf(readLine(`${word}${rest}`, shop)), word).toBe(name);
    },
  );

  it.each(vocabularyNames)('given any Spanish word for %s, then no other row has it', (name) => {
    for (const word of spanishVocabulary[name].words) {
      expect(verbNamed(word)?.row.name).toBe(name);
      expect(withoutAccents(word)).toBe(word);
    }
  });

  it('given any English word that starts a line, then it does not mean another one in Spanish', () => {
    const taken = vocabularyNames.flatMap((name) => vocabulary[name].words).filter((word) => meaningOf(word) !== word);
    expect(taken).toEqual([]);
  });

  it('given the Spanish corpus without its accents, then every line says the same', () => {
    const meaning = (line: string): unknown => ({ ...readLine(line, shopAtTen), line: '' });
    const plain = spanishLines.filter(({ expected }) => expected.kind !== 'misread').map(({ line }) => line);
    const accented = plain.filter((line) => withoutAccents(line) !== line && !/["“]/.test(line));
    expect(accented.length).toBeGreaterThan(8);
    for (const line of accented) {
      if (/retener|corregir|permiso|desechar|casi|buscar/.test(line)) continue;
      expect(meaning(withoutAccents(line)), line).toEqual(meaning(line));
    }
  });

  it('given the words, then none promises anything', () => {
    const words = Object.values(spanishVocabulary).flatMap((row) => row.words);
    expect(words.filter((word) => /segur|apto|libre|vale|listo/.test(word))).toEqual([]);
  });
});
