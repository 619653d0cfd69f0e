// Names in a row: those that follow one another under the same letters, `rail-01` to `rail-40`, each with the number after the
// one before and its zeros in front.

import type { PartName } from './ids.ts';

export interface NameRun {
  readonly first: PartName;
  readonly last: PartName;
  readonly names: readonly PartName[];
}

/** In their order. */
export function runsOf(names: readonly PartName[]): readonly NameRun[] {
  const runs: PartName[][] = [];
  for (const name of names) {
    const run = runs.at(-1);
    const before = run?.at(-1);
    if (run !== undefined && before !== undefined && after(before) === name) run.push(name);
    else runs.push([name]);
  }
  return runs.flatMap((run) => {
    const [first, last] = [run[0], run.at(-1)];
    return first === undefined || last === undefined ? [] : [{ first, last, names: run }];
  });
}

const numbered = /^(?<stem>.*\D)(?<digits>\d{1,9})$/u;

function after(name: PartName): PartName | undefined {
  const { stem, digits } = numbered.exec(name)?.groups ?? {};
  if (stem === undefined || digits === undefined) return undefined;
  return stem + String(Number(digits) + 1).padStart(digits.length, '0');
}
