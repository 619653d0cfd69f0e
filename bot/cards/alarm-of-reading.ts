// The alarm that a gas reading rang, when that reading is corrected to one within its limit: it is never ended by itself.

import { type Gas, isBeyond, isGasNote } from '../../core/calc/monitor-limits.ts';
import { alarmsMeant, namingTrouble } from '../../core/crew/alarms-meant.ts';
import { alarmsOn, type OpenAlarm } from '../../core/crew/open-alarms.ts';
import type { Entry } from '../../core/history.ts';
import { nameIn } from '../../core/ids.ts';
import { firstUpper } from '../language/first-upper.ts';
import type { CardAction } from './card.ts';
import { lineOf, type Telling } from './card-context.ts';

/** Those still on in its place of its gas; none where it is beyond all the same. */
export function alarmsOfReading(telling: Telling, read: Entry | undefined): readonly OpenAlarm[] {
  if (read?.fact.type !== 'GasRead') return [];
  const { gas, value, law = 'us' } = read.fact;
  if (isBeyond({ gas, value, law })) return [];
  const place = nameIn(read.stream);
  return alarmsOn(telling.shop.crew.alarms, telling.now).filter(
    (alarm) => !alarm.isDrill && alarm.place === place && isOf(gas, alarm),
  );
}

const isOf = (gas: Gas, { what, note }: OpenAlarm): boolean =>
  isGasNote(what, note) && note.startsWith(`${gas.toUpperCase()} `);

/** Another emergency cried there would end with it: then it asks which, and nothing is tapped. */
export function alarmOverTaps(telling: Telling, rung: readonly OpenAlarm[]): readonly CardAction[] {
  const [alarm] = rung;
  if (alarm === undefined) return [];
  const named = namingTrouble(alarm);
  const meant = alarmsMeant(telling.shop.crew.alarms, named);
  if (meant === 'several' || meant.some((each) => !rung.includes(each))) return [];
  const line = lineOf(telling, { command: { verb: 'alarm-over', ...named }, stance: { is: 'asked' } });
  return [{ id: 'alarm-over', label: firstUpper(telling.words.session.alarmPlaced(alarm)), line }];
}
