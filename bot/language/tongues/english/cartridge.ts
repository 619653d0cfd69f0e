// How long a cartridge lasts, in English.

import type { CartridgeLife } from '../../../../core/calc/change-out.ts';
import type { SubstanceId } from '../../../../core/calc/exposure-limits.ts';
import type { Refusal } from '../../../../core/calc/refusal.ts';
import { celsius, type PartsPerMillion, type Percent, partsPerMillion } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';
import { englishSubstances, hoursOf } from './exposure.ts';

const because: Readonly<Record<CartridgeLife['shortenedBy'][number], string>> = {
  humidity: 'half of it for humidity of 85 % and more',
  pace: 'half of it for hard work',
};

export interface AirOutside {
  readonly substance: SubstanceId;
  readonly ppm: PartsPerMillion;
}

export const englishCartridge = {
  title: 'Change-out of cartridges',
  lasts: ({ hours, shortenedBy }: CartridgeLife, figures: Figures) =>
    `At most ${hoursOf(hours, figures)}, by the rule of thumb${shortenedBy.map((each) => `, ${because[each]}`).join('')}.`,
  noFigure: (refused: Refusal, figures: Figures) => {
    if (refused.failed !== 'does-not-apply') {
      return 'NO figure: the boiling point of one of them was not read. Do not wear a cartridge by a guess.';
    }
    return refused.what === 'ppm'
      ? `NO figure: ${figures.ppm(partsPerMillion(refused.given))} together, and the rule ends at ${figures.ppm(partsPerMillion(refused.limit))}.`
      : `NO figure: one of them boils at ${figures.temperature(celsius(refused.given))}, and the rule holds above ${figures.temperature(celsius(refused.limit))} alone. It comes through early.`;
  },
  takenAs: (air: readonly AirOutside[], humidity: Percent, isLastRead: boolean, isHard: boolean, figures: Figures) =>
    `Taken as: ${figures.list(air.map(({ substance, ppm }) => `${englishSubstances[substance]} ${figures.ppm(ppm)}`))} outside the mask, humidity ${figures.percent(humidity)}${isLastRead ? ' as last read' : ''}, ${isHard ? 'hard' : 'ordinary'} work.`,
  needsHumidity: 'No figure yet: nobody has read the humidity. Say it behind the line, as 60%, or say the air first.',
  sensitiser: 'NOT with a cartridge: isocyanates give no warning when one is spent. Supplied air or no spraying.',
  otherwise: 'Supplied air, or the maker’s own figures for it.',
  thenNew: 'Then new ones, and new ones each shift all the same.',
  first:
    'The maker’s change schedule comes first, and an end-of-service indicator where there is one; this bounds neither.',
  never: 'Never by smell: who smells it has breathed it.',
  rule: 'Above 70 °C boiling point and below 200 ppm 8 h at ordinary work; inverse to the work; half at 85 % humidity and more',
  source: 'OSHA Respiratory eTool, rule of thumb after AIHA, chapter 36',
};
