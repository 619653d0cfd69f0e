// Which words of a line make phrases, and what they say. A known part, pot or can that stands inside an act's phrase is passed over:
// `took impeller-9 out`.

import { intendedAt } from '../intended.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { oneOfThem, type Piece, wordOf } from './piece.ts';
import type { Phrase, SaidTable, Says } from './said-table.ts';

/** What is said of a piece; a light word says nothing, and what is left `undefined` nobody knows. */
export type Claim = Says | { readonly is: 'light' } | { readonly is: 'slot' };

export interface Claimed {
  /** One a piece. */
  readonly claims: readonly (Claim | undefined)[];
  /** Acts by the index of their first piece; `to`: of the one after their last. */
  readonly phrases: readonly { readonly says: Says; readonly from: number; readonly to: number }[];
}

/** Pieces are made once a line, and looked at by many: what they say is found once. */
const found = new WeakMap<readonly Piece[], Claimed>();

export function claimed(pieces: readonly Piece[], table: SaidTable): Claimed {
  const known = found.get(pieces) ?? claimedAnew(pieces, table);
  found.set(pieces, known);
  return known;
}

function claimedAnew(pieces: readonly Piece[], table: SaidTable): Claimed {
  const claims: (Claim | undefined)[] = pieces.map((piece) => (isThing(piece) ? { is: 'slot' } : undefined));
  const phrases: { says: Says; from: number; to: number }[] = [];
  let rounded = 0;
  for (let from = 0; from < pieces.length; from++) {
    if (claims[from]?.is === 'act') continue;
    const found = phraseAt(pieces, from, table, claims);
    if (found === undefined) continue;
    const to = (found.at.at(-1) ?? from) + 1;
    // `sorry to be a pain`: inside a longer phrase `to be` plans nothing.
    if (to <= rounded && found.says.is !== 'act') continue;
    if (found.says.is === 'filler' && found.at.length > 1) rounded = to;
    for (const at of found.at) claims[at] = found.says;
    phrases.push({ says: found.says, from, to });
  }
  for (const [at, piece] of pieces.entries()) {
    const word = wordOf(piece);
    if (
      claims[at] === undefined &&
      word !== undefined &&
      (table.light.has(word) || word === oneOfThem || isPicture(word))
    )
      claims[at] = { is: 'light' };
    else if (claims[at] === undefined && piece.is !== 'word') claims[at] = { is: 'slot' };
    else if (claims[at] === undefined && table.toCome.some((form) => form.test(piece.typed.toLowerCase())))
      claims[at] = { is: 'plan' };
  }
  const words = pieces.map((piece) => ({ word: wordOf(piece) ?? '', typed: piece.typed }));
  for (const at of [...intendedAt(words, table), ...inSoLong(pieces, table)]) claims[at] = { is: 'plan' };
  return { claims, phrases };
}

/** `7 in the oven in 5 minutes`: when it will be, or how long it took, and never how long ago it was. */
const inSoLong = (pieces: readonly Piece[], { within }: SaidTable): readonly number[] =>
  pieces.flatMap((piece, at) =>
    piece.is === 'figure' && piece.of === 'duration' && within.has(wordOf(pieces[at - 1]) ?? '') ? [at - 1] : [],
  );

/** A thumb that is up tells nothing of what was done. */
const isPicture = (word: string): boolean => /\p{Extended_Pictographic}/u.test(word) && !/[\p{L}\d]/u.test(word);

const isThing = ({ is }: Piece): boolean => is !== 'word' && is !== 'method' && is !== 'place' && is !== 'gas';

function phraseAt(pieces: readonly Piece[], from: number, table: SaidTable, claims: readonly (Claim | undefined)[]) {
  const first = wordOf(pieces[from]);
  const phrases = (first === undefined ? undefined : table.byFirst.get(first)) ?? [];
  for (const phrase of phrases) {
    const at = matched(pieces, from, phrase, table, claims);
    if (at === undefined) continue;
    // `out of batch 1`: only where it came from.
    const isFrom = table.fromPot.has(phrase.words.join(' ')) && pieces[(at.at(-1) ?? from) + 1]?.is === 'batch';
    const found = { says: isFrom ? ({ is: 'filler' } as const) : phrase.says, at };
    return toldLater(found, pieces, from, phrases, table) ?? found;
  }
  return undefined;
}

/** `the lid on the 3 can is off`: of two acts that begin in one word, what is said of it behind its thing tells which. */
function toldLater(
  { says, at }: { readonly says: Says; readonly at: readonly number[] },
  pieces: readonly Piece[],
  from: number,
  phrases: readonly Phrase[],
  { beforeThing, light }: SaidTable,
) {
  const ends = at.at(-1) ?? from;
  if (!beforeThing.has(wordOf(pieces[ends]) ?? '')) return undefined;
  const breaks = pieces.findIndex(({ isBreak }, i) => i > ends && isBreak);
  const clause = pieces.slice(0, breaks === -1 ? pieces.length : breaks + 1);
  for (const { words, says: others } of phrases) {
    if (words.length !== 2 || !isOtherAct(says, others)) continue;
    const told = clause.findLastIndex((piece, i) => i > ends && wordOf(piece) === words[1]);
    if (told !== -1 && light.has(wordOf(clause[told - 1]) ?? '')) return { says: others, at: [from, told] };
  }
  return undefined;
}

const isOtherAct = (one: Says, other: Says): boolean => one.is === 'act' && other.is === 'act' && one.act !== other.act;

const marks = (piece: Piece, word: string | undefined): boolean =>
  (piece.is === 'batch' || piece.is === 'can') && withoutAccents(piece.typed.toLowerCase()).split(' ')[0] === word;

/** Things, and light words, may stand between the words of an act. */
const mostBetween = 4;

function matched(
  pieces: readonly Piece[],
  from: number,
  { words, says }: Phrase,
  { light, joints }: SaidTable,
  claims: readonly (Claim | undefined)[],
): readonly number[] | undefined {
  const at: number[] = [from];
  let between = 0;
  for (let i = from + 1; at.length < words.length; i++) {
    const piece = pieces[i];
    if (piece === undefined || claims[i]?.is === 'act' || pieces[i - 1]?.isBreak === true) return undefined;
    const word = wordOf(piece);
    // `tiré la mezcla 1`: the pot's own word belongs to the phrase as well.
    if (word === words[at.length] || (says.is === 'act' && marks(piece, words[at.length]))) {
      at.push(i);
      between = 0;
      continue;
    }
    const mayPass =
      says.is === 'act' && (isThing(piece) || (word !== undefined && light.has(word) && !joints.has(word)));
    between += 1;
    if (!mayPass || between > mostBetween) return undefined;
  }
  return at;
}
