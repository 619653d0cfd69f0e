// Who sprays, who else is near, and whose dates nobody knows: asked on the brief and where spraying is objected to, each tap with
// what it records on it.

import type { PersonName } from '../../core/ids.ts';
import { answeredBefore } from '../../core/session/answered-before.ts';
import { isNearUnknown, undatedOf } from '../../core/session/people-rules.ts';
import { exposedIn, type Session } from '../../core/session/session.ts';
import type { Qualification, Whereabouts } from '../../core/session/session-commands.ts';
import type { Undated } from '../../core/session/session-objections.ts';
import { writeName } from '../language/people-typed.ts';
import type { CardAction } from './card.ts';
import { lineOf, type Telling } from './card-context.ts';

/** More than these nobody reads on a phone. */
const mostNames = 3;

/** What the brief leaves open of people, until the gun runs. */
export function peopleAskedTaps(telling: Telling, session: Session): readonly CardAction[] {
  if (session.spraying.length > 0) return [];
  const undated = undatedOf(telling.shop.crew.spray, exposedIn(session), telling.now);
  return [
    ...(isSprayerAssumed(session) ? sprayerTaps(telling, session) : []),
    ...(isNearUnknown(session) ? nearTaps(telling, session) : []),
    ...dateTaps(telling, undated),
  ];
}

/** The fan as it was measured before in this booth, as long as it is not said anew: one tap says that it is so now. */
export function fanAsBeforeTap(telling: Telling, session: Session): readonly CardAction[] {
  const before = answeredBefore(telling.shop, session, telling.now);
  const { faceMetresPerSecond, at } = before?.extraction ?? {};
  if (session.extraction !== undefined || faceMetresPerSecond === undefined || at === undefined) return [];
  const command = { verb: 'fan' as const, session: session.number, running: true, faceMetresPerSecond };
  const line = lineOf(telling, { command, stance: { is: 'asked' } });
  const { words, figures } = telling;
  const label = words.session.asAt(at, [figures.speed(faceMetresPerSecond)], figures);
  return [{ id: 'fan-as-before', label, line }];
}

/** Nobody was named: whoever posted the brief was taken for the sprayer, and has not read it yet. */
export const isSprayerAssumed = ({ sprayers, briefedBy, acknowledged }: Session): boolean =>
  sprayers.length === 1 && sprayers[0] === briefedBy && acknowledged.length === 0;

function sprayerTaps(telling: Telling, session: Session): readonly CardAction[] {
  return othersOf(telling, session)
    .slice(0, mostNames)
    .map((person) => placingTap(telling, session, [person], 'sprays'));
}

/** All others out with one tap, or one of them near. */
export function nearTaps(telling: Telling, session: Session): readonly CardAction[] {
  const others = othersOf(telling, session);
  if (others.length === 0) return [];
  return [
    placingTap(telling, session, others, 'out'),
    ...others.slice(0, mostNames).map((person) => placingTap(telling, session, [person], 'stays')),
  ];
}

function placingTap(
  telling: Telling,
  { number: session }: Session,
  people: readonly PersonName[],
  goes: Whereabouts,
): CardAction {
  const line = lineOf(telling, { command: { verb: 'near', session, people, goes }, stance: { is: 'asked' } });
  const id = goes === 'out' ? 'others-out' : `${goes}-${people.join('-')}`;
  return { id, label: telling.words.session.near(people, goes, telling.figures), line };
}

/** Of the crew's list, whom the brief does not name. */
function othersOf({ shop }: Telling, { sprayers, stays, movedOut, attendant }: Session): readonly PersonName[] {
  const named = [...sprayers, ...stays, ...movedOut, attendant];
  return shop.crew.people.map(({ name }) => name).filter((name) => !named.includes(name));
}

/** The day is asked first. Of the first who lacks one. */
export function dateTaps(telling: Telling, [first]: readonly Undated[]): readonly CardAction[] {
  return first === undefined ? [] : first.what.map((what) => datedTap(telling, first.person, what));
}

export function datedTap(telling: Telling, person: PersonName, what: Qualification): CardAction {
  const label = `${telling.words.session.qualifications[what]} ${person}…`;
  return { id: `dated-${what}`, label, line: `${what} ${writeName(person, telling.hearing)} {until-day}` };
}
