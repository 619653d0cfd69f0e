// Parts told as a list or a stretch, each put by its name: `impellers 1 thru 3`, `1, 2 y 3`, `serial 4407`. Only where each of them is a
// part that the shop has; a number that may be of a pot as well makes it unsure.

import { partsAt } from '../parts-said/parts-at.ts';
import { partsInLine } from '../parts-said/parts-in-line.ts';
import type { LineContext } from '../reading.ts';
import { tokenize } from '../typed/tokens.ts';
import type { Heard } from './heard.ts';

/** The line with each part by its name; none where no list is told. */
export function partsListed(line: string, context: LineContext): readonly Heard[] {
  if (context.parts.length === 0 || !/\d/.test(line)) return [];
  const tokens = tokenize(line, context.hearing);
  const inLine = partsInLine(line, tokens, context);
  const said: string[] = [];
  let [from, isSure, isChanged] = [0, true, false];
  for (let at = 0; at < tokens.length; ) {
    const found = partsAt(inLine, at);
    const [start, end] = [tokens[at]?.start ?? 0, tokens[(found?.to ?? at + 1) - 1]?.end ?? line.length];
    const typed = line.slice(start, end);
    const text = found?.is === 'named' && found.isSlip !== true && /\d/.test(typed) ? found.names.join(' ') : typed;
    // A part's own name as it stands is no list.
    if (found !== undefined && text.toLowerCase() !== typed.toLowerCase()) {
      said.push(line.slice(from, start), text);
      from = end;
      isChanged = true;
      isSure &&= found.isSure;
    }
    at = found?.to ?? at + 1;
  }
  return isChanged ? [{ line: said.join('') + line.slice(from), isSure }] : [];
}
