// Which alarms are still on: from a cry, or the end of its countdown, to its end by a lead. What is on stops new work in the place
// that it names; where it names none, or the room that batches and cans stand in, everywhere.

import { type FactFor, isFor } from '../event-readers.ts';
import type { HeatSign } from '../heat-care.ts';
import type { Entry } from '../history.ts';
import { type BatchNumber, type CanNumber, defaultPlace, type PersonName, type PlaceName } from '../ids.ts';
import type { GasBeyond } from '../place/place.ts';
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
  /** About one pot or can, whose own rules hold that one. */
  readonly batch?: BatchNumber | undefined;
  readonly can?: CanNumber | undefined;
  readonly seen?: HeatSign | undefined;
}

/** What speaks against beginning anything there. */
export type AlarmObjection =
  | {
      readonly code: 'alarm-on';
      readonly what: Alarm;
      readonly by: PersonName;
      readonly at: EpochMs;
      /** Where nobody said one, none. */
      readonly place: PlaceName | undefined;
      /** It holds all work, not only what is begun there. */
      readonly isEverywhere: boolean;
    }
  | { readonly code: 'gas-beyond'; readonly reading: GasBeyond; readonly place: PlaceName };

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
      const { what, note, place, batch, can, seen } = fact;
      const raised = { seq, what, by, at, ringsAt: at, isDrill: false, note, place, batch, can, seen };
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
      return fact.seqs === undefined ? [] : open.filter((alarm) => !fact.seqs?.includes(alarm.seq));
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

type Where = 'place' | 'batch' | 'can';

/** Nobody knows that it is elsewhere: of no place that was said, and of no pot or can; or of the room itself. */
export const isEverywhere = ({ place, batch, can }: Pick<OpenAlarm, Where>): boolean =>
  place === undefined ? batch === undefined && can === undefined : place === defaultPlace;

/** What holds new work in this place. Before edition 6 only what named it. */
export const alarmHolding = (
  open: readonly OpenAlarm[],
  place: PlaceName,
  at: EpochMs,
  edition: Edition,
): OpenAlarm | undefined =>
  alarmIn(open, place, at) ?? alarmsOn(open, at).find((alarm) => !alarm.isDrill && isHeldBy(alarm, place, edition));

/** The one rule of which alarm holds which place. */
export const isHeldBy = (alarm: Pick<OpenAlarm, Where>, place: PlaceName, edition: Edition): boolean =>
  alarm.place === place || (edition >= 6 && isEverywhere(alarm));
