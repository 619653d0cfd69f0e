// A check of breathing air as people begin it, `breathing air o2 20.9% co 4ppm`: the words that say that there is supplied air, and
// then what was read of it. Put as its reader takes it.

import type { Hearing } from './hearing.ts';
import { type Token, wordIn } from './typed/token.ts';
import { verbAt } from './verbs-typed.ts';

const readOfIt: ReadonlySet<string> = new Set(['o2', 'co', 'co2', 'oil', 'dew']);

/** `undefined` where it says anything else. */
export function breathingSaid(line: string, tokens: readonly Token[], hearing: Hearing): string | undefined {
  const verb = verbAt(tokens, 0, hearing);
  const last = tokens[(verb?.to ?? 0) - 1];
  if (verb?.row.name !== 'supplied' || last === undefined) return undefined;
  return tokens.slice(verb.to).some((token) => readOfIt.has(wordIn(token)))
    ? `breathing-check${line.slice(last.end)}`
    : undefined;
}
