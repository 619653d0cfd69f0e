// What the crew's own stream rings: the day by itself, a handover until somebody takes over, whether the bell is alive, and
// what somebody wants to be reminded of.

import type { Entry } from '../history.ts';
import { crewStream, type PersonName } from '../ids.ts';
import { standing } from '../settled.ts';
import { type Reminder, remind } from '../wanted-reminder.ts';
import { type Crew, peopleWithRole } from './crew.ts';
import { nextHour } from './local-day.ts';
import { cryKey } from './open-alarms.ts';
import { ownReminders } from './own-reminders.ts';
import { waitingHandover } from './shifts.ts';

export function crewReminders(crew: Crew): readonly Reminder[] {
  return [
    ...cryReminders(crew),
    ...digestReminders(crew),
    ...handoverReminders(crew),
    ...bellReminders(crew),
    ...ownReminders(crew),
  ];
}

/** What may be a cry calls everybody by itself when nobody has called it off in time. */
function cryReminders({ alarms, people }: Crew): readonly Reminder[] {
  const to = people.map(({ name }) => name);
  return alarms
    .filter(({ at, ringsAt }) => ringsAt > at)
    .map(({ seq, ringsAt }) => remind(crewStream, 'cry', ringsAt, to, { critical: true, key: cryKey(seq) }));
}

/** At the crew's hour. Idle days ring nothing: the reminder comes from the last thing that was done. */
function digestReminders(crew: Crew): readonly Reminder[] {
  if (crew.lastActedAt === undefined) return [];
  // An act after it belongs to tomorrow's.
  const { at: dueAt, date } = nextHour(crew.lastActedAt, crew.zone, crew.digestHour);
  const supervisors = peopleWithRole(crew, 'supervisor');
  const to = supervisors.length > 0 ? supervisors : peopleWithRole(crew, 'lead');
  return [remind(crewStream, 'digest', dueAt, to, { key: `crew/digest/${date}` })];
}

/** Rings at once for whom it is meant, and goes on to others while nobody takes over. */
function handoverReminders({ shifts }: Crew): readonly Reminder[] {
  const waiting = waitingHandover(shifts);
  if (waiting === undefined) return [];
  return [remind(crewStream, 'handover', waiting.at, [waiting.to], { critical: true, key: 'crew/handover' })];
}

/** Each person's ring has a key of its own, so that nobody answers for another; who does not answer is named to those who lead. */
function bellReminders(crew: Crew): readonly Reminder[] {
  return crew.entries.flatMap((entry) =>
    peopleAsked(crew, entry).map((person) =>
      remind(crewStream, 'bell-test', entry.happenedAt, [person], {
        critical: true,
        key: `crew/bell/${entry.seq}/${person}`,
      }),
    ),
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
