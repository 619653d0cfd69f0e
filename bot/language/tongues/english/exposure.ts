// What people breathed over a day, in English.

import type { SubstanceId } from '../../../../core/calc/exposure-limits.ts';
import type { PersonName } from '../../../../core/ids.ts';
import type { Breathed, ExposureDay, ShortVerdict, Verdict } from '../../../../core/session/exposure-day.ts';
import { type Hours, minutes } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';
import { englishSolvents } from './solvents.ts';

export const englishSubstances: Readonly<Record<SubstanceId, string>> = { ...englishSolvents, hdi: 'HDI', mdi: 'MDI' };

/** What stands behind a figure and its limit. */
const verdicts: Readonly<Record<Verdict, string>> = {
  over: ': OVER',
  'may-be': ': may be OVER',
  'not-measured': '',
  within: '',
};

const timesOf = (times: number, figures: Figures): string =>
  times < 1 ? `${figures.percent(times * 100)} of` : `${figures.decimal(times)} times`;

/** By volume, and by mass. */
export const amountOf = ({ assumed, milligrams }: Breathed, figures: Figures): string =>
  milligrams === undefined ? figures.ppm(assumed) : `${figures.ppm(assumed)} (${figures.inAir(milligrams)})`;

export const hoursOf = (rest: Hours, figures: Figures): string => figures.minutesUp(minutes(rest * 60));

export const englishExposure = {
  title: (person: PersonName, day: string, figures: Figures) => `What ${person} breathed, ${figures.date(day)}`,
  titleOfAll: 'What was breathed',
  nothing: 'Nothing was measured of anybody’s air then. Say exposure kari 12ppm acetone 2h.',
  setHere: 'as set here',
  substance: (breathed: Breathed, source: string, figures: Figures) => {
    const { substance, assumed, limit, is } = breathed;
    const name = englishSubstances[substance];
    const amount = amountOf(breathed, figures);
    if (limit === undefined) return `${name}: ${amount} over 8 h; no limit is kept`;
    const share = figures.percent((assumed / limit.ppm) * 100);
    const law = limit.stands === 'stand-in' ? `lowest known, ${source}` : source;
    return `${name}: ${amount} over 8 h, ${share} of ${figures.ppm(limit.ppm)} (${law})${verdicts[is]}`;
  },
  rest: ({ substance, rest, highest, measured }: Breathed, figures: Figures) =>
    `${hoursOf(rest, figures)} of ${englishSubstances[substance]} were not measured: taken at the highest told, ${figures.ppm(highest)}. As clean air it would be ${figures.ppm(measured)}.`,
  noneInRest: (rest: Hours, substance: SubstanceId, figures: Figures) =>
    `No ${englishSubstances[substance]} in the other ${hoursOf(rest, figures)}`,
  advised: ({ assumed, limit }: Breathed, figures: Figures) =>
    limit?.advised === undefined
      ? ''
      : `NIOSH advises ${figures.ppm(limit.advised.ppm)} over the day: this is ${timesOf(assumed / limit.advised.ppm, figures)} that.`,
  short: ({ limit, highest, is }: ShortVerdict, source: string, figures: Figures) => {
    const what = limit.kind === 'ceiling' ? 'Never above' : 'Over 15 min at most';
    const peak =
      limit.peak && `, but up to ${figures.ppm(limit.peak.ppm)} for ${figures.minutesUp(limit.peak.minutes)} a shift`;
    const asked = `${what} ${figures.ppm(limit.ppm)}${peak ?? ''} (${source})`;
    if (is === 'not-measured') return `${asked}: a mean over a longer time does not show it. Not measured.`;
    return `${asked}, highest told ${figures.ppm(highest)}${verdicts[is]}`;
  },
  advisedShort: ({ limit, highest }: ShortVerdict, figures: Figures) =>
    `NIOSH advises ${figures.ppm(limit.ppm)}${limit.kind === 'ceiling' ? ' at most' : ' over 15 min'}: the highest told is ${timesOf(highest / limit.ppm, figures)} that.`,
  mixture: ({ assumed, is }: NonNullable<ExposureDay['mixture']>, source: string, figures: Figures) =>
    `together: ${figures.percent(assumed * 100)} of their limits (shares added, ${source})${verdicts[is]}`,
  over: 'Over the limit: out of that air now. Nobody goes on in it before the air is better, or with a respirator from the employer’s programme alone: say mask.',
  mayBe:
    'May be over the limit: measure the rest, and until then work as if it were: more extraction, less time, or a respirator from the employer’s programme.',
  outsideMask: 'Measured outside the mask: what a mask keeps out is not taken off.',
  kept: (years: number, source: string) => `Kept for ${years} years (${source}).`,
  tooLong: (person: PersonName, total: Hours, figures: Figures) =>
    `That makes ${hoursOf(total, figures)} of it on ${person}’s working day, which has 24. Take back what is wrong with undo, or say how long this task was.`,
  fact: (person: PersonName, substance: SubstanceId, ppm: string, taskTime: string) =>
    `${person} breathed ${ppm} of ${englishSubstances[substance]} for ${taskTime}`,
};
