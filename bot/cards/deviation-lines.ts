// What went against a rule, and what was allowed beforehand and why: one line each, marked so that it stands out.

import type { Deviation } from '../../core/records/deviations.ts';
import type { Telling } from './card-context.ts';

export function deviationLines(t: Telling, deviations: readonly Deviation[]): readonly string[] {
  const { records } = t.words;
  return deviations.map(({ entry, objection, permitted }) => {
    const what = `${t.words.fact(entry.fact, t.f)}. ${t.words.objection(objection, t.f)}`;
    const time = t.f.timeDown(entry.happenedAt);
    return permitted === undefined
      ? records.deviation(time, entry.by, what)
      : records.permission(time, entry.by, what, permitted);
  });
}
