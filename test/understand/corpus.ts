// The corpus of understanding, by language. It is a sample, not a target: lines that nobody here has seen are what counts.

import { englishLines } from './english-lines.ts';
import { spanishLines } from './spanish-lines.ts';
import type { SpokenLine } from './spoken-line.ts';

export const corpus: Readonly<Record<'en' | 'es', readonly SpokenLine[]>> = { en: englishLines, es: spanishLines };
