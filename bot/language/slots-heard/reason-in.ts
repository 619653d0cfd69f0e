// A decision's reason, as its speaker has put it: what is left of the clause beside its thing and the words of its act.

import type { Hearing } from '../hearing.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import type { Clause } from './clause.ts';
import type { Piece } from './piece.ts';

/** In quotes; empty where none is said. */
export function reasonIn(clause: Clause, used: ReadonlySet<Piece>, { reasons }: Pick<Hearing, 'reasons'>): string {
  const { pieces, claims } = clause;
  const isThing = (piece: Piece): boolean =>
    used.has(piece) || piece.is === 'parts' || piece.is === 'one-of' || piece.is === 'time';
  const said = pieces
    .slice(0, reasonUpTo(clause))
    .flatMap((piece, i) =>
      i < reasonFrom(clause, isThing) || isThing(piece) ? [] : [{ typed: piece.typed, is: claims[i]?.is }],
    );
  // `que tiene un descuelgue`: what it has is the reason.
  const has = said.findIndex(({ is }, i) => is === 'reading' && said[i + 1]?.is === 'light');
  // `keeping 9 back since it has rust`
  const why = said.findIndex(({ typed }) =>
    [...reasons.always, ...reasons.behindMark].some(
      (phrase) => phrase.length === 1 && phrase[0] === withoutAccents(typed.toLowerCase()),
    ),
  );
  const first = said.findIndex(({ is }, i) => i > why && is !== 'act' && !saysNothing.has(is));
  const from = has >= 0 && first === has ? said.findIndex(({ is }, i) => i > has && !saysNothing.has(is)) : first;
  // `a run down the side`: where it is stays with it.
  const to = clause.isWeighed === true ? said.length : said.findLastIndex(({ is }) => !saysNothing.has(is));
  const reason = from === -1 ? [] : said.slice(from, to + 1).map(({ typed }) => typed);
  return /\p{L}{3}/u.test(reason.join(' ')) ? JSON.stringify(reason.join(' ')) : '';
}

/** `dejaré retenida la 9`: words ahead of the act that nobody knows may put it off. */
export function isLedInUnknown({ pieces, claims }: Clause): boolean {
  const act = claims.findIndex((claim) => claim?.is === 'act');
  const before = claims.slice(0, Math.max(act, 0));
  return (
    !pieces.slice(0, Math.max(act, 0)).some(({ is, isBreak }) => isBreak || is !== 'word') && before.includes(undefined)
  );
}

const saysNothing: ReadonlySet<string | undefined> = new Set(['light', 'filler', 'pronoun']);

/** `9 has fisheyes, park it`: what only says the act once more is no reason. */
function reasonUpTo({ pieces, claims }: Clause): number {
  const lastBreak = pieces.findLastIndex(({ isBreak }, i) => isBreak && i < pieces.length - 1);
  const behind = claims.slice(lastBreak + 1);
  const isOnlyAct = behind.every((claim) => claim?.is === 'act' || claim?.is === 'pronoun' || claim?.is === 'light');
  return lastBreak > 0 && isOnlyAct ? lastBreak + 1 : pieces.length;
}

/** `keeping 9 back, gel specks near the hub`: a word in front of the thing, and none behind it, is the act's. */
function reasonFrom({ pieces, claims, isWeighed }: Clause, isThing: (piece: Piece) => boolean): number {
  const ends = pieces.findIndex(({ isBreak }, i) => isBreak && i < pieces.length - 1);
  const thing = pieces.findIndex(isThing);
  const tells = (from: number, to: number): number =>
    claims.slice(from, to).filter((claim) => claim === undefined || !saysNothing.has(claim.is)).length;
  // `dejo retenida la 9 por descuelgues`: what leads in to the act, and a reason behind its thing.
  const act = claims.slice(0, Math.max(thing, 0)).findLastIndex((claim) => claim?.is === 'act');
  const isLedIn = act > 0 && !pieces.slice(0, thing).some(({ isBreak }) => isBreak);
  if (isLedIn && tells(thing + 1, claims.length) > 0) return act + 1;
  if (isWeighed !== true || thing < 0 || ends < thing) return 0;
  return tells(0, thing) === 1 && tells(thing + 1, ends + 1) === 0 ? ends + 1 : 0;
}
