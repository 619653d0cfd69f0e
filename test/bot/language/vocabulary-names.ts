// Every row of the vocabulary by its name, for the tests that walk them all.

import { type VocabularyName, vocabulary } from '../../../bot/language/vocabulary.ts';

export const vocabularyNames: readonly VocabularyName[] = Object.values(vocabulary).map((row) => row.name);
