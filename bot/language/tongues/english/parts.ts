// Parts, their surfaces, films and cures, and the people about them, in English.

import type { Metal } from '../../../../core/calc/metals.ts';
import type { CrewUnclear } from '../../../../core/crew/crew-unclear.ts';
import type { ReleaseLimits, SurfaceLimits } from '../../../../core/crew/job-limits.ts';
import type { RubResult } from '../../../../core/grades.ts';
import type { PartName, PersonName } from '../../../../core/ids.ts';
import type { Method } from '../../../../core/methods.ts';
import type { DryToCome } from '../../../../core/part/dry-to-come.ts';
import type { Beyond, FilmFinding, FilmRuleNamed } from '../../../../core/part/film-acceptance.ts';
import type { HeatUp } from '../../../../core/part/heat-up.ts';
import type { FilmObjection, LoadUnclear } from '../../../../core/part/part-objections.ts';
import type { StageName } from '../../../../core/products/sheet-part.ts';
import type { Celsius, EpochMs, Minutes } from '../../../../core/units.ts';
import { type Ending, timeOf } from '../../ending.ts';
import { exampleIn } from '../../example-units.ts';
import type { Figures } from '../../figures.ts';
import { englishAlarmPlaced } from './alarms.ts';
import { englishExposure } from './exposure.ts';
import { englishFilmTests } from './film-tests.ts';
import { englishFirstShiftUnclear } from './first-shift.ts';
import { englishHeld } from './held.ts';
import { englishInstruments } from './instruments.ts';
import { englishNewParts } from './new-parts.ts';
import { englishPartsIn, partsNamed } from './parts-in.ts';
import { englishAskedBefore, englishLackingTold, englishStillAsked } from './release.ts';
import { englishSpots } from './spots.ts';
import { englishSurface } from './surface.ts';

const stages: Readonly<Record<StageName, string>> = {
  handle: 'can be handled',
  service: 'may go into service by the sheet',
  full: 'full resistance',
};

const starts: Readonly<Record<HeatUp['start'], string>> = {
  'part-reading': 'the last reading on it',
  surface: 'its surface as read before',
  room: 'the air of the room',
  'lowest-of-sheet': "the sheet's coldest air, since nobody read any",
};

export const englishRubs: Readonly<Record<RubResult, string>> = {
  'no-effect': 'no effect',
  softened: 'softened',
  through: 'through to what is below',
};

/** What the plan, the heat-up and the oven would need of a part. */
export type DetailAsked = 'metal' | 'wall' | 'area' | 'bears';

const details: Readonly<Record<DetailAsked, string>> = {
  metal: 'metal',
  wall: 'wall',
  area: 'area',
  bears: 'the heat it bears',
};

const dryLies: Readonly<Record<DryToCome['lies'], string>> = {
  within: "Within the sheet's film",
  thinner: "Thinner than the sheet's film",
  thicker: "Thicker than the sheet's film",
  both: "Both thinner and thicker than the sheet's film",
};

