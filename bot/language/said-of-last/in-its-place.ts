// A line that puts right the speaker's last act, by what its words speak for: whatever it names of a kind that the act has goes
// in the place of the like one, wherever it stands. `quita esos 300, que eran 200`, `I dunked that in pot 2, not 1`.

import { meaningOf } from '../hearing.ts';
import type { LineContext } from '../reading.ts';
import { claimed } from '../slots-heard/phrases.ts';
import { type Piece, wordOf } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { methodsByWord } from '../trade-words.ts';
import { wordIn } from '../typed/token.ts';
import { tokenize } from '../typed/tokens.ts';

export interface InItsPlace {
  /** As said, each of one thing. */
  readonly to: readonly string[];
  /** What it was not, where that is said. */
  readonly from: string | undefined;
}

/** As likely as this it puts right what was said last: as much must fit the act besides. */
export const likelyOtherwise = 0.6;
/** As this behind a word with which people do so. */
export const leastOpened = 0.25;
/** And as this where it says no more than a thing or a figure. */
export const surelyOtherwise = 0.9;

/** How likely the line puts something right, by its words. */
export const shareOtherwise = (line: string, { hearing }: LineContext): number =>
  hearing.otherwiseWeighed.shareOf(line, 'otherwise');

interface Said {
  /** In figures. */
  readonly said: string;
  /** The act as its line. */
  readonly was: string;
  readonly share: number;
  readonly isOpened: boolean;
}

export function inItsPlace({ said, was, share, isOpened }: Said, context: LineContext): InItsPlace | undefined {
  const pieces = piecesOf(said, context) ?? [];
  const old = oldIn(was, context);
  const named = pieces.flatMap((piece, i) =>
    isThing(piece)
      ? [{ said: saidAt(pieces, i, context), isSame: isIn(old, piece), isDenied: isDenied(pieces, i, context) }]
      : [],
  );
  const isBare = !isOpened && pieces.length === named.length;
  const least = isBare ? surelyOtherwise : isOpened ? leastOpened : likelyOtherwise;
  // `not 1`, of what the act has.
  const isSaidOtherwise = share > least || named.some((one) => one.isSame && one.isDenied);
  if (!isSaidOtherwise || doubts(pieces, share, context)) return undefined;
  const others = named.filter(({ isSame }) => !isSame);
  const right = others.filter((one) => !one.isDenied);
  // `wait no 26 in here`: what the act has not got is not what it was not.
  const to = right.length > 0 ? right : others;
  const [from] = named.filter((one) => !to.includes(one));
  return to.length === 0 ? undefined : { to: [...new Set(to.map((one) => one.said))], from: from?.said };
}

/** Whoever is not sure, or only means to, puts nothing right. `1.8 kg will do` plans nothing else. */
function doubts(pieces: readonly Piece[], share: number, { hearing: { said } }: LineContext): boolean {
  return claimed(pieces, said).claims.some(
    (claim) => claim?.is === 'hedge' || (claim?.is === 'plan' && share < surelyOtherwise),
  );
}

function isThing(piece: Piece): boolean {
  switch (piece.is) {
    case 'parts':
      return piece.names.length === 1;
    case 'batch':
    case 'figure':
    case 'number':
    case 'method':
    case 'person':
    case 'time':
      return true;
    case 'one-of':
    case 'but':
    case 'can':
    case 'letter':
    case 'grade':
    case 'place':
    case 'solvent':
    case 'gas':
    case 'word':
      return false;
    default: {
      const never: never = piece;
      return never;
    }
  }
}

/** As a strict line has it. `B is 1198`: whose it is stands close before it; of a humidity it stands anywhere. */
function saidAt(pieces: readonly Piece[], at: number, { hearing }: LineContext): string {
  const piece = pieces[at];
  switch (piece?.is) {
    case 'batch':
      return `batch ${piece.number}`;
    case 'parts':
      return piece.names.join(' ');
    case 'method':
      return piece.method;
    default: {
      const letter = pieces.slice(Math.max(0, at - 2), at).find(({ is }) => is === 'letter');
      const isHumid =
        piece?.is === 'number' && pieces.some((each) => meaningOf(wordOf(each) ?? '', hearing) === 'humidity');
      const isPercent = piece?.is === 'figure' && piece.of === 'percent';
      const typed = isHumid ? `${piece.text}%` : isPercent ? piece.text : (piece?.typed ?? '');
      return letter?.is === 'letter' ? `${letter.letter} ${typed}` : typed;
    }
  }
}

/** `not 1`, `not in pot 1`, `no la 7`: it is what it was. */
function isDenied(pieces: readonly Piece[], at: number, { hearing: { said, otherwise } }: LineContext): boolean {
  for (let i = at - 1; i >= 0; i--) {
    const piece = pieces[i];
    const word = wordOf(piece);
    if (piece === undefined || word === undefined || piece.isBreak) return false;
    if (otherwise.byFirst.nots.get(word)?.includes(word) === true) return true;
    if (!said.light.has(word) && !said.articles.has(word) && !otherwise.rounds.has(word)) return false;
  }
  return false;
}

/** What the act has, by what it would be called. */
function oldIn(act: string, { hearing }: LineContext): ReadonlySet<string> {
  return new Set(
    tokenize(act, hearing).flatMap((token) => {
      if (token.kind === 'quantity') return [`${token.value}`];
      if (token.kind === 'number') return [`${token.number.value}`];
      const word = wordIn(token);
      const number = /(?<=[-_.])\d+$/.exec(word)?.[0];
      return [methodsByWord.get(word) ?? word, ...(number === undefined ? [] : [number])];
    }),
  );
}

const isIn = (old: ReadonlySet<string>, piece: Piece): boolean => keysOf(piece).some((key) => old.has(key));

function keysOf(piece: Piece): readonly string[] {
  switch (piece.is) {
    case 'parts':
      return piece.names;
    case 'batch':
      return [`${piece.number}`];
    case 'figure':
    case 'number':
      return [`${piece.value}`];
    case 'method':
      return [piece.method];
    default:
      return [];
  }
}
