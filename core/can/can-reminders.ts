// What a can rings: gas over it now, to whoever had the lid off, then to the lead, then that it is in doubt; and the
// end of its own stirring. Each ring of the three has its number from the start: nothing heard or done but gas moves it.

import { canStream, type PersonName } from '../ids.ts';
import { movedMs } from '../ring-log.ts';
import type { EpochMs } from '../units.ts';
import { type Reminder, remind } from '../wanted-reminder.ts';
import { type Can, isCanLive } from './can.ts';
import { blanketTimes, preStirTimes } from './can-clocks.ts';

export function canReminders(can: Can, leads: readonly PersonName[]): readonly Reminder[] {
  // Whoever is called to one that heats is called by its alarm; nobody is asked to handle it.
  return isCanLive(can) && can.reacts === undefined ? [...blanketReminders(can, leads), ...stirReminders(can)] : [];
}

function blanketReminders(can: Can, leads: readonly PersonName[]): readonly Reminder[] {
  const times = blanketTimes(can);
  if (times === undefined) return [];
  const stream = canStream(can.number);
  const key = `${stream}/blanket`;
  // Rings of an earlier time without a lid keep their numbers.
  const rings = can.rings.get(key) ?? [];
  const before = rings.filter((ring) => ring.dueAt < times.ringAt - movedMs).length;
  // Who heard of it so late that it was in doubt has heard all that is to be said.
  const heard = rings.slice(before).flatMap(({ rangAt, to }) => (rangAt >= times.doubtfulAt ? to : []));
  const everybody = [...new Set([can.lidBy, ...leads])].filter((person) => !heard.includes(person));
  const steps: readonly (readonly [EpochMs, readonly PersonName[]])[] = [
    [times.ringAt, [can.lidBy]],
    [times.leadAt, leads.length > 0 ? leads : [can.lidBy]],
    [times.doubtfulAt, everybody],
  ];
  return steps.flatMap(([dueAt, to], i) => {
    const isOver = heard.length > 0 && (dueAt < times.doubtfulAt || to.length === 0);
    return isOver ? [] : [{ ...remind(stream, 'blanket', dueAt, to, { critical: true }), ring: before + i + 1 }];
  });
}

function stirReminders(can: Can): readonly Reminder[] {
  const last = can.stirs.at(-1);
  const times = last === undefined ? undefined : preStirTimes(can, last.at);
  // Once the stirrer is out there is nothing to say of it.
  if (last?.endedAt !== undefined || times?.doneAt === undefined) return [];
  const stream = canStream(can.number);
  return [remind(stream, 'can-stirred', times.doneAt, [can.lidBy], { key: `${stream}/stir-done` })];
}
