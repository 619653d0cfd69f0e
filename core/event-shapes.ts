// How the bodies of events have changed over the years. A body is written in the shape of its day and read in today's: what
// stands between is a list of steps for its type, each from one shape to the next. Nothing that was written is ever
// changed. A type's fields may grow by optional ones without a new shape.

import type { EventBody, Fact } from './history.ts';
import { ownValue } from './own-key.ts';

type Body = Readonly<Record<string, unknown>>;

/** Takes a body as it was written in one shape and gives it in the next. */
export type Upcast = (body: Body) => Body;

/** The steps of a type from its shape 1 on; its shape today is one more than their number. */
export type Upcasts = { readonly [Type in Fact['type']]?: readonly Upcast[] };

export const upcasts: Upcasts = {};

/** In which shape this body is written today. A correction has that of the fact that it puts in place. */
export function shapeOf(body: EventBody, steps: Upcasts = upcasts): number {
  if (body.type !== 'Amended') return 1 + (steps[body.type]?.length ?? 0);
  return body.to.kind === 'corrected' ? shapeOf(body.to.fact, steps) : 1;
}

/** A body of that shape as today's schema wants it. Throws where this program does not know the shape. */
export function inShapeOfToday(body: unknown, shape: number, steps: Upcasts = upcasts): unknown {
  if (!isBody(body)) return body;
  if (body.type === 'Amended') {
    const { to } = body;
    return isBody(to) && 'fact' in to ? { ...body, to: { ...to, fact: inShapeOfToday(to.fact, shape, steps) } } : body;
  }
  const ofType = ownValue(steps, String(body.type)) ?? [];
  if (shape > ofType.length + 1) {
    throw new Error(
      `${body.type} is of shape ${shape}, this program knows up to ${ofType.length + 1}: use a newer one`,
    );
  }
  return ofType.slice(shape - 1).reduce((older, step) => step(older), body);
}

function isBody(body: unknown): body is Body {
  return typeof body === 'object' && body !== null;
}
