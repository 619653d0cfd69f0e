// Tests of a cured film: `adhesion impeller-7 5B`, `rub impeller-7 50 ok`; `coupon` where a witness plate was tested.

import type { CommandOf } from '../../../core/commands.ts';
import { type AdhesionRating, adhesionRatings } from '../../../core/grades.ts';
import { type Fault, isFault } from '../reading.ts';
import type { Token } from '../typed/token.ts';
import { type ActLine, leftOver } from './act-line.ts';
import { onePartFrom, wordOf } from './read-names.ts';
import { sortPieces } from './sort-pieces.ts';

export function readAdhesion(act: ActLine): CommandOf<'adhesion'> | Fault {
  const [ratings, others] = split(act.tokens, (token) => ratingOf(token) !== undefined);
  const named = partAndCoupon({ ...act, tokens: others });
  if (isFault(named)) return named;
  const [first, second] = ratings;
  if (second !== undefined) return leftOver(second);
  const rating = first && ratingOf(first);
  if (rating === undefined) {
    return { code: 'incomplete', needs: ['rating'], tries: ['5B', '4B', '3B'].map((each) => `${act.line} ${each}`) };
  }
  return { verb: 'adhesion', ...named, rating };
}

function ratingOf(token: Token): AdhesionRating | undefined {
  const text = token.text.toUpperCase();
  return token.kind === 'word' || token.kind === 'number'
    ? adhesionRatings.find((rating) => rating === text)
    : undefined;
}

type Named = Pick<CommandOf<'adhesion'>, 'part' | 'coupon'>;

function partAndCoupon(act: ActLine): Named | Fault {
  const gathered = sortPieces(act);
  if (isFault(gathered)) return gathered;
  const isCoupon = (word: string): boolean => word === 'coupon';
  const part = onePartFrom(gathered.words.filter((token) => !isCoupon(wordOf(token))));
  if (part === undefined) return { code: 'incomplete', needs: ['part'] };
  if (typeof part !== 'string') return part;
  return gathered.words.some((token) => isCoupon(wordOf(token))) ? { part, coupon: true } : { part };
}

function split(tokens: readonly Token[], is: (token: Token) => boolean): readonly [readonly Token[], readonly Token[]] {
  return [tokens.filter(is), tokens.filter((token) => !is(token))];
}
