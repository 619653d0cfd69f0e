// Answers about one thing of the shop, its people or its sheet, in English: the answer first, then how it is known. Never that
// something is safe.

import type { PersonName } from '../../../../core/ids.ts';
import type { Method } from '../../../../core/methods.ts';
import type { Celsius, EpochMs, Grams, Micrometres, Minutes } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';
import { englishMethods } from './methods.ts';

const count = (many: number, one: string, more: string, figures: Figures): string =>
  `${figures.count(many)} ${many === 1 ? one : more}`;

export const englishTopics = {
  /** Before how it stands, where what is asked of it is not known. */
  onlyStanding: 'What exactly was asked is not clear here. This is how it stands:',
  /** What else may be asked of a thing. */
  ask: { 'how-long': 'How long?', 'who-did': 'Who, and when?', 'where-is': 'Where?', trace: 'Its whole record' },
  ringsNext: (at: string, label: string) => `Rings next, ${at}: ${label}`,
  ringsThen: (at: string, label: string) => `${at} ${label}`,
  nothingRings: 'Nothing is due to ring',
  rang: (at: string, label: string) => `Rang ${at}: ${label}`,
  nothingRang: 'Nothing has rung on this shift',
  watches: (person: PersonName, place: string) => `${person} stands outside the ${place} and gets the timers`,
  nobodyWatches: (place: string) => `Nobody is named outside the ${place}`,
  timersGoTo: (people: readonly PersonName[], figures: Figures) => `The timers go to ${figures.list(people)}.`,
  spraysThere: (people: readonly PersonName[], figures: Figures) => `Sprays: ${figures.list(people)}.`,
  staysOut: (people: readonly PersonName[], figures: Figures) => `Stay out of it: ${figures.list(people)}.`,
  noSession: 'No spray session is open',
  inCharge: (people: readonly PersonName[], figures: Figures) => `Lead on shift: ${figures.list(people)}`,
  nobodyInCharge: 'Nobody who leads is on shift by the record',
  ofRole: (role: string, people: readonly PersonName[], figures: Figures) => `${role}: ${figures.list(people)}`,
  notOnShift: 'not on shift by the record',
  noOneToAsk: 'The crew’s list names no lead and no supervisor.',
  mayNot: (person: PersonName) => `${person} is not among those who may spray here`,
  sprayedBy: (people: readonly PersonName[], figures: Figures) => `May spray: ${figures.list(people)}.`,
  anybodySprays: 'Nobody has set who may spray: by that anybody may.',
  notBriefed: (person: PersonName) => `${person} is in no open brief`,
  briefNotRead: (person: PersonName) => `${person} has not acknowledged the brief yet`,
  briefRead: (person: PersonName) => `${person} is in the open brief and has acknowledged it`,
  movedOut: (person: PersonName) => `${person} was moved out of it by the brief`,
  fanFirst: 'No spray session is open; whether the fan runs is said in one.',
  worn: (what: readonly string[]) => what.join(' ').replace(/\.$/, ''),
  notSaidWorn: (sheet: string) => `The sheet of ${sheet} names nothing to wear: see the maker’s safety data sheet`,
  alsoSpray: 'For spraying the brief and the mask say more.',
  wornTap: 'Which mask?',
  toCoat: (many: number, names: readonly string[], figures: Figures) =>
    `${count(many, 'part', 'parts', figures)} still to coat: ${figures.list(names)}`,
  noneToCoat: 'No part waits for its coat, by the record',
  onHold: (names: readonly string[], figures: Figures) => `On hold: ${figures.list(names)}`,
  nothingOnHold: 'Nothing is on hold',
  counted: (each: readonly string[], figures: Figures) => `Parts: ${figures.list(each)}`,
  countedAs: (many: number, phase: string, figures: Figures) => `${figures.count(many)} ${phase}`,
  named: (phase: string, names: readonly string[], figures: Figures) => `${phase}: ${figures.list(names)}`,
  noParts: 'No part is on record',
  coats: (name: string, many: number, figures: Figures) =>
    `${name}: ${many === 0 ? 'no coat yet' : count(many, 'coat', 'coats', figures)}`,
  coatFrom: (batch: number, method: Method, at: EpochMs, by: PersonName, figures: Figures) =>
    `batch ${batch}, ${englishMethods[method].name}, ${figures.timeDown(at)} ${by}`,
  ofCan: (component: string, lot: string, can: number) => `${component}: lot ${lot}, can ${can}`,
  noDetails: (name: string) => `${name}: nobody has said more of it than its name`,
  area: (area: string) => `area ${area}`,
  bears: (name: string, celsius: Celsius, figures: Figures) => `${name}: bears up to ${figures.temperature(celsius)}`,
  bearsUnknown: (name: string) => `${name}: nobody has said what heat it bears`,
  ovenOfSheet: (at: Celsius, highest: Celsius, lasts: Minutes, figures: Figures) =>
    `Oven by the sheet: ${figures.minutesUp(lasts)} at ${figures.temperature(at)}, ${figures.temperature(highest)} at the most`,
  expires: (name: string, lot: string, day: string, days: number | undefined, figures: Figures) =>
    `${name}, lot ${lot}: expires ${figures.date(day)}${days === undefined ? '' : `, ${days < 0 ? 'past' : `${figures.count(days)} d left`}`}`,
  noExpiry: (name: string, lot: string) => `${name}, lot ${lot}: nobody has said when it expires`,
  openUntil: (day: string, figures: Figures) => `Open cans serve until ${figures.date(day)} by the sheet.`,
  noCans: 'No can is on record',
  lidOff: (name: string, since: EpochMs, lasts: Minutes, figures: Figures) =>
    `${name}: lid off since ${figures.timeDown(since)}, ${figures.minutesUp(lasts)}`,
  lidOn: (name: string) => `${name}: its lid is on, by the record`,
  noLidOff: 'No lid is off, by the record',
  ratio: (a: number, b: number, basis: 'weight' | 'volume', tolerance: number, figures: Figures) =>
    `A to B ${figures.decimal(a)} : ${figures.decimal(b)} by ${basis}, off by ${figures.percent(tolerance)} at the most`,
  ratioTo: (given: string, mass: Grams, other: string, needed: Grams, figures: Figures) =>
    `To ${figures.mass(mass)} of ${given}: ${figures.mass(needed)} of ${other}`,
  enoughFor: (many: number, area: string, mass: string, figures: Figures) =>
    `${count(many, 'part', 'parts', figures)} of ${area}: ${mass} to mix`,
  massBetween: (lowest: Grams, highest: Grams, figures: Figures) =>
    lowest === highest ? figures.mass(lowest) : `${figures.mass(lowest)} to ${figures.mass(highest)}`,
  areaTaken: (from: string) => `Taken as big as ${from}.`,
  inPots: (pot: string, mass: string, coats: string) => `${pot}: ${mass}. ${coats}`,
  inCans: (component: string, mass: Grams, figures: Figures) => `${component} in open cans: ${figures.mass(mass)}`,
  noArea: 'How big the parts are nobody has said: say how many and how big, 3 x 0.8m2.',
  emergency: (text: string) => `Emergency: ${text}`,
  noEmergency: 'The shop’s emergency numbers are not set',
  bySheet: (name: string) => `By the sheet of ${name}, not by a clock that runs.`,
  notOnSheet: (what: string, sheet: string) => `${what}: the sheet of ${sheet} gives no figure. Ask the maker.`,
  sheetOf: {
    'sheet-air': 'Air',
    'sheet-surface': 'Surface',
    'sheet-blend': 'Mixing time',
    'sheet-pot-life': 'Pot life',
    'sheet-film': 'Dry film',
    'sheet-flash': 'Flash-off',
    'sheet-recoat': 'Second coat',
    'sheet-cure': 'Cure',
    'sheet-flush': 'Flush with',
  },
  titled: (what: string, figure: string) => `${what}: ${figure.replace(/^\D+: (?=\d)/, '').replace(/\.$/, '')}`,
  air: (lowest: Celsius, highest: Celsius, humidity: string, spread: string, figures: Figures) =>
    `${figures.temperature(lowest)} to ${figures.temperature(highest)}, humidity ${humidity}, steel at least ${spread} above the dew point`,
  atAir: (lasts: Minutes, celsius: Celsius, figures: Figures) =>
    `${figures.minutesUp(lasts)} in the air as read, ${figures.temperature(celsius)}`,
  upTo: (figure: string) => `up to ${figure}`,
  between: (lowest: string, highest: string) => `${lowest} to ${highest}`,
  film: (lowest: Micrometres, highest: Micrometres, figures: Figures) =>
    `${figures.film(lowest)} to ${figures.film(highest)}`,
  flash: (least: Minutes, most: Minutes, figures: Figures) =>
    `at least ${figures.minutesUp(least)} and until it is dry to the touch, usually within ${figures.minutesUp(most)}`,
  recoatForbidden: 'none, the sheet forbids a coat over film',
  recoat: (opens: Minutes, closes: Minutes, figures: Figures) =>
    `from ${figures.minutesUp(opens)} to ${figures.minutesUp(closes)} after the last`,
  ovenCure: (lasts: Minutes, at: Celsius, figures: Figures) =>
    `${figures.minutesUp(lasts)} with the part itself at ${figures.temperature(at)}`,
  roomCure: (law: string) => `In the room: ${law.replace(/^\D+: (?=\d)/, '')}`,
  thenSolvent: ', then ',
  pure: (solvent: string, share: string) => `${solvent} of ${share}`,
};
