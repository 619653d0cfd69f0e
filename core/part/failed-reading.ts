// What tells one failed reading from another.

import type { FailedReading } from './part-events.ts';

/** Two that say the same have the same key, in whatever order their fields were read. */
export function readingKey(reading: FailedReading): string {
  switch (reading.of) {
    case 'film':
      return `film ${reading.micrometres.join(' ')}`;
    case 'adhesion':
      return `adhesion ${reading.rating} ${reading.coupon === true}`;
    case 'heat':
      return `heat ${reading.celsius}`;
    case 'rub':
      return `rub ${reading.doubleRubs} ${reading.coupon === true}`;
  }
}
