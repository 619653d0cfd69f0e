// Somebody who does not answer: `ola is not answering in the booth`, `no contesta`. A telephone, a supplier and a machine do not answer
// either, and call nobody. Our own choice, no source.

import type { Alarm } from '../../core/session/session-commands.ts';
import { criedWords } from './cry.ts';
import type { CryTable } from './cry-words.ts';
import type { LineContext } from './reading.ts';
import { isPlaceRoot } from './trade-words.ts';
import { withoutAccents } from './typed/without-accents.ts';

export type Need =
  | { readonly is: 'certain' | 'open'; readonly alarm: Alarm }
  /** `likely`: what else is offered. */
  | { readonly is: 'bare'; readonly likely: readonly Alarm[] };

/** `isAround`: a word that stands round a cry. `isNamed`: one of the crew. */
export interface Around {
  readonly isAround: (word: string) => boolean;
  readonly isNamed: (word: string) => boolean;
}

/** Whoever is called by name, and does not stir, calls at once; of whom nobody knows where is asked, or counted down. */
export function unanswered(line: string, context: LineContext, { isAround, isNamed }: Around): Need | undefined {
  const { cries } = context.hearing;
  const spelt = criedWords(line, cries).join(' ');
  const said = cries.patterns.noAnswer.exec(spelt);
  if (said === null) return undefined;
  const [before = [], after = []] = [spelt.slice(0, said.index), spelt.slice(said.index + said[0].length)].map((part) =>
    part.split(' ').filter((word) => word !== '' && !cries.is.has(word)),
  );
  const rest = [...before, ...after];
  const isThere = isInPlace(rest, cries);
  if (isOfThing(before, after, cries)) return undefined;
  const isPerson = (word: string): boolean =>
    isNamed(word) || (cries.anybody.has(word) && !cries.articles.has(word) && !cries.farAway.has(word));
  // `kari is not answering the phone`: she may be anywhere, unless it is said where she is.
  const isAway = rest.some((word) => cries.farAway.has(word));
  const stirsNot = cries.patterns.stirsNot.test(said[0]);
  const stranger = strangerIn(
    rest,
    cries,
    (word) => isAround(word) || isPerson(word),
    stirsNot ? capitalsIn(line) : undefined,
  );
  const isOnly = rest.every((word) => isAround(word) || isPerson(word) || word === stranger);
  if (isAway) return isThere && rest.some(isNamed) ? { is: 'open', alarm: 'down' } : undefined;
  if (rest.some(isPerson)) {
    if (isOnly && (isThere || stirsNot)) return { is: 'certain', alarm: 'down' };
    return isOnly || isThere || stirsNot ? { is: 'open', alarm: 'down' } : undefined;
  }
  if (!isOnly) return undefined;
  return isThere ? { is: 'open', alarm: 'down' } : { is: 'bare', likely: ['down'] };
}

/** `in the booth`; not `the booth`. */
const isInPlace = (rest: readonly string[], cries: CryTable): boolean =>
  rest.some((word, i) => {
    const before = cries.articles.has(rest[i - 1] ?? '') ? rest[i - 2] : rest[i - 1];
    return (cries.things.has(word) || isPlaceRoot(word)) && cries.whereabouts.has(before ?? '');
  });

/** `the oven is not responding`, `no responde el horno`. */
function isOfThing(before: readonly string[], after: readonly string[], cries: CryTable): boolean {
  const who = before.at(-1) ?? after.find((word) => !cries.articles.has(word)) ?? '';
  const isThing = [cries.things, cries.everyday, cries.pots, cries.liquids].some((set) => set.has(who));
  if (!isThing && !isPlaceRoot(who)) return false;
  return before.length > 0 ? !isInPlace(before, cries) : cries.articles.has(after[0] ?? '') || after[0] === who;
}

/** `Ola`, whoever that is: one word that is none of a cry's. `capitals`: machines do as much, so that it must have one. */
function strangerIn(
  rest: readonly string[],
  cries: CryTable,
  isKnown: (word: string) => boolean,
  capitals: ReadonlySet<string> | undefined,
): string | undefined {
  const [word, other] = rest.filter((each) => !isKnown(each));
  if (word === undefined || other !== undefined || /\d/.test(word)) return undefined;
  if (cries.articles.has(rest[rest.indexOf(word) - 1] ?? '') || capitals?.has(word) === false) return undefined;
  return [cries.everyday, cries.farAway, cries.denials].some((set) => set.has(word)) ? undefined : word;
}

const capitalsIn = (line: string): ReadonlySet<string> =>
  new Set((withoutAccents(line).match(/(?<!\p{L})\p{Lu}\p{Ll}+/gu) ?? []).map((word) => word.toLowerCase()));
