// Answers to questions about how things stand, in English: the figure first, then what it rests on. Never that something is
// safe, and never yes: what stands against it, or that nothing here does.

import type { PersonName, PlaceName } from '../../../../core/ids.ts';
import type { Method } from '../../../../core/methods.ts';
import type { Celsius, EpochMs, Grams, Minutes } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';
import { englishNames } from './names.ts';

const count = (many: number, one: string, more: string, figures: Figures): string =>
  `${figures.count(many)} ${many === 1 ? one : more}`;

export const englishAsked = {
  nothingAgainst: (act: string) => `${act}: nothing here stands against it`,
  notAsItStands: (act: string) => `${act}: not as things stand`,
  from: (act: string, at: EpochMs, figures: Figures) => `${act}: from ${figures.timeUp(at)}, as things run`,
  standsUntil: (objection: string, at: EpochMs, figures: Figures) =>
    `${objection} By its clock until ${figures.timeUp(at)}.`,
  thenStands: (objection: string) => `By then: ${objection}`,
  onlyByRecord: 'By what was said and read so far, no more. What nobody said, nobody checked.',
  askedAs: (line: string) => `Asked as: ${line}`,
  sayMore: (example: string) => `Say of what, for example: ${example}`,
  noneCalled: (name: string) => `Nothing here is called ${name}`,
  whichCalled: (name: string) => `Which ${name}?`,
  nearOnes: (names: readonly string[], figures: Figures) => `Near it: ${figures.list(names)}.`,
  noneNear: 'Nothing is near it. What runs: now.',
  clock: (label: string, at: string | undefined, left: string) =>
    at === undefined ? `${label}: ${left}` : `${label}: ${at}, ${left}`,
  titled: (name: string, figure: string) => `${name}: ${figure}`,
  nothingRuns: 'No clock runs on it.',
  noClocks: 'No clock runs.',
  done: (at: EpochMs, who: PersonName, what: string, figures: Figures) => `${figures.timeDown(at)} ${who}: ${what}`,
  notDone: (act: string) => `${act}: nobody has said so`,
  nothingDone: (name: string) => `${name}: nothing is recorded`,
  nobodyThere: 'Nobody is on shift by the record, and no spray session is open.',
  onShift: (who: PersonName, since: EpochMs, figures: Figures) => `${who}: on shift since ${figures.timeDown(since)}`,
  sprayersAt: (place: string, people: readonly PersonName[], figures: Figures) => `${place}: ${figures.list(people)}`,
  in: (place: PlaceName) => `in the ${place}`,
  fromBatch: (batch: number, place: PlaceName) => `Coated from batch ${batch}, ${englishNames.place(place)}.`,
  whereLastSaid: 'By what was last said; nobody is tracked.',
  thereNow: (place: string, many: number, figures: Figures) =>
    `${place}: ${many === 0 ? 'nothing, by the record' : count(many, 'thing', 'things', figures)}`,
  cureWay: { oven: 'in the oven', room: 'in cure in the room' },
  since: (where: string, at: EpochMs, figures: Figures) => `${where} since ${figures.timeDown(at)}`,
  readAs: (celsius: Celsius, at: EpochMs, age: Minutes, figures: Figures) =>
    `${figures.temperature(celsius)}, read ${figures.timeDown(at)}, ${figures.minutesUp(age)} ago`,
  readBy: (who: PersonName) => `Read by ${who}.`,
  session: (number: number) => `Session ${number}`,
  notReadYet: 'nobody has read it',
  setTo: (celsius: Celsius, figures: Figures) => `The oven was said to be set to ${figures.temperature(celsius)}.`,
  potNotRead: 'Nobody reads the temperature of a pot here. This is the air that its clocks run by.',
  tooOld: 'Too old to go by: read it again.',
  weighedIn: (mass: Grams, figures: Figures) => `${figures.mass(mass)} weighed in`,
  notWeighed: (mass: Grams, figures: Figures) => `not weighed yet, ${figures.mass(mass)} planned`,
  leftInIt: (mass: Grams, figures: Figures) => `${figures.mass(mass)} left in it`,
  coatsFrom: (many: number, figures: Figures) =>
    many === 0 ? 'Nothing was coated from it yet.' : `${count(many, 'coat', 'coats', figures)} went from it.`,
  leftUnknown: 'What is left nobody weighs before the pot is empty: hold it to the scale for a figure.',
  toMix: (method: Method, mass: Grams, figures: Figures) => `${englishNames.method(method)}: ${figures.mass(mass)}`,
  toMixTitle: (lowest: Grams, highest: Grams, figures: Figures) =>
    lowest === highest
      ? `To mix: ${figures.mass(lowest)}`
      : `To mix: ${figures.mass(lowest)} to ${figures.mass(highest)}, by how it goes on`,
  nothingWaits: 'Nothing waits for anybody, by the record',
  toDoTitle: (many: number, figures: Figures) => `To do: ${figures.count(many)}`,
  nextOf: (name: string, phase: string, next: string | undefined) =>
    next === undefined ? `${name}: ${phase}` : `${name}: ${phase}. Next: ${next}`,
  nothingNext: 'Nothing comes next on it.',
  late: (many: number, figures: Figures) => `Late: ${figures.count(many)}`,
  nothingLate: 'Nothing is late',
  unheard: (ring: string, at: EpochMs, figures: Figures) => `Rang ${figures.timeDown(at)}, nobody answered: ${ring}`,
  wrong: (many: number, figures: Figures) => `Went wrong today: ${figures.count(many)}`,
  nothingWrong: 'Nothing went wrong today, by the record',
  lateRing: (ring: string, by: Minutes, figures: Figures) => `Rang ${figures.minutesUp(by)} late: ${ring}`,
  atRisk: (mass: Grams, left: Minutes, figures: Figures) =>
    `${figures.mass(mass)} at risk, the first in ${figures.minutesDown(left)}`,
  nothingAtRisk: 'Nothing mixed is at risk',
  potAtRisk: (pot: string, mass: string, margin: string, end: string, coats: string) =>
    `${pot}: ${mass} weighed in. Finish by ${margin}, ends ${end}. ${coats}`,
  potLost: (pot: string, mass: string, end: string) => `${pot}: ${mass}, its pot life ended ${end}: waste.`,
};
