// `8 in the oven now shows 91 degrees`: it is in cure already, and its heat was read. Only offered, since nobody may have read it.

import type { PartName } from '../../../core/ids.ts';
import type { LiveNow } from '../live-now.ts';
import type { Piece } from './piece.ts';

export function isReadInCure(
  named: readonly PartName[],
  pieces: readonly Piece[],
  live: Pick<LiveNow, 'parts'> | undefined,
): boolean {
  const inCure = new Set(live?.parts.flatMap(({ name, phase }) => (phase === 'curing' ? [name] : [])));
  const isHeat = (piece: Piece): boolean =>
    piece.is === 'number' ? piece.isDegrees : piece.is === 'figure' && piece.of === 'temperature';
  return named.length > 0 && named.every((name) => inCure.has(name)) && pieces.some(isHeat);
}
