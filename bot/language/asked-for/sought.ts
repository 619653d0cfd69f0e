// What is looked for in the record, wherever that stands: `can you bring up lot 7731`, `búscame la serie 4409`.

import type { LineContext } from '../reading.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { tokenize } from '../typed/tokens.ts';
import { withoutAccents } from '../typed/without-accents.ts';

export function soughtIn(line: string, context: LineContext): string | undefined {
  const tokens = tokenize(line, context.hearing);
  const numbered = tokens.filter(({ text }) => /\d/.test(text));
  const [only, other] = numbered;
  if (only === undefined || other !== undefined) return undefined;
  const before = tokens[tokens.indexOf(only) - 1];
  const key = before === undefined ? undefined : keyIn(before, context);
  return ['find', ...(key === undefined ? [] : [key]), only.text].join(' ');
}

function keyIn(token: Token, { hearing: { said } }: LineContext): string | undefined {
  const word = wordIn(token);
  const text = withoutAccents(token.text.toLowerCase());
  if (word === 'job' || said.lists.jobs.has(text)) return 'job';
  if (word === 'serial' || said.lists.serials.has(text)) return 'serial';
  return word === 'lot' ? 'lot' : undefined;
}
