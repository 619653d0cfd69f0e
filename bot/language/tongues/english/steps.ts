// The steps of the maker's paper, in English: asked once, answered with a tap, and said before the act that they are of.

import type { AtWorst } from '../../../../core/batch/at-worst.ts';
import type { SpeedOutside } from '../../../../core/batch/stir-speed.ts';
import type { FilteredInto, FilterMaterial, FilterTold } from '../../../../core/filters.ts';
import type { AfterDue } from '../../../../core/part/after-cure.ts';
import type { Sheet } from '../../../../core/products/sheet.ts';
import type { Protection, StirSpeed } from '../../../../core/products/sheet-steps.ts';
import { strengthAsked } from '../../../../core/steps/alcohol.ts';
import type { RunStep, WorkStep } from '../../../../core/steps/run.ts';
import type { StepAnswered } from '../../../../core/steps/step-events.ts';
import type { StepLacking, StepObjection } from '../../../../core/steps/step-objection.ts';
import type { AskedStep } from '../../../../core/steps/step-rows.ts';
import type { StepSaid } from '../../../../core/steps/steps-said.ts';
import type { Celsius, Minutes } from '../../../../core/units.ts';
import type { VesselMaterial } from '../../../../core/vessels.ts';
import type { Figures } from '../../figures.ts';
import type { Profile } from '../profile.ts';
import { nounIn } from '../term.ts';
import { englishGears } from './gears.ts';
import { englishMethods } from './methods.ts';
import { englishPapers } from './papers.ts';
import { englishSolvents } from './solvents.ts';
import { englishTerms } from './terms.ts';

type FilterOther = Extract<StepObjection, { code: 'filter-not-as-sheet' }>;
type CleanedLate = Extract<StepObjection, { code: 'gear-cleaned-late' }>;
type UncoveredTooLong = Extract<StepObjection, { code: 'uncovered-too-long' }>;

interface StepWords {
  /** What is kept, as a list or a record names it. */
  readonly name: string;
  readonly asked: (sheet: Sheet, figures: Figures) => string;
  readonly yes: string;
  readonly no: string;
  /** What to do where it is lacking. */
  readonly instead: string;
}

const vesselMaterials: Readonly<Record<VesselMaterial, string>> = {
  glass: 'glass',
  stainless: 'stainless steel',
  hdpe: 'high-density polyethylene',
};

const protections: Readonly<Record<Protection, string>> = {
  gloves: 'gloves',
  goggles: 'goggles',
  'face-shield': 'a face shield',
  coverall: 'a coverall',
  apron: 'an apron',
  respirator: 'a respirator',
};

const filterMaterials: Readonly<Record<FilterMaterial, string>> = {
  'glass-fibre': 'glass fibre',
  nylon: 'nylon',
  polypropylene: 'polypropylene',
  'stainless-mesh': 'stainless mesh',
};

const filteredInto: Readonly<Record<FilteredInto, string>> = {
  'second-vessel': 'second vessel',
  'same-vessel': 'same vessel',
};

/** `1 µm glass fibre, second vessel`; empty where nothing was told. */
function filterTold({ filterMicrometres: grade, filterOf, filteredInto: into }: FilterTold, figures: Figures): string {
  const through = [
    ...(grade === undefined ? [] : [figures.filterGrade(grade)]),
    ...(filterOf === undefined ? [] : [filterMaterials[filterOf]]),
  ];
  return [through.join(' '), into === undefined ? '' : filteredInto[into]].filter((text) => text !== '').join(', ');
}

const turns = (speed: StirSpeed, figures: Figures): string =>
  `${figures.count(speed.lowestRevolutionsPerMinute)} to ${figures.count(speed.highestRevolutionsPerMinute)} rpm`;

const either = new Intl.ListFormat('en-GB', { type: 'disjunction' });

/** `earth` of `earthed`. */
const verbOf = (earthed: string): string => earthed.slice(0, -2);

