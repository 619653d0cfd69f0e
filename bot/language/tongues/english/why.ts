// What is said of why a figure is what it is, in English.

import type { NoFigure } from '../../../../core/calc/dose.ts';
import type { PreStirPoint } from '../../../../core/calc/pre-stir.ts';
import type { Duration } from '../../../../core/products/sheet-duration.ts';
import {
  type Celsius,
  type CelsiusSpread,
  type CubicMetres,
  type EpochMs,
  type Fraction,
  type Grams,
  type Minutes,
  minutes,
} from '../../../../core/units.ts';
import type { StretchTold, WayToErr, WhySource } from '../../../cards/why/told.ts';
import type { Figures } from '../../figures.ts';
import { englishFormulas } from './why-formulas.ts';

const errs: Readonly<Record<WayToErr, string>> = {
  late: 'Errs late: it must last at least so long, so time without a reading counts nothing, and the minute is rounded up.',
  early:
    "Errs early: it may last at most so long, so time without a reading runs at the sheet's fastest, and the minute is rounded down.",
  high: 'Errs high: rounded up.',
  low: 'Errs low: rounded down.',
  worst: 'Errs high: where figures differ, the one that asks for more; rounded up.',
  nearest: 'Neither way: worked out from what was read, and rounded to the nearest.',
  'as-read': 'As it was read or counted: nothing is added to it.',
};

const noFigure: Readonly<Record<NoFigure, string>> = {
  unknown: 'no reading that serves',
  below: 'colder than the sheet has a figure for',
  above: 'warmer than the sheet has a figure for',
};

const plainSource = {
  reading: 'what somebody of the crew read or said',
  record: "the crew's own record",
  setting: "the crew's settings",
  memory: 'from memory, no publication seen',
} as const;

const notCounted = (caution: 'at-least' | 'at-most'): string =>
  caution === 'at-least' ? 'nothing counted' : "at the sheet's fastest";

/** Of a short time its tenths tell. */
export const lastedTold = (lasted: Minutes, whole: number | undefined, figures: Figures): string =>
  whole !== undefined && whole < 60 ? `${figures.decimal(lasted)} min` : figures.minutesDown(lasted);

