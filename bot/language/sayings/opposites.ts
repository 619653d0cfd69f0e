// What undoes an act, and what the same words tell of a can and of a pot: `el bote 3 ya está cubierto` takes no lid off, however the
// can stands.

import { isOfCan, namesPot, ofCans } from '../slots-heard/clause.ts';
import type { Piece } from '../slots-heard/piece.ts';
import { isSaidAct, type SaidAct, saidActs } from '../tongues/said-words.ts';
import type { SaidMeaning } from '../tongues/sayings-typed.ts';
import type { Weighed } from './weigher.ts';

/** One side undoes the other. */
const sides: readonly (readonly [readonly SaidMeaning[], readonly SaidMeaning[]])[] = [
  [
    ['cover', 'shut', 'blanket'],
    ['uncover', 'lid', 'open'],
  ],
  [['stir'], ['stop']],
  [['fan on'], ['fan off', 'fan no']],
  [['supplied yes'], ['supplied no']],
  [['spray on'], ['spray off']],
  [['release', 'shipped'], ['hold']],
];

/** The acts that a line rather tells the opposite of. */
export function toldOtherwise(weighed: readonly Weighed<SaidMeaning>[]): ReadonlySet<SaidAct> {
  const share = (side: readonly SaidMeaning[]): number =>
    weighed.reduce((sum, each) => (side.includes(each.meaning) ? sum + each.share : sum), 0);
  const lighter = sides.flatMap(([one, other]) => (share(one) < share(other) ? one : other));
  return new Set(lighter.filter(isSaidAct));
}

/** What speaks for the covering of a pot speaks for the shutting of a can, where a can is named; and the other way round. */
export function ofWhatIsNamed(
  weighed: readonly Weighed<SaidMeaning>[],
  pieces: readonly Piece[],
): readonly Weighed<SaidMeaning>[] {
  const turned = isOfCan(pieces) ? ofCans : namesPot(pieces) ? ofPots : undefined;
  if (turned === undefined) return weighed;
  const shares = new Map<SaidMeaning, number>();
  for (const { meaning, share } of weighed) {
    const meant = isSaidAct(meaning) ? (turned[meaning] ?? meaning) : meaning;
    shares.set(meant, (shares.get(meant) ?? 0) + share);
  }
  return [...shares].map(([meaning, share]) => ({ meaning, share })).toSorted((one, other) => other.share - one.share);
}

const ofPots: Readonly<Partial<Record<SaidAct, SaidAct>>> = Object.fromEntries(
  saidActs.flatMap((pot) => (ofCans[pot] === undefined ? [] : [[ofCans[pot], pot]])),
);
