// Whom a card calls: never whoever said it, and somebody else wherever there is anybody.

import { nobody } from '../../core/crew/alarm-decide.ts';
import { type CrewFile, peopleWithRole } from '../../core/crew/crew.ts';
import type { PersonName } from '../../core/ids.ts';
import { usualEmergencyNumber } from '../../core/usual-emergency-number.ts';
import type { Telling } from './card-context.ts';

type People = Pick<CrewFile, 'people'>;

/** In need: everybody else. */
export const calledInNeed = (crew: People, by: PersonName): readonly PersonName[] => without(namesOf(crew), by);

/** Of a near miss. Told without a name it calls all alike: whom it left out would be who told it. */
export function calledForNearMiss(crew: People, by: PersonName): readonly PersonName[] {
  const [supervisors, leads] = [peopleWithRole(crew, 'supervisor'), peopleWithRole(crew, 'lead')];
  return firstOf([without(supervisors, by), without(leads, by)]);
}

/** Whom a front end has to reach for an answer. */
export function calledBy({
  as,
  card,
}: {
  readonly as: PersonName | null;
  readonly card: { readonly ping: readonly PersonName[] };
}) {
  return [...new Set(card.ping)].filter((name) => name !== as && name !== nobody && name !== '');
}

/** The card says only whom it is for: when it is worded nobody has been reached yet. */
export function toTellLine(
  { words, figures }: Pick<Telling, 'words' | 'figures'>,
  people: readonly PersonName[],
): readonly string[] {
  return people.length === 0 ? [] : [words.replies.toTell(people, figures)];
}

/** The shop's own numbers, or that of where it stands. */
export function callLine({ words: { session }, shop: { crew } }: Pick<Telling, 'words' | 'shop'>): string {
  const { call } = crew.spray.emergency;
  return call === undefined ? session.callUsual(usualEmergencyNumber(crew)) : session.callNumber(call);
}

const namesOf = ({ people }: People) => people.map(({ name }) => name);

const without = (names: readonly PersonName[], by: PersonName) => names.filter((name) => name !== by);

const firstOf = (groups: readonly (readonly PersonName[])[]): readonly PersonName[] =>
  groups.find((names) => names.length > 0) ?? [];
