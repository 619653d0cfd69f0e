// Of several alarms each is ended by a tap of its own, or all by one; whoever was called out is told what is over, and what is not.

import { alarmsMeant, namingTrouble, troublesOf } from '../../core/crew/alarms-meant.ts';
import { alarmsOn, type OpenAlarm } from '../../core/crew/open-alarms.ts';
import type { Recorded } from '../../core/execute.ts';
import type { PersonName } from '../../core/ids.ts';
import { gasesBeyond } from '../../core/place/place.ts';
import { firstUpper } from '../language/first-upper.ts';
import { type Card, type CardAction, makeCard } from './card.ts';
import { lineOf, type Telling } from './card-context.ts';
import { openAlarmLines } from './open-alarm-lines.ts';
import { leftBy } from './recorded-act.ts';
import { calledInNeed, toTellLine } from './whom-to-call.ts';

/** More would not fit under a card, beside the one for all. */
const mostTaps = 4;

export function alarmTaps(telling: Telling, alarms: readonly OpenAlarm[]): readonly CardAction[] {
  const { session } = telling.words;
  const line = (named: ReturnType<typeof namingTrouble>): string =>
    lineOf(telling, { command: { verb: 'alarm-over', ...named }, stance: { is: 'asked' } });
  const named = troublesOf(alarms).flatMap((alarm) => {
    const by = namingTrouble(alarm);
    return alarmsMeant(alarms, by) === 'several' ? [] : [{ alarm, by }];
  });
  const each = named.slice(0, mostTaps).map(({ alarm, by }, i) => ({
    ...{ id: `over-${i + 1}`, label: firstUpper(session.alarmPlaced(alarm)), line: line(by) },
  }));
  return each.length < 2 ? each : [...each, { id: 'over-all', label: session.allAlarms, line: line({ which: 'all' }) }];
}

export function alarmOverCard(telling: Telling, outcome: Recorded, by: PersonName): Card {
  const { session } = telling.words;
  const called = calledInNeed(telling.shop.crew, by);
  const still = openAlarmLines(telling);
  const isOn = alarmsOn(telling.shop.crew.alarms, telling.now).some(({ isDrill }) => !isDrill);
  return makeCard(session.alarmOver, isOn ? 'stop' : 'good', {
    lines: [
      ...leftBy(outcome, 'AlarmsEnded').map((over) => `${firstUpper(session.ended(over, telling.figures))}.`),
      ...still.map((line) => `${line}.`),
      ...[...telling.shop.places.values()].flatMap((place) =>
        gasesBeyond(place, telling.now).map((reading) =>
          session.monitor.beyond({ reading, place: place.name }, telling.figures),
        ),
      ),
      ...toTellLine(telling, called),
    ],
    ping: called,
    alarm: true,
  });
}
