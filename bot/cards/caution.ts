// What stands under every card of fumes and fans: what Batchbell is not, and whose law is quoted where another holds.

import type { Telling } from './card-context.ts';

export function cautionLines({ words: { replies, session } }: Pick<Telling, 'words'>): readonly string[] {
  const law = session.lawElsewhere();
  return [...(law === undefined ? [] : [law]), replies.caution];
}
