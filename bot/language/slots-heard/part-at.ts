// A known part where a line names it: `impeller-7`, `Impeller #7`, `impellers 1 to 3`, `1, 2 and 3` behind its word, `the pump
// housing` for the only one.

import type { PartName } from '../../../core/ids.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import type { SaidTable } from './said-table.ts';

export interface PartsKnown {
  readonly names: ReadonlyMap<string, PartName>;
  /** By the word before the number, and by the last of several: `pump-housing`, `housing`. */
  readonly roots: ReadonlyMap<string, readonly NumberedPart[]>;
}

interface NumberedPart {
  readonly name: PartName;
  readonly number: number | undefined;
}

const pieces = (text: string): readonly string[] =>
  withoutAccents(text.toLowerCase())
    .split(/[-_./# ]+/)
    .filter((piece) => piece !== '');

/** Made once a line, however often it is read. */
const made = new WeakMap<readonly PartName[], PartsKnown>();

export function partsKnown(parts: readonly PartName[]): PartsKnown {
  const known = made.get(parts) ?? knownOf(parts);
  made.set(parts, known);
  return known;
}

function knownOf(parts: readonly PartName[]): PartsKnown {
  const roots = new Map<string, NumberedPart[]>();
  for (const name of parts) {
    const words = pieces(name);
    const last = words.at(-1) ?? '';
    const number = /^\d+$/.test(last) ? Number(last) : undefined;
    const root = number === undefined ? words : words.slice(0, -1);
    for (let from = 0; from < root.length; from++) {
      const key = root.slice(from).join('-');
      const all = roots.get(key);
      if (all === undefined) roots.set(key, [{ name, number }]);
      else all.push({ name, number });
    }
  }
  return { names: new Map(parts.map((name) => [pieces(name).join('-'), name])), roots };
}

export interface PartsAt {
  readonly names: readonly PartName[];
  /** Which of them is not said. */
  readonly isOneOf: boolean;
  readonly to: number;
}

const mostWords = 5;

export function partsAt(
  tokens: readonly Token[],
  from: number,
  known: PartsKnown,
  table: SaidTable,
): PartsAt | undefined {
  const first = tokens[from];
  if (first?.kind !== 'word') return undefined;
  for (let to = Math.min(tokens.length, from + mostWords); to > from; to--) {
    const words = tokens.slice(from, to).flatMap(({ text }) => pieces(text));
    const exact = known.names.get(words.join('-'));
    if (exact !== undefined) return withOthers(tokens, { exact, to }, known, table);
    const root = rootOf(words.join('-'), known);
    if (root === undefined) continue;
    const all = root.parts;
    const numbers = numbersAt(tokens, to, table, root.isPlural);
    if (numbers !== undefined) {
      const named = numbers.numbers.map((number) => all.filter((part) => part.number === number));
      // A number that no such part has: nothing is guessed.
      if (named.some((found) => found.length !== 1)) return undefined;
      return { names: named.flatMap((found) => found.map(({ name }) => name)), isOneOf: false, to: numbers.to };
    }
    return { names: all.map(({ name }) => name), isOneOf: all.length > 1, to };
  }
  return undefined;
}

function rootOf(key: string, { roots }: PartsKnown) {
  const parts = roots.get(key);
  if (parts !== undefined) return { parts, isPlural: false };
  const single = key.endsWith('es')
    ? (roots.get(key.slice(0, -1)) ?? roots.get(key.slice(0, -2)))
    : roots.get(key.replace(/s$/, ''));
  return single === undefined ? undefined : { parts: single, isPlural: true };
}

/** `impeller-1 to 3`, `impeller-1 and 2`: more of the same word. */
function withOthers(
  tokens: readonly Token[],
  { exact, to }: { readonly exact: PartName; readonly to: number },
  known: PartsKnown,
  table: SaidTable,
): PartsAt {
  const number = Number(/\d+$/.exec(exact)?.[0]);
  const root = exact.replace(/[-_./]?\d+$/, '');
  const joint = wordIn(tokens[to]);
  const next = tokens[to + 1];
  const isRange = table.ranges.has(joint) && joint !== 'until';
  if (next?.kind !== 'number' || !(isRange || table.joints.has(joint)) || Number.isNaN(number)) {
    return { names: [exact], isOneOf: false, to };
  }
  const last = next.number.value;
  const wanted = isRange && last > number ? upTo(number, last) : isRange ? [] : [number, last];
  const named = wanted.flatMap(
    (each) => known.roots.get(pieces(root).join('-'))?.filter((part) => part.number === each) ?? [],
  );
  if (named.length !== wanted.length || named.length === 0) return { names: [exact], isOneOf: false, to };
  return { names: named.map(({ name }) => name), isOneOf: false, to: to + 2 };
}

const longestRow = 60;
const upTo = (from: number, to: number): readonly number[] =>
  to - from > longestRow ? [] : Array.from({ length: to - from + 1 }, (_, i) => from + i);

interface NumbersAt {
  readonly numbers: readonly number[];
  readonly to: number;
}

/** `7`, `# 7`, `1-3`, `1 to 3`, `1, 2 and 3`. Without a joint only behind a plural: in `impeller 7 1` the second is the pot. */
function numbersAt(tokens: readonly Token[], from: number, table: SaidTable, isPlural: boolean): NumbersAt | undefined {
  let at = from;
  while (['#', 'no', 'number', 'num'].includes(wordIn(tokens[at]))) at += 1;
  const first = rowAt(tokens, at, table);
  if (first === undefined) return undefined;
  const numbers = [...first.numbers];
  let to = first.to;
  for (;;) {
    const isJoined = table.joints.has(wordIn(tokens[to]));
    const next = rowAt(tokens, isJoined ? to + 1 : to, table);
    // Behind a joint a figure may begin another act; behind none it belongs to the list where the list goes on with a joint.
    if (next === undefined || !(isJoined || isPlural)) break;
    numbers.push(...next.numbers);
    to = next.to;
  }
  return { numbers, to };
}

function rowAt(tokens: readonly Token[], at: number, table: SaidTable): NumbersAt | undefined {
  const token = tokens[at];
  const [, low, high] = /^(\d{1,4})(?:-|\.\.)(\d{1,4})$/.exec(token?.text ?? '') ?? [];
  if (low !== undefined) return { numbers: upTo(Number(low), Number(high)), to: at + 1 };
  if (token?.kind !== 'number' || !token.countable || !/^\d+$/.test(token.text)) return undefined;
  const last = tokens[at + 2];
  if (table.ranges.has(wordIn(tokens[at + 1])) && last?.kind === 'number' && last.number.value > token.number.value) {
    return { numbers: upTo(token.number.value, last.number.value), to: at + 3 };
  }
  return { numbers: [token.number.value], to: at + 1 };
}
