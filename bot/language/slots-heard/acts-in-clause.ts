// Two acts in one clause, `7s dry so i shoved it in the oven`, `sacada la 8 y la 9 liberada`: where what is said before and what is
// said behind speak for one of them each, it is two clauses. What stands between goes with the second, where the first has its own.

import type { SaidAct } from '../tongues/said-words.ts';
import { actRows } from './act-rows.ts';
import type { Claim } from './phrases.ts';
import type { Piece } from './piece.ts';

interface Part {
  readonly pieces: readonly Piece[];
  readonly claims: readonly (Claim | undefined)[];
}

/** `acts`: those of its words that no other of them outweighs. */
interface Whole extends Part {
  readonly acts: readonly SaidAct[];
}

/** How much words speak for an act. */
export type Speaks = (pieces: readonly Piece[], act: SaidAct) => number;

export function partedIn(clause: Whole, speaks: Speaks): readonly [Part, Part] | undefined {
  const { pieces, claims } = listApart(clause);
  const actAt = (at: number): SaidAct | undefined => {
    const claim = claims[at];
    return claim?.is === 'act' ? claim.act : undefined;
  };
  const named = new Set(pieces.flatMap((_, at) => actAt(at) ?? []));
  // Of three, one that another of them outweighs is only how that one was done.
  const acts = named.size > 2 ? new Set([...named].filter((act) => clause.acts.includes(act))) : named;
  const [first, second] = acts;
  if (first === undefined || second === undefined || acts.size > 2) return undefined;
  const behind = pieces.findIndex((_, at) => actAt(at) === second);
  const ends = pieces.findLastIndex((_, at) => at < behind && actAt(at) === first);
  const things = pieces.flatMap((piece, at) => (at > ends && at < behind && isThing(piece) ? [at] : []));
  const isOwn = pieces.slice(0, ends).some(isThing);
  const last = things.length > 1 || isOwn ? things.at(-1) : undefined;
  // `argon over can 3 and can 4, lids on`: where a mark parts them, all that is listed before it is of the first.
  const mark = pieces.findLastIndex(({ isBreak }, i) => isBreak && i >= ends && i < behind) + 1;
  const at = mark > 0 ? mark : (last ?? (things[0] === undefined ? ends + 1 : things[0] + 1));
  const parts = [
    { pieces: pieces.slice(0, at), claims: claims.slice(0, at) },
    { pieces: pieces.slice(at), claims: claims.slice(at) },
  ] as const;
  // `the air temp is`: words of one act, unless each has its own thing.
  if (clause.acts.length < 2 && (last === undefined || !parts[1].pieces.some(isThing))) return undefined;
  if (!isRead(parts[0], first) || !isRead(parts[1], second)) return undefined;
  const [one, other] = parts.map((each) => speaks(each.pieces, first) - speaks(each.pieces, second));
  return (one ?? 0) > 0 && (other ?? 0) < 0 ? parts : undefined;
}

const isThing = ({ is }: Piece): boolean =>
  is === 'parts' || is === 'one-of' || is === 'batch' || is === 'can' || is === 'number';

/** `that steel housing` reads nothing: what is read of a thing has its figure. */
const isRead = ({ pieces }: Part, act: SaidAct): boolean =>
  actRows[act].isOfOne !== true || pieces.filter((piece) => isThing(piece) || piece.is === 'figure').length > 1;

/** The last of several parts by itself: the next act may be its own. */
function listApart({ pieces, claims }: Part): Part {
  const each = pieces.map((piece, at): readonly { readonly piece: Piece; readonly claim: Claim | undefined }[] => {
    const claim = claims[at];
    if (piece.is !== 'parts' || piece.names.length !== 2) return [{ piece, claim }];
    return piece.names.map((name) => ({ piece: { ...piece, names: [name], typed: name, isBreak: false }, claim }));
  });
  return { pieces: each.flat().map(({ piece }) => piece), claims: each.flat().map(({ claim }) => claim) };
}
