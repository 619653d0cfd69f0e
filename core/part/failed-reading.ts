// What tells one failed reading from another.

import type { FailedReading } from './part-events.ts';

/** Two that say the same have the same key, in whatever order their fields were read. */
export function readingKey(reading: FailedReading): string {
  const onCoupon = 'coupon' in reading && reading.coupon === true;
  switch (reading.of) {
    case 'film':
      return `${filmKey(reading)}${reading.meanMicrometres === undefined ? '' : ` ${reading.meanMicrometres}`}`;
    case 'adhesion':
      return `adhesion ${reading.rating} ${reading.coupon === true}`;
    case 'heat':
      return `heat ${reading.celsius}`;
    case 'rub':
      return `rub ${reading.doubleRubs} ${reading.coupon === true}`;
    case 'wet':
      return `wet ${reading.micrometres.join(' ')}`;
    case 'pull-off':
      return `pull-off ${reading.megapascals} ${reading.brokeAt} ${onCoupon}`;
    case 'gloss':
      return `gloss ${reading.glossUnits} ${onCoupon}`;
    case 'hardness':
      return `hardness ${reading.pencil} ${onCoupon}`;
    case 'holidays':
      return `holidays ${reading.found} ${reading.volts} ${onCoupon}`;
    case 'visual':
      return `visual ${reading.looks.join(' ')} ${onCoupon}`;
  }
}

/** A film's, whatever mean it came to with others. */
export function filmKey({ micrometres, set, spot }: Extract<FailedReading, { of: 'film' }>): string {
  return `film ${micrometres.join(' ')}${set === undefined ? '' : ` ${set}.${spot}`}`;
}
