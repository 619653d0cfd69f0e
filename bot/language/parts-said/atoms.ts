// A line in its smallest pieces, letters, figures and marks, so that `impellers 1-4`, `impeller-1, 2` and `1/2/3` are read alike.

import type { Token } from '../typed/token.ts';
import { withoutAccents } from '../typed/without-accents.ts';

export interface Atom {
  /** In lower case, without accents; of a number without its leading noughts. */
  readonly text: string;
  readonly is: 'word' | 'number' | 'mark';
  /** Index of the token after it, where it is the last of its own. */
  readonly ends: number | undefined;
  /** What is typed between it and the next. */
  readonly gap: string;
}

export interface Atoms {
  readonly all: readonly Atom[];
  /** By token: the index of its first; of none for figures with a unit. */
  readonly firstOf: readonly number[];
}

/** `the housing's 63`: what stands behind it is no number of its name. */
const saysIs = /^(\p{L}.*)(['’]s)$/u;

const shape = /\p{L}+|\d+|\.\.+|[-,/&+#.]/gu;

export function atomsOf(line: string, tokens: readonly Token[]): Atoms {
  const all: Atom[] = [];
  const firstOf: number[] = [];
  for (const [i, token] of tokens.entries()) {
    firstOf.push(all.length);
    const isOpen = token.kind === 'word' || token.kind === 'number';
    const [, name = '', is = ''] = saysIs.exec(token.text) ?? [undefined, token.text];
    const gap = is + line.slice(token.end, tokens[i + 1]?.start ?? line.length);
    const texts = isOpen ? (withoutAccents(name.toLowerCase()).match(shape) ?? []) : [];
    // What holds anything else is one piece that nothing here reads.
    if (texts.length === 0) all.push({ text: '', is: 'mark', ends: i + 1, gap });
    for (const [at, text] of texts.entries()) {
      const isLast = at === texts.length - 1;
      all.push({ ...atomOf(text), ends: isLast ? i + 1 : undefined, gap: isLast ? gap : '' });
    }
  }
  return { all, firstOf };
}

function atomOf(text: string): Pick<Atom, 'text' | 'is'> {
  if (/^\d/.test(text)) return { text: text.replace(/^0+(?=\d)/, ''), is: 'number' };
  return { text, is: /^\p{L}/u.test(text) ? 'word' : 'mark' };
}
