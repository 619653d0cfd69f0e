// How somebody is told things: in their language and units, at a time, and under whose name an answer goes out.

import { nobody } from '../../core/crew/alarm-decide.ts';
import { personIn } from '../../core/crew/crew.ts';
import type { PersonName } from '../../core/ids.ts';
import type { Shop } from '../../core/shop.ts';
import type { EpochMs } from '../../core/units.ts';
import type { Card } from '../cards/card.ts';
import { type Telling, withLinesShown } from '../cards/card-context.ts';
import { withFirstShift } from '../cards/first-shift-card.ts';
import { figuresFor } from '../language/figures.ts';
import type { Tongues } from '../language/tongues/tongues.ts';
import { type Answer, makeAnswer } from './answer.ts';
import type { Delivery } from './front-end.ts';

export interface ToldNow {
  readonly tongues: Tongues;
  readonly now: EpochMs;
  /** What whoever speaks was told last, newest first. */
  readonly before?: readonly Answer[];
}

/** How one person is told things; without a name, how the crew is. */
export function tellingOf({ tongues, now }: ToldNow, shop: Shop, name: PersonName | undefined): Telling {
  const { language, units } = personIn(shop.crew, name ?? '');
  return {
    words: tongues.wordsIn(language, units),
    figures: figuresFor({ profile: tongues.profileOf(language, units), units, zone: shop.crew.zone, now }),
    languages: tongues.languages,
    hearing: tongues.every,
    shop,
    now,
  };
}

/** Somebody was called to countersign by it already. */
const callsFor = ({ actions }: Card): boolean => actions.some(({ id }) => id.startsWith('countersign-'));

/** The answer to one delivery, for whoever said it and whom its card calls; in their first shift it leads them on. */
export function answering(
  told: ToldNow,
  delivery: Delivery,
  shop: Shop,
  content: Pick<
    Answer,
    'kind' | 'code' | 'recorded' | 'card' | 'forAll' | 'about' | 'moved' | 'asked' | 'actLine' | 'saidAct'
  >,
): Answer {
  const { as, in: said } = delivery;
  const own = tellingOf(told, shop, as);
  const { before = [] } = told;
  const how = {
    asks: content.code !== null,
    // Whoever asks what to do is told all of it.
    before: content.asked?.ask === 'what-now' ? [] : before.map(({ card }) => card),
    calls: content.recorded && !before.some(({ recorded, card }) => recorded && callsFor(card)),
  };
  const led = (telling: Telling, card: Card): Card => {
    const more = withFirstShift(telling, card, as, how);
    return more === card ? card : withLinesShown(telling, more);
  };
  const { forAll } = content;
  const card = led(own, content.card);
  return makeAnswer({
    at: own.figures.iso(told.now),
    in: said,
    as,
    to: [...new Set([as, ...card.ping])].filter((name) => name !== nobody),
    key: null,
    ...content,
    card,
    ...(forAll && { forAll: led(tellingOf(told, shop, undefined), forAll) }),
  });
}
