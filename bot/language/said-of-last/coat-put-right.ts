// An older coat that is put right by its part's name: `impeller-8 was really out of batch 2`, `la 8 en realidad se pintó a las 9:40`. It is
// offered as a correction of that coat, never as another one.

import { isSaid } from '../as-said/words.ts';
import type { LineContext } from '../reading.ts';
import { claimed } from '../slots-heard/phrases.ts';
import type { Piece } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { isUnsaid } from '../slots-heard/unsaid.ts';
import { isoLocal } from '../times/wall-clock.ts';
import type { Understands } from '../understood.ts';

export const coatPutRight: Understands = (line, context, strictly) => {
  const { otherwise } = context.hearing;
  if (line.endsWith('?') || !isSaid(line, otherwise.setsRight)) return undefined;
  const pieces = piecesOf(line, context) ?? [];
  const { claims } = claimed(pieces, context.hearing.said);
  if (isUnsaid(pieces, { claims }, context.hearing.said)) return undefined;
  const [part, another] = pieces.flatMap((piece) => (piece.is === 'parts' ? piece.names : []));
  // Another act is told: what is put right is not its coat.
  const isOther = claims.some((claim) => claim?.is === 'act' && claim.act !== 'coat');
  if (part === undefined || another !== undefined || isOther || !isCoated(part, context)) return undefined;
  const what = pieces.flatMap((piece) => saidOf(piece, context));
  if (what.length === 0) return undefined;
  const amend = `amend ${part} coat ${what.join(' ')} ${JSON.stringify(line)}`;
  return strictly(amend).kind === 'command' ? { is: 'likely', lines: [amend] } : undefined;
};

const isCoated = (part: string, context: LineContext): boolean =>
  context.live?.().parts.some(({ name, phase }) => name === part && phase !== 'bare') === true;

function saidOf(piece: Piece, { zone }: LineContext): readonly string[] {
  switch (piece.is) {
    case 'batch':
      return [`batch ${piece.number}`];
    case 'method':
      return [piece.method];
    case 'time':
      return [`at ${isoLocal(piece.at, zone)}`];
    default:
      return [];
  }
}
