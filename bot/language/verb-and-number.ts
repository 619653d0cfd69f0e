// `door 7 5m`, `rub 9 50 ok`: verb first, and the part by its number alone. Of acts that have words of their own for it the other
// readings know more.

import { partsKnown } from './parts-said/parts-known.ts';
import type { LineContext } from './reading.ts';
import { isSaidAct } from './tongues/said-words.ts';
import { tokenize } from './typed/tokens.ts';
import type { Understands } from './understood.ts';
import { verbAt } from './verbs-typed.ts';
import type { VocabularyRow } from './vocabulary.ts';

export const numberOfPart: Understands = (line, context, strictly) => {
  const strict = strictly(line);
  if (line.endsWith('?') || strict.kind !== 'unread') return undefined;
  const tokens = tokenize(line, context.hearing);
  const verb = verbAt(tokens, 0, context.hearing);
  const number = verb && tokens[verb.to];
  if (verb === undefined || number === undefined || isSaidAct(verb.row.name) || !isOfPart(verb.row)) return undefined;
  const [part, another] = /^\d{1,6}$/.test(number.text) ? numbered(Number(number.text), context) : [];
  if (part === undefined || another !== undefined) return undefined;
  const named = line.slice(0, number.start) + part + line.slice(number.end);
  return strictly(named).kind === 'command' ? { is: 'sure', line: named } : undefined;
};

const isOfPart = ({ needs, may }: VocabularyRow): boolean =>
  [...needs, ...may].some((slot) => slot === 'part' || slot === 'parts');

const numbered = (number: number, { parts }: LineContext) => partsKnown(parts).numbers.get(number) ?? [];
