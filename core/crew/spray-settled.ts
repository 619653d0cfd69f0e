// What stands for spraying, from the settings and from what the crew's stream tells of briefs, shifts and dates.

import { isFor } from '../event-readers.ts';
import type { Entry } from '../history.ts';
import type { PersonName } from '../ids.ts';
import { breathingCheck } from '../session/breathing-check.ts';
import type { Dates, SpraySettings } from '../session/spray-settings.ts';
import { allSaid, type Settled, standing } from '../settled.ts';
import { fraction } from '../units.ts';
import type { CrewLaw } from './crew-law.ts';

/** `nameOf`: as the crew writes a name, whatever an older record made of its capitals. `law`: under whose it works. */
export function spraySettled(
  entries: readonly Entry[],
  settled: Settled,
  nameOf: (name: PersonName) => PersonName,
  law: CrewLaw,
): SpraySettings {
  const said = { settled };
  const { briefing, namesNearSince, shiftChanges, dated, breathing, assessments, exposures } = entries.reduce(
    (told, entry) => withFact(told, entry, nameOf),
    nothingTold,
  );
  return {
    briefing,
    sprayers: [...new Set(standing(said, 'sprayers').people.map(nameOf))],
    booths: new Map(allSaid(said, 'booth').map(({ name: _, place, ...size }) => [place, size])),
    lelShare: fraction(standing(said, 'lel').percent / 100),
    mixingFactor: standing(said, 'mixing').factor,
    mixingAssumed: allSaid(said, 'mixing').length === 0,
    law,
    dayLimits: new Map(allSaid(said, 'limit').map(({ solvent, ppm }) => [solvent, ppm])),
    emergency: Object.fromEntries(allSaid(said, 'emergency').map(({ field, text }) => [field, text])),
    shiftChanges,
    dates: datesOf(dated),
    dated,
    namesNearSince,
    breathing,
    ...(exposures !== undefined && { exposures }),
    assessments,
    confined: new Map(allSaid(said, 'confined').map(({ place, on }) => [place, on])),
  };
}

type Told = Pick<
  SpraySettings,
  'briefing' | 'namesNearSince' | 'shiftChanges' | 'dated' | 'breathing' | 'exposures' | 'assessments'
>;

const nothingTold: Told = {
  briefing: [],
  namesNearSince: undefined,
  shiftChanges: [],
  dated: [],
  breathing: [],
  assessments: [],
};

function withFact(told: Told, { fact, happenedAt: at, by }: Entry, nameOf: (name: PersonName) => PersonName): Told {
  if (!isFor('spraying', fact)) return told;
  switch (fact.type) {
    case 'SessionBriefed': {
      const isNamed = fact.stays.length + fact.out.length > 0;
      const namesNearSince = told.namesNearSince ?? (isNamed ? at : undefined);
      return { ...told, namesNearSince, briefing: [...told.briefing, { at, by, on: true }] };
    }
    case 'SettingChanged':
      return fact.setting.name === 'brief'
        ? { ...told, briefing: [...told.briefing, { at, by, on: fact.setting.on }] }
        : told;
    case 'ShiftBegun':
    case 'ShiftEnded':
      return { ...told, shiftChanges: [...told.shiftChanges, { at, by }] };
    case 'TakenOver':
      return { ...told, shiftChanges: [...told.shiftChanges, { at, by: undefined }] };
    case 'AirAssessed': {
      const { type: _, ...of } = fact;
      return { ...told, assessments: [...told.assessments, { at, by, ...of }] };
    }
    case 'BreathingAirChecked':
      return { ...told, breathing: [...told.breathing, breathingCheck(fact, at, by)] };
    case 'ExposureMeasured': {
      const { type: _, ...of } = fact;
      return { ...told, exposures: [...(told.exposures ?? []), { at, ...of, person: nameOf(of.person) }] };
    }
    case 'QualificationDated': {
      const { what, until } = fact;
      return { ...told, dated: [...told.dated, { at, person: nameOf(fact.person), what, until }] };
    }
  }
}

function datesOf(dated: Told['dated']): SpraySettings['dates'] {
  const dates = new Map<PersonName, Dates>();
  for (const { person, what, until } of dated) dates.set(person, { ...dates.get(person), [what]: until });
  return dates;
}
