// Which act is meant where no word says it: by the things and figures of the clause, and by how those things stand.

import type { PartPhase } from '../../../core/part/part.ts';
import type { LineContext } from '../reading.ts';
import type { SaidAct } from '../tongues/said-words.ts';
import type { Clause } from './clause.ts';

/** The likeliest first; only the first, where nothing else fits. */
export function impliedActs({ pieces, claims }: Clause, context: LineContext): readonly SaidAct[] {
  const has = (is: (typeof pieces)[number]['is']): boolean => pieces.some((piece) => piece.is === is);
  const figures = new Set(pieces.flatMap((piece) => (piece.is === 'figure' ? [piece.of] : [])));
  const isReading = claims.some((claim) => claim?.is === 'reading');
  const hasNumber = has('number');
  if (has('parts') || has('one-of')) {
    if (figures.has('film')) return phaseIn(pieces, context) === 'flashing' ? ['wet', 'film'] : ['film', 'wet'];
    if (phaseIn(pieces, context) === 'dry' && pieces.some((piece) => piece.is === 'place' && piece.place === 'oven')) {
      return ['cure oven'];
    }
    const isWarm = figures.has('temperature') || (hasNumber && isReading);
    if (isWarm) return phaseIn(pieces, context) === 'curing' ? ['temp'] : ['surface', 'temp'];
    return has('method') ? ['coat'] : [];
  }
  if (has('batch') && (figures.has('mass') || has('letter'))) return weighed(pieces) ? ['weigh'] : [];
  if (isReading && figures.has('temperature') && figures.size === 1) return ['temp', 'surface', 'air'];
  return [];
}

const weighed = (pieces: Clause['pieces']): boolean =>
  pieces.filter(({ is }) => is === 'letter').length > 0 || pieces.filter((piece) => piece.is === 'figure').length === 2;

function phaseIn(pieces: Clause['pieces'], { live }: LineContext): PartPhase['is'] | undefined {
  const names = pieces.flatMap((piece) => (piece.is === 'parts' || piece.is === 'one-of' ? piece.names : []));
  const phases = new Set(live?.().parts.flatMap(({ name, phase }) => (names.includes(name) ? [phase] : [])));
  const [only] = phases;
  return phases.size === 1 ? only : undefined;
}
