// What went against a rule, and what was allowed beforehand and why: one line each, marked so that it stands out.

import { type Deviation, newDeviations } from '../../core/records/deviations.ts';
import type { Shop } from '../../core/shop.ts';
import type { Telling } from './card-context.ts';

type Against = Pick<Deviation, 'entry' | 'objection'>;

/** What was done, and what speaks against it. */
export const deviationSaid = ({ words, figures }: Telling, { entry, objection }: Against): string =>
  `${words.fact(entry.fact, figures)}. ${words.objection(objection, figures)}`;

/** What of all that was done is wrong now, and was not before. */
export const newlyWrong = ({ words, figures }: Telling, before: Shop, shop: Shop): readonly string[] =>
  newDeviations(before, shop).map(({ entry, objection }) =>
    words.replies.nowDeviates(words.fact(entry.fact, figures), words.objection(objection, figures)),
  );

export function deviationLines(telling: Telling, deviations: readonly Deviation[]): readonly string[] {
  const { records } = telling.words;
  return deviations.map(({ entry, objection, permitted }) => {
    const what = deviationSaid(telling, { entry, objection });
    return permitted === undefined
      ? records.deviation(entry.happenedAt, entry.by, what, telling.figures)
      : records.permission(entry.happenedAt, entry.by, what, permitted, telling.figures);
  });
}
