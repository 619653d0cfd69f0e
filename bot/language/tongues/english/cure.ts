// What speaks against an act with a cure, in English.

import type { CureObjection } from '../../../../core/part/part-objections.ts';
import type { Figures } from '../../figures.ts';

export function englishCureObjection(objection: CureObjection, figures: Figures): string {
  switch (objection.code) {
    case 'hotter-than-part-bears':
      return `The part bears ${figures.temperature(objection.highestCelsius)}, the oven is at ${figures.temperature(objection.ovenCelsius)}. Cure it in the room.`;
    case 'no-such-cure':
      return `The sheet gives no cure in ${objection.way === 'oven' ? 'an oven' : 'the room'}.`;
    case 'oven-outside-sheet':
      return `The sheet's oven cure is for ${figures.temperature(objection.lowest)} to ${figures.temperature(objection.highest)}, not ${figures.temperature(objection.setCelsius)}.`;
    case 'already-curing':
      return `In cure since ${figures.timeDown(objection.since)}.`;
    case 'not-curing':
      return 'This part is not in cure.';
    case 'cure-not-given': {
      const then =
        objection.dueAt === undefined
          ? ''
          : objection.measured
            ? ` By what is known it has it at ${figures.timeUp(objection.dueAt)}.`
            : ` Estimate, not measured: at ${figures.timeUp(objection.dueAt)}.`;
      return `The cure time is not given: ${figures.percent(Math.floor(objection.progress * 100))} so far is proved.${then}`;
    }
    case 'still-in-oven':
      return `It has been in the oven since ${figures.timeDown(objection.since)}. Take it out first, and say out.`;
  }
}
