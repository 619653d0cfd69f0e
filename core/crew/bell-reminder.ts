// Is the bell alive? Each person's ring has a key of its own, so that nobody answers for another; who does not answer is
// named to the lead, then to the supervisor.

import type { Entry } from '../history.ts';
import { crewStream, type PersonName } from '../ids.ts';
import type { Reminder } from '../reminders/wanted-reminder.ts';
import { standing } from '../settled.ts';
import type { Crew } from './crew.ts';

export function bellReminders(crew: Crew): readonly Reminder[] {
  return crew.entries.flatMap((entry) =>
    peopleAsked(crew, entry).map((person) => ({
      kind: 'bell-test' as const,
      stream: crewStream,
      key: `crew/bell/${entry.seq}/${person}`,
      dueAt: entry.happenedAt,
      to: [person],
      critical: true,
    })),
  );
}

/** Of the last test, and of each shift that has begun where the crew wants one then. */
function peopleAsked(crew: Crew, entry: Entry): readonly PersonName[] {
  const { entries } = crew;
  const { fact, by } = entry;
  if (fact.type === 'ShiftBegun') {
    const last = entries.findLast((other) => other.fact.type === 'ShiftBegun' && other.by === by);
    return standing(crew, 'bell').on && last?.seq === entry.seq ? [by] : [];
  }
  if (fact.type !== 'BellTested') return [];
  const last = entries.findLast((other) => other.fact.type === 'BellTested');
  return last?.seq === entry.seq ? fact.people : [];
}
