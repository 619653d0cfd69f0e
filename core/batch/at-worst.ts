// A pot's end at worst: the clock runs on the last reading while it is fresh; where the next one is warmer, the pot may
// have been that warm since the reading before. It stops and holds nothing: a coat after it is marked, for a lead to judge.

import { readUntil, type TemperatureLog, type TemperatureReading } from '../calc/clock.ts';
import { type DoseRules, paceAt } from '../calc/dose.ts';
import type { Objection } from '../objections.ts';
import type { Rule } from '../rules.ts';
import { type EpochMs, minutes, minutesAfter } from '../units.ts';
import type { Batch } from './batch.ts';
import { potLifeRules, potLifeTimes } from './batch-clocks.ts';
import type { BatchCase } from './batch-rules.ts';

export type AtWorst = Omit<Extract<Objection, { code: 'past-pot-life-at-worst' }>, 'code'>;

/** Less is not worth a line. */
const worthSaying = minutes(1);

/** `undefined` where it ends no sooner than by the clock. */
export function potAtWorst(batch: Batch, air: TemperatureLog): AtWorst | undefined {
  const end = potLifeTimes(batch, air)?.endAt;
  const metAt = batch.weighing?.at;
  if (end === undefined || metAt === undefined) return undefined;
  const readings = asWarmAsNext(potLifeRules(batch), readAround(air, metAt, end));
  const endAt = potLifeTimes(batch, { ...air, readings })?.endAt;
  if (endAt === undefined || minutesAfter(endAt, worthSaying) >= end) return undefined;
  const sooner = readings.flatMap(({ at, againAt }) =>
    againAt !== undefined && againAt > metAt && at < endAt ? [{ readAt: at, againAt }] : [],
  );
  const last = sooner.at(-1);
  return last && { endAt, ...last };
}

/** What may count between those times, and the first after them; of several at one time the last. */
function readAround({ readings, staleAfter }: TemperatureLog, from: EpochMs, to: EpochMs) {
  const next = readings[readUntil(readings, to)]?.at ?? to;
  return readings
    .slice(readUntil(readings, minutesAfter(from, minutes(-staleAfter))), readUntil(readings, next))
    .filter(({ at }, i, all) => all[i + 1]?.at !== at);
}

interface Reckoned extends TemperatureReading {
  /** When it was read warmer, where that counts from here on. */
  readonly againAt?: EpochMs;
}

/** Colder than the sheet covers runs at its fastest already: warmer is then no worse. */
function asWarmAsNext(rules: DoseRules, readings: readonly TemperatureReading[]): readonly Reckoned[] {
  const pace = ({ celsius }: TemperatureReading) => paceAt(rules, celsius).perMinute;
  return readings.map((reading, i) => {
    const next = readings[i + 1];
    return next !== undefined && next.celsius > reading.celsius && pace(next) > pace(reading)
      ? { at: reading.at, celsius: next.celsius, againAt: next.at }
      : reading;
  });
}

/** Marks a coat after it, and objects to none. */
export const coatAtWorstRules: readonly Rule<BatchCase>[] = [
  {
    code: 'past-pot-life-at-worst',
    source: 'common practice, no source',
    liftedBy: 'nobody',
    since: 6,
    check: ({ batch, air, at }) => {
      const worst = potAtWorst(batch, air);
      const end = potLifeTimes(batch, air)?.endAt;
      const isBetween = worst !== undefined && end !== undefined && worst.endAt <= at && at < end;
      return isBetween ? { code: 'past-pot-life-at-worst', ...worst } : undefined;
    },
  },
];
