// A handover rings at once for whom it is meant, and goes on to others while nobody takes over.

import { crewStream } from '../ids.ts';
import type { Reminder } from '../reminders/wanted-reminder.ts';
import type { Crew } from './crew.ts';
import { waitingHandover } from './shifts.ts';

export function handoverReminders({ shifts }: Crew): readonly Reminder[] {
  const waiting = waitingHandover(shifts);
  if (waiting === undefined) return [];
  const { at: dueAt, to } = waiting;
  return [{ kind: 'handover', stream: crewStream, key: 'crew/handover', dueAt, to: [to], critical: true }];
}
