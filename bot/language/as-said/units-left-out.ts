// A figure whose unit was left out: the units that would do are those whose figure is met with here. One that alone would do was meant;
// several are asked about, Celsius and Fahrenheit whatever the crew reads in.

import { isForeign } from '../own-units.ts';
import type { LineContext } from '../reading.ts';
import type { Strictly } from '../understood.ts';
import { wordsOf } from './words.ts';

/** Lines with their units, those that would do; none where the reading misses something else. */
export function unitsLeftOut(line: string, context: LineContext, strictly: Strictly): readonly string[] {
  const { fits } = context;
  const read = strictly(line);
  if (fits === undefined || read.kind !== 'misread' || read.misread.code !== 'unit-missing') return [];
  return read.misread.suggestions.filter((each) => {
    // No scale of a metric crew shows pounds.
    if (isForeign(each, context.units) && !/\d[CF]\b/.test(each)) return false;
    const act = strictly(each);
    return act.kind === 'command' && fits(act.command);
  });
}

/** `24 grados`: a temperature without its scale, which the figure alone tells as well. */
export function withoutDegrees(line: string, { hearing }: LineContext): string {
  const said = wordsOf(line);
  return said
    .filter(({ word }, i) => !(hearing.units.get(word) === 'degree' && /\d$/.test(said[i - 1]?.word ?? '')))
    .map(({ text }) => text)
    .join(' ')
    .replaceAll(/(\d)(?:°|º)(?= |$)/g, '$1');
}
