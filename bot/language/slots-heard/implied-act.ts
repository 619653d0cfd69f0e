// Which act is meant where no word says it: by the things and figures of the clause, and by how those things stand.

import type { PartName } from '../../../core/ids.ts';
import type { PartPhase } from '../../../core/part/part.ts';
import type { LineContext } from '../reading.ts';
import type { SaidAct } from '../tongues/said-words.ts';
import { verbNamed } from '../verbs-typed.ts';
import { type Clause, lightest } from './clause.ts';
import { potsWeighed } from './each-its-own.ts';
import type { Claim } from './phrases.ts';
import { wordOf } from './piece.ts';
import { partsNumbered } from './things.ts';

export interface Implied {
  /** The likeliest first; only the first, where nothing else fits. */
  readonly acts: readonly SaidAct[];
  /** Nobody takes it without a tap. */
  readonly isOffered: boolean;
}

export function impliedIn(clause: Clause, context: LineContext): Implied {
  const acts = actsIn(clause, context);
  if (isHeatAlone(clause, context)) return { acts: ['temp'], isOffered: true };
  return acts.length === 0 && isAmountAlone(clause) ? { acts: ['mix'], isOffered: true } : { acts, isOffered: false };
}

function actsIn({ pieces, claims }: Clause, context: LineContext): readonly SaidAct[] {
  if (potsWeighed(pieces, context).length > 1) return ['weigh'];
  const has = (is: (typeof pieces)[number]['is']): boolean => pieces.some((piece) => piece.is === is);
  const figures = new Set(pieces.flatMap((piece) => (piece.is === 'figure' ? [piece.of] : [])));
  const isReading = claims.some((claim) => claim?.is === 'reading');
  const numbered = numberedIn(pieces, context);
  const hasNumber = pieces.filter(({ is }) => is === 'number').length > (numbered.length > 0 ? 1 : 0);
  if (has('parts') || has('one-of') || numbered.length > 0) {
    if (figures.has('film')) return phaseIn(pieces, context) === 'flashing' ? ['wet', 'film'] : ['film', 'wet'];
    if (phaseIn(pieces, context) === 'dry' && pieces.some((piece) => piece.is === 'place' && piece.place === 'oven')) {
      return ['cure oven'];
    }
    if (isCleaned({ pieces, claims }, context)) return ['prep wiping', 'prep grease-off'];
    if (isPrepared(pieces, context)) return ['prep'];
    const isWarm = figures.has('temperature') || isInDegrees(pieces) || (hasNumber && isReading);
    if (isWarm) return phaseIn(pieces, context) === 'curing' ? ['temp'] : ['surface', 'temp'];
    return [];
  }
  if (isWeighing(pieces, context)) return ['weigh'];
  // `both in the oven are at 90`
  const isOfLoad =
    claims.some((claim) => claim?.is === 'many') && isReading && (figures.has('temperature') || hasNumber);
  if (isOfLoad && pieces.some((piece) => piece.is === 'place' && piece.place === 'oven')) return ['temp'];
  // `la 2: a 602 b 598`: of the pot that has this number.
  if (!has('can') && !has('batch') && pieces.filter(({ is }) => is === 'letter').length === 2) return ['weigh'];
  if (has('batch') && (figures.has('mass') || has('letter'))) return weighed(pieces) ? ['weigh'] : [];
  if (isReading && figures.has('temperature') && figures.size === 1) return ['temp', 'surface', 'air'];
  return [];
}

/** `2 lb of clear`: an amount of something that is nothing here. */
function isAmountAlone({ pieces, claims }: Clause): boolean {
  const [amount, more] = pieces.filter(({ is }) => is !== 'word');
  if (amount?.is !== 'figure' || amount.of !== 'mass' || more !== undefined) return false;
  const unknown = claims.filter((claim) => claim === undefined).length;
  return unknown <= mostOfProduct && claims.every((claim) => claim === undefined || saysLittle.has(claim.is));
}

/** `the clear stuff`, `demo clear`. */
const mostOfProduct = 2;