export const englishParts = {
  held: englishHeld,
  instruments: englishInstruments,
  spots: englishSpots,
  ...englishSurface,
  stages,
  several: (count: number) => `${count} parts: noted`,
  detail: (parts: readonly PartName[], known: readonly string[], figures: Figures) =>
    `${partsNamed(parts, figures)}: ${known.length > 0 ? known.join(', ') : `nothing said of ${parts.length === 1 ? 'it' : 'them'} yet`}`,
  unread: (words: readonly string[], metals: readonly Metal[], figures: Figures) =>
    `Not read, and not noted: ${figures.list(words)}. Metals known here: ${figures.list(metals.map((metal) => metal.replaceAll('-', ' ')))}; any other stands behind the word metal.`,
  bears: (celsius: Celsius, figures: Figures) => `bears ${figures.temperature(celsius)}`,
  unknownDetails: (parts: readonly PartName[], what: readonly DetailAsked[], figures: Figures) =>
    `Not known of ${partsNamed(parts, figures)}: ${figures.list(what.map((each) => details[each]))}.`,
  prepared: (part: PartName, how: string) => `${part}: prepared${how === '' ? '' : `, ${how}`}`,
  noSurfaceLife: (sheets: readonly string[], figures: Figures) =>
    `${figures.list(sheets)} gives no life of a prepared surface: coat it soon, and ask what the job allows.`,
  surfaceLifeOf: (sheet: string) => `Its life is by the sheet of ${sheet}.`,
  surfaceRead: (part: string) => `${part}: surface`,
  surfaceNotRead: (parts: readonly PartName[], figures: Figures) =>
    `Nobody has read the surface of ${partsNamed(parts, figures)}: its distance from the dew point is not known.`,
  surfaceOfPlace: (parts: string) => `Of ${parts} nobody has read the surface; that of the place stands in.`,
  readSurfaces: (part: string, figures: Figures) =>
    `Before each coat read the steel itself: surface ${part} ${figures.units === 'us' ? '66F' : '19C'}.`,
  spreadNeeds: 'Without the air of the room there is no dew point to compare it with.',
  in: englishPartsIn,
  meant: englishNewParts,
  touchedUp: (part: string, method: Method, batch: number, pass: number) =>
    `${part}: pass ${pass} of the same coat (${method}, batch ${batch})`,
  noOpenTime: 'The sheet gives no open time: do not touch up.',
  estimate: ({ ovenCelsius, start, startAt }: HeatUp, transfer: number, figures: Figures) =>
    `Estimate, not measured: from ${starts[start]}${start === 'part-reading' ? ` (${figures.timeDown(startAt)})` : ''} in an oven of ${figures.temperature(ovenCelsius)}, wall heated on both faces, ${transfer} W/(m² K) from memory, no source. Read the part.`,
  byPace: (celsius: Celsius, readAt: EpochMs, figures: Figures) =>
    `Estimate by the reading of ${figures.timeDown(readAt)} and its pace since the one before, in an oven of ${figures.temperature(celsius)}. Read the part.`,
  provedAt: (least: Celsius, inAll: Minutes, longest: Minutes, figures: Figures) =>
    `At ${figures.temperature(least)} or above, by its readings: ${figures.minutesDown(inAll)} in all, ${figures.minutesDown(longest)} the longest without a break.`,
  noEstimate: 'Not measured: that time only counts from when it went in. Read the part itself and say temp.',
  notMeasured: (label: string) => `${label}, estimate, not measured`,
  readAgain: (readAt: EpochMs, due: EpochMs | undefined, figures: Figures) =>
    `It counts up to the reading of ${figures.timeDown(readAt)}, and no further: read it again ${due === undefined ? 'now' : `at ${figures.timeUp(due)}`}, or what lies between does not count.`,
  askAt: (at: EpochMs, figures: Figures) => `Read it at about ${figures.timeUp(at)}.`,
  doors: (count: number, minutes: Minutes | undefined, figures: Figures) =>
    `Door opened ${count === 1 ? 'once' : `${count} times`}${minutes === undefined ? '' : `, ${figures.minutesUp(minutes)} in all`}: read the part again.`,
  cureNotProved: 'Its cure time is not proved by any reading: not given, and not released.',
  heldAgain: (parts: readonly PartName[], figures: Figures) =>
    `Released before this was known, and on hold from now on: ${partsNamed(parts, figures)}.`,
  heldThoughGone: (parts: readonly PartName[], figures: Figures) =>
    `Left the shop before this was known: ${partsNamed(parts, figures)}. Tell the customer; have them held where they are, or fetched back.`,
  doorOpened: (parts: string) => `${parts}: door opened`,
  readOn: (part: PartName, others: readonly PartName[], figures: Figures) =>
    `Read on ${part}, which warms last; it counts for ${figures.list(others)} too. Say the part's name for a reading of its own.`,
  humidityOutside: (minutes: Minutes, lowest: number, highest: number, figures: Figures) =>
    `${figures.minutesDown(minutes)} without credit: humidity outside the sheet's ${figures.percent(lowest)} to ${figures.percent(highest)}.`,
  humidityUnknown: (minutes: Minutes, figures: Figures) =>
    `${figures.minutesDown(minutes)} without credit: nobody read the humidity.`,
  /** `unread`: time that nobody read. */
  roomCure: (proved: number, night: boolean, unread: Minutes | undefined, figures: Figures) => {
    const by = `${figures.percent(Math.floor(proved * 100))} proved by the readings${night ? ' and the lowest that was told' : ''}`;
    return unread === undefined ? `${by}.` : `${by}; ${figures.minutesUp(unread)} that nobody read do not count.`;
  },
  roomCureEnds: (end: 'read-on' | 'told' | 'untold', at: EpochMs, figures: Figures) => {
    const given = { 'read-on': 'If it is read on', told: 'Once that is told', untold: 'As it is' };
    return `${given[end]}, it ends at ${figures.timeUp(at)}.`;
  },
  nightHumidity: "The night's humidity was not read: taken as the readings before and after it.",
  adhesion: (part: string, rating: string) => `${part}: adhesion ${rating}`,
  adhesionScale: (rating: string): string =>
    rating.endsWith('B')
      ? 'ASTM D3359 method B: 5B none away, 0B more than 65 %.'
      : 'ISO 2409: 0 none away, 5 the worst.',
  rub: (part: PartName, count: number, result: RubResult) => `${part}: ${count} double rubs, ${englishRubs[result]}`,
  rubMeaning: 'A film that withstands a solvent rub is not by that alone fully cured.',
  coupon: 'On a witness coupon, not on the part.',
  filmTests: englishFilmTests,
  deviationsOn: (count: number) => `${count} deviation${count === 1 ? ' stands' : 's stand'} on it:`,
  deviation: (at: EpochMs, who: PersonName, what: string, permitted: string | undefined, figures: Figures) =>
    `! ${figures.timeDown(at)} ${who}: ${what}${permitted === undefined ? '' : ` (lifted beforehand: ${permitted})`}`,
  filmNotRead: 'Nobody has read its dry film.',
  film: englishFilm,
  dryToCome: (
    { meanMicrometres, leastMicrometres, mostMicrometres, solidsPercent, sheet, lies }: DryToCome,
    figures: Figures,
  ) =>
    `Dry it will be ${figures.film(meanMicrometres)}${leastMicrometres === mostMicrometres ? '' : ` (${figures.film(leastMicrometres)} to ${figures.film(mostMicrometres)})`}, by ${figures.percent(solidsPercent, 1)} solids, not thinned. ${dryLies[lies]}: ${figures.film(sheet.leastMicrometres)} to ${figures.film(sheet.mostMicrometres)}.`,
  dryNotKnown: 'The sheet gives no solids: what it will be dry is not known.',
  onShift: (who: string) => `${who}: on shift`,
  offShift: (who: string) => `${who}: off shift`,
  nowOn: (names: readonly PersonName[], figures: Figures) => `On shift: ${figures.list(names)}.`,
  nobodyOn: 'Nobody has said that they are on shift.',
  stillRings: (count: number) =>
    `${count === 1 ? 'One bell still rings' : `${count} bells still ring`} for you. Hand over: handover NAME.`,
  handedOver: (to: string) => `Handed over to ${to}`,
  handoverAll: (to: string) =>
    `Everything alive rings for ${to} too from now on, and for nobody else once they take over.`,
  handoverOwn: (to: string) => `What rings for you rings for ${to} too, and for them alone once they take over.`,
  handoverFrom: (from: string) => `${from} hands over to you. Read it, then say take over.`,
  takenOver: (who: string, from: string) => `${who} has taken over from ${from}`,
  nothingAlive: 'Nothing is alive.',
  snoozed: (ring: string) => `Put off: ${ring}`,
  snoozedUntil: (ending: Ending, who: PersonName, figures: Figures) =>
    `Rings again at ${timeOf(figures, ending)}, for ${who}.`,
  ringPutOff: (ring: number) => `Ring ${ring}: it had been put off.`,
  lifted: (who: string, role: string, why: string, reason: string) =>
    `! Lifted beforehand by ${who} (${role}): ${why}. ${reason}`,
  roles: { crew: 'crew', lead: 'lead', supervisor: 'supervisor' },
  curesMorning: (part: PartName, ending: Ending | undefined, figures: Figures) =>
    `${part}: in cure, rings at ${ending === undefined ? '?' : timeOf(figures, ending)}`,
  stillAsked: englishStillAsked,
  askedBefore: englishAskedBefore,
  lacking: {
    ...englishLackingTold,
    asks: (job: string, limits: SurfaceLimits & ReleaseLimits, figures: Figures): string =>
      `Job ${job} asks: ${englishSurface.limits(limits, figures)}.`,
  },
  askNight: (figures: Figures) => `Say the lowest of the night: ${exampleIn('night 16C', figures.units)}.`,
};

