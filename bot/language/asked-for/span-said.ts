// Of which days a record is asked for, wherever that stands: `send this month's log over as a csv`.

import type { LineContext } from '../reading.ts';
import { readDate } from '../times/time-typed.ts';
import { whichStretch } from '../tongues/english/line-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { tokenize } from '../typed/tokens.ts';
import type { Strictly } from '../understood.ts';

const stretches: ReadonlySet<string> = new Set(['week', 'month', 'year', 'today', 'yesterday']);
const forms: ReadonlySet<string> = new Set(['csv', 'json', 'jsonl']);

/** What the strict reader makes nothing of is left out: it is shown which days were taken. */
export function spanIn(line: string, context: LineContext, strictly: Strictly): string {
  const words = tokenize(withoutOwn(line), context.hearing).flatMap((token) => saysWhen(token));
  const said = ['export', ...words].join(' ');
  return strictly(said).kind === 'question' ? said : 'export';
}

/** `this month's log`, `todays log`. */
const withoutOwn = (line: string): string => line.replaceAll(/(?<=\p{L}{3})['’]?s(?![\p{L}\d])/gu, '');

function saysWhen(token: Token): readonly string[] {
  const word = wordIn(token);
  if (stretches.has(word) || forms.has(word) || whichStretch.has(word)) return [word];
  return typeof readDate(token.text) === 'object' ? [token.text] : [];
}
