// A first shift in English: how each thing is done and why, in a line each, and what is said round it.

import type { CrewUnclear } from '../../../../core/crew/crew-unclear.ts';
import type { Lesson } from '../../../../core/guide/lessons.ts';
import type { FactOf } from '../../../../core/history.ts';
import type { PersonName } from '../../../../core/ids.ts';
import type { EpochMs } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';
import { verbWords } from '../typed.ts';

export interface Taught {
  readonly how: string;
  readonly why: string;
}

const lessons: Readonly<Record<Lesson, Taught>> = {
  'read-air': {
    how: 'read the hygrometer where you will coat, once it has settled.',
    why: 'stirring, pot life and drying all run by the air.',
  },
  'name-parts': {
    how: 'a short name for each, as it stands on its tag; the heat it bears, if you know it.',
    why: 'in a year somebody asks what went on which part.',
  },
  mix: {
    how: 'name any other part first; then say how much in all (plan works it out). A and B are worked out for you.',
    why: 'mix that is not used within its pot life is waste.',
  },
  'name-can': {
    how: 'part, lot and size as its label has them, and whether it is sealed or open.',
    why: 'its lot tells later what went on the part.',
  },
  'open-can': {
    how: 'read lot and size off its label; what air spoils is opened with gas at hand.',
    why: 'once its lid is off it does not keep for long; its lot tells later what went on the part.',
  },
  'stir-can': {
    how: 'slowly from the bottom up, until it looks the same all through.',
    why: 'what has settled gives a wrong portion.',
  },
  weigh: {
    how: 'vessel on the scale, to zero; A first, stirrer on, then B into A. Say what the scale shows.',
    why: 'off its ratio the film stays soft, and that shows a week later.',
  },
  blanket: {
    how: 'let gas flow over what is left, then lid on.',
    why: 'air that is shut in with it makes it set.',
  },
  blend: {
    how: 'covered, a slight vortex and no faster; come back when it rings.',
    why: 'only time with the stirrer running counts, and air stirred in shortens the pot life.',
  },
  filter: {
    how: 'pour it through its filter into a second, clean vessel.',
    why: 'a speck of gel or dust stays in the film for good.',
  },
  prep: {
    how: 'off with grease, dust, rust and the old coat; then clean gloves only. Say the grade that the job asks.',
    why: 'on dirt the film lets go.',
  },
  coat: {
    how: 'thin and even, once over, never back over film that begins to dry. Say it when the coat ends.',
    why: 'a patch in drying film leaves a line, and lets go.',
  },
  empty: {
    how: 'what is left into its waste vessel, lid vented. Say how much.',
    why: 'mix that is left heats up and sets.',
  },
  clean: {
    how: 'in the booth, fan on, one solvent after the other, as its sheet says.',
    why: 'gear in which mix has set is scrap.',
  },
  flash: {
    how: 'leave it where no dust falls on it; come back when it rings.',
    why: 'solvent must leave the film before heat comes, or it boils.',
  },
  dry: {
    how: 'a clean glove, one corner: no mark and no pull.',
    why: 'the clock alone proves nothing; a wet film blisters in the oven, and its vapour burns.',
  },
  cure: {
    how: 'the oven only if the part bears its heat; else the room, and clean.',
    why: 'only cured the film holds what it is for.',
  },
  heat: {
    how: 'door shut; come back when it rings.',
    why: 'each opening cools the part, and what is not proved does not count.',
  },
  temp: {
    how: 'the probe on the part itself, at its thickest place.',
    why: 'its hour begins when the metal is hot, not the oven.',
  },
  out: {
    how: 'gloves for heat, onto a clean rack.',
    why: 'its time is given, and it is still hot.',
  },
  inspect: {
    how: 'look for specks, runs and bare spots; measure where the job asks.',
    why: 'cure time given is not released: a person decides that.',
  },
  'look-in-can': {
    how: 'lid up and look: skin, lumps, thicker than it was? What is thrown away goes with a vented lid.',
    why: 'a can in doubt spoils the whole pot.',
  },
  'look-at-pot': {
    how: 'with a hand near it, never in it.',
    why: 'a pot past its life may heat and smoke.',
  },
  brief: {
    how: 'to the end: who wears what, who is out, which way out.',
    why: 'nobody sprays who has not read it.',
  },
  spray: {
    how: 'fan on and measured, who is on supplied air said; no phone where it is sprayed.',
    why: 'what nobody has said, nobody can count on.',
  },
  countersign: {
    how: 'show the parts, and what you said of them.',
    why: 'a second pair of eyes; from then on you work without being led.',
  },
};

export const englishFirstShift = {
  lessons,
  how: (text: string) => `How: ${text}`,
  why: (text: string) => `Why: ${text}`,
  tapOrType: (line: string) => `Tap it, or type: ${line}`,
  type: (line: string) => `Type, with your own names and figures: ${line}`,
  nameParts: 'name the parts that you will coat',
  countersign: (by: readonly PersonName[], figures: Figures) => `it is for ${figures.list(by)} to countersign`,
  begun: (who: PersonName) => `First shift of ${who}`,
  begunLine: 'One step at a time: what, how, why. Do it, then tap or type it. To leave: first shift off.',
  tryFirst: 'To try it first, with nothing counting: practice on.',
  done: (who: PersonName) => `First shift of ${who}: countersigned`,
  samePerson: 'By the same person: there is nobody else who can.',
  left: (who: PersonName) => `First shift of ${who}: ended, not countersigned`,
  on: (who: PersonName, since: EpochMs, figures: Figures) =>
    `First shift of ${who}: on since ${figures.timeDown(since)}.`,
  waits: (who: PersonName) => `First shift of ${who}: waits for a countersign.`,
};

export function englishFirstShiftFact(
  fact: FactOf<'FirstShiftBegun' | 'FirstShiftCountersigned' | 'FirstShiftLeft'>,
): string {
  switch (fact.type) {
    case 'FirstShiftBegun':
      return 'first shift begun';
    case 'FirstShiftCountersigned':
      return `first shift of ${fact.person} countersigned${fact.samePerson === true ? ' by the same person' : ''}`;
    case 'FirstShiftLeft':
      return `first shift of ${fact.person} ended, not countersigned`;
  }
}

type OfFirstShift = Extract<CrewUnclear, { code: 'no-first-shift' }>;

export const englishFirstShiftUnclear = ({ person, on }: OfFirstShift, figures: Figures): string =>
  on.length === 0
    ? 'Nobody is in a first shift. Whoever is new says: first shift.'
    : `${person} is in no first shift. In theirs: ${figures.list(on)}.`;

export const englishFirstShiftVerbs = {
  'first-shift': verbWords(
    "first-shift, first shift, i'm new, im new, i am new, new here, first day, my first day, its my first day, it's my first day, just started here, never done this, show me how, my first shift, teach me",
    'first shift',
    'here, begin, start, on',
  ),
  'first-shift-done': verbWords(
    'first-shift-done, first shift done, countersign, countersigned',
    'first shift done kari',
    'first, shift, of',
  ),
  'first-shift-off': verbWords('first-shift-off, first shift off, end first shift', 'first shift off', 'of'),
};
