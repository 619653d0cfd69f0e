// What was pasted where parts are asked for needs no word for it: it is opened as a list, unless it opens itself or is a table.

import type { Hearing } from '../hearing.ts';
import { isPartLine, partsTyped } from './parts-typed.ts';

const opening = 'parts in';

export function asParts(text: string, hearing: Hearing): string {
  const typed = partsTyped(text, hearing);
  const isBare = typed === undefined || (typed.is === 'list' && typed.opening === undefined);
  const isOpen = !isBare || isPartLine(text.split('\n', 1)[0] ?? '', hearing);
  return isOpen ? text : `${opening}\n${text}`.trim();
}
