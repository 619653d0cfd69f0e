// Parts as people are told of them: a row of several by its first and its last, `rail-01 to rail-40`.

import type { PartName } from '../../core/ids.ts';
import { runsOf } from '../../core/name-runs.ts';
import type { NamedPart } from '../../core/verbs/said.ts';
import type { Figures } from './figures.ts';

/** Two are told by their names. */
const shortestRow = 3;

/** `to`: what stands between the first and the last. */
export const partsListed = (names: readonly PartName[], to: string, figures: Figures): string =>
  figures.list(
    runsOf(names).flatMap(({ first, last, names: run }) =>
      run.length < shortestRow ? run : [`${first} ${to} ${last}`],
    ),
  );

/** The job that each of them is of. */
export function jobOfAll([first, ...more]: readonly NamedPart[]): string | undefined {
  const job = first?.details.job;
  return more.every(({ details }) => details.job === job) ? job : undefined;
}
