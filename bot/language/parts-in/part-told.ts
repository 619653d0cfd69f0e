// A part that came in, told in a sentence: `got railing-1 in for job 93, steel, 9 sq ft, good to 120C`. Which words speak of parts that
// come in is weighed by sayings; what of the line is a detail becomes a line of `part`, and the rest is talk.

import type { LineContext } from '../reading.ts';
import { rootsOf } from '../sayings/signs.ts';
import { type Claim, claimed } from '../slots-heard/phrases.ts';
import { type Piece, wordOf } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { isUnsaid } from '../slots-heard/unsaid.ts';
import type { SaidMeaning } from '../tongues/sayings-typed.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import type { Strictly, Understands } from '../understood.ts';
import { type Told, toldIn } from './told-details.ts';

/** So likely it speaks of parts that come in, or it is about something else. */
const leastShare = 0.5;
/** The same of a line that tells of an act besides, and of one that is taken without a tap. */
const surely = 0.9;
/** As likely as this it is only asked, or is not so. */
const mostIdle = 0.1;

export const partTold: Understands = (line, context, strictly) => {
  if (line.endsWith('?') || !/\p{L}[-_. ]?\d/u.test(line) || strictly(line).kind !== 'unread') return undefined;
  const told = toldIn(line, context);
  if (told === undefined) return undefined;
  // Whatever it is called, the same is said of it.
  const share = shareOfPart(told.unnamed, context);
  if (share < leastShare) return undefined;
  const talk = talkOf(told, context);
  if (talk === 'unsaid' || (talk === 'with-act' && share < surely)) return undefined;
  const count = newIn(told.line, context, strictly);
  if (count === 0 || (told.counted !== undefined && told.counted !== count)) return undefined;
  const isAlone = count === 1 && told.isCertain && talk === 'of-parts';
  const isSure = isAlone && share > surely && (told.isListed || saysArrived(line, context));
  return isSure ? { is: 'sure', line: told.line } : { is: 'likely', lines: [told.line] };
};

/** Of what is received besides, cans, no part is named. */
function shareOfPart(line: string, { hearing: { weighed } }: LineContext): number {
  const shares = new Map(weighed.weigh(line).map(({ meaning, share }) => [meaning, share]));
  const of = (...meanings: SaidMeaning[]): number =>
    meanings.reduce((sum, meaning) => sum + (shares.get(meaning) ?? 0), 0);
  return of('nothing', 'asking') > mostIdle ? 0 : of('part', 'received');
}

/** How many it books in; none where somebody has booked one of them already. */
function newIn(line: string, { parts }: LineContext, strictly: Strictly): number {
  const read = strictly(line);
  if (read.kind !== 'command' || read.command.verb !== 'part') return 0;
  const named = [read.command, ...(read.command.more ?? [])].map(({ part }) => part);
  return named.some((part) => parts.includes(part)) ? 0 : named.length;
}

/** What stands round the details: only what is said of parts that come in, or words that nobody knows, or another act. */
function talkOf({ talk }: Told, context: LineContext): 'unsaid' | 'of-parts' | 'unknown' | 'with-act' {
  const { said, weighed, columns } = context.hearing;
  const pieces = piecesOf(talk.join(' '), context) ?? [];
  const all = claimed(pieces, said);
  if (isUnsaid(pieces, all, said)) return 'unsaid';
  const isOfParts = (piece: Piece | undefined): boolean =>
    rootsOf(wordOf(piece) ?? '').some((root) => weighed.speaksFor(root, 'part') > 0);
  if (all.claims.some((claim, i) => claim?.is === 'act' && !isOfParts(pieces[i]))) return 'with-act';
  const isKnown = pieces.every(
    (piece, i) => isOfParts(piece) || isSmall(all.claims[i]) || columns.has(wordOf(piece) ?? ''),
  );
  return isKnown ? 'of-parts' : 'unknown';
}

/** Not `about`, which makes a figure a rough one. */
const isSmall = (claim: Claim | undefined): boolean =>
  claim?.is === 'light' || claim?.is === 'filler' || claim?.is === 'pronoun' || claim?.is === 'many';

/** In so many words: `sent back` is said of parts, too. */
const saysArrived = (line: string, { hearing }: LineContext): boolean => {
  const typed = ` ${withoutAccents(line.toLowerCase()).replaceAll(/[^\p{L}\p{N}']+/gu, ' ')} `;
  return hearing.tongues.some(({ partsIn: { arrived, isNew } }) =>
    `${arrived}, ${isNew}`.split(', ').some((phrase) => typed.includes(` ${phrase} `)),
  );
};
