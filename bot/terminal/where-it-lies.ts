// A card names a paper or a copy by its name. Whoever sits at the machine is told where on it the file lies.

import type { Card } from '../cards/card.ts';
import type { Words } from '../language/tongues/tongues.ts';
import type { PaperTray } from '../records/paper-tray.ts';
import { type Answer, makeAnswer } from '../talk/answer.ts';

export interface WhereItLiesDeps {
  readonly papers: Pick<PaperTray, 'pathOf' | 'copyPath'>;
  readonly words: Words;
}

export function whereItLies({ papers, words }: WhereItLiesDeps) {
  /** Of its paper or its copy; `undefined` for a card without one. */
  function fileOn({ paper, copy }: Card): string | undefined {
    if (paper !== undefined) return papers.pathOf(paper);
    return copy === undefined ? undefined : papers.copyPath(copy, true);
  }

  /** With the path as the first line of its card. */
  function told(answer: Answer): Answer {
    const file = fileOn(answer.card);
    if (file === undefined) return answer;
    return makeAnswer({
      ...answer,
      card: { ...answer.card, lines: [words.records.written(file), ...answer.card.lines] },
    });
  }

  return { fileOn, told };
}
