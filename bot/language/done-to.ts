// What an act was done to, where the act's own words do not say so: the catalogues only name it.

import type { Entry } from '../../core/history.ts';
import { defaultPlace, nameIn, nounOf, placeStream } from '../../core/ids.ts';

export interface DoneTo {
  readonly noun: 'batch' | 'can' | 'session' | 'part' | 'place';
  readonly name: string;
}

/** `undefined` where the act says it itself, where it was the crew's, or of the place that nobody names. */
export function doneTo({ stream, fact }: Pick<Entry, 'stream' | 'fact'>): DoneTo | undefined {
  if (saysItself.has(fact.type) || stream === placeStream(defaultPlace)) return undefined;
  const noun = nounOf(stream);
  return noun === 'crew' || noun === 'instrument' ? undefined : { noun, name: nameIn(stream) };
}

const saysItself: ReadonlySet<Entry['fact']['type']> = new Set([
  'BatchOpened',
  'CanOpened',
  'CoatApplied',
  'SessionBriefed',
]);
