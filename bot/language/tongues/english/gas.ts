// What a gas monitor shows, and what follows from it, in English.

import { type Gas, type GasVerdict, unitOfGas } from '../../../../core/calc/monitor-limits.ts';
import type { PlaceName } from '../../../../core/ids.ts';
import type { GasBeyond, GasReading } from '../../../../core/place/place.ts';
import type { StayOut } from '../../../../core/stay-out.ts';
import { partsPerMillion } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';
import { firstUpper } from '../../first-upper.ts';

type Shown = Pick<GasReading, 'gas' | 'value'>;

const names: Readonly<Record<Gas, string>> = {
  lel: 'LEL',
  o2: 'oxygen',
  co: 'carbon monoxide',
  h2s: 'hydrogen sulphide',
};

/** What ends it. */
const checkFirst = 'check the monitor, say set monitor and the day until which that holds, then read again.';

/** Each the first line of a card: what everybody does at once. */
const now = {
  lel: 'Stop spraying, everybody out, touch no switch, make no spark. The extraction stays as it is.',
  o2: 'Everybody out now. Nobody goes back in without supplied air and the employer’s permit.',
  'o2-over': 'Everybody out now: no spark, no flame, no switch. In so much oxygen things catch and burn fiercely.',
  co: 'Everybody out into fresh air now. Stop what burns or runs on fuel, if that is done from outside.',
  h2s: 'Everybody out into fresh air now, upwind. Nobody goes back in for somebody without supplied air.',
};

const amount = (gas: Gas, value: number, figures: Figures): string =>
  unitOfGas[gas] === '%' ? figures.percent(value, 1) : figures.ppm(partsPerMillion(value));

export const englishGas = ({ gas, value }: Shown, figures: Figures): string =>
  `${names[gas]} ${amount(gas, value, figures)}`;

const sourced = (gas: Gas, { value, source }: GasVerdict['limit'], figures: Figures): string =>
  `${amount(gas, value, figures)} (${source})`;

export const englishMonitor = {
  title: (place: PlaceName, shown: Shown, figures: Figures) => `Gas monitor, ${place}: ${englishGas(shown, figures)}`,
  now: (gas: Gas, is: GasVerdict['is']) => now[gas === 'o2' && is === 'over' ? 'o2-over' : gas],
  limit: ({ gas, value }: Shown, { is, limit, highest }: GasVerdict, figures: Figures) => {
    const told = sourced(gas, limit, figures);
    switch (is) {
      case 'over':
        return `The limit is ${told}: ${figures.ratio(value / limit.value)} times it.`;
      case 'under':
        return `At least ${told} is asked for.`;
      case 'advised':
        return `${figures.ratio(value / limit.value)} times what is advised, ${told}. The law’s limit: ${sourced(gas, highest, figures)}.`;
      case 'within':
        return gas === 'o2' ? `At least ${told} is asked for.` : `The limit is ${told}.`;
    }
  },
  until: (until: string, figures: Figures) => `until ${figures.date(until)}`,
  neverChecked:
    'Nobody has said until when the gas monitor is in check: what it shows is not proved. Say set monitor and the day.',
  outOfCheck: (until: string, figures: Figures) =>
    `The gas monitor was in check until ${figures.date(until)}: what it shows is not proved.`,
  oneMoment: 'One moment at one spot: it says nothing of the next. Batchbell is no gas monitor.',
  since: ({ at, by, ...shown }: GasReading, figures: Figures) =>
    `Read again since: ${englishGas(shown, figures)} at ${figures.timeDown(at)}, ${by}. Nobody is called.`,
  /** Under a reading that was corrected to one within. */
  alarmStays: 'Its alarm is still on: only a lead ends it, once nobody is in danger (alarm over).',
  read: (place: PlaceName, reading: string) => `${reading}, ${place}`,
  /** Nothing begins there, and what would end that. */
  beyond: (
    { reading: { at, by, unprovedWithinAt: since, ...shown }, place }: { reading: GasBeyond; place: PlaceName },
    figures: Figures,
  ) => {
    const read = `${englishGas(shown, figures)} in ${place}, read by ${by} at ${figures.timeDown(at)}.`;
    return since === undefined
      ? `The gas monitor last showed ${read} Nothing new begins there until somebody reads it within its limit.`
      : `The gas monitor showed ${read} The reading within, at ${figures.timeDown(since)}, is of a monitor that is not known to be in check, and opens nothing: ${checkFirst}`;
  },
  /** Under a reading within. */
  staysShut: (place: PlaceName) => `This opens nothing: ${place} stays closed. ${firstUpper(checkFirst)}`,
  /** The gun has stopped, and nobody goes in there. */
  stayOut: ({ alarm, beyond }: StayOut) =>
    `Stay out; flush after ${[alarm === undefined ? [] : 'alarm over', beyond.length === 0 ? [] : 'a gas reading within the limit'].flat().join(' and ')}.`,
};
