// What a mix is filtered through, and into what.

import type { Micrometres } from './units.ts';

export const filterMaterials = ['glass-fibre', 'nylon', 'polypropylene', 'stainless-mesh'] as const;
export type FilterMaterial = (typeof filterMaterials)[number];

export const filteredIntos = ['second-vessel', 'same-vessel'] as const;
export type FilteredInto = (typeof filteredIntos)[number];

/** As far as somebody said. */
export interface FilterTold {
  readonly filterMicrometres?: Micrometres | undefined;
  readonly filterOf?: FilterMaterial | undefined;
  readonly filteredInto?: FilteredInto | undefined;
}