export function englishFilmObjection(objection: FilmObjection, figures: Figures): string {
  switch (objection.code) {
    case 'film-drying': {
      const since =
        objection.openUntil === undefined
          ? 'the sheet gives no open time'
          : `by the sheet it took another pass until ${figures.timeDown(objection.openUntil)}`;
      const dry = objection.saidDry ? 'It was said dry. ' : '';
      return `${dry}The film has begun to dry: ${since}. A patch on it never blends in and lets go. Leave it, and hold the part if it needs mending.`;
    }
    case 'dip-once':
      return `Dip once only: it was coated at ${figures.timeDown(objection.coatedAt)}.`;
    case 'surface-life-over':
      return `Prepared at ${figures.timeDown(objection.preparedAt)}; by the sheet that served until ${figures.timeDown(objection.endedAt)}. Prepare it again.`;
    case 'not-prepared':
      return `Nobody has said how it was prepared. ${objection.asked.map((each) => `${englishSurface.asked(each, figures)}.`).join(' ')} Say prep first.`;
    case 'surface-outside':
      return `${objection.breaches.map((breach) => `${englishSurface.breach(breach, figures)}.`).join(' ')} Prepare it again and measure.`;
  }
}

export function englishCrewUnclear(
  unclear: CrewUnclear | Exclude<LoadUnclear, { code: 'far-reading' }>,
  figures: Figures,
): string {
  switch (unclear.code) {
    case 'no-such-person':
      return `There is no ${unclear.person} in the crew. People: ${figures.list(unclear.known)}.`;
    case 'may-not-settle': {
      const whose = { crew: 'the crew', lead: 'a lead', supervisor: 'a supervisor' }[unclear.wanted];
      return `That is for ${whose} to set: ${figures.list(unclear.who)}.`;
    }
    case 'may-not-judge':
      return `A batch is judged anew by a ${unclear.wanted === 'supervisor' ? 'supervisor' : 'lead'}: ${figures.list(unclear.who)}.`;
    case 'handover-to-self':
      return 'That is you. Name who takes over.';
    case 'nothing-to-take-over':
      return unclear.waitsFor === undefined
        ? 'Nobody has handed over to you. Whoever goes says handover NAME.'
        : `The handover is to ${unclear.waitsFor}: they say take over themselves.`;
    case 'not-snoozed':
      return `${unclear.key} cannot be put off: it runs on whether it rings or not. Do it, or say ok when you have heard it.`;
    case 'no-countdown':
      return unclear.isOn
        ? 'It has rung already, and everybody is called. A lead or supervisor ends it: alarm over.'
        : 'Nobody has been called, and nobody will be.';
    case 'no-first-shift':
      return englishFirstShiftUnclear(unclear, figures);
    case 'no-alarm-on':
      return 'No alarm is on.';
    case 'which-alarm': {
      const on = figures.list(unclear.alarms.map(englishAlarmPlaced));
      return unclear.isOther ? `That one is not on. On: ${on}.` : `Which is over? On: ${on}.`;
    }
    case 'more-than-a-day':
      return englishExposure.tooLong(unclear.person, unclear.hours, figures);
    case 'which-load':
      return unclear.loads.length === 0
        ? 'Nothing is in the oven. Name the part.'
        : `Which load? In the oven: ${unclear.loads.map((load) => figures.list(load)).join('; ')}.`;
  }
}

