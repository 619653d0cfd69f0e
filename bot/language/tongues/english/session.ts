// The spray brief, its session and what to do in need, in English. No sentence here passes a verdict: it says what was
// said, by whom, what was not, and what the source asks for.

import type { SolventId } from '../../../../core/calc/solvents.ts';
import type { PartName, PersonName, PlaceName } from '../../../../core/ids.ts';
import type { SensitiserKind, Sensitisers } from '../../../../core/products/sheet-spray.ts';
import type {
  EmergencyField,
  Gear,
  Qualification,
  SessionGear,
  Whereabouts,
  Work,
} from '../../../../core/session/session-commands.ts';
import type { Assessment as AssessmentTold } from '../../../../core/session/spray-settings.ts';
import type {
  Celsius,
  CubicMetresPerHour,
  EpochMs,
  Grams,
  Litres,
  MetresPerSecond,
  Minutes,
  SquareMetres,
} from '../../../../core/units.ts';
import { exampleIn } from '../../example-units.ts';
import type { Figures } from '../../figures.ts';
import type { Profile } from '../profile.ts';
import { nounIn } from '../term.ts';
import { englishAlarms } from './alarms.ts';
import { englishBreathing } from './breathing.ts';
import { briefLinesIn } from './brief-lines.ts';
import { englishCartridge } from './cartridge.ts';
import { englishExposure } from './exposure.ts';
import { englishMonitor } from './gas.ts';
import { englishGears } from './gears.ts';
import { englishMask } from './mask.ts';
import { englishMethods } from './methods.ts';
import { englishSolvents } from './solvents.ts';
import { englishTerms } from './terms.ts';
import { englishHeats, englishTroubles } from './troubles.ts';

const works: Readonly<Record<Work, string>> = {
  spray: 'Spraying',
  mix: 'Mixing',
  flow: 'Flow coating',
  dip: 'Dipping',
  wipe: 'Wiping, brush and roller',
};

export const englishQualifications: Readonly<Record<Qualification, string>> = {
  fit: 'fit test',
  medical: englishTerms.medical.one,
  training: englishTerms.training.one,
};

const notMeasured = 'face velocity not measured';

const goes: Readonly<Record<Whereabouts, string>> = {
  sprays: 'sprays',
  stays: 'stays near, exposed',
  out: 'moved out',
};

/** What a session waits for before it closes. */
export type OpenTask = SessionGear | 'rags';

const todo: Readonly<Record<OpenTask, string>> = {
  gun: 'flush the gun',
  vessels: 'flush the vessels',
  rags: 'filters and rags into their closed can',
};

interface FlushStep {
  readonly solvent: SolventId;
  readonly purityPercent?: number | undefined;
}

const named = (ids: readonly SolventId[]) => ids.map((id) => englishSolvents[id]);

type SensitiserTold = Sensitisers['named'][number];

export const englishSensitisers: Readonly<Record<SensitiserKind, string>> = {
  isocyanates: 'isocyanates',
  silanes: 'silanes',
  amines: 'amines',
};

const over: Readonly<Record<NonNullable<SensitiserTold['limit']>['over'], string>> = {
  day: 'over the day',
  short: 'over 15 min',
  ceiling: 'never above',
};

function sensitiserSaid({ kind, limit }: SensitiserTold, figures: Figures): string {
  if (limit === undefined) return englishSensitisers[kind];
  return `${englishSensitisers[kind]} (${figures.ppm(limit.partsPerMillion)} ${over[limit.over]}, ${limit.source})`;
}

