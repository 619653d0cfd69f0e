// What a question names and nobody here has named: the same question with each name near it, for one tap. It only asks.

import type { NotMeant } from '../../../core/asked/things-meant.ts';
import type { StateQuestion } from '../../../core/commands.ts';
import { writeAsked, writeThing } from '../../language/write-asked.ts';
import { type Card, makeCard } from '../card.ts';
import type { Telling } from '../card-context.ts';

const mostTaps = 3;

export function notFoundCard(
  telling: Telling,
  question: StateQuestion,
  [first]: readonly NotMeant[],
): Card | undefined {
  if (first === undefined) return undefined;
  const { asked } = telling.words;
  const { said, parts } = first;
  const name = writeThing(said);
  const isSeveral = said.is === 'number' && parts.length > 1;
  const of = 'of' in question ? question.of : [];
  return makeCard(isSeveral ? asked.whichCalled(name) : asked.noneCalled(name), 'warn', {
    lines: [parts.length > 0 ? asked.nearOnes(parts.slice(0, mostTaps), telling.figures) : asked.noneNear],
    actions: parts.slice(0, mostTaps).map((part, i) => ({
      id: `near-${i + 1}`,
      label: part,
      line: writeAsked(
        question,
        of.map((thing) => (thing === said ? { is: 'name', name: part } : thing)),
      ),
    })),
  });
}
