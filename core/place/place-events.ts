// What was read at a place: its air and surfaces outlive midnight and every batch.

import { z } from 'zod';
import { legalFrames } from '../calc/legal-frame.ts';
import { gases } from '../calc/monitor-limits.ts';
import { event } from '../event.ts';
import { ReadWith } from '../instrument-kinds.ts';
import { Celsius, EpochMs, Percent } from '../unit-schemas.ts';

export const PlaceEvent = z.discriminatedUnion('type', [
  event('AirRead', {
    celsius: Celsius.optional(),
    relativeHumidityPercent: Percent.optional(),
    /** What the humidity was summed from, where nobody read it off a hygrometer. */
    wetBulbCelsius: Celsius.optional(),
    instrument: ReadWith,
  }),
  event('SurfaceRead', { celsius: Celsius, instrument: ReadWith }),
  /**
   * Off a gas monitor: in per cent, or parts per million. `law`: whose limits held; of the United States where it is left out.
   * `unproved`: of a monitor that nobody had said to be in check.
   */
  event('GasRead', {
    ...{ gas: z.enum(gases), value: z.number(), law: z.enum(legalFrames).optional() },
    unproved: z.literal(true).optional(),
  }),
  /** The lowest of a time that nobody read, from a minimum thermometer or a log. */
  event('LowestRead', { lowestCelsius: Celsius, since: EpochMs, instrument: ReadWith }),
]);
export type PlaceEvent = z.infer<typeof PlaceEvent>;
