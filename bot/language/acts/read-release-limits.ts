// What a job asks for before a release, `film adhesion 4B rub 50 second eyes`: each by the word of its act, wherever it stands.

import { isFailed } from '../../../core/failed.ts';
import { adhesionRatings } from '../../../core/grades.ts';
import { choices } from '../../../core/verbs/slot.ts';
import type { Hearing } from '../hearing.ts';
import type { Fault } from '../reading.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { verbAt } from '../verbs-typed.ts';
import { choiceAt, choicesOf } from './choices-on-line.ts';
import { filmAsked, type ReleaseLimitAt } from './read-film-rule.ts';
import { testAskedAt } from './read-tests-asked.ts';

const noneWords: ReadonlySet<string> = new Set(['no', 'none']);
const ratings = choicesOf([['rating', choices('rating', adhesionRatings, {})]]);
/** As a line of double rubs has it. */
const mostDoubleRubs = 1_000;

/** `undefined`: another thing stands there. */
export function releaseLimitAt(
  tokens: readonly Token[],
  at: number,
  hearing: Hearing,
  line: string,
): ReleaseLimitAt | Fault | undefined {
  if (wordIn(tokens[at]) === 'second-eyes') {
    // `second eyes`: by itself the word is of a trouble.
    const eyes = verbAt(tokens, at + 1, hearing);
    return { limit: { secondEyes: true }, to: eyes?.row.name === 'eyes' ? eyes.to : at + 1 };
  }
  // `no holidays`: what is asked is that there are none.
  const isNone = noneWords.has(wordIn(tokens[at])) && verbAt(tokens, at + 1, hearing)?.row.name === 'holidays';
  const verb = verbAt(tokens, isNone ? at + 1 : at, hearing);
  if (verb?.row.name === 'film') return filmAsked(tokens, verb.to, line);
  const test = verb && testAskedAt(tokens, verb, line);
  if (test !== undefined) return isFailed(test) ? test : { limit: { tests: [test.asked] }, to: test.to };
  if (verb?.row.name === 'adhesion') {
    const rating = choiceAt(tokens, verb.to, ratings);
    const leastAdhesion = adhesionRatings.find((each) => each === rating?.value);
    if (rating === undefined || leastAdhesion === undefined) return lacking(tokens[verb.to] ?? tokens[at], 'rating');
    return { limit: { leastAdhesion }, to: rating.to };
  }
  if (verb?.row.name === 'rub') {
    const count = tokens[verb.to];
    if (
      count?.kind !== 'number' ||
      !count.number.whole ||
      count.number.value < 1 ||
      count.number.value > mostDoubleRubs
    )
      return lacking(count ?? tokens[at], 'rubs');
    return { limit: { leastDoubleRubs: count.number.value }, to: verb.to + 1 };
  }
  return undefined;
}

const lacking = (token: Token | undefined, slot: 'rating' | 'rubs'): Fault => ({
  ...{ failed: 'left-over', needs: [slot] },
  ...(token !== undefined && { token }),
});
