// The clocks of a part: flash-off by plain minutes (warmth never shortens the least), and the cure by the part's own
// temperature in an oven or by the room's.

import { type ClockReading, dueAt, readClock, type TemperatureLog } from '../calc/clock.ts';
import type { DoseRules } from '../calc/dose.ts';
import { ovenLaw, rateLaw, type Sheet } from '../products/sheet.ts';
import { type EpochMs, epochMs, minutes, minutesAfter } from '../units.ts';
import type { Cure, Part } from './part.ts';

/** A reading on the part holds as long as one of the air's. */
export type PartAir = TemperatureLog;

export interface FlashTimes {
  readonly leastAt: EpochMs;
  readonly mostAt: EpochMs;
}

export function flashTimes(sheet: Sheet, coatedAt: EpochMs): FlashTimes {
  return {
    leastAt: minutesAfter(coatedAt, sheet.flashOff.leastMinutes),
    mostAt: minutesAfter(coatedAt, sheet.flashOff.mostMinutes),
  };
}

/** `undefined` where the sheet knows no such cure. */
function cureRules(sheet: Sheet, way: Cure['way']): DoseRules | undefined {
  switch (way) {
    case 'oven':
      return sheet.cure.oven && { law: ovenLaw(sheet.cure.oven), caution: 'at-least', withoutFigure: 'nothing' };
    case 'room':
      return sheet.cure.room && { law: rateLaw(sheet.cure.room.time), caution: 'at-least', withoutFigure: 'nothing' };
  }
}

/** In an oven the part's own readings count, from the one at or before its start; in a room the room's. */
function cureLog(part: Part, way: Cure['way'], air: TemperatureLog): TemperatureLog {
  return way === 'oven' ? { readings: part.temperatures, lowest: [], staleAfter: air.staleAfter } : air;
}

/** `undefined` while the part is not in cure, or where the sheet has no such cure. */
export function cureClock(part: Part, sheet: Sheet, air: TemperatureLog, now: EpochMs): ClockReading | undefined {
  if (part.cure === undefined) return undefined;
  const rules = cureRules(sheet, part.cure.way);
  if (rules === undefined) return undefined;
  return readClock(rules, [part.cure.run], cureLog(part, part.cure.way, air), now);
}

/** When the cure rings, on the late side. A sheet without such a cure rings after a day, to be asked about. */
export function cureDueAt(part: Part, sheet: Sheet, air: TemperatureLog): EpochMs | undefined {
  if (part.cure === undefined) return undefined;
  const rules = cureRules(sheet, part.cure.way);
  if (rules === undefined) return minutesAfter(part.cure.run.from, dayWithoutFigure);
  const due = dueAt(rules, [part.cure.run], cureLog(part, part.cure.way, air));
  return due === undefined ? undefined : epochMs(Math.ceil(due));
}

const dayWithoutFigure = minutes(1440);
