// Words that nobody knows as the known ones that they are a slip of: `bracket-8 is dyr`, `caot flange-4 rolelr`, `way batch 1 901 899`. What is
// read so is only ever offered.

import type { Hearing } from '../hearing.ts';
import { rootOf } from '../sayings/signs.ts';
import type { Weigher } from '../sayings/weigher.ts';
import { slipsBetween } from '../suggestions.ts';
import { saidActs } from '../tongues/said-words.ts';
import type { SaidMeaning } from '../tongues/sayings-typed.ts';
import { actRows } from './act-rows.ts';
import type { Claimed } from './phrases.ts';
import type { Piece } from './piece.ts';
import { lettersOf } from './said-table.ts';

/** The line with them, each way that they may be meant; none where it has none. */
export function slipsMended(
  line: string,
  pieces: readonly Piece[],
  claims: Claimed['claims'],
  hearing: Hearing,
): readonly string[] {
  // Of words alone any may be a slip of any.
  if (pieces.every(({ is }) => is === 'word' || is === 'place' || is === 'time')) return [];
  let mended: readonly string[] = [''];
  let from = 0;
  for (const [at, piece] of pieces.entries()) {
    const start = line.indexOf(piece.typed, from);
    const isUnknown = claims[at] === undefined && piece.is === 'word';
    const known = isUnknown ? knownFor(piece.word, at, hearing) : [];
    const before = line.slice(from, start);
    mended = (known.length === 0 ? [piece.typed] : known)
      .flatMap((each) => mended.map((so) => `${so}${before}${each}`))
      .slice(0, mostWays);
    from = start + piece.typed.length;
  }
  return mended.map((so) => so + line.slice(from)).filter((so) => so !== line);
}

/** More is no slip any more. */
const mostWays = 3;

/** In longer words a thumb may slip twice. */
const long = 7;

/** The nearest; two that are as near, whichever is meant. */
function knownFor(word: string, at: number, { said, noSlips, weighed }: Hearing): readonly string[] {
  const sounded = at === 0 ? said.heardAs.get(word) : undefined;
  if (sounded !== undefined) return [sounded];
  if (word.length < 3 || noSlips.has(word) || /\d/.test(word)) return [];
  const isPlain = at > 0 && weighed.isPlain(word);
  const unsaid = said.unsaidByLetters.get(lettersOf(word));
  // `nto dry`
  if (unsaid !== undefined && slipsBetween(word, unsaid) === 1) return [unsaid];
  const most = word.length < long ? 1 : 2;
  const near: { readonly known: string; readonly far: number }[] = [];
  for (let length = word.length - most; length <= word.length + most; length++) {
    for (const known of said.slipWords.get(length) ?? []) {
      if (known[0] !== word[0] && known.at(-1) !== word.at(-1)) continue;
      // `that old gauge` holds nothing, though what a hold is for may be said in any words.
      if (isPlain && takesAnyWords(known, said)) continue;
      if (tellsOtherwise(word, known, weighed)) continue;
      const far = slipsBetween(word, known);
      if (far <= most) near.push({ known, far });
    }
  }
  const least = Math.min(...near.map(({ far }) => far));
  return near.flatMap(({ known, far }) => (far === least ? [known] : [])).slice(0, mostWays);
}

/** `cubierto` is no slip of `abierto`, nor `uncapped` of `capped`: it is a word of its own, for acts that the other one never tells. */
function tellsOtherwise(word: string, known: string, { speaksFor, isWordOf }: Weigher<SaidMeaning>): boolean {
  const root = rootOf(known);
  if (word.length < long || root === rootOf(word)) return false;
  const told = saidActs.filter((act) => isWordOf(word, act));
  return told.length > 0 && told.every((act) => speaksFor(root, act) <= 0);
}

const takesAnyWords = (word: string, { byFirst }: Hearing['said']): boolean =>
  byFirst
    .get(word)
    ?.some(
      ({ words, says }) =>
        words.length === 1 && says.is === 'act' && actRows[says.act].takes?.includes('reason') === true,
    ) === true;
