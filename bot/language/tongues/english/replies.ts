// Answers to what was said, in English. Short: a card is read on a phone, at arm's length.

import type { Reacting, Waste } from '../../../../core/heat-care.ts';
import type { PartName, PersonName } from '../../../../core/ids.ts';
import type { Method } from '../../../../core/methods.ts';
import type { ObjectionCode } from '../../../../core/objections.ts';
import type { LateWhy } from '../../../../core/ports.ts';
import type { RuleSource } from '../../../../core/rules.ts';
import type { Celsius, EpochMs, Grams, Minutes, Percent } from '../../../../core/units.ts';
import { type Ending, timeOf } from '../../ending.ts';
import { exampleIn } from '../../example-units.ts';
import type { Figures } from '../../figures.ts';
import { englishNames } from './names.ts';
import { englishNotWritten } from './not-written.ts';
import { partsNamed } from './parts-in.ts';
import { englishLate, englishRingName } from './rings.ts';
import { englishRuleSource } from './rule-sources.ts';

/** What the sheet says of what is thrown away. */
const waste: Readonly<Record<Waste, string>> = {
  vented: 'waste vented, as the sheet says',
  'as-sheet': 'set the waste aside as the sheet says',
  'loose-lid': 'set the waste aside as the sheet says, but under no tight lid: it may react with moisture and swell',
  'not-said': 'of waste the sheet says nothing: see section 13 of its safety data sheet',
};