const rowsIn = (earthed: string): Readonly<Record<AskedStep, StepWords>> => ({
  equipment: {
    name: 'equipment rated for flammable liquids',
    asked: () => 'Is all that runs by the mix (stirrer, lamps, fan) rated for flammable liquids?',
    yes: 'Rated',
    no: 'Not rated',
    instead: 'Use what is rated, or mix where it is.',
  },
  bonding: {
    name: `vessels bonded and ${earthed}`,
    asked: () => `Are metal can and vessel bonded to each other and ${earthed} while you pour?`,
    yes: 'Bonded',
    no: 'Not bonded',
    instead: `Bond can and vessel and ${verbOf(earthed)} them before anything is poured.`,
  },
  papers: {
    name: 'instructions and safety data sheets read',
    asked: (sheet, figures) =>
      `Have you read the instructions of ${sheet.name} (${englishPapers.revision(sheet, figures)}) and the safety data sheets of both parts?`,
    yes: 'I have read them',
    no: 'Not yet',
    instead: 'Read them first; the pouring can wait that long.',
  },
  vessel: {
    name: 'vessel and tools of what the sheet allows',
    asked: ({ steps }) => {
      const materials = (steps?.vessel?.materials ?? []).map((material) => vesselMaterials[material]);
      return `Are vessel and tools of ${either.format(materials)}?`;
    },
    yes: 'They are',
    no: 'They are not',
    instead: 'Take a vessel and tools of what the sheet names.',
  },
  'clean-oven': {
    name: 'a clean oven',
    asked: () => 'Is the oven clean: nothing in it that gives off dust, oil or silicone?',
    yes: 'Clean',
    no: 'Not clean',
    instead: 'Clean the oven first, or cure in the room where the sheet allows it.',
  },
  'clean-room': {
    name: 'a clean place to cure in',
    asked: () => 'Is there a clean place to cure in, without dust or draught?',
    yes: 'There is',
    no: 'There is none',
    instead: 'Clear a place without dust or draught first, or cure in the oven.',
  },
  alcohol: {
    name: 'flush solvent as strong as the sheet asks',
    asked: (sheet, figures) => {
      const strength = strengthAsked(sheet);
      return strength === undefined
        ? 'Is the bottle as strong as the sheet asks?'
        : `Is the ${englishSolvents[strength.solvent]} in use ${figures.percent(strength.purityPercent)}? Asked once a bottle.`;
    },
    yes: 'It is',
    no: 'Less, or not known',
    instead: 'Take a bottle that is as strong as the sheet asks, and say new ipa 99%.',
  },
});

const works: Readonly<Record<WorkStep, string>> = {
  air: 'air read',
  mix: 'batch opened',
  'can-stir': 'stirred in the can',
  weigh: 'A and B weighed',
  'can-gas': 'gas over the can',
  blend: 'stirred',
  filter: 'filtered',
  prep: 'surface prepared',
  surface: 'surface temperature read',
  coat: 'coated',
  clean: 'gear cleaned',
  dry: 'dry to the touch',
  cure: 'cure begun',
  cured: 'taken out of cure',
  film: 'film measured',
  release: 'released',
};

const standings: Readonly<Record<Exclude<RunStep['stands'], 'done'>, string>> = {
  next: 'Next',
  'to-come': 'To come',
  passed: 'Not recorded',
  kept: 'Kept',
  lacking: 'Lacking',
  'not-answered': 'Nobody has said',
};

