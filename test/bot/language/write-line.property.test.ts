// The line written for a button reads back as the very command it was written for.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import { writeLine } from '../../../bot/language/write-line.ts';
import { isQuestion } from '../../../core/verbs/question-rows.ts';
import { drawnAt, drawnCommand, drawnStance, drawnZone } from './drawn-commands.ts';
import { shopAtTen } from './shop-at-ten.ts';
import { shopWith } from './shop-with.ts';
import { vocabularyNames } from './vocabulary-names.ts';

describe('writing a line and reading it back', () => {
  it('given any command, time and stance in any zone, then the line reads back to the last digit', () => {
    const reached = new Map<string, number>();
    fc.assert(
      fc.property(drawnCommand, drawnAt, drawnStance, drawnZone, (command, at, stance, zone) => {
        const context = shopWith(command, zone);
        const line = writeLine(
          { command, stance, ...(at !== undefined && { at }) },
          { zone, hearing: context.hearing },
        );
        const isTold = stance.is === 'asked' && at !== undefined && at < context.now;
        reached.set(command.verb, (reached.get(command.verb) ?? 0) + 1);
        expect(readLine(line, context), line).toEqual({
          kind: 'command',
          command,
          ...(at !== undefined && { at }),
          stance: isTold ? { is: 'happened' } : stance,
          line: expect.any(String),
        });
      }),
      // The rarest verb comes up once in six hundred: so often that none is left out by chance.
      { numRuns: 9000 },
    );
    const verbs = vocabularyNames.filter((name) => !isQuestion(name));
    expect(verbs.filter((verb) => (reached.get(verb) ?? 0) === 0)).toEqual([]);
  });

  it.each([
    ['given 1201 g typed as kilograms, then no thousands mark can be read into it', 'mix 1.201kg', 'mix 1.2010kg'],
    ['given a hold, then the reason stands in quotes', 'hold impeller-7 runs', 'hold impeller-7 "runs"'],
    ['given pounds, then grams to the last digit', 'mix 2lb 10oz', 'mix 1.19067997125kg'],
    ['given a said time, then the date is on the line', 'stir 1 at 9:40', 'stir 1 at 2026-03-02T09:40 already'],
  ])('%s', (_, typed, written) => {
    const reading = readLine(typed, shopAtTen);
    expect(reading.kind === 'command' && writeLine(reading, shopAtTen)).toBe(written);
  });
});
