// Of a line that was said in other words: what it was taken as, and one tap that takes it back.

import type { Outcome } from '../../core/execute.ts';
import type { Card } from './card.ts';
import { type Telling, undoTap } from './card-context.ts';

/** The card of a spot says each reading that was taken, and of which spot. */
const tellsSpots = (outcome: Outcome): boolean =>
  (outcome.kind === 'unclear' && outcome.unclear.code === 'film-asked') ||
  (outcome.kind === 'recorded' &&
    outcome.envelopes.some(({ body }) => body.type === 'FilmRead' && body.spot !== undefined));

/** The tap stands third, where a phone still shows it and what hands do next comes first. */
export function withTakenAs(telling: Telling, card: Card, line: string, outcome: Outcome): Card {
  const { words, figures } = telling;
  const said = tellsSpots(outcome) ? [] : [words.replies.takenAs(words.lineShown(line, figures))];
  const [first] = outcome.kind === 'recorded' ? outcome.envelopes : [];
  const has = card.actions.some(({ id }) => id === 'undo');
  const undo = first === undefined || has ? [] : [undoTap(telling, first.seq)];
  return {
    ...card,
    lines: [...said, ...card.lines],
    actions: [...card.actions.slice(0, 2), ...undo, ...card.actions.slice(2)],
  };
}
