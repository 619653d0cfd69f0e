// What stands under every card of fumes and fans: what Batchbell is not, and whose law is quoted where another holds.

import type { Telling } from './card-context.ts';

export function cautionLines(telling: Telling): readonly string[] {
  return [...lawLines(telling), telling.words.replies.caution];
}

/** Nothing where the law that is quoted holds. */
export function lawLines({ words: { session }, figures }: Telling): readonly string[] {
  const law = session.lawElsewhere(figures.profile.locale);
  return law === undefined ? [] : [law];
}
