// A list that is pasted at a terminal is one message, from the line that opens it up to a blank line; all else is said line by line.

import { describe, expect, it } from 'vitest';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { listsJoined } from '../../../bot/terminal/lists-joined.ts';

async function messages(...lines: readonly string[]): Promise<readonly (readonly [number, string])[]> {
  const found: [number, string][] = [];
  async function* typed() {
    yield* lines;
  }
  for await (const { number, text } of listsJoined(typed(), shipped.every)) found.push([number, text]);
  return found;
}

describe('lines that are typed or pasted', () => {
  it.each(['parts in job 88:', '@kari: piezas orden 88:', 'name,serial,job', '@luis: pieza;serie;obra'])(
    'given "%s", then what follows up to a blank line is of the same message',
    async (opening) => {
      expect(await messages('air 24C', opening, 'rail-1, 4411, 88', 'rail-2, 4412, 88', '', 'day')).toEqual([
        [1, 'air 24C'],
        [2, `${opening}\nrail-1, 4411, 88\nrail-2, 4412, 88`],
        [6, 'day'],
      ]);
    },
  );

  it('given the input ends within a list, then it is said as far as it goes', async () => {
    expect(await messages('parts in job 88:', 'rail-1')).toEqual([[1, 'parts in job 88:\nrail-1']]);
  });

  it.each(['part rail-1 steel', 'parts in rail-1..rail-4', 'hold rail-1 note: dented', 'air 24C, 48%'])(
    'given "%s", then it is a message of its own',
    async (line) => {
      expect(await messages(line, 'day')).toEqual([
        [1, line],
        [2, 'day'],
      ]);
    },
  );
});
