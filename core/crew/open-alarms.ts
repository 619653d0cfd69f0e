// Which alarms are still on: from a cry, or the end of its countdown, to its end by a lead. What is on stops new work in the place
// that it names.

import { type FactFor, isFor } from '../event-readers.ts';
import type { Entry } from '../history.ts';
import type { PersonName, PlaceName } from '../ids.ts';
import type { GasReading } from '../place/place.ts';
import type { Edition } from '../rule-editions.ts';
import type { Alarm } from '../session/session-commands.ts';
import { type EpochMs, epochMs } from '../units.ts';

/** So long a line that may be a cry waits for a no before it rings. Our own choice, no source. */
export const countdownMs = 20_000;

export interface OpenAlarm {
  readonly seq: number;
  readonly what: Alarm;
  readonly by: PersonName;
  readonly at: EpochMs;
  /** Later than `at` where it may have been no cry: until then anybody may call it off. */
  readonly ringsAt: EpochMs;
  readonly isDrill: boolean;
  readonly note?: string | undefined;
  readonly place?: PlaceName | undefined;
}

/** What speaks against beginning anything there. */
export type AlarmObjection =
  | {
      readonly code: 'alarm-on';
      readonly what: Alarm;
      readonly by: PersonName;
      readonly at: EpochMs;
      readonly place: PlaceName;
    }
  | { readonly code: 'gas-beyond'; readonly reading: GasReading; readonly place: PlaceName };

/** Of older records nobody was ever asked to say that all is clear. */
const sinceEdition: Edition = 5;

export function foldAlarms(entries: readonly Entry[]): readonly OpenAlarm[] {
  return entries.reduce<readonly OpenAlarm[]>((open, entry) => {
    const { fact, edition } = entry;
    return isFor('alarms', fact) && edition >= sinceEdition ? withFact(open, fact, entry) : open;
  }, []);
}

function withFact(
  open: readonly OpenAlarm[],
  fact: FactFor<'alarms'>,
  { seq, by, happenedAt: at }: Entry,
): readonly OpenAlarm[] {
  const waits = (alarm: OpenAlarm): boolean => alarm.ringsAt > at;
  switch (fact.type) {
    case 'AlarmRaised': {
      const { what, note, place } = fact;
      const raised = { seq, what, by, at, ringsAt: at, isDrill: false, note, place };
      return [...open.filter((alarm) => !waits(alarm)), raised];
    }
    case 'CryHeard': {
      const { what, note, place } = fact;
      return [...open, { seq, what, by, at, ringsAt: epochMs(at + countdownMs), isDrill: false, note, place }];
    }
    case 'DrillBegun':
      return [...open, { seq, what: fact.what, by, at, ringsAt: at, isDrill: true }];
    case 'AlarmCalledOff':
      return open.filter((alarm) => !waits(alarm));
    case 'AlarmsEnded':
      return [];
  }
}

/** Under which it rings by itself. */
export const cryKey = (seq: number): string => `crew/cry/${seq}`;

/** Those that have rung by `now`. */
export const alarmsOn = (open: readonly OpenAlarm[], now: EpochMs): readonly OpenAlarm[] =>
  open.filter(({ ringsAt }) => ringsAt <= now);

/** Those that anybody may still call off. */
export const countdowns = (open: readonly OpenAlarm[], now: EpochMs): readonly OpenAlarm[] =>
  open.filter(({ ringsAt }) => ringsAt > now);

/** What is on in this place, and no drill. */
export const alarmIn = (open: readonly OpenAlarm[], place: PlaceName, at: EpochMs): OpenAlarm | undefined =>
  alarmsOn(open, at).find((alarm) => !alarm.isDrill && alarm.place === place);
