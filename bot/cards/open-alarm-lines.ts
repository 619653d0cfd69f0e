// What is on of the alarms, what counts down, and a drill plainly as one: before anything else of what runs.

import { alarmsOn, countdowns, type OpenAlarm } from '../../core/crew/open-alarms.ts';
import { crewStream } from '../../core/ids.ts';
import { alarms } from '../../core/session/session-commands.ts';
import type { BoardItem } from './board-item.ts';
import type { Telling } from './card-context.ts';

/** Alarms first, the gravest before the others; then what may be one; drills last. */
export function openAlarmLines({ words, figures, shop, now }: Telling): readonly string[] {
  const { session } = words;
  const all = [...shop.crew.alarms].sort((a, b) => alarms.indexOf(a.what) - alarms.indexOf(b.what));
  const on = alarmsOn(all, now);
  return [
    ...on.filter(({ isDrill }) => !isDrill).map((alarm) => session.standsOn(alarm, alarm.at, alarm.by, figures)),
    ...countdowns(all, now).map(({ what, ringsAt }) => session.countsDown(what, Math.ceil((ringsAt - now) / 1000))),
    ...on.filter(({ isDrill }) => isDrill).map(({ what, at }) => session.drillOn(what, at, figures)),
  ];
}

/** One for all of them, at the top. */
export function alarmsOnBoard(telling: Telling): readonly BoardItem[] {
  const [first, ...others] = openAlarmLines(telling);
  if (first === undefined) return [];
  const isOnlyDrill = telling.shop.crew.alarms.every(({ isDrill }: OpenAlarm) => isDrill);
  return [
    {
      id: crewStream,
      name: first,
      what: '',
      phase: [...others, telling.words.session.untilClear(undefined)].join('. '),
      tone: isOnlyDrill ? 'warn' : 'stop',
      urgency: { is: isOnlyDrill ? 'waits' : 'over' },
      clocks: [],
      taps: [],
    },
  ];
}
