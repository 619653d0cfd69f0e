// What rings, in English: a title that says it all on a locked phone, and what to do now.

import type { LateWhy } from '../../../../core/ports.ts';
import type { ReminderKind } from '../../../../core/wanted-reminder.ts';
import type { Figures } from '../../figures.ts';
import { ringNamed } from '../../ring-key.ts';
import { englishReminders } from './reminders.ts';

export interface RingWords {
  /** A bell of a day is named by its ISO date. */
  readonly title: (name: string, figures: Pick<Figures, 'date'>) => string;
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
    act: 'Its time does not run. Start it again, or empty the pot if it is not used any more.',
  },
  uncovered: {
    title: (name) => `Batch ${name}: its lid is still off`,
    act: 'Cover it, or empty it if it is not used any more.',
  },
  'pot-half': {
    title: (name) => `Batch ${name}: half the pot life is gone`,
    act: 'Look at it: thick or gelled ends it, whatever the clock.',
  },
  'pot-margin': { title: (name) => `Batch ${name}: finish now`, act: 'Time left to empty the pot and flush the gear.' },
  'pot-end': {
    title: (name) => `Batch ${name}: pot life over`,
    act: 'Apply no more of it. Empty and flush; set the waste aside as the sheet says.',
  },
  gear: {
    title: (name) => `Batch ${name}: clean the gear`,
    act: 'Now, with the sheet’s solvents one after the other. Then say, for example, clean brush acetone.',
  },
  'surface-ends': {
    title: (name) => `${name}: prepared surface, half an hour left at most`,
    act: 'Coat it before then, or prepare it again.',
  },
  'flash-least': { title: (name) => `${name}: flash-off, least time over`, act: 'Touch it. If it is dry, say dry.' },
  'flash-most': { title: (name) => `${name}: flash-off, longest time over`, act: 'Still not said dry. Look at it.' },
  'recoat-opens': { title: (name) => `${name}: recoat window open`, act: 'It may have its next coat.' },
  'recoat-closes': { title: (name) => `${name}: recoat window closes in two hours`, act: 'Coat now, or leave it.' },
  'temp-due': {
    title: (name) => `${name}: should be at temperature, not measured`,
    act: 'By metal and wall only. Read the part itself and say temp: its hour begins with the reading.',
  },
  'stage-handle': {
    title: (name) => `${name}: stage by the sheet, can be handled`,
    act: 'By the time that is known. Feel it first; given is not released.',
  },
  'stage-service': {
    title: (name) => `${name}: stage by the sheet, into service`,
    act: 'By the time that is known. Given is not released.',
  },
  'stage-full': {
    title: (name) => `${name}: stage by the sheet, full resistance`,
    act: 'By the time that is known. Given is not released.',
  },
  'after-service': {
    title: (name) => `${name}: may serve by the sheet`,
    act: 'The sheet’s time after its cure is over. That says nothing of its release.',
  },
  'after-full': {
    title: (name) => `${name}: full properties by the sheet`,
    act: 'The sheet’s time after its cure is over. That says nothing of its release.',
  },
  'after-improves': {
    title: (name) => `${name}: improves no more, by the sheet`,
    act: 'As it is now it stays.',
  },
  handover: { title: () => 'Handover waits for you', act: 'Read what is alive, then say take over.' },
  'cure-done': {
    title: (name) => `${name}: cure time given`,
    act: 'Take it out and let it cool. Given is not released.',
  },
  'air-due': {
    title: (name) => `Read the air: ${name}`,
    act: 'The last reading is about to be too old. Say, for example, air 24C 48%.',
  },
  blanket: {
    title: (name) => `Can ${name}: gas over it now`,
    act: 'Air is over it. Gas in, lid on, then say blanket.',
  },
  'can-stirred': {
    title: (name) => `Can ${name}: stirred long enough`,
    act: 'Pour now, and gas over the rest.',
  },
  morning: { title: () => 'Morning list', act: '' },
  held: { title: () => 'On hold, and yours to see to', act: 'Each waits for a decision.' },
  brief: {
    title: (name) => `Session ${name}: brief now`,
    act: 'Read the lines below, outside the spray area, and say ack.',
  },
  'spell-end': {
    title: (name) => `Session ${name}: longest spell is over`,
    act: 'Stop them: signal, do not type inside. A new brief before spraying goes on.',
  },
  'air-recheck': {
    title: (name) => `Session ${name}: look again`,
    act: 'From outside: is the extraction running, is the supplied air on? Read the air and say it: air 24C 48%.',
  },
  flush: {
    title: (name) => `Session ${name}: flush the gun`,
    act: 'Now, in the booth with the fan on. It rings until somebody says flush.',
  },
  vessels: {
    title: (name) => `Session ${name}: flush the vessels`,
    act: 'Pots, cups and tools, before the mix sets. It rings until somebody says flush vessels.',
  },
  'fan-off': {
    title: (name) => `Session ${name}: the sheet's time with the fan on is over`,
    act: 'Wet film goes on giving off vapour: look at what still dries before you switch it off.',
  },
  cry: {
    title: () => 'Somebody may need help',
    act: 'Nobody has said that it is no alarm. Go and look, then say alarm over.',
  },
  own: { title: () => englishReminders.title(''), act: '' },
  'bell-test': { title: () => 'Bell test', act: 'If you hear this, say ok.' },
  digest: { title: (name, figures) => `The day: ${figures.date(name)}`, act: '' },
};

/** In place of the title where the time is over but the proof is missing. */
export const englishUnproved = {
  'stir-done': (name: string) => `Batch ${name}: stir time over by the clock, not proved`,
  'induction-done': (name: string) => `Batch ${name}: induction over by the clock, not proved`,
  'cure-done': (name: string) => `${name}: cure time over by the clock, not proved`,
};

/** In place of a bell’s own words, where others are true by the time at which it rings. */
export const englishOvertaken = {
  'surface-over': {
    title: (name: string) => `${name}: the prepared surface has outlived its time`,
    act: 'Prepare it again before it is coated.',
  },
  'recoat-over': {
    title: (name: string) => `${name}: recoat window has closed`,
    act: 'No further coat by the sheet. Say cure, or ask who decides.',
  },
  'recoat-soon': { title: (name: string) => `${name}: recoat window closes soon`, act: 'Coat now, or leave it.' },
  'warm-by-pace': {
    title: (name: string) => `${name}: should be at temperature, not measured`,
    act: 'By the pace of its last two readings. Read the part itself and say temp: its hour begins with the reading.',
  },
  'can-in-doubt': {
    title: (name: string) => `Can ${name}: in doubt`,
    act: 'It stood too long without gas. Nothing is poured from it until a lead has looked. Gas over it all the same, lid loose: with moist air in it, it can swell.',
  },
  'air-old': {
    title: (name: string) => `Read the air: ${name}`,
    act: 'The last reading is too old. Say, for example, air 24C 48%.',
  },
};

export const englishLate: Readonly<Record<LateWhy, string>> = {
  'was-not-running': 'the bell was not running',
  'was-asleep': 'the machine slept or its clock was moved',
  'was-told-late': 'it was told late',
  'post-failed': 'the message did not get through before',
  'store-failed': 'the record could not be written',
  unknown: 'no reason known',
};

/** A bell by what it says: `batch/1/stir-done` is the machine's name for it. */
export function englishRingName(key: string, figures: Pick<Figures, 'date'>): string {
  const ring = ringNamed(key);
  return ring === undefined ? key : englishRings[ring.kind].title(ring.name, figures);
}
