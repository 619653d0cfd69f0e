// The parts that the shop has, by all that they are called in words: by name, by its word before the number, by the number alone.

import type { PartName } from '../../../core/ids.ts';
import { withoutAccents } from '../typed/without-accents.ts';

export interface NumberedPart {
  readonly name: PartName;
  readonly number: number | undefined;
}

export interface PartsKnown {
  readonly names: ReadonlyMap<string, PartName>;
  /** By the words before the number, all of them or the last: `pump-housing`, `housing`. */
  readonly roots: ReadonlyMap<string, readonly NumberedPart[]>;
  /** By all the words before the number, then by number. */
  readonly families: ReadonlyMap<string, ReadonlyMap<number, readonly PartName[]>>;
  readonly numbers: ReadonlyMap<number, readonly PartName[]>;
  /** The words that a name or a root may begin with: most words of a line are none. */
  readonly begins: ReadonlySet<string>;
}

/** Letters and figures apart, as names are compared: `Impeller_07` is `impeller`, `7`. */
export const piecesOfName = (text: string): readonly string[] =>
  (withoutAccents(text.toLowerCase()).match(/\p{L}+|\d+/gu) ?? []).map((piece) => piece.replace(/^0+(?=\d)/, ''));

let latest: { readonly parts: readonly PartName[]; readonly known: PartsKnown } | undefined;

/** Made anew only where the shop has other parts than it had for the line before. */
export function partsKnown(parts: readonly PartName[]): PartsKnown {
  const isSame = latest?.parts.length === parts.length && latest.parts.every((name, i) => name === parts[i]);
  if (latest === undefined || !isSame) latest = { parts, known: knownOf(parts) };
  return latest.known;
}

function knownOf(parts: readonly PartName[]): PartsKnown {
  const names = new Map<string, PartName>();
  const roots = new Map<string, NumberedPart[]>();
  const families = new Map<string, Map<number, PartName[]>>();
  const numbers = new Map<number, PartName[]>();
  for (const name of parts) {
    const words = piecesOfName(name);
    const last = words.at(-1) ?? '';
    const number = /^\d{1,6}$/.test(last) && words.length > 1 ? Number(last) : undefined;
    const root = number === undefined ? words : words.slice(0, -1);
    names.set(words.join('-'), name);
    for (let from = 0; from < root.length; from++) add(roots, root.slice(from).join('-'), { name, number });
    if (number === undefined) continue;
    const family = root.join('-');
    const numbered = families.get(family) ?? new Map<number, PartName[]>();
    families.set(family, numbered);
    add(numbered, number, name);
    add(numbers, number, name);
  }
  const begins = new Set([...names.keys(), ...roots.keys()].map((key) => key.split('-', 1)[0] ?? ''));
  return { names, roots, families, numbers, begins };
}

function add<Key, Of>(to: Map<Key, Of[]>, key: Key, one: Of): void {
  const all = to.get(key);
  if (all === undefined) to.set(key, [one]);
  else all.push(one);
}
