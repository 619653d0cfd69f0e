// What stands under every card of fumes and fans: what Batchbell is not, and whose law is quoted where another holds.

import type { Telling } from './card-context.ts';

export function cautionLines(telling: Telling): readonly string[] {
  return [...lawLines(telling), telling.words.replies.caution];
}

/** Nothing where the law that is quoted holds. */
export function lawLines({ words, figures, shop }: Telling): readonly string[] {
  const said = words.law.elsewhere(shop.crew.spray.law, figures.profile.locale);
  return said === undefined ? [] : [said];
}
