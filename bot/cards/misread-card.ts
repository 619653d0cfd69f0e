// What was read, what is needed, an example, and the lines that may have been meant as taps. Nothing is recorded.

import type { Misread } from '../language/reading.ts';
import { type Card, makeCard } from './card.ts';
import type { Telling } from './telling.ts';

export function misreadCard(t: Pick<Telling, 'words'>, misread: Misread): Card {
  const { replies, buttons } = t.words;
  return makeCard(replies.notRead, 'warn', {
    lines: [...t.words.misread(misread), replies.nothingRecorded],
    actions: misread.suggestions.map((line, i) => ({ id: `meant-${i + 1}`, label: buttons.meant, line })),
  });
}
