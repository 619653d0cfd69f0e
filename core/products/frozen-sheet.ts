// A sheet as it was frozen into an event, read for ever: it was judged on its own day, so no later limit and no later group
// may turn it away. What must be there for the sums is there, in its kind; how much it may be is not asked again.

import { z } from 'zod';
import { Sheet } from './sheet.ts';

/**
 * The same schema without its judgement: bounds, comparisons between figures and strangers among the fields pass. A figure
 * that a later sheet must give and an older one has not needs a step in core/event-shapes.ts, which says what stands in.
 */
export const FrozenSheet = lenient(Sheet) as z.ZodType<Sheet>;

function lenient(schema: z.core.$ZodType): z.ZodType {
  if (schema instanceof z.ZodObject) {
    const fields = Object.entries(schema.shape).map(([name, field]) => [name, lenient(field)]);
    return z.object(Object.fromEntries(fields));
  }
  if (schema instanceof z.ZodOptional) return lenient(schema.unwrap()).optional();
  if (schema instanceof z.ZodDefault) return lenient(schema.unwrap()).default(schema.def.defaultValue);
  if (schema instanceof z.ZodArray) return z.array(lenient(schema.element));
  if (schema instanceof z.ZodDiscriminatedUnion) return z.union(schema.options.map(lenient));
  // A number becomes one of its unit: the unit is a name for the compiler alone.
  if (schema instanceof z.ZodPipe) return lenient(schema.in);
  if (schema instanceof z.ZodNumber) return z.number();
  if (schema instanceof z.ZodString) return z.string();
  if (schema instanceof z.ZodBoolean || schema instanceof z.ZodEnum || schema instanceof z.ZodLiteral) return schema;
  throw new Error(`a sheet's field of the kind ${schema._zod.def.type} has no lenient reader`);
}
