// What counts of each solvent that a session's sum takes in: the law's limit, what stands in for it, what the crew has set; what is
// advised beyond it, with its ratio; and which explosive limit is from an old table alone.

import type { SolventId } from '../../core/calc/solvents.ts';
import { solvents } from '../../core/calc/solvents.ts';
import { lowestLel } from '../../core/calc/vapour.ts';
import { isFailed } from '../../core/failed.ts';
import type { Sheet } from '../../core/products/sheet.ts';
import { dayLimitOfSolvent } from '../../core/session/session-air.ts';
import type { Telling } from './card-context.ts';

export function limitLines(telling: Telling, sheet: Sheet): readonly string[] {
  const { law } = telling.words;
  const { frame, assumed } = telling.shop.crew.spray.law;
  const ids = (sheet.spray?.solvents ?? []).map(({ solvent }) => solvent);
  return [
    ...(assumed ? [law.sayWhose] : []),
    ...ids.flatMap((id) => dayLimitLines(telling, id)),
    ...(frame === 'eu' && ids.length > 0 ? [law.indicative] : []),
    ...oldTableLines(telling, ids),
  ];
}

/** Of all limits over the day: that nobody has said whose law holds, or that a country's own may be lower. */
export function limitNotes({ words: { law }, shop }: Telling): readonly string[] {
  const { frame, assumed } = shop.crew.spray.law;
  return [...(assumed ? [law.sayWhose] : []), ...(frame === 'eu' ? [law.indicative] : [])];
}

function dayLimitLines(telling: Telling, id: SolventId): readonly string[] {
  const { words, figures, shop } = telling;
  const { law, dayLimits } = shop.crew.spray;
  const found = dayLimitOfSolvent(id, { law: law.frame, dayLimits });
  if (found === undefined) return [];
  const { ppm, stands, limit, advised } = found;
  const source = limit === undefined ? '' : words.names.source(limit.source);
  const advice = advised === undefined ? [] : [words.law.advised(advised.ppm, ppm / advised.ppm, id, figures)];
  switch (stands) {
    case 'law':
      // What has no advice beside it needs no line: the source of the sum names the law.
      return advised === undefined && law.frame === 'us'
        ? []
        : [`${words.law.counted(id, ppm, source, figures)}. ${advice.join('')}`.trim()];
    case 'stand-in':
      return [`${words.law.standIn(id, ppm, source, figures)}. ${advice.join('')}`.trim()];
    case 'set':
      return [`${words.law.setHere(id, ppm, figures)}. ${advice.join('')}`.trim()];
  }
}

/** Of the sheet's solvents those whose explosive limit nothing newer gives. */
export function oldTableLines({ words, figures }: Telling, ids: readonly SolventId[]): readonly string[] {
  const old = ids.filter((id) => {
    const lowest = lowestLel(solvents[id]);
    return !isFailed(lowest) && lowest.oldTableOnly;
  });
  return old.length === 0 ? [] : [words.law.oldTable(old, figures)];
}
