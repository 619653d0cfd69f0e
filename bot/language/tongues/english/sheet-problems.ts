// What is wrong with a sheet's file, in English.

import type { SheetFault, SheetProblem, SheetRule, ValueKind } from '../../../../core/products/sheet-fault.ts';

const rules: Readonly<Record<SheetRule, string>> = {
  'lowest-below-highest': 'its lowest must be below its highest',
  'lowest-not-above-highest': 'its lowest must not be above its highest',
  'opens-below-closes': 'opensMinutes must be below closesMinutes',
  'least-not-above-most': 'leastMinutes must not be above mostMinutes',
  'at-not-above-highest': 'atCelsius must not be above highestCelsius',
  'temperatures-rise': 'temperatures must rise from point to point',
  'masses-rise-factors-fall': 'masses must rise and factors must not rise from point to point',
  'ring-not-above-most': 'ringMinutes must not be above mostMinutes',
  'ring-lead-doubtful': 'ringMinutes must be below leadMinutes, and that below doubtfulMinutes',
  'above-0': 'must be above 0',
  'solvents-to-100': 'the solvents must not be more than 100 % together',
  'something-left': 'nothing is left but exempt solvent and water',
  'file-or-address': 'a paper needs either its file or its https address',
  'oven-or-room': 'a cure needs an oven or a room time',
};

const kinds: Readonly<Record<ValueKind, string>> = {
  number: 'a number',
  string: 'text in quotes',
  boolean: 'true or false',
  array: 'a list in [ ]',
  object: 'fields in { }',
};

export function englishSheetProblem(problem: SheetProblem): string {
  switch (problem.is) {
    case 'no-files':
      return 'no file NAME.json in this folder';
    case 'not-json':
      return `not JSON: ${problem.said}`;
    case 'not-files-id':
      return `must be "${problem.id}", the file's own name`;
    case 'demos-own': {
      const instead = problem.what === 'id' ? 'give the file and its id another name' : 'give the product its own name';
      return `"${problem.value}" is the demo's own: ${instead}`;
    }
    case 'broken':
      return rules[problem.rule];
    case 'missing':
      return 'is missing';
    case 'other-kind':
      return problem.wanted === undefined ? 'is of another kind than it must be' : `must be ${kinds[problem.wanted]}`;
    case 'one-of':
      return `must be one of ${problem.known.join(', ')}`;
    case 'unknown-fields':
      return `no sheet has ${problem.fields.join(', ')} here`;
    case 'too-low':
      return `${lengthOf(problem.of)} must be ${problem.itself ? 'at least' : 'above'} ${problem.limit}`.trim();
    case 'too-high':
      return `${lengthOf(problem.of)} must be ${problem.itself ? 'at most' : 'below'} ${problem.limit}`.trim();
    case 'wrong':
      return 'is not written as it must be';
  }
}

function lengthOf(kind: ValueKind | undefined): string {
  return kind === 'array' ? 'how many it holds' : kind === 'string' ? 'its length' : '';
}

export const faultsTold = (faults: readonly SheetFault[]): string =>
  faults
    .map(({ file, field, problem }) => `${file} ${field === '' ? '' : `${field}: `}${englishSheetProblem(problem)}`)
    .join('; ');
