// Parts as a line has them: a row of several by its first and its last, `rail-01..rail-40`, so that a tap has room for all.

import type { PartName } from '../../core/ids.ts';
import { runsOf } from '../../core/name-runs.ts';
import { mostParts } from './acts/part-ranges.ts';

/** Fewer are read at a glance by their names. */
const shortestRow = 4;

export function writeParts(names: readonly PartName[]): readonly string[] {
  return runsOf(names).flatMap(({ names: run }) =>
    run.length < shortestRow || !isPlain(run[0] ?? '') ? run : inPieces(run).map(written),
  );
}

/** What begins with a figure, or holds a stop, may come apart otherwise. */
const isPlain = (name: PartName): boolean => /^\p{L}[^.]*$/u.test(name);

const inPieces = (run: readonly PartName[]): readonly (readonly PartName[])[] =>
  Array.from({ length: Math.ceil(run.length / mostParts) }, (_, i) => run.slice(i * mostParts, (i + 1) * mostParts));

const written = (names: readonly PartName[]): string =>
  names.length < shortestRow ? names.join(' ') : `${names[0] ?? ''}..${names.at(-1) ?? ''}`;
