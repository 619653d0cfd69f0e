// What happens to named parts: `coat impeller-7 1 spray`, `dry`, `cure impeller-7 oven 90C`, `temp`, `out`, `release`.

import type { Command, CommandOf } from '../../../core/commands.ts';
import { type Method, offeredMethods } from '../../../core/methods.ts';
import { type Fault, isFault } from '../reading.ts';
import { methodsByWord } from '../trade-words.ts';
import { type ActLine, leftOver } from './act-line.ts';
import { newApart, onePartFrom, partsFrom, wordOf } from './read-names.ts';
import { type NameToken, sortPieces } from './sort-pieces.ts';

export function readCoat(act: ActLine): CommandOf<'coat'> | Fault {
  const gathered = sortPieces(act);
  if (isFault(gathered)) return gathered;
  const { batch } = gathered;
  const methodTokens = gathered.words.filter((token) => methodsByWord.has(wordOf(token)));
  const passTokens = gathered.words.filter((token) => passWords.has(wordOf(token)));
  const { words, asNew } = newApart(
    gathered.words.filter((token) => !methodTokens.includes(token) && !passTokens.includes(token)),
  );
  const parts = partsFrom(words, act.context);
  if (isFault(parts)) return parts;
  const method = methodFrom(act.verb.method, methodTokens);
  if (method === undefined) {
    return { code: 'incomplete', needs: ['method'], tries: offeredMethods.map((way) => `${act.line} ${way}`) };
  }
  if (typeof method !== 'string') return method;
  return {
    verb: 'coat',
    parts,
    method,
    ...(batch !== undefined && { batch }),
    ...((passTokens.length > 0 || act.verb.pass !== undefined) && { pass: 'same-coat' as const }),
    ...(asNew && { asNew }),
  };
}

/** Another pass of the coat that is still wet. */
const passWords: ReadonlySet<string> = new Set(['touch-up', 'touchup', 'touched-up', 'same-coat']);

function methodFrom(verb: Method | undefined, tokens: readonly NameToken[]): Method | Fault | undefined {
  let method = verb;
  for (const token of tokens) {
    const said = methodsByWord.get(wordOf(token));
    if (method !== undefined && method !== said) return leftOver(token);
    method = said;
  }
  return method;
}

export function readCure(act: ActLine): CommandOf<'cure'> | Fault {
  const gathered = sortPieces(act);
  if (isFault(gathered)) return gathered;
  const ways = gathered.words.filter((token) => ['oven', 'room'].includes(wordOf(token)));
  const parts = partsFrom(
    gathered.words.filter((token) => !ways.includes(token)),
    act.context,
  );
  if (isFault(parts)) return parts;
  const [way, second] = ways;
  const { temperature } = gathered;
  if (second !== undefined) return leftOver(second);
  const named = way === undefined ? act.verb.way : wordOf(way);
  if (named === undefined) {
    return { code: 'incomplete', needs: ['way'], tries: ['oven', 'room'].map((word) => `${act.line} ${word}`) };
  }
  if (named === 'oven') {
    return {
      verb: 'cure',
      parts,
      way: { kind: 'oven', ...(temperature !== undefined && { setCelsius: temperature }) },
    };
  }
  const stray = act.tokens.find((token) => token.kind === 'quantity');
  return stray === undefined ? { verb: 'cure', parts, way: { kind: 'room' } } : leftOver(stray);
}

export function readTemp(act: ActLine): CommandOf<'temp'> | Fault {
  const gathered = sortPieces(act);
  if (isFault(gathered)) return gathered;
  const part = onePartFrom(gathered.words);
  if (typeof part === 'object') return part;
  const { temperature } = gathered;
  if (temperature === undefined) return { code: 'incomplete', needs: ['part-temperature'] };
  return { verb: 'temp', celsius: temperature, ...(part !== undefined && { part }) };
}

export function partsReader(verb: 'dry' | 'out' | 'release'): (act: ActLine) => Command | Fault {
  return (act) => {
    const gathered = sortPieces(act);
    if (isFault(gathered)) return gathered;
    // The only load comes out without its name.
    if (verb === 'out' && gathered.words.length === 0) return { verb, parts: [] };
    const parts = partsFrom(gathered.words, act.context);
    return isFault(parts) ? parts : { verb, parts };
  };
}

export function readDoor(act: ActLine): CommandOf<'door'> | Fault {
  const gathered = sortPieces(act);
  if (isFault(gathered)) return gathered;
  const { duration, words } = gathered;
  const parts = words.length === 0 ? [] : partsFrom(words, act.context);
  if (isFault(parts)) return parts;
  return { verb: 'door', parts, ...(duration !== undefined && { openMinutes: duration }) };
}
