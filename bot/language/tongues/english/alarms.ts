// What is told of an alarm, in English: who is called, when it rings by itself, until when it is on.

import type { PersonName, PlaceName } from '../../../../core/ids.ts';
import type { Alarm } from '../../../../core/session/session-commands.ts';
import type { EpochMs } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';
import { englishTroubles } from './troubles.ts';

/** What ends with it. */
export interface AlarmsOver {
  readonly ends: readonly Alarm[];
  readonly drills: readonly Alarm[];
}

export const englishAlarms = {
  callForHelp: (alarm: Alarm) =>
    alarm === 'emergency' ? 'Ring everybody' : `Call for help: ${englishTroubles[alarm].title}`,
  callUsual: (number: string) => `Call: ${number} (from any mobile phone; the shop’s own numbers are not set)`,
  mayBeCry: 'Does somebody need help?',
  standsOn: (what: Alarm, at: EpochMs, by: PersonName, figures: Figures) =>
    `ALARM, ${englishTroubles[what].title.toLowerCase()}: since ${figures.timeDown(at)}, cried by ${by}`,
  countsDown: (what: Alarm, seconds: number) =>
    `May be a cry, ${englishTroubles[what].title.toLowerCase()}: everybody is called in ${seconds} s, unless somebody says no`,
  drillOn: (what: Alarm, at: EpochMs, figures: Figures) =>
    `DRILL, nothing has happened (${englishTroubles[what].title.toLowerCase()}): since ${figures.timeDown(at)}`,
  ringsUnless: (seconds: number) => `Everybody is called in ${seconds} s, unless somebody says no.`,
  calledOff: 'No alarm: nobody is called',
  alarmOver: 'The alarm is over',
  ended: ({ ends, drills }: AlarmsOver, figures: Figures) => {
    const listed = (whats: readonly Alarm[]) =>
      figures.list(whats.map((what) => englishTroubles[what].title.toLowerCase()));
    const over = [
      ...(ends.length > 0 ? [listed(ends)] : []),
      ...(drills.length > 0 ? [`drill (${listed(drills)})`] : []),
    ];
    return `over: ${over.join(', ')}`;
  },
  drill: (what: Alarm) => `Drill: ${englishTroubles[what].title}`,
  drillSaid: 'A drill: nothing has happened. Everybody does what the shop’s plan says, and says ok.',
  untilClear: (place: PlaceName | undefined) =>
    `${place === undefined ? 'It is on' : `Nothing new begins in ${place}`} until a lead or supervisor says alarm over.`,
};
