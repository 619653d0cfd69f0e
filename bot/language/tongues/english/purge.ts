// How long gas runs over what is left in a can, in English.

import { oxygenInAir } from '../../../../core/calc/gas.ts';
import type { PurgeSum } from '../../../../core/can/purge.ts';
import type { LitresPerMinute, Minutes, Percent } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';

export const englishPurge = {
  title: 'Gas over what is left',
  runs: (runs: Minutes, flow: LitresPerMinute, oxygen: Percent, figures: Figures) =>
    `${figures.minutesUp(runs)} at ${figures.gasFlow(flow)} leave ${figures.percent(oxygen, 1)} oxygen.`,
  short: (target: Percent, figures: Figures) =>
    `The sheet asks for ${figures.percent(target, 1)} or less: let it run longer.`,
  sum: (target: Percent, figures: Figures) =>
    `Sum: gas = headspace × ln(${figures.decimal(oxygenInAir)} % / ${figures.percent(target, 1)}), the sheet’s target; it holds where the gas mixes with the air.`,
  taken: (of: PurgeSum['of'], figures: Figures) =>
    of === undefined
      ? 'Taken: the headspace as you gave it; clean gas.'
      : `Taken: the can holds ${figures.volume(of.brimfulLitres)} brimful, ${figures.mass(of.leftGrams)} left in it; clean gas.`,
  'no-such-can': 'No can of that number is open here.',
  'no-gas-asked': 'The sheet asks for no gas over it: no target, no sum.',
  'size-unknown': 'How big the can is, or what is left in it, is not known. Say its headspace: purge 4L 5L/min.',
  'flow-needed': 'At which flow? Say it, as purge 3 5L/min, or set it once: set gas-flow 5L/min.',
};