/** `8: 91`, `91 it says`: a number that nothing says the kind of, and only what is in cure can be as hot. */
function isHeatAlone({ pieces, claims }: Pick<Clause, 'pieces' | 'claims'>, context: LineContext): boolean {
  const numbers = pieces.filter(({ is }) => is === 'number');
  const named = pieces.filter(({ is }) => is === 'parts');
  const isOther = pieces.some(({ is }) => is !== 'number' && is !== 'parts' && is !== 'word' && is !== 'time');
  if (isOther || claims.some((claim) => claim === undefined || !saysLittle.has(claim.is))) return false;
  const isReading = claims.some((claim) => claim?.is === 'reading');
  const isOfOne = numbers.length + named.length === 2 && numbers.length > 0;
  // `8 reads 91` says it.
  return isOfOne ? !isReading && namesInCure(pieces, context) : isReading && named.length === 0 && numbers.length === 1;
}

const saysLittle: ReadonlySet<string> = new Set(['slot', 'filler', 'light', 'reading', 'pronoun']);

function namesInCure(pieces: Clause['pieces'], { live }: LineContext): boolean {
  const now = live?.();
  if (now === undefined) return false;
  const named = pieces.flatMap((piece) => (piece.is === 'parts' ? piece.names : partsNumbered(piece, now)));
  return named.length === 1 && now.parts.some(({ name, phase }) => name === named[0] && phase === 'curing');
}

/** `cleaned bracket-1`, which is bare: no gear, and how it was cleaned is left to be said. */
function isCleaned({ pieces, claims }: Pick<Clause, 'pieces' | 'claims'>, context: LineContext): boolean {
  const { weighed } = context.hearing;
  const isOpen = (claim: Claim | undefined): boolean =>
    claim === undefined || (claim.is === 'act' && claim.act === 'flush');
  return (
    phaseIn(pieces, context) === 'bare' &&
    !pieces.some(({ is }) => is === 'method' || is === 'figure' || is === 'batch') &&
    pieces.some((piece, i) => isOpen(claims[i]) && weighed.isWordOf(wordOf(piece) ?? '', 'prep wiping'))
  );
}

/** `preparadas las 3`, which are bare: how is left to be said. */
const isPrepared = (pieces: Clause['pieces'], context: LineContext): boolean =>
  phaseIn(pieces, context) === 'bare' &&
  pieces.some((piece) => verbNamed(wordOf(piece) ?? '', context.hearing)?.row.name === 'prep');

/** `b1 1200/1197`: two weights of a pot that waits for them. */
function isWeighing(pieces: Clause['pieces'], { live }: LineContext): boolean {
  const batch = pieces.find((piece) => piece.is === 'batch');
  const weights = pieces.filter(
    (piece) => (piece.is === 'number' && piece.value >= lightest) || (piece.is === 'figure' && piece.of === 'mass'),
  );
  const isRaw = live?.().batches.some(({ number, phase }) => number === batch?.number && phase === 'to-weigh') === true;
  return (
    isRaw &&
    weights.length === 2 &&
    !pieces.some((piece) => piece.is === 'parts' || (piece.is === 'figure' && piece.of !== 'mass'))
  );
}

/** `91 grados`: a number still, in whose degrees the crew reads. */
const isInDegrees = (pieces: Clause['pieces']): boolean =>
  pieces.some((piece) => piece.is === 'number' && piece.isDegrees);

const weighed = (pieces: Clause['pieces']): boolean =>
  pieces.filter(({ is }) => is === 'letter').length > 0 || pieces.filter((piece) => piece.is === 'figure').length === 2;

function phaseIn(pieces: Clause['pieces'], context: LineContext): PartPhase['is'] | undefined {
  const said = pieces.flatMap((piece) => (piece.is === 'parts' || piece.is === 'one-of' ? piece.names : []));
  const names = said.length > 0 ? said : numberedIn(pieces, context);
  const phases = new Set(context.live?.().parts.flatMap(({ name, phase }) => (names.includes(name) ? [phase] : [])));
  const [only] = phases;
  return phases.size === 1 ? only : undefined;
}

/** `el 8`, `8 reads 91`: by its number, behind an article or before the reading. */
function numberedIn(pieces: Clause['pieces'], { live, hearing }: LineContext): readonly PartName[] {
  const now = live?.();
  if (now === undefined) return [];
  const first = pieces.findIndex(({ is }) => is === 'number' || is === 'figure');
  const isSubject = pieces.filter(({ is }) => is === 'number' || is === 'figure').length === 2;
  return pieces.flatMap((piece, at) =>
    (isSubject && at === first) || hearing.said.articles.has(wordOf(pieces[at - 1]) ?? '')
      ? partsNumbered(piece, now)
      : [],
  );
}
