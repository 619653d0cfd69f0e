// Air read with two thermometers, as people say it: `sling 24 17`, `air 24C wet bulb 17C`. Put as the reader of the air takes it.

import type { LineContext } from './reading.ts';
import { type Token, wordIn } from './typed/token.ts';
import { isIgnoredOn, meantOn, type VerbAt } from './verbs-typed.ts';

/** Nobody coats where it is as warm as this in degC: a sling of such numbers was read in degF. */
const warmestCelsius = 45;

/** `after`: what follows the verb. `undefined` where the line stands so already, or says anything else. */
export function wetBulbSaid(
  line: string,
  verb: VerbAt,
  after: readonly Token[],
  { hearing, units }: Pick<LineContext, 'hearing' | 'units'>,
): string | undefined {
  if (verb.row.name !== 'air') return undefined;
  const tokens = meantOn('air', after, hearing);
  if (verb.psychrometer === true) return slung(line, tokens, units);
  const wet = tokens.findIndex((token) => wordIn(token) === 'wet');
  const bulb = wet === -1 ? undefined : tokens[wet + 1];
  if (bulb?.kind !== 'word' || !isIgnoredOn('air', bulb.word, hearing)) return undefined;
  return line.slice(0, bulb.start) + line.slice(bulb.end);
}

/** Dry before wet, in whatever unit the speaker reads; a number without one counts in it. */
function slung(line: string, tokens: readonly Token[], units: LineContext['units']): string | undefined {
  const read = tokens.filter(isTemperature);
  const [first, second, third] = read;
  if (first === undefined || second === undefined || third !== undefined) return undefined;
  const values = read.map((token) => (token.kind === 'number' ? token.number.value : 0));
  const scale = units === 'us' || Math.min(...values) > warmestCelsius ? 'F' : 'C';
  const [dry, wet] = read.map((token) => (token.kind === 'number' ? `${token.text}${scale}` : token.text));
  const isWetFirst = wordIn(tokens[tokens.indexOf(first) - 1]) === 'wet';
  const said = isWetFirst ? `air ${wet} wet ${dry}` : `air ${dry} wet ${wet}`;
  return said + line.slice(second.end);
}

const isTemperature = (token: Token): boolean =>
  token.kind === 'number'
    ? token.number.other === undefined
    : token.kind === 'quantity' && token.quantity.is === 'temperature';
