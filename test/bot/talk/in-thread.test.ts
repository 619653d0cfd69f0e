// What a batch's own thread fills in: the batch, wherever an act takes one and nobody named it.

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { withBatchOf } from '../../../bot/talk/in-thread.ts';
import { type Command, type Verb, verbRows, verbs } from '../../../core/commands.ts';
import { batchStream, partStream } from '../../../core/ids.ts';
import { epochMs } from '../../../core/units.ts';

/** What must be said besides; of the others the verb is enough. */
const lines: Readonly<Partial<Record<Verb, string>>> = {
  weigh: 'weigh 1201g 1198g',
  add: 'add B 20g',
  catch: 'catch 300g',
  confirm: 'confirm bonding yes',
  coat: 'coat new impeller-7 spray',
  drawn: 'drawn A can 2',
};
const onBatch = verbs.filter(
  (verb) => verbRows[verb].fields.batch !== undefined && verbRows[verb].options?.calls !== true,
);

function read(text: string): Command {
  const reading = readLine(text, {
    hearing: shipped.hearingIn('en'),
    country: shipped.profileOf('en', 'metric'),
    now: epochMs(Date.UTC(2026, 2, 2, 8)),
    zone: 'UTC',
    sheetIds: [],
    batches: [1, 2],
    parts: ['impeller-7'],
    places: [],
  });
  if (reading.kind !== 'command') throw new Error(`"${text}" is no act`);
  return reading.command;
}

describe("a batch's own thread", () => {
  it.each(onBatch)('given the thread of batch 2, when `%s` names no batch, then it is batch 2', (verb) => {
    const command = read(lines[verb] ?? verb);
    expect(command).toMatchObject({ verb });
    expect(command).not.toHaveProperty('batch');
    expect(withBatchOf(batchStream(2), command)).toEqual({ ...command, batch: 2 });
  });

  it.each(['stir 400rpm', 'filter 1um glass second vessel'])(
    'given the thread of batch 2, when `%s` names no batch, then its figures are its own and the batch is 2',
    (line) => {
      const command = read(line);
      expect(command).not.toHaveProperty('batch');
      expect(withBatchOf(batchStream(2), command)).toEqual({ ...command, batch: 2 });
    },
  );

  it('given the thread of batch 2, when another batch is named, then it is the one named', () => {
    expect(withBatchOf(batchStream(2), read('cover 1'))).toMatchObject({ verb: 'cover', batch: 1 });
  });

  it('given an act without a batch, or no thread of a batch, then nothing is filled in', () => {
    const air = read('air 24C 48%');
    expect(withBatchOf(batchStream(2), air)).toBe(air);
    const filter = read('filter');
    expect(withBatchOf(partStream('impeller-7'), filter)).toBe(filter);
    expect(withBatchOf(undefined, filter)).toBe(filter);
  });
});
