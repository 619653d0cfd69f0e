// A brief for a tank, a pit or their like: what it says of it, and the taps that answer: from outside for this session, or that
// the name means no such place.

import type { CommandOf } from '../../core/commands.ts';
import type { PlaceName, SessionNumber } from '../../core/ids.ts';
import { isConfined } from '../../core/session/confined-places.ts';
import type { Session } from '../../core/session/session.ts';
import type { CardAction } from './card.ts';
import { lineOf, type Telling, tap } from './card-context.ts';

/** Empty where nothing of it is closed in, or it was said that nobody is in it. */
export function confinedLines({ words, shop }: Telling, session: Session): readonly string[] {
  const { insideVessel, place, fromOutside } = session;
  if (fromOutside !== undefined) return [];
  return [
    ...(insideVessel ? [words.session.insideVessel] : []),
    ...(isConfined(place, shop.crew.spray.confined) ? [words.session.confinedPlace(place)] : []),
  ];
}

/** `of`: the session, or the coat that is asked about. */
export function confinedTaps(
  telling: Telling,
  of: SessionNumber | CommandOf<'coat'> | undefined,
  place?: PlaceName,
): readonly CardAction[] {
  const said = (command: Parameters<typeof lineOf>[1]['command']) =>
    lineOf(telling, { command, stance: { is: 'asked' } });
  return [
    ...(of === undefined
      ? []
      : [
          tap(
            telling,
            'from-outside',
            said(typeof of === 'number' ? { verb: 'from-outside', session: of } : { ...of, fromOutside: true }),
          ),
        ]),
    ...(place === undefined
      ? []
      : [tap(telling, 'not-confined', said({ verb: 'set', setting: { name: 'confined', place, on: false } }))]),
  ];
}
