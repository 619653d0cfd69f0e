// What stands for spraying, from the settings and from what the crew's stream tells of briefs, shifts and dates.

import type { Entry } from '../history.ts';
import type { PersonName } from '../ids.ts';
import type { SpraySettings } from '../session/spray-settings.ts';
import { allSaid, type Settled, standing } from '../settled.ts';
import { fraction } from '../units.ts';

/** `nameOf`: as the crew writes a name, whatever an older record made of its capitals. */
export function spraySettled(
  entries: readonly Entry[],
  settled: Settled,
  nameOf: (name: PersonName) => PersonName,
): SpraySettings {
  const said = { settled };
  return {
    briefing: entries.flatMap(({ fact, happenedAt: at }) => {
      if (fact.type === 'SessionBriefed') return [{ at, on: true }];
      return fact.type === 'SettingChanged' && fact.setting.name === 'brief' ? [{ at, on: fact.setting.on }] : [];
    }),
    sprayers: [...new Set(standing(said, 'sprayers').people.map(nameOf))],
    booths: new Map(allSaid(said, 'booth').map(({ name: _, place, ...size }) => [place, size])),
    lelShare: fraction(standing(said, 'lel').percent / 100),
    mixingFactor: standing(said, 'mixing').factor,
    mixingAssumed: allSaid(said, 'mixing').length === 0,
    emergency: Object.fromEntries(allSaid(said, 'emergency').map(({ field, text }) => [field, text])),
    shiftChanges: entries.flatMap(({ fact, happenedAt: at, by }): SpraySettings['shiftChanges'] => {
      if (fact.type === 'ShiftBegun' || fact.type === 'ShiftEnded') return [{ at, by }];
      return fact.type === 'TakenOver' ? [{ at, by: undefined }] : [];
    }),
    dates: datesOf(entries, nameOf),
  };
}

function datesOf(entries: readonly Entry[], nameOf: (name: PersonName) => PersonName): SpraySettings['dates'] {
  const dates = new Map<PersonName, Record<string, string>>();
  for (const { fact } of entries) {
    if (fact.type !== 'QualificationDated') continue;
    const person = nameOf(fact.person);
    dates.set(person, { ...dates.get(person), [fact.what]: fact.until });
  }
  return dates;
}
