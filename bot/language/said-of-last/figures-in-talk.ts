// The figures of an answer with words round them: `probe shows 86`, `5 kg in it, full can`, where the part's temperature or the can's
// size was asked. What the words speak for is weighed: they may be about something else.

import type { LineContext } from '../reading.ts';
import { type Claim, claimed } from '../slots-heard/phrases.ts';
import { type Piece, wordOf } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { isUnsaid } from '../slots-heard/unsaid.ts';
import { type SaidMeaning, saidMeanings } from '../tongues/sayings-typed.ts';

export interface InTalk {
  readonly line: string;
  /** The words are of what was asked, or say nothing. */
  readonly isCertain: boolean;
}

/** Words that nobody knows: with more it is about something else. */
const mostUnknown = 2;
const mostUnknownCertain = 1;
/** So likely it is about the act that was asked, which is likelier than any other since it was; as a tap, and beside the likeliest. */
const likely = 0.35;
const leastShare = 0.1;
const leastBeside = 0.3;
/** So little do the words speak for any act. */
const idle = 0.15;

/** `act`: the verb of the line that asks. */
export function figuresInTalk(line: string, act: string, context: LineContext): InTalk | undefined {
  const pieces = piecesOf(line, context) ?? [];
  const figures = pieces.flatMap((each) => (each.is === 'figure' || each.is === 'number' ? [each.text] : []));
  if (
    figures.length === 0 ||
    figures.length === pieces.length ||
    !pieces.every((each) => isFigure(each) || isWord(each))
  )
    return undefined;
  const { said, weighed } = context.hearing;
  const meaning = saidMeanings.find((each) => each === act);
  const typed = claimed(pieces, said);
  const claims = typed.claims.map((claim, i) => (isOf(meaning, pieces[i], context) ? ofAct : claim));
  if (isUnsaid(pieces, { ...typed, claims }, said)) return undefined;
  if (claims.some((claim) => claim?.is === 'act' && claim !== ofAct && claim.act !== act)) return undefined;
  const unknown = claims.filter((claim) => claim === undefined).length;
  if (unknown > mostUnknown) return undefined;
  const all = weighed.weigh(line);
  const most = all[0]?.share ?? 0;
  const share = all.find((each) => each.meaning === act)?.share ?? 0;
  const isIdle = unknown === 0 && most < idle;
  if (!isIdle && share < Math.max(leastShare, leastBeside * most)) return undefined;
  const isRough = claims.some((claim) => claim?.is === 'roughly');
  // `it shows 89`
  const isReadOut = claims.every((claim) => claim !== undefined && (claim.is === 'act' || readsOut.has(claim.is)));
  const isOfIt = isIdle || isReadOut || (share === most && share >= likely);
  return { line: figures.join(' '), isCertain: isOfIt && !isRough && unknown <= mostUnknownCertain };
}

/** What says no more than that something is read. */
const readsOut: ReadonlySet<Claim['is']> = new Set(['reading', 'pronoun', 'light', 'filler', 'slot']);

const ofAct: Claim = { is: 'reading' };
const isFigure = ({ is }: Piece): boolean => is === 'figure' || is === 'number';
const isWord = ({ is }: Piece): boolean => is === 'word';
const isOf = (
  meaning: SaidMeaning | undefined,
  piece: Piece | undefined,
  { hearing: { weighed } }: LineContext,
): boolean => meaning !== undefined && weighed.isWordOf(wordOf(piece) ?? '', meaning);

/** `measured 7: 98 99 97`, where the film of hub-7 was asked: the number is the part's. */
export function withoutNumberOf(asked: string, told: InTalk | undefined, { parts }: LineContext): InTalk | undefined {
  const number = asked
    .split(' ')
    .filter((word) => parts.includes(word))
    .map((part) => /(\d+)$/.exec(part)?.[1])[0];
  const [first, ...others] = told?.line.split(' ') ?? [];
  if (told === undefined || number === undefined || first !== number) return told;
  // `film 7`: nothing but which part.
  return others.length === 0 ? undefined : { ...told, line: others.join(' ') };
}
