// What can have happened to a batch. Times are the envelope's `happenedAt`; bodies carry figures only.

import { z } from 'zod';
import { Component, FromCan } from '../can/can-events.ts';
import { event } from '../event.ts';
import { filteredIntos, filterMaterials } from '../filters.ts';
import { ReadWith } from '../instrument-kinds.ts';
import { FrozenSheet } from '../products/frozen-sheet.ts';
import { editions } from '../rule-editions.ts';
import { Celsius, Grams, Litres, Micrometres, Percent, RevolutionsPerMinute } from '../unit-schemas.ts';
import { vesselMaterials } from '../vessels.ts';

export const BatchEvent = z.discriminatedUnion('type', [
  event('BatchOpened', {
    batch: z.number().int().positive(),
    /** The sheet as it stood: a later file never touches a running batch. */
    sheet: FrozenSheet,
    plannedGrams: Grams,
    place: z.string(),
    /** What the mixing vessel holds. */
    vesselLitres: Litres.optional(),
    vesselOf: z.enum(vesselMaterials).optional(),
    air: z.object({ celsius: Celsius, relativeHumidityPercent: Percent }).optional(),
  }),
  /** B met A: pot life runs, and the stirrer (or the induction) with it. */
  event('PartsWeighed', {
    partAGrams: Grams,
    partBGrams: Grams,
    fromCans: z.array(FromCan).optional(),
    instrument: ReadWith,
  }),
  /** One part alone. B meets A once both are in. */
  event('PartWeighed', {
    component: Component,
    grams: Grams,
    fromCans: z.array(FromCan).optional(),
    instrument: ReadWith,
  }),
  /** More of one part, to bring the ratio back: stirring starts again for the whole, pot life never does. */
  event('PartAdded', {
    component: Component,
    grams: Grams,
    fromCans: z.array(FromCan).optional(),
    instrument: ReadWith,
  }),
  /** From which cans a part came that had been weighed; `weighing`: by its number in the record. It happened with it. */
  event('CanNamed', { weighing: z.number().int().positive(), component: Component, fromCans: z.array(FromCan) }),
  event('StirrerStarted', { revolutionsPerMinute: RevolutionsPerMinute.optional() }),
  event('StirrerStopped', {}),
  event('PotUncovered', {}),
  event('PotCovered', {}),
  event('MixFiltered', {
    filterMicrometres: Micrometres.optional(),
    filterOf: z.enum(filterMaterials).optional(),
    filteredInto: z.enum(filteredIntos).optional(),
  }),
  /** Drained from a flow coat. It keeps the batch's age, and is filtered again before it is used. */
  event('MixCaught', { grams: Grams }),
  event('MixThickened', { seen: z.enum(['thick', 'gelled']) }),
  event('PotEmptied', { leftGrams: Grams.optional() }),
  /** From here on its acts are asked about by this edition of the rules, whatever edition judged them at the time. */
  event('JudgedAnew', { edition: z.literal(editions) }),
]);
export type BatchEvent = z.infer<typeof BatchEvent>;
