// The two hundred lines, and what holds for every misread among them.

import { describe, expect, it } from 'vitest';
import { readStrictly } from '../../../bot/language/read-line.ts';
import type { Reading } from '../../../bot/language/reading.ts';
import { englishVerbs } from '../../../bot/language/tongues/english/verbs.ts';
import { tallerALasDiez } from './shop-at-ten.ts';
import { thumbTypedLines } from './thumb-typed-lines.ts';
import type { Expected } from './typed-line.ts';
import { vocabularyNames } from './vocabulary-names.ts';

function inBrief(reading: Reading): Expected {
  switch (reading.kind) {
    case 'command': {
      const { command, at, stance } = reading;
      return {
        kind: 'command',
        command,
        ...(at !== undefined && { at }),
        ...(stance.is !== 'asked' && { stance }),
      };
    }
    case 'question':
      return { kind: 'question', question: reading.question };
    case 'several':
    case 'silence':
      return { kind: 'silence' };
    case 'misread': {
      const { code, token, suggestions } = reading.misread;
      return { kind: 'misread', code, token, ...(suggestions[0] !== undefined && { offers: suggestions[0] }) };
    }
    default: {
      const never: never = reading;
      return never;
    }
  }
}

describe('two hundred thumb-typed lines (invented; common practice, no source)', () => {
  it.each(thumbTypedLines)('given $line, then it is read as it was meant', ({ line, expected }) => {
    expect(inBrief(readStrictly(line, tallerALasDiez))).toEqual(expected);
  });

  it('given the corpus, then it has 200 different lines and at least half of them read', () => {
    const lines = new Set(thumbTypedLines.map(({ line }) => line));
    const read = thumbTypedLines.filter(({ expected }) => expected.kind === 'command' || expected.kind === 'question');
    expect(lines.size).toBe(thumbTypedLines.length);
    expect(lines.size).toBeGreaterThanOrEqual(200);
    expect(read.length).toBeGreaterThanOrEqual(100);
  });

  it('given the corpus, then every verb is read at least once', () => {
    const read = new Set(
      thumbTypedLines.flatMap(({ expected }) =>
        expected.kind === 'command'
          ? [expected.command.verb]
          : expected.kind === 'question'
            ? [expected.question.ask]
            : [],
      ),
    );
    // What runs now takes no words, so no thumb can slip in it.
    expect(vocabularyNames.filter((name) => name !== 'now' && !read.has(name))).toEqual([]);
  });

  it('given any misread of the corpus, then it says where it stopped and each line it offers reads', () => {
    for (const { line } of thumbTypedLines) {
      const reading = readStrictly(line, tallerALasDiez);
      if (reading.kind !== 'misread') continue;
      const { token, from, to, suggestions, exampleOf } = reading.misread;
      expect(reading.line.slice(from, to)).toBe(token);
      expect(suggestions.length).toBeLessThanOrEqual(3);
      for (const offered of [englishVerbs[exampleOf].example, ...suggestions]) {
        expect(readStrictly(offered, tallerALasDiez).kind, offered).toMatch(/^(command|question)$/);
      }
    }
  });
});
