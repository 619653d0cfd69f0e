// What was read, what is needed, an example, and the lines that may have been meant as taps. Nothing is recorded.

import { ownValue } from '../../core/own-key.ts';
import type { Misread } from '../language/reading.ts';
import { type Card, makeCard } from './card.ts';
import type { Telling } from './card-context.ts';

export function misreadCard(telling: Pick<Telling, 'words'> & Partial<Pick<Telling, 'shop'>>, misread: Misread): Card {
  const { replies, session } = telling.words;
  /** What will be said, to be read before it is pressed; a tap that calls people says so. */
  const label = (line: string): string => {
    const alarm = ownValue(misread.calls ?? {}, line);
    return alarm === undefined ? replies.lineMeant(line) : session.callForHelp(alarm);
  };
  const asksForHelp = misread.code === 'which-cry';
  const call = asksForHelp ? telling.shop?.crew.spray.emergency.call : undefined;
  return makeCard(asksForHelp ? replies.notClear : replies.notRead, 'warn', {
    lines: [
      // Whatever it is, the shop's own number comes first.
      ...(call === undefined ? [] : [session.callNumber(call)]),
      ...telling.words.misread(misread),
      replies.nothingRecorded,
    ],
    actions: misread.suggestions.map((line, i) => ({ id: `meant-${i + 1}`, label: label(line), line })),
  });
}
