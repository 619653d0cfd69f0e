// Names on a line against the crew's file: whatever the thumb made of their capitals, and no stranger by a slip.

import { type Decision, type Said, unclear } from '../decision.ts';
import type { PersonName } from '../ids.ts';
import { nameAmong, personNamed } from '../person-named.ts';
import type { Shop } from '../shop.ts';

export type Named =
  | { readonly is: 'known'; readonly asFiled: (name: PersonName) => PersonName }
  | { readonly is: 'stranger'; readonly decision: Decision };

/**
 * A crew of one name has no file to hold names against: there, and after the act, any name is taken. Whoever the crew's list
 * does not have is called as they were before: on the brief (`alsoKnown`), among the sprayers, by their dates.
 */
export function namedIn(
  shop: Shop,
  said: Said,
  names: readonly PersonName[],
  alsoKnown: readonly PersonName[] = [],
): Named {
  const { people, spray } = shop.crew;
  const known = people.map(({ name }) => name);
  const met = [...new Set([...alsoKnown, ...spray.sprayers, ...spray.dates.keys()])];
  const asFiled = (name: PersonName) => personNamed(people, name) ?? nameAmong(met, name) ?? name;
  const stranger = names.find((name) => !known.includes(asFiled(name)));
  if (stranger === undefined || known.length < 2 || said.stance.is === 'happened') return { is: 'known', asFiled };
  return { is: 'stranger', decision: unclear({ code: 'no-such-person', person: stranger, known }) };
}
