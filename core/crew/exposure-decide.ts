// What was measured of somebody's air, recorded whatever it says. No day has more than 24 hours of one substance.

import { ppmFromMilligrams } from '../calc/exposure.ts';
import { substances } from '../calc/exposure-limits.ts';
import type { CommandOf } from '../commands.ts';
import { type Decision, onCrew, type Said, unclear } from '../decision.ts';
import { isFailed } from '../failed.ts';
import { workdayWith } from '../session/exposure-day.ts';
import { namedIn } from '../session/people-named.ts';
import type { Shop } from '../shop.ts';
import { hours, milligramsPerCubicMetre, type PartsPerMillion, partsPerMillion } from '../units.ts';

export function decideExposure(shop: Shop, said: Said<CommandOf<'exposure'>>): Decision {
  const { substance, taskMinutes } = said.command;
  const known = namedIn(shop, said, [said.command.person]);
  if (known.is === 'stranger') return known.decision;
  const measured = {
    ...{ person: known.asFiled(said.command.person), substance, taskMinutes },
    ppm: ppmOf(said.command),
  };
  const tasks = workdayWith(shop.crew.spray.exposures ?? [], { at: said.at, ...measured });
  const total = tasks.reduce((sum, task) => (task.substance === substance ? sum + task.taskMinutes : sum), 0);
  if (total > 24 * 60) return unclear({ code: 'more-than-a-day', person: measured.person, hours: hours(total / 60) });
  return onCrew(said, { type: 'ExposureMeasured', ...measured });
}

function ppmOf({ ppm, milligrams = milligramsPerCubicMetre(0), substance }: CommandOf<'exposure'>): PartsPerMillion {
  if (ppm !== undefined) return partsPerMillion(ppm);
  const found = ppmFromMilligrams(milligrams, substances[substance].molarMass);
  // The line takes no figure that the sum refuses.
  if (isFailed(found)) throw new RangeError(`no share of ${substance}: ${found.failed}`);
  return found;
}
