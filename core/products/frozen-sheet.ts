// A sheet as it was frozen into an event, read for ever: it was judged on its own day, so no later limit and no later group
// may turn it away. What must be there for the sums is there, in its kind; how much it may be is not asked again.

import { z } from 'zod';
import { isOwnKey } from '../own-key.ts';
import { Sheet } from './sheet.ts';

/** By its place in the sheet, `potLife.skinMinutes`: what is read where an older sheet has no such figure. */
export type StandIns = Readonly<Record<string, unknown>>;

/** A figure that every sheet must give, and not from the first one on, stands here with the cautious one for the others. */
const standIns: StandIns = {};

export const FrozenSheet = lenient(Sheet, standIns) as z.ZodType<Sheet>;

/** The same schema without its judgement: bounds, comparisons between figures and strangers among the fields pass. */
export function lenient(schema: z.core.$ZodType, standIns: StandIns, place = ''): z.ZodType {
  const within = (inner: z.core.$ZodType) => lenient(inner, standIns, place);
  if (schema instanceof z.ZodObject) {
    const fields = Object.entries(schema.shape).map(([name, field]) => {
      const at = place === '' ? name : `${place}.${name}`;
      const read = lenient(field, standIns, at);
      return [name, isOwnKey(standIns, at) ? read.prefault(standIns[at]) : read];
    });
    return z.object(Object.fromEntries(fields));
  }
  if (schema instanceof z.ZodOptional) return within(schema.unwrap()).optional();
  if (schema instanceof z.ZodDefault) return within(schema.unwrap()).default(schema.def.defaultValue);
  if (schema instanceof z.ZodArray) return z.array(within(schema.element));
  if (schema instanceof z.ZodDiscriminatedUnion) return z.union(schema.options.map(within));
  // A number becomes one of its unit: the unit is a name for the compiler alone.
  if (schema instanceof z.ZodPipe) return within(schema.in);
  if (schema instanceof z.ZodNumber) return z.number();
  if (schema instanceof z.ZodString) return z.string();
  if (schema instanceof z.ZodBoolean || schema instanceof z.ZodEnum || schema instanceof z.ZodLiteral) return schema;
  throw new Error(`a sheet's field of the kind ${schema._zod.def.type} has no lenient reader`);
}
