// A line in the speaker's own order and words, read by what stands anywhere in it.

import { notNames } from '../tongues/english/line-words.ts';
import { wordIn } from '../typed/token.ts';
import { tokenize } from '../typed/tokens.ts';
import type { Understands } from '../understood.ts';
import { verbAt } from '../verbs-typed.ts';

export const slotsHeard: Understands = (line, { hearing }) => {
  const tokens = tokenize(line, hearing);
  if (line.endsWith('?') || tokens.some((token) => notNames.has(wordIn(token)))) return undefined;
  const act = tokens.findIndex((_, i) => i > 0 && verbAt(tokens, i, hearing) !== undefined);
  const [first, verb] = [tokens[0], tokens[act]];
  if (act === -1 || first === undefined || verb === undefined) return undefined;
  const lines = [
    `${verb.text.toLowerCase()} ${line.slice(0, verb.start).trim()} ${line.slice(verb.end).trim()}`.trim(),
  ];
  return { is: 'likely', lines };
};
