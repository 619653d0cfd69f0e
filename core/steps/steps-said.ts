// What the maker's paper asks for is said before the act that it is of, once and in a line: on the card of the act before.

import type { FilterMaterial } from '../filters.ts';
import type { Method } from '../methods.ts';
import type { Sheet } from '../products/sheet.ts';
import type { Protection, StirSpeed } from '../products/sheet-steps.ts';
import type { Micrometres } from '../units.ts';

export type StepSaid =
  | { readonly step: 'protection'; readonly worn: readonly Protection[]; readonly work: 'mixing' | 'cleaning' | Method }
  | { readonly step: 'vortex'; readonly speed: StirSpeed | undefined }
  | {
      readonly step: 'filtering';
      readonly micrometres: Micrometres | undefined;
      readonly through: FilterMaterial;
      readonly secondVessel: boolean;
    };

/** Before the parts meet. */
export function saidBeforeMixing({ steps, blend }: Sheet): readonly StepSaid[] {
  const worn = steps?.protection?.mixing;
  return [
    ...(worn === undefined ? [] : [{ step: 'protection', worn, work: 'mixing' } as const]),
    ...(steps?.vortex === undefined || blend.way !== 'stir'
      ? []
      : [{ step: 'vortex', speed: steps.vortex.speed } as const]),
  ];
}

/** When the mix is ready to be filtered. */
export function saidBeforeFiltering({ steps, filter }: Sheet): readonly StepSaid[] {
  if (steps?.filtering === undefined) return [];
  const { through, secondVessel } = steps.filtering;
  return [{ step: 'filtering', micrometres: filter?.micrometres, through, secondVessel }];
}

/** What whoever applies wears; where the sheet tells it of no such method, what it tells of mixing. */
export function saidBeforeCoat({ steps }: Sheet, method: Method): readonly StepSaid[] {
  const { protection } = steps ?? {};
  if (protection === undefined) return [];
  const worn = protection.applying.find((each) => each.method === method)?.worn ?? protection.mixing;
  return [{ step: 'protection', worn, work: method }];
}

/** Before gear is cleaned or flushed, or a surface wiped, with solvent. */
export function saidBeforeCleaning({ steps }: Pick<Sheet, 'steps'>): readonly StepSaid[] {
  const worn = steps?.protection?.cleaning;
  return worn === undefined ? [] : [{ step: 'protection', worn, work: 'cleaning' }];
}
