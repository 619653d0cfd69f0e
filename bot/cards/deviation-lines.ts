// What went against a rule, and what was allowed beforehand and why: one line each, marked so that it stands out.

import type { Deviation } from '../../core/records/deviations.ts';
import type { Telling } from './card-context.ts';

export function deviationLines(telling: Telling, deviations: readonly Deviation[]): readonly string[] {
  const { records } = telling.words;
  return deviations.map(({ entry, objection, permitted }) => {
    const what = `${telling.words.fact(entry.fact, telling.figures)}. ${telling.words.objection(objection, telling.figures)}`;
    return permitted === undefined
      ? records.deviation(entry.happenedAt, entry.by, what, telling.figures)
      : records.permission(entry.happenedAt, entry.by, what, permitted, telling.figures);
  });
}
