// What is told of an alarm, in English: who is called, when it rings by itself, until when it is on.

import { isGasNote } from '../../../../core/calc/monitor-limits.ts';
import type { AlarmTold } from '../../../../core/crew/alarm-events.ts';
import type { PersonName, PlaceName } from '../../../../core/ids.ts';
import type { Alarm } from '../../../../core/session/session-commands.ts';
import type { EpochMs } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';
import { englishTroubles } from './troubles.ts';

/** What ends with it. */
export interface AlarmsOver {
  readonly ends: readonly Alarm[];
  readonly drills: readonly Alarm[];
  readonly of?: readonly AlarmTold[] | undefined;
}

/** By what was seen, and of what: a can that swells is no pot that heats. */
export function englishAlarmName({ what, seen, can, batch, note }: AlarmTold): string {
  if (isGasNote(what, note)) return `gas beyond its limit, ${note}`;
  if (what !== 'hot') return englishTroubles[what].title.toLowerCase();
  const thing = can === undefined ? `the pot of batch ${batch}` : `can ${can}`;
  const does = { hot: 'is heating', smoking: 'smokes', bulging: 'swells' }[seen ?? 'hot'];
  if (can !== undefined || batch !== undefined) return `${thing} ${does}`;
  return seen === undefined || seen === 'hot' ? 'a pot is heating' : `a pot or can ${does}`;
}

/** With its place, where there are several. */
export function englishAlarmPlaced(alarm: AlarmTold & { readonly isDrill: boolean }): string {
  if (alarm.isDrill) return 'the drill';
  return `${englishAlarmName(alarm)}${alarm.place === undefined ? '' : ` (${alarm.place})`}`;
}

export const englishAlarms = {
  alarmPlaced: englishAlarmPlaced,
  allAlarms: 'All of them',

  callForHelp: (alarm: Alarm) =>
    alarm === 'emergency' ? 'Ring everybody' : `Call for help: ${englishTroubles[alarm].title}`,
  callUsual: (number: string) => `Call: ${number} (from any mobile phone; the shop’s own numbers are not set)`,
  mayBeCry: 'Does somebody need help?',
  standsOn: (alarm: AlarmTold, at: EpochMs, by: PersonName, figures: Figures) =>
    `ALARM, ${englishAlarmName(alarm)}: since ${figures.timeDown(at)}, cried by ${by}`,
  countsDown: (what: Alarm, seconds: number) =>
    `May be a cry, ${englishTroubles[what].title.toLowerCase()}: everybody is called in ${seconds} s, unless somebody says no`,
  drillOn: (what: Alarm, at: EpochMs, figures: Figures) =>
    `DRILL, nothing has happened (${englishTroubles[what].title.toLowerCase()}): since ${figures.timeDown(at)}`,
  ringsUnless: (seconds: number) => `Everybody is called in ${seconds} s, unless somebody says no.`,
  calledOff: 'No alarm: nobody is called',
  alarmOver: 'The alarm is over',
  ended: ({ ends, drills, of }: AlarmsOver, figures: Figures) => {
    const listed = (whats: readonly Alarm[]) =>
      figures.list(whats.map((what) => englishTroubles[what].title.toLowerCase()));
    const over = [
      ...(of !== undefined
        ? [figures.list([...new Set(of.map(englishAlarmName))])]
        : ends.length > 0
          ? [listed(ends)]
          : []),
      ...(drills.length > 0 ? [`drill (${listed(drills)})`] : []),
    ];
    return `over: ${over.join(', ')}`;
  },
  drill: (what: Alarm) => `Drill: ${englishTroubles[what].title}`,
  drillSaid: 'A drill: nothing has happened. Everybody does what the shop’s plan says, and says ok.',
  untilClear: (place: PlaceName | undefined) =>
    `${place === undefined ? 'It is on' : `Nothing new begins in ${place}`} until a lead or supervisor says alarm over.`,
};