const stepsWith = (rows: Readonly<Record<AskedStep, StepWords>>) => ({
  rows,
  run: {
    ofBatch: (batch: number) => `Run of batch ${batch}`,
    ofPart: (part: string) => `Run of ${part}`,
    done: (at: string, said: string, by: string) => `${at} ${said} (${by})`,
    coatsBefore: (coats: number, figures: Figures) => `Earlier coats: ${figures.count(coats)} more`,
    work: (step: WorkStep) => works[step],
    stands: (stands: Exclude<RunStep['stands'], 'done'>, what: readonly string[], figures: Figures): string =>
      `${standings[stands]}: ${figures.list(what)}`,
  },
  said: (said: StepSaid, figures: Figures): string => {
    switch (said.step) {
      case 'protection': {
        const work = said.work === 'mixing' || said.work === 'cleaning' ? said.work : englishMethods[said.work].name;
        return `${work.charAt(0).toUpperCase()}${work.slice(1)}: wear ${figures.list(said.worn.map((each) => protections[each]))}.`;
      }
      case 'vortex': {
        const range = said.speed === undefined ? '' : ` (${turns(said.speed, figures)})`;
        return `Stir covered, with a slight vortex${range} and no faster: air shortens the pot life.`;
      }
      case 'filtering': {
        const grade = said.micrometres === undefined ? '' : `${figures.filterGrade(said.micrometres)} `;
        const into = said.secondVessel ? ' into a second clean vessel' : '';
        return `Filter through ${grade}${filterMaterials[said.through]}${into}: what is skipped stands in the film as specks.`;
      }
    }
  },
  filterTold,
  /** `of`: the batch, where it is one of several. */
  filteredThrough: (told: string, of?: number) =>
    of === undefined ? `Filter: ${told}.` : `Batch ${of}: filtered, ${told}`,
  filtered: (told: FilterTold, figures: Figures): string =>
    ['filtered', filterTold(told, figures)].filter((text) => text !== '').join(', '),
  filterOther: ({ told, asked }: FilterOther, figures: Figures): string =>
    `Filtering told: ${filterTold(told, figures)}. The sheet: ${filterTold(asked, figures)}. What passes stands in the film as specks: filter as the sheet asks.`,
  /** How the record tells it. */
  fact: ({ step, kept, purityPercent }: StepAnswered, figures: Figures): string => {
    const bottle = purityPercent === undefined ? '' : `, ${figures.percent(purityPercent)}`;
    return `${kept ? '' : 'lacking: '}${rows[step].name}${bottle}`;
  },
  noted: (step: AskedStep, kept: boolean): string =>
    kept ? `Noted: ${rows[step].name}` : `Lacking: ${rows[step].name}`,
  potAtWorst: ({ endAt, readAt, againAt }: AtWorst, isPast: boolean, figures: Figures) =>
    `At worst the pot life ${isPast ? 'ended' : 'ends'} at ${figures.timeDown(endAt)}: the air was read at ${figures.timeDown(readAt)} and again, warmer, at ${figures.timeDown(againAt)}.`,
  uncoveredTooLong: ({ openMinutes, mostMinutes }: UncoveredTooLong, figures: Figures): string =>
    `Since B met A it stood uncovered for ${figures.minutesUp(openMinutes)}; the sheet allows ${figures.minutesDown(mostMinutes)} in all.`,
  speedOutside: ({ is, revolutionsPerMinute, ...speed }: SpeedOutside, cutTo: number | undefined, figures: Figures) => {
    const range = `${figures.count(speed.lowest)} to ${figures.count(speed.highest)} rpm`;
    const said = `${figures.count(revolutionsPerMinute)} rpm is ${is === 'too-fast' ? 'faster' : 'slower'} than the sheet’s ${range}`;
    if (is === 'too-slow') return `${said}: a slight vortex shows that all of it moves.`;
    const cost =
      cutTo === undefined ? 'the sheet does not say by how much' : `by the sheet to ${figures.percent(cutTo)}`;
    return `${said}: air beaten in shortens the pot life, ${cost}.`;
  },
  cleanedLate: ({ gear, afterMinutes, mostMinutes, costs }: CleanedLate, figures: Figures): string => {
    const cost =
      costs === undefined
        ? ''
        : costs === 'gear'
          ? ' It may be scrap.'
          : ' What set in it may come off in the next film.';
    return `Cleaned ${figures.minutesUp(afterMinutes)} after its last use: ${englishGears[gear]}. The sheet allows ${figures.minutesDown(mostMinutes)}.${cost}`;
  },
  bearsAsked: (oven: Celsius, figures: Figures) =>
    `Does the part bear ${figures.temperature(oven)}? Nobody has said. If not, it cures in the room where the sheet allows it.`,
  bears: (oven: Celsius, figures: Figures) => `Bears ${figures.temperature(oven)}`,
  afterCure: (after: readonly AfterDue[], figures: Figures): string => {
    const stages = { service: 'service from', full: 'full properties from', improves: 'improves until' };
    return `After its cure, by the sheet: ${figures.list(after.map(({ stage, at }) => `${stages[stage]} ${figures.timeUp(at)}`))}. That is no release.`;
  },
  lidMost: (most: Minutes, figures: Figures): string =>
    `By the sheet the lid may be off for ${figures.minutesDown(most)} in all.`,
  lidCuts: (percent: number, figures: Figures): string =>
    `The lid was off too long: the sheet then gives it ${figures.percent(percent)} of the usual pot life.`,
  weakCost: 'What it left behind sets in the gear, which may be scrap. Flush it again.',
  lacking: ({ step, by, at }: StepLacking, figures: Figures): string =>
    `${by} said at ${figures.timeDown(at)} that this is lacking: ${rows[step].name}. ${rows[step].instead}`,
});
export type StepsWords = ReturnType<typeof stepsWith>;

const british = stepsWith(rowsIn(englishTerms.earthed.one));
const american = stepsWith(rowsIn(nounIn(englishTerms.earthed, 'en-US').one));
export const englishSteps = (locale: Profile['locale']): StepsWords => (locale === 'en-US' ? american : british);
