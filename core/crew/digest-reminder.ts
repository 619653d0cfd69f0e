// The day by itself, at the crew's hour. Idle days ring nothing: the wish comes from the last thing that was done.

import { DateTime } from 'luxon';
import { crewStream } from '../ids.ts';
import type { Wish } from '../reminders/wish.ts';
import { type EpochMs, epochMs } from '../units.ts';
import { type Crew, peopleWithRole } from './crew.ts';

export function digestWishes(crew: Crew): readonly Wish[] {
  if (crew.lastActedAt === undefined) return [];
  const dueAt = digestAfter(crew.lastActedAt, crew.zone, crew.digestHour);
  const date = DateTime.fromMillis(dueAt, { zone: crew.zone }).toISODate();
  const supervisors = peopleWithRole(crew, 'supervisor');
  const to = supervisors.length > 0 ? supervisors : peopleWithRole(crew, 'lead');
  return [{ kind: 'digest', stream: crewStream, key: `crew/digest/${date}`, dueAt, to, critical: false }];
}

/** The crew's hour that comes next: an act after it belongs to tomorrow's digest. */
function digestAfter(at: EpochMs, zone: string, hour: number): EpochMs {
  const local = DateTime.fromMillis(at, { zone });
  const today = local.startOf('day').set({ hour });
  const due = today.toMillis() > at ? today : today.plus({ days: 1 });
  return epochMs(due.toMillis());
}
