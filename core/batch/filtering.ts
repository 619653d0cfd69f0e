// What a mix was filtered through and into what, as far as somebody said, against what the sheet names.

import type { FilterTold } from '../filters.ts';
import { known } from '../known.ts';
import type { Objection } from '../objections.ts';
import { keysOf } from '../own-key.ts';
import type { Sheet } from '../products/sheet.ts';
import type { Rule } from '../rules.ts';
import type { Batch } from './batch.ts';

export function filterOfSheet({ filter, steps }: Sheet) {
  const { through, secondVessel } = steps?.filtering ?? {};
  return known({
    filterMicrometres: filter?.micrometres,
    filterOf: through,
    filteredInto: secondVessel === true ? ('second-vessel' as const) : undefined,
  });
}

/** Of what nobody told, nothing is held against it; a finer filter than the sheet's is none the worse. */
function against(sheet: Sheet, told: FilterTold): Objection | undefined {
  const asked: FilterTold = filterOfSheet(sheet);
  const { filterMicrometres: grade = told.filterMicrometres, filterOf = told.filterOf, filteredInto: into } = asked;
  const isOff: Readonly<Record<keyof FilterTold, boolean>> = {
    filterMicrometres: (told.filterMicrometres ?? 0) > (grade ?? 0),
    filterOf: told.filterOf !== undefined && told.filterOf !== filterOf,
    filteredInto: told.filteredInto === 'same-vessel' && into !== undefined,
  };
  const off = keysOf(isOff).filter((each) => isOff[each]);
  const only = (one: FilterTold): FilterTold => Object.fromEntries(off.map((each) => [each, one[each]]));
  return off.length === 0 ? undefined : { code: 'filter-not-as-sheet', told: only(told), asked: only(asked) };
}

export const filterAsSheet: Rule<{ readonly batch: Batch; readonly filter?: FilterTold }> = {
  code: 'filter-not-as-sheet',
  source: 'sheet',
  liftedBy: 'lead',
  since: 5,
  check: ({ batch: { sheet }, filter }) => (filter === undefined ? undefined : against(sheet, filter)),
};

/** What was told of the last filtering. */
export function lastFiltering({ entries }: Batch): FilterTold | undefined {
  const last = entries.findLast(({ fact }) => fact.type === 'MixFiltered');
  return last?.fact.type === 'MixFiltered' ? last.fact : undefined;
}

/** Whether it was not what the sheet asks: then it is filtered once more. */
export const isFilteredOtherwise = (batch: Batch): boolean =>
  against(batch.sheet, lastFiltering(batch) ?? {}) !== undefined;
