// `spray inside the tank`: no line that lacks a word, but what no brief of this bot is for. It is told so, with the brief that says it.

import type { ActLine } from './acts/act-line.ts';
import type { Fault } from './reading.ts';
import { insides } from './tongues/english/line-words.ts';
import { wordIn } from './typed/token.ts';

/** Where a coat that does not read is said to be inside something. */
export function insideSaid({ verb, tokens }: ActLine): Fault | undefined {
  if (verb.row.name !== 'coat' && verb.row.name !== 'spray-on') return undefined;
  const token = tokens.find((each) => insides.has(wordIn(each)));
  return token === undefined ? undefined : { failed: 'inside-vessel', token, tries: ['brief vessel'] };
}
