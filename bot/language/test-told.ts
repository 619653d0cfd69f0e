// A test or a figure of the steel told in another order than its line has it: `no holidays on 7 at 500 V`, `salts 20 mg/m2 on hub-7`,
// `la 7 dio brillo 85`. The pieces are put in order, and the strict reader then accounts for every word.

import { filmTestNames } from '../../core/film-tests.ts';
import type { PartName } from '../../core/ids.ts';
import { partsAt } from './parts-said/parts-at.ts';
import { type PartsInLine, partsInLine } from './parts-said/parts-in-line.ts';
import type { LineContext } from './reading.ts';
import type { Token } from './typed/token.ts';
import { tokenize } from './typed/tokens.ts';
import { withoutAccents } from './typed/without-accents.ts';
import type { Understands } from './understood.ts';
import { verbAt } from './verbs-typed.ts';
import type { VocabularyName } from './vocabulary.ts';

/** Longer ones tell more than one thing. */
const mostTokens = 14;

const tests: ReadonlySet<VocabularyName> = new Set([...filmTestNames, 'adhesion', 'rub']);

interface Told {
  readonly verb: string;
  /** Without the words of the act. */
  readonly rest: readonly Token[];
  /** None was found: the count that was not said. */
  readonly count: readonly string[];
  /** `looks good`: people say so of much. */
  readonly isTap: boolean;
}

export const testTold: Understands = (line, context, strictly) => {
  if (/[?¿]/.test(line) || strictly(line).kind !== 'unread') return undefined;
  const tokens = tokenize(line, context.hearing);
  if (tokens.length > mostTokens) return undefined;
  const told = testIn(tokens, context) ?? steelIn(tokens, context);
  if (told === undefined) return undefined;
  const inLine = partsInLine(line, tokens, context);
  const lines = told.rest.flatMap((token) => {
    const at = tokens.indexOf(token);
    const { names, to } = partNamed(inLine, at) ?? { names: [], to: at };
    const [name, another] = names;
    const others = told.rest.filter((each) => {
      const i = tokens.indexOf(each);
      return (i < at || i >= to) && !isBefore(tokens, i, at, context);
    });
    if (name === undefined || another !== undefined) return [];
    const strict = [told.verb, name, ...told.count, ...others.map(({ text }) => text)].join(' ');
    const read = strictly(strict);
    return read.kind === 'command' ? [{ strict, command: JSON.stringify(read.command) }] : [];
  });
  // `7: pull-off 7 MPa` is one act whichever of the two is the part.
  const [first, ...others] = lines;
  if (first === undefined || others.some(({ command }) => command !== first.command)) return undefined;
  const only = first.strict;
  return told.isTap ? { is: 'likely', lines: [only] } : { is: 'sure', line: only };
};

/** By its name, or by its number where no other part has that: the strict reader says whether the rest is figures. */
function partNamed(
  inLine: PartsInLine,
  at: number,
): { readonly names: readonly PartName[]; readonly to: number } | undefined {
  const parts = partsAt(inLine, at);
  if (parts?.is === 'named' && parts.isSure) return parts;
  const text = inLine.tokens[at]?.text ?? '';
  const names = /^\d{1,6}$/.test(text) ? (inLine.known.numbers.get(Number(text)) ?? []) : [];
  return names.length === 1 ? { names, to: at + 1 } : undefined;
}

/** `on the` of `on the 7`: small words right before the part. */
function isBefore(tokens: readonly Token[], i: number, part: number, { hearing: { said } }: LineContext): boolean {
  return (
    i < part &&
    tokens
      .slice(i, part)
      .every(({ kind, text }) => kind === 'word' && said.beforePart.has(withoutAccents(text.toLowerCase())))
  );
}

function testIn(tokens: readonly Token[], { hearing }: LineContext): Told | undefined {
  for (const [at] of tokens.entries()) {
    const verb = verbAt(tokens, at, hearing);
    if (verb === undefined || !tests.has(verb.row.name)) continue;
    const before = tokens[at - 1];
    const isNone =
      verb.row.name === 'holidays' &&
      before !== undefined &&
      hearing.said.none.has(withoutAccents(before.text.toLowerCase()));
    const from = isNone ? at - 1 : at;
    const rest = tokens.filter((_, i) => i < from || i >= verb.to);
    return { verb: verb.row.name, rest, count: isNone ? ['0'] : [], isTap: false };
  }
  const look = tokens.findIndex(({ text }) => hearing.said.looks.has(withoutAccents(text.toLowerCase())));
  return look < 0 ? undefined : { verb: 'visual', rest: tokens.filter((_, i) => i !== look), count: [], isTap: true };
}

/** What the steel was measured by stands with the other pieces: its act takes them in any order. */
function steelIn(tokens: readonly Token[], { hearing }: LineContext): Told | undefined {
  const isOfSteel = tokens.some(
    ({ text }) =>
      steel.has(hearing.labels.get(withoutAccents(text.toLowerCase())) ?? '') ||
      hearing.said.water.has(text.toLowerCase()),
  );
  return isOfSteel ? { verb: 'prep', rest: tokens, count: [], isTap: false } : undefined;
}

const steel: ReadonlySet<string> = new Set(['salts', 'dust', 'conductivity']);
