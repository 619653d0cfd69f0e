// The day by itself, at the crew's hour. Idle days ring nothing: the reminder comes from the last thing that was done.

import { crewStream } from '../ids.ts';
import type { Reminder } from '../reminders/wanted-reminder.ts';
import { type Crew, peopleWithRole } from './crew.ts';
import { nextHour } from './next-hour.ts';

export function digestReminders(crew: Crew): readonly Reminder[] {
  if (crew.lastActedAt === undefined) return [];
  // An act after it belongs to tomorrow's.
  const { at: dueAt, date } = nextHour(crew.lastActedAt, crew.zone, crew.digestHour);
  const supervisors = peopleWithRole(crew, 'supervisor');
  const to = supervisors.length > 0 ? supervisors : peopleWithRole(crew, 'lead');
  return [{ kind: 'digest', stream: crewStream, key: `crew/digest/${date}`, dueAt, to, critical: false }];
}
