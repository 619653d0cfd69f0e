// The invented shop in which the typed lines are read: it is Monday, ten in the morning.

import type { LineContext } from '../../../bot/language/reading.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { type EpochMs, epochMs } from '../../../core/units.ts';

export const utc = (iso: string): EpochMs => epochMs(Date.parse(`${iso}Z`));

export const shopAtTen: LineContext = {
  hearing: shipped.hearingIn('en'),
  country: shipped.profileOf('en', 'metric'),
  now: utc('2026-03-02T10:00'),
  zone: 'UTC',
  sheetIds: ['demo-clear', 'demo-build'],
  batches: [1, 2],
  parts: ['impeller-7', 'valve-3', 'plate-12'],
  places: ['room', 'booth'],
  instruments: [
    { name: 'gauge-2', kind: 'gauge' },
    { name: 'scale-1', kind: 'scale' },
    { name: 'hygro-1', kind: 'hygrometer' },
    { name: 'probe-1', kind: 'thermometer' },
  ],
  people: ['kari', 'omar', 'lia'],
};

/** The same, of a crew that speaks Spanish. */
export const tallerALasDiez: LineContext = {
  ...shopAtTen,
  hearing: shipped.hearingIn('es'),
  country: shipped.profileOf('es', 'metric'),
};
