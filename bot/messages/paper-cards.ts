// What a card says of the paper that hangs on it: that it follows as a file, or that it did not arrive.

import { type Card, fileNameOf, makeCard } from '../cards/card.ts';
import type { Words } from '../language/tongues/languages.ts';
import type { Missing } from './desk.ts';

/** `isHere`: the file comes to the place of the card; otherwise as a direct message. */
export function withPaperLine(card: Card, { chat }: Words, isHere: boolean): Card {
  if (card.paper === undefined) return card;
  const file = fileNameOf(card.paper);
  return { ...card, lines: [isHere ? chat.paperHere(file) : chat.paperAlone(file), ...card.lines] };
}

/** Of a card with a paper: a tap asks for it again. */
export function missingCard({ paper = '', paperAgain }: Card, { chat }: Words, missing: Missing): Card {
  const file = fileNameOf(paper);
  const isUnsure = missing === 'unsure';
  return makeCard(isUnsure ? chat.paperUnsure(file) : chat.paperMissing(file), 'warn', {
    lines: [isUnsure ? chat.paperUnsureLine : chat.paperMissingLine],
    actions: paperAgain === undefined ? [] : [paperAgain],
  });
}
