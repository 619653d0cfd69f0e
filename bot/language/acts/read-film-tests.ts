// Tests of a cured film: `adhesion impeller-7 5B`, `rub impeller-7 50 ok`; `coupon` where a witness plate was tested.

import type { CommandOf } from '../../../core/commands.ts';
import { type AdhesionRating, adhesionRatings, type RubResult } from '../../../core/grades.ts';
import { type Fault, isFault } from '../reading.ts';
import { isOutside, slots } from '../slots.ts';
import type { Token } from '../typed/tokens.ts';
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

const results: ReadonlyMap<string, RubResult> = new Map([
  ['ok', 'no-effect'],
  ['none', 'no-effect'],
  ['no-effect', 'no-effect'],
  ['efecto', 'no-effect'],
  ['cambio', 'no-effect'],
  ['soft', 'softened'],
  ['softened', 'softened'],
  ['marked', 'softened'],
  ['through', 'through'],
]);
const resultOf = (token: Token): RubResult | undefined => (token.kind === 'word' ? results.get(token.word) : undefined);

export function readRub(act: ActLine): CommandOf<'rub'> | Fault {
  const [numbers, notNumbers] = split(act.tokens, (token) => token.kind === 'number');
  const [said, others] = split(notNumbers, (token) => resultOf(token) !== undefined);
  const named = partAndCoupon({ ...act, tokens: others });
  if (isFault(named)) return named;
  const [count, stray] = numbers;
  if (stray !== undefined) return leftOver(stray);
  if (count?.kind !== 'number') return { code: 'incomplete', needs: ['rubs'] };
  const { limits } = slots.rubs;
  if (!count.number.whole || (limits !== undefined && isOutside(limits, count.number.value))) {
    return { code: 'impossible', token: count, needs: ['rubs'], ...(limits !== undefined && { limits }) };
  }
  const [first, second] = said;
  if (second !== undefined) return leftOver(second);
  const result = first && resultOf(first);
  if (result === undefined) {
    const tries = ['no-effect', 'softened', 'through'].map((each) => `${act.line} ${each}`);
    return { code: 'incomplete', needs: ['rub-result'], tries };
  }
  return { verb: 'rub', ...named, doubleRubs: count.number.value, result };
}

type Named = Pick<CommandOf<'rub'>, 'part' | 'coupon'>;

function partAndCoupon(act: ActLine): Named | Fault {
  const gathered = sortPieces(act);
  if (isFault(gathered)) return gathered;
  const isCoupon = (word: string): boolean => word === 'coupon' || word === 'witness';
  const part = onePartFrom(gathered.words.filter((token) => !isCoupon(wordOf(token))));
  if (part === undefined) return { code: 'incomplete', needs: ['part'] };
  if (typeof part !== 'string') return part;
  return gathered.words.some((token) => isCoupon(wordOf(token))) ? { part, coupon: true } : { part };
}

function split(tokens: readonly Token[], is: (token: Token) => boolean): readonly [readonly Token[], readonly Token[]] {
  return [tokens.filter(is), tokens.filter((token) => !is(token))];
}
