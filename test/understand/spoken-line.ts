// One line of the corpus: what somebody types, in which prepared shop, and what a colleague would have understood.

import type { State } from './states.ts';

export interface SpokenLine {
  readonly kind: string;
  readonly state: State;
  readonly by: string;
  readonly line: string;
  /** Said just before, in strict lines. */
  readonly after: readonly string[];
  /** Alternatives, each of strict lines; none where nothing may be recorded. */
  readonly means: readonly (readonly string[])[];
  /** What the answer must show, of a question. */
  readonly shows?: RegExp;
}

/** `meant`: strict lines, ` ; ` between several, ` || ` between alternatives. */
export const says =
  (by: string) =>
  (kind: string, state: State, line: string, meant: string, ...after: readonly string[]): SpokenLine => ({
    ...{ kind, state, by, line, after },
    means: meant.split(' || ').map((lines) => lines.split(' ; ')),
  });

/** Denied, doubted, planned or asked: nothing may come of it, by no tap either. */
export const saysNothing =
  (by: string) =>
  (kind: string, state: State, line: string, ...after: readonly string[]): SpokenLine => ({
    ...{ kind, state, by, line, after },
    means: [],
  });

export const asks =
  (by: string) =>
  (state: State, line: string, shows: RegExp): SpokenLine => ({
    ...{ kind: 'question', state, by, line, after: [], shows },
    means: [],
  });
