// Which languages there are. A person whose language is not here is told in English.

import { ownValue } from '../../../core/own-key.ts';
import { english, type Words } from './english/sentences.ts';
import { spanish } from './spanish/sentences.ts';

const catalogues: Readonly<Record<string, Words>> = { en: english, es: spanish };

export const languages: readonly string[] = Object.keys(catalogues);

export type { Words };

export function wordsIn(language: string): Words {
  return ownValue(catalogues, language) ?? english;
}
