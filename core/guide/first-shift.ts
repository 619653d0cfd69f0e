// The step of whoever is in their first shift: of what they have in hand, from the air to the parts in cure, and then the
// countersign. Derived from the record each time; it has no state of its own.

import { countersigners } from '../crew/first-shift-decide.ts';
import type { FirstShift } from '../crew/first-shifts.ts';
import type { Entry } from '../history.ts';
import { nameIn, nounOf, numberIn, type PersonName, type StreamId } from '../ids.ts';
import type { Moment } from '../next-acts.ts';
import { liveParts, type Shop } from '../shop.ts';
import type { Guidance } from './guidance.ts';
import { guideFor } from './guide.ts';

/** `undefined` where they are in none. */
export function firstShiftStep(moment: Moment, name: PersonName): Guidance | undefined {
  const { crew } = moment.shop;
  const begun = crew.firstShifts.get(name);
  if (begun === undefined) return undefined;
  const step = guideFor(moment, name, (stream) => isInHand(moment.shop, stream, name));
  if (waitsForCountersign(moment, name, step, begun)) {
    const by = countersigners(crew, name);
    const doing = { is: 'countersign', person: name, by: by.length === 0 ? [name] : by } as const;
    return { doing, lasts: { by: 'nothing' }, never: { is: 'take-out-unproved' }, weight: 'last' };
  }
  const lacksParts =
    (step.doing.is === 'mix' || step.doing.is === 'name-can') &&
    liveParts(moment.shop).every(({ coats }) => coats.length > 0);
  return lacksParts ? { ...step, doing: { is: 'name-parts' } } : step;
}

/** Their parts are in cure, and nothing is left for their hands. */
export function isReadyToCountersign(moment: Moment, name: PersonName): boolean {
  return firstShiftStep(moment, name)?.doing.is === 'countersign';
}

function waitsForCountersign({ shop }: Moment, name: PersonName, step: Guidance, begun: FirstShift): boolean {
  const isRest = step.weight === 'idle' || step.doing.is === 'read-air';
  const cured = ({ fact, by, seq }: Entry) => fact.type === 'CureStarted' && by === name && seq > begun.seq;
  return isRest && liveParts(shop).some(({ entries }) => entries.some(cured));
}

/** What they have touched, up to the cure, and parts that nobody has coated yet. Sessions of spraying are everybody's. */
function isInHand(shop: Shop, stream: StreamId, name: PersonName): boolean {
  const isTheirs = (noun: { readonly entries: readonly Entry[] } | undefined) =>
    noun?.entries.some(({ by }) => by === name) ?? false;
  switch (nounOf(stream)) {
    case 'batch':
      return isTheirs(shop.batches.get(numberIn(stream)));
    case 'can':
      return isTheirs(shop.cans.get(numberIn(stream)));
    case 'part': {
      const part = shop.parts.get(nameIn(stream));
      return part?.cure === undefined && (part?.coats.length === 0 || isTheirs(part));
    }
    case 'session':
    case 'place':
    case 'crew':
    case 'instrument':
      return true;
  }
}