export const englishSession = {
  lines: briefLinesIn(englishTerms.earthed.one),
  works,
  gears: englishGears,
  qualifications: englishQualifications,
  troubles: englishTroubles,
  heats: englishHeats,
  ...englishAlarms,
  briefed: (session: number) => `Session ${session}: brief recorded`,
  titled: (session: number, what: string) => `Session ${session}: ${what}`,
  insideVessel: "Inside a vessel: this brief does not serve. Use the employer's confined-space permit.",
  what: (place: PlaceName, sheet: string, batch: number | undefined) =>
    `${place}; ${sheet}${batch === undefined ? '' : `; batch ${batch}`}`,
  behindTaps: 'Read as well, by the taps: all lines, and the air figures.',
  startsAt: (at: EpochMs, figures: Figures) => `Starts ${figures.timeDown(at)}.`,
  sprays: (people: readonly PersonName[], figures: Figures) => `Sprays: ${figures.list(people)}`,
  stays: (people: readonly PersonName[], figures: Figures) => `Stays near, exposed: ${figures.list(people)}`,
  nobodyNear: 'Nobody was named as near. Who else is there? Say near lia out, or near lia stays.',
  movedOut: (people: readonly PersonName[], figures: Figures) => `Moved out: ${figures.list(people)}`,
  attendant: (person: string) => `Outside, with the timers: ${person}`,
  noAttendant: (people: readonly PersonName[], figures: Figures) =>
    `Nobody is named outside: the timers go to ${figures.list(people)}.`,
  acknowledged: (person: PersonName, at: EpochMs, witness: PersonName | undefined, figures: Figures) =>
    `Read by ${person}, ${figures.timeDown(at)}${witness === undefined ? '' : `, before ${witness}`}`,
  notAcknowledged: (people: readonly PersonName[], figures: Figures) =>
    `Not acknowledged yet: ${figures.list(people)}. Each says ack, outside, or a witness says ack with the name.`,
  extractionNotSaid: 'Extraction: nobody has said. Say fan on 0.6m/s, fan on (not measured), or fan no.',
  extractionOff: (by: PersonName, at: EpochMs, figures: Figures) =>
    `Extraction: no, by ${by} at ${figures.timeDown(at)}`,
  extractionOn: (velocity: MetresPerSecond | undefined, by: PersonName, at: EpochMs, figures: Figures) =>
    `Extraction: running, ${velocity === undefined ? notMeasured : figures.speed(velocity)}, by ${by} at ${figures.timeDown(at)}`,
  notMeasured,
  suppliedNotSaid: 'Supplied air: nobody has said. Say supplied yes, or supplied no.',
  supplied: (yes: boolean, by: PersonName, at: EpochMs, figures: Figures) =>
    `Supplied air: ${yes ? 'yes' : 'no'}, by ${by} at ${figures.timeDown(at)}`,
  outOfDate: (person: PersonName, what: Qualification, until: string, figures: Figures) =>
    `Out of date: ${englishQualifications[what]} of ${person}, ${figures.date(until)}`,
  undated: (person: PersonName, whats: readonly Qualification[], figures: Figures) =>
    `No date known: ${figures.list(whats.map((what) => englishQualifications[what]))} of ${person}`,
  noSpray: (sheet: string) => `The sheet ${sheet} gives neither a longest spell nor its solvents: ask the maker.`,
  lapses: (spell: Minutes | undefined, figures: Figures) =>
    `It lapses with a new person, batch, booth or shift${spell === undefined ? '' : `, and ${figures.minutesDown(spell)} after spraying starts`}.`,
  emergencyNotSet: 'The shop’s emergency numbers are not set. Say set emergency call, and the numbers.',
  emergencyCall: (text: string) => `Emergency numbers: ${text}`,
  allAcknowledged: 'Acknowledged by everybody who is exposed.',
  read: 'brief read',
  extraction: 'extraction',
  suppliedAir: 'supplied air',
  starts: 'spraying starts',
  stops: 'spraying stops',
  started: 'Spraying starts. From here on nobody types inside; the timers go outside.',
  /** Of no session: what is told of the batch whose coats it put on. */
  toClean: (waiting: readonly Gear[], figures: Figures) =>
    `To clean at once: ${figures.list(waiting.map((gear) => englishGears[gear]))}.`,
  cleaned: (gear: Gear, solvent: SolventId | undefined) =>
    `Cleaned: ${englishGears[gear]}${solvent === undefined ? '' : `, with ${englishSolvents[solvent]}`}`,
  stopped: 'Spraying stops. Flush the gun now, in the booth with the fan on.',
  flushed: (gear: Gear) => `${englishGears[gear]} flushed`,
  flushStep: (gear: Gear, solvent: SolventId) => `${englishGears[gear]}: ${englishSolvents[solvent]}`,
  flushNext: (gear: Gear, left: readonly SolventId[], figures: Figures) =>
    `Still for the ${englishGears[gear]}: ${figures.list(named(left))}.`,
  flushSequence: (steps: readonly FlushStep[], source: string, figures: Figures) => {
    const names = steps.map(({ solvent, purityPercent }) =>
      purityPercent === undefined
        ? englishSolvents[solvent]
        : `${englishSolvents[solvent]} ${figures.percent(purityPercent)}`,
    );
    return `Flush with ${figures.list(names)} (${source}).`;
  },
  noFlushOnSheet: 'The sheet gives no flush: use what the maker names.',
  flushConflict: (
    lower: readonly { readonly solvent: SolventId; readonly flash: Celsius }[],
    coating: Celsius,
    figures: Figures,
  ) =>
    `Flash points below the coating's own solvents (${figures.temperature(coating)}): ${figures.list(lower.map(({ solvent, flash }) => `${englishSolvents[solvent]} ${figures.temperature(flash)}`))}. The code asks for a flush solvent that flashes no lower; the sheet's sequence says otherwise. The employer decides which.`,
  potNotFit: (batch: number, phase: string, dueAt: EpochMs | undefined, figures: Figures) =>
    `Batch ${batch} is not fit to be sprayed yet: ${phase}${dueAt === undefined ? '' : `, done at ${figures.timeUp(dueAt)}`}.`,
  fanOffSpraying:
    'Stop spraying now: the extraction is off while the gun runs. Out of the mist; nobody sprays until it runs again.',
  fanStays: (until: EpochMs | undefined, figures: Figures) =>
    until === undefined
      ? 'The extraction stays on through the flush, until nothing wet is left in the booth.'
      : `The extraction stays on through the flush, and until ${figures.timeUp(until)} at the least.`,
  flushNow: (until: EpochMs, figures: Figures) =>
    `Now, in the booth with the fan on; it stays on until ${figures.timeUp(until)} at the least. It rings until somebody says flush.`,
  asAt: (at: EpochMs, answered: readonly string[], figures: Figures) =>
    `As at ${figures.timeDown(at)}, unchanged: ${answered.join('; ')}`,
  breathing: englishBreathing,
  exposure: englishExposure,
  mask: englishMask,
  cartridge: englishCartridge,
  monitor: englishMonitor,
  briefsOff: (by: PersonName, at: EpochMs, figures: Figures) =>
    `No brief is asked for before spraying: ${by} put it off at ${figures.timeDown(at)}.`,
  fromOutside: 'sprayed from outside, nobody in it',
  saidFromOutside: (by: PersonName, at: EpochMs, figures: Figures) =>
    `Sprayed from outside, nobody in it: by ${by} at ${figures.timeDown(at)}, for this session.`,
  confinedPlace: (place: PlaceName) =>
    `${place}: its name says that people are closed in there. This brief does not serve: use the employer's confined-space permit.`,
  ragsIn: 'Filters and rags in their closed can',
  closed: 'closed',
  fanUntil: (at: EpochMs, figures: Figures) => `Leave the fan on until ${figures.timeUp(at)}.`,
  stillToDo: (what: readonly OpenTask[], figures: Figures) =>
    `Still to do: ${figures.list(what.map((each) => todo[each]))}.`,
  neverSprayed: 'Nothing was sprayed in it.',
  sumOnly: 'A sum that passes is not a check that was made. No gas monitor was read for it.',
  sumTerms: (share: number, factor: number, assumed: boolean, figures: Figures) =>
    `To stay below ${figures.percent(share * 100)} of the lower explosive limit; mixing factor ${figures.decimal(factor)}${assumed ? ', assumed: nobody has set it' : ''}.`,
  wholePot: 'Nobody said how much is sprayed in an hour: the whole pot is assumed.',
  fanFromSum: (minutes: Minutes, figures: Figures) =>
    `By the sum the booth's air has gone out four times in ${figures.minutesUp(minutes)}; the longer of that and the sheet's time counts.`,
  fanUnknown:
    'Neither the sheet nor a sum says how long the fan stays on: leave it on until nothing wet is left in the booth.',
  noSum: 'No sum: the sheet gives no solvents, or nobody knows how much is sprayed.',
  noBooth: (place: PlaceName, { units }: Figures) =>
    `The open face of ${place} is not set: say set booth ${place} ${exampleIn('4m2', units)}.`,
  withoutFigure: (ids: readonly SolventId[], figures: Figures) =>
    `Left out, since no published figure was read: ${figures.list(named(ids))}.`,
  fanNotMeasured: 'What the fan gives is not known.',
  ovenNoSolvents: (sheet: string) =>
    `The sheet of ${sheet} gives no solvents: what this load needs cannot be summed. Ask the maker before it is heated.`,
  ovenNoFigure: (ids: readonly SolventId[], figures: Figures) =>
    `No sum: no lower explosive limit was read of ${figures.list(named(ids))}. Ask the maker before it is heated.`,
  ovenTooHot: (hottest: Celsius, figures: Figures) =>
    `No sum: its source gives no figure above ${figures.temperature(hottest)}.`,
  ovenDoor: (area: SquareMetres, figures: Figures) =>
    `${figures.area(area)} is a door's area rather than a duct's: it is not counted.`,
  ovenDuct:
    'Set the area of its exhaust duct, not of the door: say set booth oven 0.05m2. Then its velocity: vent oven 800g 90C 2m/s.',
  ovenPurge: (purge: Minutes, figures: Figures) => `Fan on for ${figures.minutesUp(purge)} before it is heated.`,
  ovenVapour:
    'Vapour of a wet load burns: before the oven is heated its fan blows four volumes of fresh air, 3 min at the least, and stays on',
  ovenLoad: (mixed: Grams, flow: CubicMetresPerHour, oven: Celsius, figures: Figures) =>
    `In the oven there is the solvent of at most ${figures.mass(mixed)} of mix: its fan must move ${figures.flowUp(flow)} at ${figures.temperature(oven)}.`,
  worstOven: 'Counted as if all its solvent left in the oven.',
  oven: (grams: Grams, celsius: Celsius, figures: Figures) =>
    `Oven load: ${figures.mass(grams)} wet, ${figures.temperature(celsius)}`,
  purge: (gas: 'argon' | 'nitrogen', amount: Litres, room: Litres, figures: Figures) =>
    `${gas}: ${figures.volume(amount)} let out into ${figures.volume(room)}`,
  purgeMixed: 'Well mixed, with no fresh air. Only a monitor knows what is breathed.',
  purgeDeficient: (percent: number, figures: Figures) =>
    `Below ${figures.percent(percent, 1)}: oxygen-deficient. Nobody goes in without the employer's permit.`,
  settles: 'Argon settles: near the floor and in pits there is less oxygen than this.',
  hazardsOf: (work: Work) => `${works[work]}: what to look at`,
  callNumber: (text: string) => `Call: ${text}`,
  doNow: (text: string, source: string) => `${text} (${source})`,
  shopSteps: (text: string) => `Here: ${text}`,
  shopStepsNotSet: (field: EmergencyField) =>
    `The shop’s own steps are not set: set emergency ${field}, and the words.`,
  note: (text: string) => `Said: ${text}`,
  deferTo: (section: string) => `${section}. It and the employer’s programme go before these lines.`,
  nearMiss: 'Near miss noted',
  nearMissText: (text: string) => `"${text}"`,
  anonymous: 'No name is kept with it.',
  bellTest: (people: readonly PersonName[], figures: Figures) => `Bell test: ${figures.list(people)}`,
  bellLines:
    'It rings for each of them, and each says ok on their own phone. Who does not answer is named to the lead.',
  qualified: (person: PersonName, what: Qualification, until: string, figures: Figures) =>
    `${englishQualifications[what]} of ${person}: until ${figures.date(until)}`,
  /** In the record, as it was given. */
  assessed: (
    { place, sheet, method, until, supplied }: Omit<AssessmentTold, 'at' | 'by' | 'revision'>,
    figures: Figures,
  ) =>
    `${supplied === true ? 'with supplied air alone' : 'without supplied air'}, as assessed: ${place}, ${sheet}, ${englishMethods[method].name}, until ${figures.date(until)}`,
  assessedTitle: 'Standing assessment',
  restsOn: ({ by, place, until, at }: AssessmentTold, sheet: string, figures: Figures) =>
    `Without supplied air, as ${by} assessed ${figures.timeDown(at)} for ${place} and ${sheet}: until ${figures.date(until)}.`,
  assessmentIdle: (sheet: string) =>
    `It does not serve yet: the sheet ${sheet} names a respiratory sensitiser, or leaves open whether it has one.`,
  sensitisers: (named: readonly SensitiserTold[], figures: Figures) =>
    `Respiratory sensitiser by the sheet: ${figures.list(named.map((each) => sensitiserSaid(each, figures)))}. Supplied air or no spraying.`,
  sensitisersOpen:
    'Respiratory sensitisers: the sheet does not say. Until it does it counts as having one: supplied air or no spraying.',
  near: (people: readonly PersonName[], whereTo: Whereabouts, figures: Figures) =>
    `${figures.list(people)}: ${goes[whereTo]}`,
  goes,
  daySession: (
    session: number,
    people: readonly PersonName[],
    solvent: Litres | undefined,
    open: readonly OpenTask[],
    figures: Figures,
  ) =>
    `Session ${session}: exposed ${figures.list(people)}${solvent === undefined ? '' : `; flushed with ${figures.volume(solvent)}`}${open.length === 0 ? '' : `; still to do: ${figures.list(open.map((each) => todo[each]))}`}`,
  daySprayed: (person: PersonName | undefined, parts: readonly PartName[], figures: Figures) =>
    `${person === undefined ? 'Sprayer not given' : `Sprayed by ${person}`}: ${figures.list(parts)}`,
  dayTold: (at: EpochMs, who: PersonName, what: string, figures: Figures) => `${figures.timeDown(at)} ${who}: ${what}`,
  settings: {
    on: 'on',
    off: 'off',
    nobodyNamed: 'anybody: no list',
    quiet: (from: number, to: number, figures: Figures) =>
      `${figures.hour(from)} to ${figures.hour(to)}; what is critical rings through it`,
  },
};

const american = { ...englishSession, lines: briefLinesIn(nounIn(englishTerms.earthed, 'en-US').one) };
export const englishSessionIn = (locale: Profile['locale']) => (locale === 'en-US' ? american : englishSession);
