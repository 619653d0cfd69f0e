// One posted line: what the form holds, as the delivery that it becomes.

import { createHash } from 'node:crypto';
import { z } from 'zod';
import { type EpochMs, epochMs } from '../../core/units.ts';
import { fillLine } from '../language/line-fields.ts';
import type { Delivery } from '../talk/front-end.ts';

const longestLine = 500;
/** Two hundred parts with all that is known of each. */
const longestList = 32_000;

const Form = z.object({
  token: z.string().max(200),
  /** Drawn by the page, or by its script for each line. */
  form: z.string().min(1).max(80),
  line: z.string().refine((line) => line.length <= (line.includes('\n') ? longestList : longestLine)),
  /** Whose page it was typed on. */
  as: z.string().max(40),
  /** Of a tap: what its button says, and where on the page it stood. */
  label: z.string().max(200).optional(),
  place: z.string().max(200).optional(),
  /** What stood there until a moment ago, as the page's script saw it. */
  was: z.string().max(2_000).optional(),
  /** The last act on what its tile showed, as it was drawn. */
  lastAct: z.coerce.number().int().optional().catch(undefined),
  /** For how long the phone has kept it, in milliseconds. */
  age: z.coerce.number().min(0).max(86_400_000).catch(0),
});

export type SayForm = z.infer<typeof Form> & { readonly fields: ReadonlyMap<string, string> };

const fieldName = /^field:([\w-]+)$/;

/** `undefined` where it is no form of ours, or holds more than a line. */
export function readSayForm(body: Readonly<Record<string, unknown>>): SayForm | undefined {
  const form = Form.safeParse(body).data;
  if (form === undefined) return undefined;
  const fields = new Map<string, string>();
  for (const [name, value] of Object.entries(body)) {
    const id = fieldName.exec(name)?.[1];
    if (id !== undefined && typeof value === 'string' && value.length <= 200) fields.set(id, value);
  }
  return { ...form, fields };
}

/** Sent within this of being typed, a line counts from its arrival. */
const atOnceMs = 30_000;

/**
 * The same form sent again with the same words is the same delivery, and somebody else's is not. A line that waited for
 * the wireless counts from when it was typed.
 */
export function deliveryOf(form: SayForm, name: string, now: EpochMs): Delivery & { readonly id: string } {
  // A list has no fields, and its lines stay apart.
  const text = form.line.includes('\n') ? form.line : fillLine(form.line, form.fields);
  const digest = createHash('sha256')
    .update(JSON.stringify([name, form.form, text]))
    .digest('hex')
    .slice(0, 24);
  const id = `page:${digest}`;
  const said = { text, as: name, in: id, id };
  return form.age < atOnceMs ? said : { ...said, saidAt: epochMs(Math.round(now - form.age)) };
}