/** How the dry film stands by its rule, named. */
export function englishFilm(finding: FilmFinding, figures: Figures): string {
  const rule = finding.is === 'no-rule' || finding.is === 'not-coated' ? '' : ruleNamed(finding.rule, figures);
  switch (finding.is) {
    case 'not-coated':
      return 'No coat is recorded on it: say the coat first. Nothing is accepted by these figures.';
    case 'no-rule':
      return 'The sheet gives no rule for its dry film: these are figures, and nothing is accepted by them.';
    case 'within':
      return `Within the rule: ${rule}.`;
    case 'outside':
      return `Outside the rule: ${rule}. ${finding.findings.map((each) => beyondSaid(each, figures)).join('; ')}.`;
    case 'cannot-tell':
      return `Neither within nor outside for certain: ${rule}. With what the gauge may be off by it can lie on either side.`;
    case 'too-few':
      return `Too few readings: ${finding.given} of ${finding.needed}, ${rule}.`;
    case 'half':
      return `${finding.told} of ${finding.needed} spots told, ${rule}: half a set proves nothing.`;
    case 'area-unknown':
      return `${rule} counts its readings by area, and nobody has said the part's. Say part NAME ${exampleIn('0.8m2', figures.units)}.`;
    case 'does-not-apply':
      return `${rule} does not apply here. A thin film needs the job's own rule.`;
  }
}

function beyondSaid({ what, spot, measured, limit }: Beyond, figures: Figures): string {
  if (what === 'too-many-thin') return `a fifth of the readings or more under ${figures.film(limit)}`;
  const where =
    spot === undefined ? what.replaceAll('-', ' ') : `spot ${spot} ${what.endsWith('below') ? 'below' : 'above'}`;
  return `${where}: ${figures.film(measured)}, limit ${figures.film(limit)}`;
}

function ruleNamed(rule: FilmRuleNamed, figures: Figures): string {
  switch (rule.by) {
    case 'own':
      return `the sheet's own, ${figures.film(rule.least)} to ${figures.film(rule.most)}, ${rule.readings} readings`;
    case 'iso-19840':
      return 'ISO 19840';
    case 'pa-2':
      return `SSPC-PA 2, level ${rule.level}`;
  }
}
