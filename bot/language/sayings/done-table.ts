// What tells that something was done, and when, of the tongues that are heard together.

import type { DoneWords } from '../tongues/done-words.ts';
import type { Typed } from '../tongues/typed.ts';
import type { Phrases } from './reason-table.ts';

export interface DoneTable {
  readonly is: readonly RegExp[];
  readonly byItself: readonly RegExp[];
  readonly when: Phrases;
  readonly thereupon: Phrases;
  readonly which: Phrases;
  readonly notYet: Phrases;
}

export function doneTableOf(tongues: readonly Typed[]): DoneTable {
  const words = tongues.map(({ done }) => done);
  const listed = (of: (done: DoneWords) => string): Phrases =>
    words
      .flatMap((each) => of(each).split(', '))
      .map((phrase) => phrase.split(' '))
      .toSorted((one, other) => other.length - one.length);
  return {
    is: words.map(({ is }) => is),
    byItself: words.map(({ byItself }) => byItself),
    when: listed(({ when }) => when),
    thereupon: listed(({ thereupon }) => thereupon),
    which: listed(({ which }) => which),
    notYet: listed(({ notYet }) => notYet),
  };
}
