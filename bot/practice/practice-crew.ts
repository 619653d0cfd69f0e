// Who there is in practice: whoever practises, as they are in their crew, and somebody invented who leads where they do not.

import { DateTime } from 'luxon';
import { type Crew, type CrewFile, type Person, personIn } from '../../core/crew/crew.ts';
import type { PersonName } from '../../core/ids.ts';
import { type EpochMs, epochMs } from '../../core/units.ts';

const inventedNames = ['Robin', 'Noa'] as const;

export function practiceCrew(crew: Crew, name: PersonName): CrewFile {
  const { language, units, role } = personIn(crew, name);
  const own: Person = { name, role, language, units };
  const lead = inventedNames.find((each) => each.toLowerCase() !== name.toLowerCase()) ?? inventedNames[0];
  return {
    name: crew.name,
    zone: crew.zone,
    language,
    units,
    people: role === 'crew' ? [own, { ...own, name: lead, role: 'lead' }] : [own],
    digestHour: crew.digestHour,
    escalationMinutes: crew.escalationMinutes,
  };
}

const morning = 8;

/** Eight in the morning of this day: a whole shift lies ahead. */
export function practiceStart(now: EpochMs, zone: string): EpochMs {
  return epochMs(DateTime.fromMillis(now, { zone }).startOf('day').set({ hour: morning }).toMillis());
}
