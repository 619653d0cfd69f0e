// A word as a thumb types it: `día` is `dia`, `año` is `ano`.

const beyondPlain = /[^\x20-\x7e]/;

export function withoutAccents(word: string): string {
  return beyondPlain.test(word) ? word.normalize('NFD').replace(/\p{M}/gu, '') : word;
}
