// A word as a thumb types it: `día` is `dia`, `año` is `ano`.

const beyondPlain = /[^\x20-\x7e]/;

export function withoutAccents(word: string): string {
  if (!beyondPlain.test(word)) return word;
  const known = plain.get(word);
  if (known !== undefined) return known;
  const made = word.normalize('NFD').replace(/\p{M}/gu, '');
  if (plain.size > mostKept) plain.clear();
  plain.set(word, made);
  return made;
}

/** The words of a line are looked up in a dozen tables. */
const plain = new Map<string, string>();
const mostKept = 1_000;
