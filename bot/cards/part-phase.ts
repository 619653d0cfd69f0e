// In which phase a part is told to be. One that was prepared is told so until its coat: whoever prepared it looks for that.

import { type Part, type PartPhase, phaseOfPart } from '../../core/part/part.ts';
import type { Telling } from './card-context.ts';

export const partPhaseTold = ({ words }: Telling, part: Part): string => words.phases[toldOf(part)];

function toldOf(part: Part): PartPhase['is'] | 'prepared' {
  const { is } = phaseOfPart(part);
  return is === 'bare' && part.prepared !== undefined ? 'prepared' : is;
}
