// `air 24C 48% mix 2kg`, `dry 7 cure 7 oven 90C`: acts that each begin with their word, one after the other with no mark between.

import { asSaid, plainlySaid } from './as-said/as-said.ts';
import type { LineContext } from './reading.ts';
import { onlyAsksOrDenies, slotsHeard } from './slots-heard/slots-heard.ts';
import type { Strictly, Understands } from './understood.ts';
import { verbNamed } from './verbs-typed.ts';
import type { VocabularyName } from './vocabulary.ts';

/** What these answer or go back to is said best by itself, and `ok` is said before anything. */
const saidAlone: ReadonlySet<VocabularyName> = new Set(['undo', 'amend', 'ok']);

/** More are no acts of one breath, and the ways to cut them too many. */
const mostActs = 6;

export const actsInTurn: Understands = (line, context, strictly) => {
  const words = line.split(' ');
  const begins = words.flatMap((word, at) => (beginsAct(word, context) ? [at] : []));
  if (begins[0] !== 0 || begins.length < 2 || begins.length > mostActs) return undefined;
  if (strictly(line).kind !== 'unread' || onlyAsksOrDenies(line, context)) return undefined;
  const lines = inTurn(words, begins, (each) => wholeAct(each, context, strictly));
  return lines === undefined || lines.length < 2 ? undefined : { is: 'several', lines };
};

function beginsAct(word: string, { hearing }: LineContext): boolean {
  const verb = verbNamed(word, hearing);
  return verb !== undefined && !saidAlone.has(verb.row.name);
}

/** What is certain by itself is so behind another act. */
function wholeAct(line: string, context: LineContext, strictly: Strictly): string | undefined {
  if (strictly(line).kind === 'command') return line;
  const understood = asSaid(line, context, strictly, plainlySaid(line, context)) ?? slotsHeard(line, context, strictly);
  return understood?.is === 'sure' && strictly(understood.line).kind === 'command' ? understood.line : undefined;
}

/** The longest first act that leaves acts behind it. A word for an act may also stand within one: `coat 7 1 spray`. */
function inTurn(
  words: readonly string[],
  [from = 0, ...later]: readonly number[],
  actOf: (line: string) => string | undefined,
): readonly string[] | undefined {
  for (const [i, at] of [...later.entries()].toReversed()) {
    const first = actOf(words.slice(from, at).join(' '));
    const behind = first === undefined ? undefined : inTurn(words, later.slice(i), actOf);
    if (first !== undefined && behind !== undefined) return [first, ...behind];
  }
  const whole = actOf(words.slice(from).join(' '));
  return whole === undefined ? undefined : [whole];
}