export const englishReplies = {
  ...englishNotWritten,
  opened: (batch: number, sheet: string) => `Batch ${batch}: ${sheet}`,
  weighThese: 'Weigh A into the vessel, stirrer on, then B into A. Say when B is in.',
  inducedThese: 'Weigh A, then B into A, and mix. Say when B is in.',
  inventedSheet: 'An invented product, for practice only.',
  noAirKnown: 'No air reading: the clocks take their cautious side until there is one.',
  weighed: (batch: number) => `Batch ${batch}: A and B together, clocks run`,
  ratioOut: (error: number | undefined, tolerance: number, figures: Figures) =>
    `Ratio off by ${error === undefined ? '?' : figures.signedPercent(error)}, the sheet allows ${figures.percent(tolerance, 1)} either way. Marked as a deviation.`,
  ratioWithin: (tolerance: number, figures: Figures) => `Within the sheet's ${figures.percent(tolerance, 1)}.`,
  notThePlan: (said: Grams, planned: Grams, figures: Figures) =>
    `${figures.mass(said)} in all, ${figures.mass(planned)} was planned. Check the scale and its unit.`,
  countsSince: (at: EpochMs, figures: Figures) =>
    `Counts since ${figures.timeDown(at)}. Later typed than poured? Move it.`,
  potLifeFromContact: 'Pot life runs from first contact, stirring included.',
  stirGivenEnough: 'The stir time is given. Next: filter.',
  stirGivenInUse: 'The stir time is given. Next: coat.',
  filteredAlready: (at: EpochMs, figures: Figures) => `Filtered already, at ${figures.timeDown(at)}.`,
  stirGivenCoated: (batch: number) =>
    `The stir time is given. It was coated from, and nobody said that it was filtered: say filter ${batch} already.`,
  stirStillWanted: (minutes: Minutes, figures: Figures) => `${figures.minutesUp(minutes)} of stirring still wanted.`,
  filtered: (batch: number) => `Batch ${batch}: filtered, in use`,
  sayCoat: (part: string, batch: number, method: Method) =>
    `Say each coat when it ends: coat ${part} ${batch} ${method}.`,
  thick: (batch: number, seen: 'thick' | 'gelled') => `Batch ${batch}: ${seen}, pot life over`,
  emptyNow: (how: Waste, batch: number) =>
    `Apply no more of it. Warm to the hand? Stand off, say hot ${batch}. Cool? Empty and flush; ${waste[how]}.`,
  gelledNow: (batch: number) =>
    `Apply no more of it, and do not tip it out: it can go on heating. While it is cool, lid loose, away from people and from whatever burns. If it is or gets warm, stand off and say hot ${batch}.`,
  gelledWaste: (how: Waste) => `Once it is cold and hard: ${waste[how]}.`,
  hotNow: (batch: number) =>
    `Batch ${batch}: nothing more goes in or comes out. Say empty ${batch} once it is cold and set aside.`,
  swollenNow: (batch: number) =>
    `Batch ${batch}: nobody opens, moves or cools it. Say empty ${batch} once it is cold, no longer swollen, and set aside.`,
  stopStirrer: 'Stop the stirrer.',
  ratioOffUse: 'It is off its ratio: none of it is applied unless a supervisor says so, with a reason.',
  notThatPot: (batch: number, seen: Reacting) =>
    `Not the pot of batch ${batch}: it is ${seen === 'bulging' ? 'swollen' : seen}. Stand off from it; nobody tips it out or flushes it.`,
  noFact:
    'That is a decision: it counts from when it is given, by whoever may give it, and is no fact that already happened.',
  typedLate: 'typed late',
  noCoatHeld: 'No coat on it before a lead says so.',
  noCoatWet: 'Nobody has said that it is dry. Touch it first; no coat on film that is still wet.',
  hotWhich: 'Which pot? Until it is said, none is stopped in the record.',
  emptied: (batch: number) => `Batch ${batch}: pot empty`,
  partNoted: (part: string) => `${part}: noted`,
  coated: (part: string, method: Method, batch: number) => `${part}: coated (${method}, batch ${batch})`,
  newParts: (parts: readonly PartName[], figures: Figures) =>
    parts.length === 1
      ? `${partsNamed(parts, figures)} is new here: nothing is known of its metal, wall or the heat it bears.`
      : `${parts.length} are new here, ${partsNamed(parts, figures)}: nothing is known of their metal, wall or the heat they bear.`,
  flashing: 'Flash-off runs. Touch it when its least time is over, then say dry.',
  dry: (part: string) => `${part}: dry to the touch`,
  dryEarly: (at: EpochMs, figures: Figures) =>
    `The least flash-off time runs until ${figures.timeUp(at)}; the cure waits for it.`,
  curing: (part: string, way: 'oven' | 'room') => `${part}: in cure (${way === 'oven' ? 'oven' : 'room'})`,
  ovenClock: (celsius: Celsius, figures: Figures) =>
    `Its time begins when a reading on the part itself reaches ${figures.temperature(celsius)}. Say temp when you have one.`,
  roomClock: 'A night that nobody reads earns nothing until somebody says its lowest: night 16C.',
  partRead: (part: string) => `${part}: temperature read`,
  notYetAtTemperature: (celsius: Celsius, figures: Figures) =>
    `Below ${figures.temperature(celsius)}: its cure time does not run yet.`,
  wetInOven: 'A wet film in an oven: blisters, and solvent vapour that can burn.',
  cureTimeGiven: 'Cure time given. That is not released.',
  takenOut: (part: string) => `${part}: out`,
  released: (part: string) => `${part}: released`,
  shipped: (part: string) => `${part}: left the shop`,
  shippedReleased: (by: string, at: EpochMs, figures: Figures) => `Released by ${by}, ${figures.timeDown(at)}.`,
  held: (part: string, why: string) => `${part}: on hold${why === '' ? '' : `, ${why}`}`,
  onHold: (why: string) => (why === '' ? 'On hold' : `On hold: ${why}`),
  filmRead: (part: string, state: 'wet' | 'dry') => `${part}: ${state} film`,
  asRead: 'As read',
  filmCheckOnly: 'A wet film is a check while you work, not an acceptance.',
  fromWetBulb: 'Humidity from the wet bulb, at sea-level pressure (ASHRAE Fundamentals 2017, chapter 1).',
  humidityBefore: (
    {
      at,
      humidityCelsius,
      celsius,
      since,
    }: Readonly<Record<'humidityCelsius' | 'celsius', Celsius>> & {
      readonly at: EpochMs;
      readonly since: Percent;
    },
    figures: Figures,
  ) =>
    `The humidity is of ${figures.timeDown(at)}, at ${figures.temperature(humidityCelsius)}: the same air at ${figures.temperature(celsius)} would have ${figures.percent(since)}. Both count until it is read again.`,
  airRead: (place: string) => `Air, ${place}`,
  surfaceRead: (place: string) => `Surface, ${place}`,
  nightRead: (place: string) => `Lowest since the last reading, ${place}`,
  batchMoves: (batch: number, at: EpochMs, figures: Figures) =>
    `Batch ${batch}: stirring done at ${figures.timeUp(at)}.`,
  batchPotEnds: (batch: number, at: EpochMs, figures: Figures) =>
    `Batch ${batch}: pot life ends at ${figures.timeDown(at)}.`,
  noFigure: 'The sheet gives no figure here:',
  heard: 'Heard',
  heardKey: (ring: string, by: PersonName) => `${ring}: ${by}`,
  undone: 'Undone',
  takenBack: (what: string) => `The correction is taken back; both stay in the record: ${what}.`,
  nowStands: (what: string) => `What stands now: ${what}`,
  undoneActs: (acts: readonly string[]) => `Taken back, and kept in the record as taken back: ${acts.join(', ')}.`,
  amended: 'Corrected',
  was: (what: string) => `Was: ${what}`,
  is: (what: string) => `Is: ${what}`,
  why: (why: string) => `Why: ${why}`,
  settled: 'Set',
  settledTo: (name: string, value: string) => `${name}: ${value}`,
  nowDeviates: (what: string, reason: string) => `Now a deviation: ${what}. ${reason}`,
  judgedAnew: (batch: number, edition: number) => `Batch ${batch}: judged anew by edition ${edition} of the rules`,
  judgedTheSame: 'Nothing is marked that was not marked before.',
  nothingReopened: 'Nothing else is reopened: no hold, no bell, no release.',
  stirPastPot: (at: EpochMs, figures: Figures) =>
    `By this the pot dies before it is stirred enough: finish by ${figures.timeDown(at)}. Warm the room, or mix anew.`,
  humidityNotRead: 'Humidity not read: it is not checked against the sheet.',
  potOver: 'pot life over, to be emptied',
  recordedDespite: (reason: string) => `Recorded, marked as a deviation: ${reason}`,
  happenedAt: (at: EpochMs, late: Minutes, figures: Figures) =>
    `Happened at ${figures.timeDown(at)}, written ${figures.minutesUp(late)} later.`,
  /** `law`: of spraying, in the crew's country. */
  askedBy: (sources: readonly RuleSource[], law: string, figures: Figures) =>
    `Asked by ${figures.list(sources.map((source) => englishRuleSource(source, law)))}.`,
  notNow: (_codes: readonly ObjectionCode[]) => 'Not yet',
  notClear: 'Not clear',
  /** Understood, and for somebody else to decide. */
  notYours: 'Not yours to decide',
  notRead: 'Not understood',
  /** Over what a line may mean. */
  whichAct: (acts: number): string => (acts === 1 ? 'Is this it?' : 'Which of these?'),
  /** Of a line said in other words. */
  takenAs: (line: string) => `Taken as: ${line}`,
  untaken: (typed: string) => `No tap says “${typed}”: say it by itself.`,
  lineMeant: (line: string) => `${line}?`,
  nothingRecorded: 'Nothing is recorded.',
  movedUnderThumb: (pressed: string, before: string) =>
    `The card changed under the thumb: "${pressed}" was pressed, and until a moment ago "${before}" stood there. Which is meant?`,
  pressedOlder: (pressed: string, now: string) =>
    `"${pressed}" was pressed on an older card; now "${now}" stands there. Which is meant?`,
  pressedOlderMovedOn: (pressed: string) =>
    `"${pressed}" was pressed on an older card: something has been recorded since. Read how it stands, then press it once more.`,
  /** What a tap would say, as if typed. */
  tapSays: (label: string, line: string) => `${label}: ${line}`,
  /** Worded before anybody has been reached: whoever carries it says who was. */
  toTell: (people: readonly PersonName[], figures: Figures) => `To tell: ${figures.list(people)}`,
  ringLate: (minutes: Minutes, why: LateWhy, figures: Figures) =>
    `Late by ${figures.minutesUp(minutes)}: ${englishLate[why]}.`,
  ringRepeat: 'Perhaps told before: the first try had no answer.',
  ringAgain: (ring: number) => `Ring ${ring}: nobody has answered.`,
  ringMoved: 'Rings again: its time has moved.',
  ringUnrecorded: 'Rings from memory: the record cannot be written.',
  askReading: 'Read the temperature and say it: the record shows too little to prove the time.',
  askNight: 'Say the lowest of the time nobody read: night 16C.',
  askPartReading: 'No reading on the part proves it. Say temp with what the part itself shows.',
  now: 'Now',
  nothingRuns: (figures: Figures) =>
    `Nothing runs. Start with ${exampleIn('air 24C 48%, then mix 2.4kg', figures.units)}.`,
  batchStands: (batch: number, sheet: string, state: string) => `Batch ${batch} ${sheet}: ${state}`,
  rings: (ring: string, ending: Ending, figures: Figures) => `${timeOf(figures, ending)} ${ring}`,
  day: (date: string, figures: Figures) => `The day: ${figures.date(date)}`,
  idleDay: 'Nothing was recorded on this day.',
  dayBatch: (
    batch: number,
    sheet: string,
    { partAGrams, partBGrams }: Readonly<Record<'partAGrams' | 'partBGrams', Grams>>,
    error: number | undefined,
    figures: Figures,
  ) =>
    `Batch ${batch} ${sheet}: A ${figures.asRead(partAGrams)}, B ${figures.asRead(partBGrams)}, ratio ${error === undefined ? '?' : figures.signedPercent(error)}`,
  dayBatchUnweighed: (batch: number, sheet: string) => `Batch ${batch} ${sheet}: not weighed`,
  dayStir: (batch: number, wanted: Minutes, given: Minutes, figures: Figures) =>
    `Batch ${batch} stirring: wanted ${figures.minutesUp(wanted)}, given ${figures.minutesDown(given)}`,
  dayStirNoFigure: (batch: number, given: Minutes, figures: Figures) =>
    `Batch ${batch} stirring: no figure on the sheet, given ${figures.minutesDown(given)}`,
  dayMethod: (method: Method, parts: readonly PartName[], figures: Figures) => `${method}: ${figures.list(parts)}`,
  dayWaiting: (part: PartName, dryAt: EpochMs, figures: Figures) =>
    `${part}: dry at ${figures.timeDown(dryAt)}, and in no cure since`,
  dayCuring: (part: PartName, at: EpochMs | undefined, figures: Figures) =>
    `${part}: in cure, rings at ${at === undefined ? '?' : figures.timeUp(at)}`,
  dayDeviation: (at: EpochMs, who: PersonName, what: string, permitted: string | undefined, figures: Figures) =>
    `! ${figures.timeDown(at)} ${who}: ${what}${permitted === undefined ? '' : ` (allowed beforehand: ${permitted})`}`,
  dayLateRing: (key: string, minutes: Minutes, figures: Figures) =>
    `Late ring: ${englishRingName(key, figures)}, ${figures.minutesUp(minutes)}`,
  dayUnanswered: (key: string, times: number, figures: Figures) =>
    `Unanswered: ${englishRingName(key, figures)}${times === 1 ? '' : ` (${times} times)`}`,
  dayCorrection: (at: EpochMs, who: PersonName, was: string, is: string, why: string, figures: Figures) =>
    `Corrected ${figures.timeDown(at)} by ${who}: was ${was}, is ${is}${why === '' ? '' : ` (${why})`}`,
  help: 'What you can say',
  helpNow: (step: string) => `Now: ${step}.`,
  helpAsk: (lines: readonly string[]) => `Ask: ${lines.join(', ')}; or why, of any figure.`,
  helpMore: (lines: readonly string[]) => `More: ${lines.join(', ')}; or help and one word of it, help coat.`,
  helpHow: 'Order is free; a unit says what a number is. Add at 9:40 or 10m ago to anything.',
  helpMay: (what: readonly string[]) => `It may also say: ${what.join(', ')}.`,
  helpSettled: {
    crew: (what: readonly string[]) => `Anybody sets: ${what.join(', ')}.`,
    lead: (what: readonly string[]) =>
      `A lead or a supervisor sets: ${what.join(', ')}. Where nobody is one, whoever ranks highest.`,
    supervisor: (what: readonly string[]) =>
      `A supervisor sets: ${what.join(', ')}. Where nobody is one, whoever ranks highest.`,
  },
  helpSaid: {
    crew: 'For anybody to say.',
    lead: 'For a lead or a supervisor to say. Where nobody is one, whoever ranks highest.',
    supervisor: 'For a supervisor to say. Where nobody is one, whoever ranks highest.',
  },
  helpObjects: (count: number) =>
    count === 1 ? 'Before it is done, one rule may object.' : `Before it is done, ${count} rules may object.`,
  helpRules: (act: string) => `${act}: what may object, and whose rule that is`,
  helpLifted: {
    lead: 'A lead may lift these beforehand, with permit and a reason:',
    supervisor: 'A supervisor may lift these beforehand, with permit and a reason:',
    nobody: 'Nobody lifts these beforehand:',
  },
  helpRule: (code: ObjectionCode, source: RuleSource, law: string) =>
    `${englishNames.rule(code)}: ${englishRuleSource(source, law)}`,
  waiting: (at: EpochMs, figures: Figures) => `Waiting until ${figures.timeUp(at)}`,
  howToLeave: 'To leave',
  howToLeaveLines: ['Press Ctrl-D. What is recorded stays; no bell rings here once this has ended.'],
  cannotWait: 'Here the clock runs by itself.',
  noSuchTap: (id: string, ids: readonly string[]) =>
    `There is no tap ${id} on your last card${ids.length === 0 ? '' : `; there are ${ids.join(', ')}`}.`,
  greeting: 'Batchbell',
  greetingLines: [
    'It remembers, does the sums and keeps the record of a coating batch.',
    'Start: air 24C 48%   then   mix 2.4kg   then   weigh 1 1201g 1198g',
    'Help: help.   End: Ctrl-D.',
  ],
  sheetFaults: (faults: string) => `These sheets have faults and start no mix: ${faults}`,
  caution:
    'Batchbell reminds and records: no gas monitor, interlock or permit. What counts: product instructions, safety data sheets, employer’s programme, local codes, licensed practice.',
};
