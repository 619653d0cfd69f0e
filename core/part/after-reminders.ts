// The bells of what the sheet promises once the cure is given: from when the part may serve, has its full properties, gets no
// better. It may have been released long before: it is not forgotten until the last of them has rung.

import { type PersonName, partStream } from '../ids.ts';
import type { AirLog } from '../place/place.ts';
import type { Sheet } from '../products/sheet.ts';
import { movedMs } from '../ring-log.ts';
import { holdsIn } from '../rule-editions.ts';
import { type EpochMs, epochMs, minutesAfter } from '../units.ts';
import { type Reminder, remind } from '../wanted-reminder.ts';
import { afterGiven } from './after-cure.ts';
import type { Cure, Part } from './part.ts';
import { cureClock } from './part-clocks.ts';

/** What was over when the part was taken out stands on that card, and rings no more. */
export function afterCureReminders(
  part: Part,
  sheet: Sheet | undefined,
  air: AirLog,
  leads: readonly PersonName[],
): readonly Reminder[] {
  const { cure, verdict } = part;
  if (verdict?.is === 'scrapped' || verdict?.is === 'returned') return [];
  if (cure === undefined || sheet?.cure[cure.way]?.after === undefined) return [];
  const isInOven = cure.way === 'oven' && cure.run.to === undefined;
  if (isInOven || !holdsIn({ since: 6 }, cure.entry.edition)) return [];
  const doneAt = givenAt(part, cure, sheet, air);
  const toldAt = part.entries.findLast(({ fact }) => fact.type === 'CureEnded')?.recordedAt ?? 0;
  return afterGiven(sheet, cure.way, doneAt).flatMap(({ stage, at }) => {
    const dueAt = epochMs(Math.ceil(at));
    return dueAt <= toldAt ? [] : [remind(partStream(part.name), `after-${stage}`, dueAt, leads)];
  });
}

/** Past all that was read, as far as a reading is believed. */
function allRead({ temperatures, cure }: Part, { readings, humidities, lowest, staleAfter }: AirLog): EpochMs {
  const last = Math.max(
    cure?.run.from ?? 0,
    ...[temperatures.at(-1), readings.at(-1), humidities.at(-1)].map((reading) => reading?.at ?? 0),
    lowest.at(-1)?.to ?? 0,
  );
  return minutesAfter(epochMs(last), staleAfter);
}

/** Whether one of them is still to ring: put off, or never rung, or moved since. */
export function waitsForAfterCure(part: Part, sheet: Sheet | undefined, air: AirLog): boolean {
  return afterCureReminders(part, sheet, air, []).some(({ key, dueAt }) => {
    const last = part.rings.get(key)?.at(-1);
    const isPutOff = last?.snoozed !== undefined && last.answered === undefined;
    return last === undefined || isPutOff || dueAt > last.rangAt + movedMs;
  });
}

type Given = { readonly sheet: Sheet; readonly air: AirLog; readonly doneAt: EpochMs | undefined };
/** Folds are never changed: asked at every act of each part that was released, it is reckoned once for what is known of it. */
const givenOf = new WeakMap<Part, Given>();

function givenAt(part: Part, cure: Cure, sheet: Sheet, air: AirLog): EpochMs | undefined {
  const known = givenOf.get(part);
  if (known?.sheet === sheet && known.air === air) return known.doneAt;
  const doneAt = cureClock(part, sheet, air, cure.run.to ?? allRead(part, air))?.doneAt;
  givenOf.set(part, { sheet, air, doneAt });
  return doneAt;
}
