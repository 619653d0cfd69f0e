// A figure whose unit was left out: the units that would do are those whose figure is met with here. One that alone would do was meant;
// several are asked about, Celsius and Fahrenheit whatever the crew reads in.

import { meaningOf } from '../hearing.ts';
import { likelyLines } from '../misread-line.ts';
import { isForeign } from '../own-units.ts';
import { isOfSeveral } from '../parts-said/one-of-many.ts';
import type { LineContext } from '../reading.ts';
import { thoseThatRead } from '../suggestions.ts';
import type { Strictly } from '../understood.ts';
import type { Heard } from './heard.ts';
import { wordsOf } from './words.ts';

/** Lines with their units, those that would do, the likeliest first; sure is only the crew's first unit, where no other would do. */
export function unitsLeftOut(line: string, context: LineContext, strictly: Strictly): readonly Heard[] {
  const { fits } = context;
  const unread = strictly(line);
  if (fits === undefined || unread.kind !== 'unread') return [];
  const { failed: fault } = unread.read;
  // `10oz` of a liquid has its unit, which may be either of two.
  if (fault.failed !== 'unit-missing' || !/^[\d.,]+$/.test(fault.token?.text ?? '')) return [];
  // `las 3 escuadras`: how many they are.
  const said = wordsOf(line).map(({ word }) => word);
  if (isOfSeveral(said[said.indexOf(fault.token?.text ?? '') + 1] ?? '', context)) return [];
  // `the last of batch 2`: the number is the pot's.
  const { potNumbered, canNumbered } = context.hearing.every;
  const numbered = [potNumbered, canNumbered]
    .map((each) => each.exec(line))
    .find((said) => said?.[1] === fault.token?.text);
  if (numbered !== undefined && numbered !== null && numbered.index > 0) return [];
  // `mezcla 2`: the order to mix it is the pot's name too.
  const mayBePot = numbered?.index === 0 && context.batches.some((batch) => `${batch}` === fault.token?.text);
  const reads = (each: string): boolean => strictly(each).kind === 'command';
  const suggestions = thoseThatRead(likelyLines(unread.read, context), reads);
  const isHumid = isHumidity(line, fault.token?.text ?? '', context);
  const would = suggestions.filter((each) => {
    if (isHumid && !/\d ?%/.test(each)) return false;
    // No scale of a metric crew shows pounds.
    if (isForeign(each, context.units) && !/\d[CF]\b/.test(each)) return false;
    const act = strictly(each);
    return act.kind === 'command' && fits(act.command);
  });
  return would.map((each) => ({ line: each, isSure: !mayBePot && would.length === 1 && each === suggestions[0] }));
}

/** `humidity is at 58`: close before it, and no other figure between. */
function isHumidity(line: string, figure: string, { hearing }: LineContext): boolean {
  const said = wordsOf(line).map(({ word }) => word);
  const before = said.slice(0, said.indexOf(figure)).slice(-mostBetween);
  const at = before.findLastIndex((word) => meaningOf(word, hearing) === 'humidity');
  return at >= 0 && !before.slice(at + 1).some((word) => /\d/.test(word) || meaningOf(word, hearing) === 'air');
}

const mostBetween = 4;

/** `24 grados`: a temperature without its scale, which the figure alone tells as well. */
export function withoutDegrees(line: string, { hearing }: LineContext): string {
  const said = wordsOf(line);
  return said
    .filter(({ word }, i) => !(hearing.units.get(word) === 'degree' && /\d$/.test(said[i - 1]?.word ?? '')))
    .map(({ text }) => text)
    .join(' ')
    .replaceAll(/(\d)(?:°|º)(?= |$)/g, '$1');
}
