// A part that came in, told in a sentence: `got railing-1 in for job 93, steel, 9 sq ft, good to 120C`. Which words speak of parts that
// come in is weighed by sayings; what of the line is a detail becomes a line of `part`, and the rest is talk.

import type { PartName } from '../../../core/ids.ts';
import type { LineContext } from '../reading.ts';
import { pairOf, rootsOf } from '../sayings/signs.ts';
import { clearly } from '../sayings/weigher.ts';
import { type Claim, claimed } from '../slots-heard/phrases.ts';
import { type Piece, wordOf } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { isUnsaid, unsaid } from '../slots-heard/unsaid.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import type { Strictly, Understands } from '../understood.ts';
import { type Told, toldIn } from './told-details.ts';

/** So likely it speaks of parts that come in, or it is about something else. */
const leastShare = 0.5;
/** Where as many new ones of a job are named as they are said to be, that says it by itself. */
const leastCounted = 0.01;
/** The same of a line that tells of an act besides, and of one that is taken without a tap. */
const surely = 0.9;
/** As likely as this it is only asked, or is not so. */
const mostIdle = 0.1;
/** The same of what stands round the details, which speak of parts by themselves. */
const mostIdleTalk = 0.4;

const goesOut = ['shipped', 'return customer', 'return supplier'] as const;

export const partTold: Understands = (typed, context, strictly) => {
  if (typed.endsWith('?') || !/\d/.test(typed) || strictly(typed).kind !== 'unread') return undefined;
  const told = toldIn(typed, context);
  if (told === undefined) return undefined;
  // Whatever it is called, the same is said of it.
  const share = shareOfPart(told.unnamed, context);
  if (share < (told.isCounted && told.isOfJob ? leastCounted : leastShare)) return undefined;
  // What leaves the shop does not come in.
  const talked = told.talk.join(' ');
  const gone = goesOut.reduce((sum, act) => sum + context.hearing.weighed.shareOf(talked, act), 0);
  if (idleIn(talked, context) + gone > mostIdleTalk) return undefined;
  const talk = talkOf(told, context);
  if (talk === 'unsaid' || (talk === 'with-act' && share < (told.isCounted ? leastShare : surely))) return undefined;
  const [line, ...others] = told.lines.filter((each) => areNew(each, context, strictly));
  if (line === undefined) return undefined;
  const isArrived = saysArrived(typed, context);
  // `6 impellers left for job 87` counts those that are there.
  if (told.isOnlyCounted && !isArrived && !(told.isOfJob && told.isFirst)) return undefined;
  const isAlone = others.length === 0 && told.isCertain && talk === 'of-parts';
  const isSure =
    isAlone &&
    share > (told.isCounted ? leastShare : surely) &&
    (told.isListed || (told.isCounted && told.hasPapers) || isArrived);
  return isSure ? { is: 'sure', line } : { is: 'likely', lines: [line, ...others] };
};

/** Of what is received besides, cans, no part is named. */
const shareOfPart = (line: string, context: LineContext): number =>
  idleIn(line, context) > mostIdle ? 0 : context.hearing.weighed.shareOf(line, 'part', 'received');

const idleIn = (line: string, { hearing }: LineContext): number => hearing.weighed.shareOf(line, 'nothing', 'asking');

/** Somebody has booked none of them yet. */
function areNew(line: string, { parts }: LineContext, strictly: Strictly): boolean {
  const booked = bookedBy(line, strictly);
  return booked.length > 0 && booked.every((part) => !parts.includes(part));
}

/** The parts of a line that books them in. */
export function bookedBy(line: string, strictly: Strictly): readonly PartName[] {
  const read = strictly(line);
  if (read.kind !== 'command' || read.command.verb !== 'part') return [];
  return [read.command, ...(read.command.more ?? [])].map(({ part }) => part);
}

/** What stands round the details: only what is said of parts that come in, or words that nobody knows, or another act. */
function talkOf({ talk, isNamedFirst }: Told, context: LineContext): 'unsaid' | 'of-parts' | 'unknown' | 'with-act' {
  const { said, weighed, columns } = context.hearing;
  const pieces = piecesOf(talk.join(' '), context) ?? [];
  const all = claimed(pieces, said);
  // `let's call them sleeve 1 to 12` plans nothing else.
  const claims = all.claims.map((claim, i) =>
    claim?.is === 'plan' && isNaming(pieces.slice(i), context) ? undefined : claim,
  );
  // `8 rails have arrived` does not begin as a question does.
  if (isNamedFirst ? claims.some((claim) => unsaid.has(claim?.is ?? '')) : isUnsaid(pieces, { claims }, said))
    return 'unsaid';
  const isOfParts = (piece: Piece | undefined): boolean =>
    rootsOf(wordOf(piece) ?? '').some((root) => weighed.speaksFor(root, 'part') > 0);
  if (all.claims.some((claim, i) => claim?.is === 'act' && !isOfParts(pieces[i]))) return 'with-act';
  const isKnown = pieces.every(
    (piece, i) => isOfParts(piece) || isSmall(all.claims[i]) || columns.has(wordOf(piece) ?? ''),
  );
  return isKnown ? 'of-parts' : 'unknown';
}

/** Words that plan are of parts that come in where sayings have them so, with the next that tells something. */
function isNaming([plan, ...behind]: readonly Piece[], { hearing: { said, weighed } }: LineContext): boolean {
  const next = behind.find((piece) => !said.light.has(wordOf(piece) ?? ''));
  const [root = ''] = rootsOf(wordOf(plan) ?? '');
  const [nextRoot = ''] = rootsOf(wordOf(next) ?? '');
  return weighed.speaksFor(pairOf(root, nextRoot), 'part') > clearly;
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