export const englishWhy = {
  formulas: englishFormulas,
  errs,
  title: (label: string, shown: string) => `Why: ${label} ${shown}`.trim(),
  how: (formula: string) => `How: ${formula}.`,
  read: (entries: readonly string[]) => `Read: ${entries.join('; ')}.`,
  /** Who, and when. */
  by: (act: string, by: string, at: EpochMs, figures: Figures) => `${act} (${by}, ${figures.timeDown(at)})`,
  source: (source: Exclude<WhySource, { is: 'law' }>, quoted: string) => {
    if (source.is === 'sheet')
      return `Source: ${source.sheet.name}, revision ${source.sheet.revision}, ${source.field}: ${quoted}.`;
    return `Source: ${source.is === 'published' ? quoted : plainSource[source.is]}.`;
  },
  lawSource: (quoted: string) => `Source: ${quoted}.`,
  assumed: (lines: readonly string[]) => `Taken: ${lines.map((line) => line.replace(/\.$/, '')).join('; ')}.`,
  nowIs: (shown: string) => `By the record as it is now: ${shown}.`,
  gone: 'What it was made from is no longer at hand here: trace and export have it.',
  nothing: 'There is no card of yours to ask about. Say what: why pot life, why dew point, why 09:42.',
  notThere: (asked: string) =>
    `Nothing on the last card, and nothing that runs, is called “${asked}”. What can be asked:`,
  which: 'Ask about one of them:',
  whichTitle: 'Why what?',
  whyNot: 'Why not',
  whyHeld: (part: string) => `Why ${part} is held`,
  noHold: (part: string) => `${part} is not held, and no rule speaks against it.`,
  lifted: {
    lead: 'A lead may allow it beforehand, with a reason.',
    supervisor: 'A supervisor may allow it beforehand, with a reason.',
    nobody: 'Nobody lifts it beforehand.',
  },
  ruleErrs: 'What nobody read or said speaks against it, not for it.',
  deviates: (what: string, by: string, at: EpochMs, figures: Figures) => `${figures.timeDown(at)}, ${by}: ${what}`,
  cardIs: 'The card tells what was recorded; nothing on it was worked out.',
  law: (duration: Duration, figures: Figures): string => {
    switch (duration.kind) {
      case 'plain': {
        const { range } = duration;
        const where =
          range === undefined
            ? 'at any temperature'
            : `from ${figures.temperature(range.lowestCelsius)} to ${figures.temperature(range.highestCelsius)}`;
        return `Sheet: ${figures.minutesUp(duration.minutes)} ${where}.`;
      }
      case 'table':
        return `Sheet: ${figures.list(duration.points.map((point) => `${figures.minutesUp(point.minutes)} at ${figures.temperature(point.celsius)}`))}, a straight line between.`;
      case 'q10':
        return `Sheet: ${figures.minutesUp(duration.minutes)} at ${figures.temperature(duration.atCelsius)}, ${figures.decimal(duration.factorPerTenDegrees)} times as fast every 10 °C warmer.`;
      case 'arrhenius':
        return `Sheet: ${figures.minutesUp(duration.minutes)} at ${figures.temperature(duration.atCelsius)}, by Arrhenius with ${figures.decimal(duration.activationKilojoulesPerMole)} kJ/mol.`;
    }
  },
  stretch: (
    { lasted, celsius, whole, share, why, expected }: StretchTold,
    caution: 'at-least' | 'at-most',
    figures: Figures,
  ) => {
    const at = celsius === undefined || why === 'unknown' ? noFigure[why ?? 'unknown'] : figures.temperature(celsius);
    const minutesOf = `${expected ? 'then ' : ''}${lastedTold(lasted, whole, figures)}, ${at}`;
    if (whole === undefined) return `${minutesOf}: ${notCounted(caution)}`;
    const slow = why === undefined ? '' : caution === 'at-most' ? "the sheet's fastest, " : "the sheet's slowest, ";
    return `${minutesOf}: ÷ ${slow}${lastedTold(minutes(whole), whole, figures)} = ${figures.percent(share * 100, 1)}`;
  },
  before: (count: number) => `(${count} stretches before these)`,
  withoutFigure: (why: NoFigure, caution: 'at-least' | 'at-most') => `${noFigure[why]}: ${notCounted(caution)}`,
  heldOn: 'the last reading is taken to hold until the end',
  toTheStep: 'shown to the step of the scale',
  asScales: 'both scales are taken to be right',
  throughDensities: "by weight through the sheet's densities",
  metAt: (at: EpochMs, figures: Figures) => `B met A at ${figures.timeDown(at)}.`,
  byMass: (mass: Grams, figures: Figures) => `For ${figures.mass(mass)} in one pot, as the sheet gives it by mass.`,
  shortened: (percent: number, lid: boolean, figures: Figures) =>
    `Cut to ${figures.percent(percent)} of the sheet's: ${lid ? 'the lid was off too long' : 'the stirrer turned too fast'}.`,
  margin: (end: EpochMs, margin: Minutes, figures: Figures) =>
    `${figures.timeDown(end)} − ${figures.minutesUp(margin)} to empty and flush.`,
  humidityFromBefore: 'the humidity is from another reading than the temperature',
  leastSpread: (least: CelsiusSpread, figures: Figures) => `The sheet asks for at least ${figures.spread(least)}.`,
  warmthCountsNot: 'warmth neither shortens nor lengthens it',
  noCureOnSheet: 'the sheet has no such cure: it rings after a day, to be asked about',
  bracketed: 'between two readings of the part the colder counts, past the last one nothing does',
  notMeasured: 'no reading of the part stands behind it yet',
  preStirPoints: (points: readonly PreStirPoint[], figures: Figures) =>
    `Sheet: ${figures.list(points.map((point) => `${figures.decimal(point.minutes)} min at ${figures.mass(point.partAGrams)}`))}, a straight line between.`,
  noFigureKept: 'no figure kept, left out',
  vapourOf: (vapour: CubicMetres, figures: Figures) => `${figures.space(vapour)} of vapour a litre`,
  ofLel: (share: Fraction, figures: Figures) => `down to ${figures.percent(share * 100)} of the limit, an hour`,
  timesMixing: (factor: number, assumed: boolean, figures: Figures) =>
    `× mixing factor ${figures.decimal(factor)}${assumed ? ' (assumed, nobody set it)' : ''}`,
  movedHot: (at: Celsius, figures: Figures) => `as the fan moves it at ${figures.temperature(at)}`,
  unknownTerm: (term: string) => `There is no word “${term}” here.`,
  botDoes: (what: string) => `Here: ${what}`,
  inSheet: (field: string) => `In a sheet: ${field}.`,
  standard: (name: string) => `Standard: ${name}. The words are ours.`,
  planVolume: 'On the parts + not on the parts + in the gear:',
};
