// What a part's job still asks for, in one line: of the steel before its coat, of all that was coated before its release.

import { isPartLive } from '../../core/part/part.ts';
import type { PartStatus } from '../../core/part/part-status.ts';
import { askedForRelease, steelAsked } from '../../core/part/release-asked.ts';
import type { Telling } from './card-context.ts';

/** While it flashes, dries and cures nothing of it can be given yet: only who asks how it stands is told then (`always`). */
export function stillAskedLines(
  { shop, words, figures, now }: Telling,
  { part, phase }: Pick<PartStatus, 'part' | 'phase'>,
  when: 'in-hand' | 'always' = 'in-hand',
): readonly string[] {
  if (phase.is === 'bare' || phase.is === 'rework') {
    const before = steelAsked(shop, part, now);
    return before === undefined ? [] : [words.parts.askedBefore(before.job, before.lacking, figures)];
  }
  if (phase.is !== 'cured' && (when === 'in-hand' || !isPartLive(part))) return [];
  const asked = askedForRelease(shop, part, now);
  return asked === undefined || asked.lacking.length === 0
    ? []
    : [words.parts.stillAsked(asked.job, asked.lacking, figures)];
}
