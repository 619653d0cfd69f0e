// What a batch rings: stirring done (or the induction time over), the stirrer left standing, the lid left off, the pot's
// life at half, at the margin that leaves time to empty and flush, and at its end; and gear that was not cleaned after it.

import type { TemperatureLog } from '../calc/clock.ts';
import { batchStream } from '../ids.ts';
import { type EpochMs, minutes, minutesAfter } from '../units.ts';
import { type Reminder, type ReminderKind, remind } from '../wanted-reminder.ts';
import { type Batch, phaseOf } from './batch.ts';
import { blendDueAt, type PotLifeTimes, potLifeTimes } from './batch-clocks.ts';
import { gearKey, gearThatRings } from './gear-to-clean.ts';
import { lidRingsAt } from './lid.ts';

/** Somebody who stopped the stirrer before its time has gone to see to something; nobody sees to anything for longer. */
const pausedFor = minutes(10);

export function batchReminders(batch: Batch, air: TemperatureLog): readonly Reminder[] {
  const phase = phaseOf(batch);
  if (phase.is === 'to-weigh' || phase.is === 'emptied' || phase.is === 'dead') return gearReminders(batch);
  const pot = potLifeTimes(batch, air);
  const ofPot = [...blendReminders(batch, air, pot), ...lidReminders(batch, pot), ...potReminders(batch, pot)];
  return [...(saidOver(batch, ofPot, pot) ?? ofPot), ...gearReminders(batch)];
}

/** A bell so late that the pot was over has said so: the others would say it again, and that one goes on to the leads. */
function saidOver(
  { rings }: Batch,
  ofPot: readonly Reminder[],
  pot: PotLifeTimes | undefined,
): readonly Reminder[] | undefined {
  const isLate = ({ key }: Reminder): boolean =>
    pot !== undefined && (rings.get(key) ?? []).some(({ dueAt, rangAt }) => dueAt < pot.endAt && pot.endAt <= rangAt);
  const said = ofPot.find(isLate);
  return said && [{ ...said, critical: true }];
}

/** Once for each, to whoever used it last. */
function gearReminders(batch: Batch): readonly Reminder[] {
  const ringMinutes = batch.sheet.steps?.cleaning?.ringMinutes;
  if (ringMinutes === undefined) return [];
  return gearThatRings(batch).map(({ gear, usedAt, by }) => {
    const dueAt = minutesAfter(usedAt, ringMinutes);
    return { ...remind(batchStream(batch.number), 'gear', dueAt, [by], { key: gearKey(batch, gear) }), ring: 1 };
  });
}

function blendReminders(batch: Batch, air: TemperatureLog, pot: PotLifeTimes | undefined): readonly Reminder[] {
  const dueAt = blendDueAt(batch, air);
  if (batch.sheet.blend.way === 'induction') {
    const inUse = batch.filteredAt !== undefined || batch.coats.length > 0;
    return inUse || dueAt === undefined ? [] : [reminder(batch, 'induction-done', dueAt, true)];
  }
  if (batch.filteredAt !== undefined) return [];
  const last = batch.stirring.at(-1);
  if (last === undefined) return [];
  if (last.to === undefined) {
    // A pot that dies before it is stirred is ended by its own bell; nobody is told to filter it.
    const diesFirst = (pot?.endAt ?? Number.POSITIVE_INFINITY) <= (dueAt ?? 0);
    return dueAt === undefined || diesFirst ? [] : [reminder(batch, 'stir-done', dueAt, true)];
  }
  return dueAt === undefined ? [reminder(batch, 'stir-paused', minutesAfter(last.to, pausedFor), true)] : [];
}

/** For whoever took it off; of a pot whose life is over nobody waits for its lid. */
function lidReminders(batch: Batch, pot: PotLifeTimes | undefined): readonly Reminder[] {
  const dueAt = lidRingsAt(batch);
  if (dueAt === undefined || (pot !== undefined && pot.endAt <= dueAt)) return [];
  const by = batch.entries.findLast(({ fact }) => fact.type === 'PotUncovered')?.by;
  return by === undefined ? [] : [{ ...reminder(batch, 'uncovered', dueAt, false), to: [by] }];
}

function potReminders(batch: Batch, pot: PotLifeTimes | undefined): readonly Reminder[] {
  if (pot === undefined) return [];
  return [
    reminder(batch, 'pot-half', pot.halfAt, false),
    reminder(batch, 'pot-margin', pot.marginAt, true),
    reminder(batch, 'pot-end', pot.endAt, true),
  ];
}

function reminder({ number, openedBy }: Batch, kind: ReminderKind, dueAt: EpochMs, critical: boolean): Reminder {
  return remind(batchStream(number), kind, dueAt, [openedBy], { critical });
}
