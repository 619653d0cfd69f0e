// A hold as it stands: why, who sees to it and what is to be done. A second hold adds to the first, and none of it is gone until
// somebody decides.

import { type CrewFile, peopleWithRole } from '../crew/crew.ts';
import type { Entry, FactOf } from '../history.ts';
import type { PersonName } from '../ids.ts';
import { holdsIn } from '../rule-editions.ts';
import { readingKey } from './failed-reading.ts';
import { codeOfFailed } from './holding-codes.ts';
import type { Held, Verdict } from './verdict.ts';

export function heldBy(before: Verdict | undefined, fact: FactOf<'PartHeld'>, entry: Entry): Held {
  const { why, because = [], failed = [], owner, toDo } = fact;
  const { happenedAt: at, by, edition } = entry;
  const ringsFrom = holdsIn({ since: 9 }, edition) ? at : undefined;
  if (before?.is !== 'held') return { is: 'held', at, by, why, because, failed, owner, toDo, ringsFrom };
  const whys = [...new Set([before.why, why].filter((each) => each !== ''))];
  return {
    is: 'held',
    at,
    by,
    why: whys.join('; '),
    because: [...new Set([...before.because, ...because])],
    failed: [...before.failed, ...failed],
    owner: owner ?? before.owner,
    toDo: toDo ?? before.toDo,
    ringsFrom: before.ringsFrom ?? ringsFrom,
  };
}

/** What is said of a hold that is over changes nothing. */
export function assigned(verdict: Verdict | undefined, { owner, toDo }: FactOf<'HoldAssigned'>): Verdict | undefined {
  if (verdict?.is !== 'held') return verdict;
  return { ...verdict, owner: owner ?? verdict.owner, toDo: toDo ?? verdict.toDo };
}

/** Who sees to it: whoever was named; else those who supervise, and where nobody does those who lead. */
export function ownersOf(crew: Pick<CrewFile, 'people'>, { owner }: Pick<Held, 'owner'>): readonly PersonName[] {
  if (owner !== undefined) return [owner];
  const supervisors = peopleWithRole(crew, 'supervisor');
  return supervisors.length > 0 ? supervisors : peopleWithRole(crew, 'lead');
}

/** What of the hold they alone stood for is gone with them; what else holds it stays. */
export function answeredBy(verdict: Verdict | undefined, { failed }: FactOf<'FailureAnswered'>): Verdict | undefined {
  if (verdict?.is !== 'held') return verdict;
  const answered = new Set(failed.map(readingKey));
  const left = verdict.failed.filter((reading) => !answered.has(readingKey(reading)));
  const gone = failed
    .map(({ of }) => codeOfFailed[of])
    .filter((code) => left.every(({ of }) => codeOfFailed[of] !== code));
  const because = verdict.because.filter((code) => !gone.some((each) => each === code));
  return verdict.why === '' && because.length === 0 ? undefined : { ...verdict, because, failed: left };
}
