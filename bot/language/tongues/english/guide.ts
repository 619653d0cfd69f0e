// What somebody does now, and what not, in English: half a line each, to be read at arm's length.

import type { MustNot } from '../../../../core/guide/guidance.ts';
import type { NextActId } from '../../../../core/status.ts';
import type { Minutes } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';

const steps: Readonly<Record<NextActId, string>> = {
  weigh: 'weigh Part A, then Part B',
  'weigh-a': 'weigh Part A',
  'weigh-b': 'weigh Part B',
  filter: 'filter it',
  stop: 'stop the stirrer',
  stir: 'turn the stirrer on',
  coat: 'coat the parts',
  'coat-part': 'coat',
  catch: 'catch what drains off',
  cover: 'cover the pot',
  thick: 'say whether it thickens',
  hot: 'feel whether it heats, from outside',
  empty: 'empty what is left as waste',
  'flush-step': 'flush the gear',
  'gear-cleaned': 'clean the gear',
  check: 'look whether it is skinned, thick or gelled',
  blanket: 'gas over it, lid on',
  prestir: 'stir it in its can',
  'prestir-gas': 'lid off with gas, stir it in its can',
  lid: 'lid off, gas at hand',
  discard: 'throw it away as its data sheet says',
  surface: 'read the surface temperature',
  prep: 'prepare the surface',
  dry: 'touch the film at a corner, and say whether it is dry',
  'touch-up': 'touch up while it is open',
  'cure-oven': 'put it into the oven',
  'cure-room': 'let it cure in the room',
  temp: 'read the part’s own temperature',
  door: 'say how long the door was open',
  out: 'take it out',
  wet: 'measure the wet film',
  film: 'measure the dry film',
  release: 'look it over and release it',
  lift: 'a lead decides on the hold',
  hold: 'hold it',
  strip: 'take the old coat off',
  abrade: 'abrade the old coat',
  rework: 'a lead decides on the hold',
  concession: 'a lead decides on the hold',
  scrap: 'a lead decides on the hold',
  return: 'a lead decides on the hold',
  brief: 'brief whoever sprays',
  ack: 'read the brief, then say so',
  'ack-for': 'read the brief out to those who have not read it',
  'fan-on': 'fan on, and measure its face velocity',
  'fan-unmeasured': 'fan on',
  'fan-off': 'say whether the fan runs',
  'supplied-yes': 'say who is on supplied air',
  'supplied-no': 'say who is on supplied air',
  'moved-out': 'move out whoever does not spray',
  flush: 'flush the gun',
  vessels: 'flush the vessels',
  rags: 'rags and filters into their can',
  'spray-on': 'say when spraying starts',
  'spray-off': 'spray; say when the gun stops',
  close: 'close the session',
};

/** A time stands where one is known. */
export function englishMustNot(not: MustNot, { timeDown, timeUp }: Pick<Figures, 'timeDown' | 'timeUp'>): string {
  switch (not.is) {
    case 'go-in':
      return 'Do not go back in before a lead says that the alarm is over.';
    case 'mix-in-unread-air':
      return 'Do not mix or coat in air that nobody has read.';
    case 'mix-too-much':
      return 'Do not mix more than goes on before its pot life ends.';
    case 'use-dead-pot':
      return 'Do not coat from it, thin it, or put a lid on it.';
    case 'use-recalled':
      return 'Do not put any of it on: its lot was recalled.';
    case 'use-reacting-can':
      return 'Do not open, close or carry it.';
    case 'pour-unweighed':
      return 'Do not put anything in that was not weighed.';
    case 'pour-unstirred':
      return 'Do not pour from it before it is stirred.';
    case 'coat-unfiltered':
      return 'Do not coat with it before it is filtered.';
    case 'open-without-gas':
      return 'Do not take its lid off without gas at hand.';
    case 'leave-lid-off':
      return 'Do not leave it open: it takes up moisture.';
    case 'pour-in-doubt':
      return 'Do not pour from it before somebody has looked.';
    case 'let-it-set':
      return 'Do not let mix set in the gear.';
    case 'touch-prepared':
      return 'Do not touch the prepared surface with bare hands.';
    case 'touch-hot':
      return 'Do not touch it without gloves for heat.';
    case 'take-out-unproved':
      return 'Do not end its cure before the time is given.';
    case 'hand-over-unreleased':
      return 'Do not hand it over before it is released.';
    case 'spray-unbriefed':
      return 'Do not spray before everybody has read the brief.';
    case 'go-in-unprotected':
      return 'Do not go in without what the brief asks to be worn.';
    case 'stop-extraction':
      return 'Do not turn the extraction off.';
    case 'use-too-early':
      return not.at === undefined
        ? 'Do not filter or coat before its time is given.'
        : `Leave the stirrer on: do not filter or coat before ${timeUp(not.at)}.`;
    case 'coat-too-late':
      return not.at === undefined
        ? 'Do not coat past its pot life.'
        : `Do not coat from it after ${timeDown(not.at)}, however thin it looks.`;
    case 'heat-too-early':
      return not.at === undefined
        ? 'Do not heat it while it is wet.'
        : `Do not touch or heat it before ${timeUp(not.at)}.`;
    case 'stand-too-long':
      return not.at === undefined
        ? 'Do not let it stand and take dust.'
        : `Do not let it stand past ${timeDown(not.at)}.`;
  }
}

export const englishGuide = {
  title: 'What now',
  steps,
  never: englishMustNot,
  /** Of one thing by its name. */
  of: (name: string, step: string) => `${name}: ${step}`,
  wait: 'nothing to do but wait',
  readAir: 'Read the air: temperature and humidity',
  mix: 'Mix a batch',
  stayOut: 'An alarm is on: stay out, and do what its card says',
  nameCan: (part: string) => `read me the label of a can of ${part}, sealed or open`,
  openCan: (part: string) => `open a can of ${part}`,
  useUp: 'coat what else waits for it, then empty it',
  stirCan: (can: string) => `stir ${can} up before you pour`,
  serves: (minutes: Minutes, figures: Figures) => `A reading serves for ${figures.minutesDown(minutes)}.`,
  blendTakes: (minutes: Minutes, figures: Figures) => `Once both are in, mixing takes ${figures.minutesUp(minutes)}.`,
  noClock: 'No clock runs on it: take the time that it needs.',
  ends: (clock: string, at: string, left: string) => `${clock}: ${at}, ${left}.`,
  /** The last line of a card. */
  leads: (step: string) => `Next: ${step}.`,
  whose: (names: string) => `That is for ${names} to say.`,
};
