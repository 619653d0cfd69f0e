// Where a crew is excused from briefs before it sprays: every card of what was sprayed so says it, with who excused it.

import type { Entry } from '../../core/history.ts';
import { nounOf } from '../../core/ids.ts';
import { methodRows } from '../../core/methods.ts';
import { type Briefing, briefingAt } from '../../core/session/spray-settings.ts';
import type { Telling } from './card-context.ts';

/** Of coats among these that were sprayed without a brief while nobody was asked for one: each excuse once. */
export function briefsOffLines(telling: Telling, entries: readonly Entry[]): readonly string[] {
  const excused = entries.flatMap((entry): readonly Briefing[] => {
    const { fact, alsoUnder, happenedAt } = entry;
    if (fact.type !== 'CoatApplied' || !methodRows[fact.method].atomised) return [];
    if (alsoUnder.some((stream) => nounOf(stream) === 'session')) return [];
    const said = briefingAt(telling.shop.crew.spray, happenedAt);
    return said?.on === false ? [said] : [];
  });
  return [...new Set(excused)].map(({ by, at }) => telling.words.session.briefsOff(by, at, telling.figures));
}

/** Before a coat that may be sprayed. */
export function briefsOffNow({ shop, words, figures, now }: Telling): readonly string[] {
  const said = briefingAt(shop.crew.spray, now);
  return said?.on === false ? [words.session.briefsOff(said.by, said.at, figures)] : [];
}
