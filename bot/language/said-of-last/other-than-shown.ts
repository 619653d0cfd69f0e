// An answer that names another way, or another part, than the card's tap: what else the tap says was shown, and stands.

import type { LineContext } from '../reading.ts';
import { methodsByWord } from '../trade-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { tokenize } from '../typed/tokens.ts';
import type { Open } from './last.ts';

/** `roller`, where the only one that is asked about goes by brush. */
export function otherWay(line: string, [way, ...more]: readonly Token[], { hearing }: LineContext): string | undefined {
  const old = tokenize(line, hearing).find((token) => methodsByWord.has(wordIn(token)));
  if (way === undefined || old === undefined || more.length > 0 || !methodsByWord.has(wordIn(way))) return undefined;
  return line.slice(0, old.start) + wordIn(way) + line.slice(old.end);
}

/** `the 8`, of a card that asks which part and had no room for it. */
export function otherPart({ line, place, bare }: Open, core: string, { parts }: LineContext): string | undefined {
  const [asked, ...more] = bare;
  if (place === undefined || asked === undefined || more.length > 0 || !parts.includes(asked)) return undefined;
  const isMeant = (part: string): boolean => part === core || /(?<!\d)0*(\d+)$/.exec(part)?.[1] === core;
  const [meant, ...others] = parts.filter(isMeant);
  return meant === undefined || others.length > 0 ? undefined : line.replace(asked, meant);
}
