// An act that is clearly told where nothing here is in the state that it is done in: `the stirrer is off` while no pot is open. It is
// understood all the same: its verb alone says what is lacking, or each thing that could be meant is offered.

import type { LiveNow } from '../live-now.ts';
import type { LineContext } from '../reading.ts';
import { type ActRow, actRows } from '../slots-heard/act-rows.ts';
import { cansLettered } from '../slots-heard/cans-lettered.ts';
import { figuresFor } from '../slots-heard/figures-for.ts';
import { holdsLost } from '../slots-heard/lost.ts';
import { mayBeOtherwise } from '../slots-heard/may-be-otherwise.ts';
import { type Claim, claimed } from '../slots-heard/phrases.ts';
import type { Piece } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { isUnsaid } from '../slots-heard/unsaid.ts';
import { isSaidAct, type SaidAct } from '../tongues/said-words.ts';
import type { Strictly } from '../understood.ts';
import { mostIdle } from './likeliest.ts';

/** More likely than all else that its words speak for. */
const leastShare = 0.4;
/** What its phrase says, the rest of its words must speak for as well: `closed the door` shuts no can. */
const leastPhrased = 0.08;
const leastBeside = 0.25;
/** A longer line speaks of something else. */
const mostPieces = 12;
/** Three are shown. */
const mostThings = 3;

/** `alone`: the act without its thing, which cannot be done. */
export type OfNothingHere =
  | { readonly is: 'alone'; readonly line: string }
  | { readonly is: 'of-each'; readonly lines: readonly string[] };

export function actOfNothingHere(line: string, context: LineContext, strictly: Strictly): OfNothingHere | undefined {
  const strict = strictly(line);
  if (line.endsWith('?') || strict.kind !== 'unread' || !mayBeOtherwise(strict.read)) return undefined;
  const pieces = piecesOf(line, context);
  const live = context.live?.();
  if (pieces === undefined || live === undefined || pieces.length > mostPieces || pieces.some(isNamed))
    return undefined;
  const { claims } = claimed(pieces, context.hearing.said);
  if (isUnsaid(pieces, { claims }, context.hearing.said) || holdsLost(pieces, claims, context.hearing))
    return undefined;
  const act = actTold(line, claims, context);
  if (act === undefined || fitsSome(actRows[act], live)) return undefined;
  const row = actRows[act];
  const figures = figuresFor(row, pieces, context);
  if (figures === undefined || pieces.some((piece) => piece.is === 'figure' && !figures.used.has(piece)))
    return undefined;
  const [verb = '', way = ''] = act.split(' ');
  const methods = pieces.flatMap((piece) => (piece.is === 'method' ? [piece.method] : []));
  const manner = row.takes?.includes('method') === true ? methods.slice(0, 1) : [];
  const lineOf = (thing: string): string =>
    [verb, thing, way, ...figures.texts, ...manner].filter((word) => word !== '').join(' ');
  const things = thingsOf(row, { ...live, cans: cansLettered(pieces, live.cans) }).slice(0, mostThings);
  return things.length === 0
    ? { is: 'alone', line: lineOf('') }
    : { is: 'of-each', lines: things.map((number) => lineOf(String(number))) };
}

/** What names a thing is read, or asked about, by that thing. */
const isNamed = ({ is }: Piece): boolean =>
  is === 'parts' || is === 'one-of' || is === 'batch' || is === 'can' || is === 'number';

/** Its phrase, or what its words speak for. */
function actTold(line: string, claims: readonly (Claim | undefined)[], { hearing }: LineContext): SaidAct | undefined {
  const phrased = new Set(claims.flatMap((claim) => (claim?.is === 'act' ? [claim.act] : [])));
  const { weigh, shareOf } = hearing.weighed;
  if (shareOf(line, 'nothing', 'asking') > mostIdle) return undefined;
  const [first] = weigh(line);
  const [only] = phrased;
  const share = only === undefined ? 0 : shareOf(line, only);
  if (phrased.size === 1 && share >= Math.max(leastPhrased, (first?.share ?? 0) * leastBeside)) return only;
  return first !== undefined && first.share >= leastShare && isSaidAct(first.meaning) ? first.meaning : undefined;
}

/** Then there is another reason why nobody could read it. */
function fitsSome({ on, parts, batches }: ActRow, live: LiveNow): boolean {
  switch (on) {
    case 'nothing':
      return true;
    case 'parts':
      return live.parts.some(({ phase }) => parts?.includes(phase) !== false);
    case 'batch':
      return live.batches.some(({ phase }) => batches?.includes(phase) === true);
    case 'can':
      return live.cans.some(({ isLidOff }) => isLidOff);
    default: {
      const never: never = on;
      return never;
    }
  }
}

/** In another state than the act wants: one of them may be meant. */
function thingsOf({ on }: ActRow, { batches, cans }: LiveNow): readonly number[] {
  if (on === 'can') return cans.map(({ number }) => number);
  return on === 'batch' ? batches.flatMap(({ number, phase }) => (phase === 'over' ? [] : [number])) : [];
}
