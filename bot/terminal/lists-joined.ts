// A list that is pasted at a terminal comes line by line: from a line that opens one (`parts in job 88:`, the head of a table) up to
// the next blank line it is one message.

import type { Hearing } from '../language/hearing.ts';
import { partTable } from '../language/parts-in/part-table.ts';
import { isPartLine } from '../language/parts-in/parts-typed.ts';

export interface Typed {
  readonly text: string;
  /** Of its first line, from 1. */
  readonly number: number;
}

export async function* listsJoined(lines: AsyncIterable<string>, hearing: Hearing): AsyncGenerator<Typed> {
  let number = 0;
  let open: { readonly lines: string[]; readonly number: number } | undefined;
  for await (const line of lines) {
    number += 1;
    if (open !== undefined && line.trim() !== '') {
      open.lines.push(line);
      continue;
    }
    if (open !== undefined) {
      yield { text: open.lines.join('\n'), number: open.number };
      open = undefined;
    } else if (opensList(line, hearing)) open = { lines: [line], number };
    else yield { text: line, number };
  }
  if (open !== undefined) yield { text: open.lines.join('\n'), number: open.number };
}

function opensList(line: string, hearing: Hearing): boolean {
  const said = line.replace(/^\s*@[^\s:]+\s*:\s*/u, '').trim();
  return (said.endsWith(':') && isPartLine(said.slice(0, -1), hearing)) || partTable([said], hearing) !== undefined;
}
