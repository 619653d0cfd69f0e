// What several readings make of the same words is made once. Each line comes with a context of its own, and what was made for it
// goes with it.

import type { LineContext } from './reading.ts';

type Makes<Made> = (line: string, context: LineContext) => Made;

export function onceALine<Made>(make: Makes<Made>): Makes<Made> {
  const made = new WeakMap<LineContext, Map<string, { readonly made: Made }>>();
  return (line, context) => {
    const ofLine = made.get(context) ?? new Map<string, { readonly made: Made }>();
    const known = ofLine.get(line) ?? { made: make(line, context) };
    if (ofLine.size === 0) made.set(context, ofLine);
    ofLine.set(line, known);
    return known.made;
  };
}
