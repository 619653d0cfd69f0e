// What rings, in English: a title that says it all on a locked phone, and what to do now.

import type { LateWhy } from '../../../core/ports.ts';
import type { ReminderKind } from '../../../core/reminders/wish.ts';

export interface RingWords {
  readonly title: (name: string) => string;
  readonly act: string;
}

export const englishRings: Readonly<Record<ReminderKind, RingWords>> = {
  'stir-done': { title: (name) => `Batch ${name}: stirring done`, act: 'Stop the stirrer, then filter.' },
  'induction-done': {
    title: (name) => `Batch ${name}: induction time over`,
    act: 'It can be applied as the sheet says.',
  },
  'stir-paused': {
    title: (name) => `Batch ${name}: stirrer still off`,
    act: 'Its time does not run. Start it again, or say why not.',
  },
  'pot-half': {
    title: (name) => `Batch ${name}: half the pot life is gone`,
    act: 'Look at it: thick or gelled ends it, whatever the clock.',
  },
  'pot-margin': { title: (name) => `Batch ${name}: finish now`, act: 'Time left to empty the pot and flush the gear.' },
  'pot-end': {
    title: (name) => `Batch ${name}: pot life over`,
    act: 'Apply no more of it. Empty and flush; waste vented, as the sheet says.',
  },
  'flash-least': { title: (name) => `${name}: flash-off, least time over`, act: 'Touch it. If it is dry, say dry.' },
  'flash-most': { title: (name) => `${name}: flash-off, longest time over`, act: 'Still not said dry. Look at it.' },
  'recoat-opens': { title: (name) => `${name}: recoat window open`, act: 'It may have its next coat.' },
  'recoat-closes': { title: (name) => `${name}: recoat window closes in two hours`, act: 'Coat now, or leave it.' },
  'cure-done': {
    title: (name) => `${name}: cure time given`,
    act: 'Take it out and let it cool. Given is not released.',
  },
  'air-due': {
    title: (name) => `Read the air: ${name}`,
    act: 'The last reading is about to be too old. Say, for example, air 24C 48%.',
  },
  digest: { title: (name) => `The day: ${name}`, act: '' },
};

/** In place of the title where the time is over but the proof is missing. */
export const englishUnproved = {
  'stir-done': (name: string) => `Batch ${name}: stir time over by the clock, not proved`,
  'induction-done': (name: string) => `Batch ${name}: induction over by the clock, not proved`,
  'cure-done': (name: string) => `${name}: cure time over by the clock, not proved`,
};

export const englishLate: Readonly<Record<LateWhy, string>> = {
  'was-not-running': 'the bell was not running',
  'was-asleep': 'the machine slept or its clock was moved',
  'was-told-late': 'it was told late',
  'post-failed': 'the message did not get through before',
  'store-failed': 'the record could not be written',
  unknown: 'no reason known',
};
