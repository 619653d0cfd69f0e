// The digest that comes next stands until it is due, whatever is done before it. It is worked out once for all of those
// acts, since every act plans it and a wall clock is slow to ask.

import type { Crew } from '../crew/crew.ts';
import { digestWishes } from '../crew/digest-reminder.ts';
import type { Wish } from './wish.ts';

interface Standing {
  /** As of the act that it was worked out for. */
  readonly crew: Crew;
  readonly wishes: readonly Wish[];
}

/** By the crew's people, who are its audience: one list for as long as nobody's settings change. */
const standing = new WeakMap<Crew['people'], Standing>();

export function standingDigest(crew: Crew): readonly Wish[] {
  const known = standing.get(crew.people);
  if (known !== undefined && stillStands(known, crew)) return known.wishes;
  const wishes = digestWishes(crew);
  standing.set(crew.people, { crew, wishes });
  return wishes;
}

function stillStands({ crew: before, wishes }: Standing, crew: Crew): boolean {
  const sameClock = before.zone === crew.zone && before.digestHour === crew.digestHour;
  const from = before.lastActedAt ?? Number.POSITIVE_INFINITY;
  const acted = crew.lastActedAt ?? Number.NEGATIVE_INFINITY;
  return sameClock && from <= acted && wishes.every(({ dueAt }) => acted < dueAt);
}
