// Readings that fail, in English: which, by what rule, and what holds.

import type { Unclear } from '../../../../core/objections.ts';
import type { FailedReading } from '../../../../core/part/part-events.ts';
import type { ReadingObjection } from '../../../../core/part/part-objections.ts';
import type { Figures } from '../../figures.ts';
import { figureIn } from '../../noted-figures.ts';
import { slots } from '../../slots.ts';
import { englishFilmTests } from './film-tests.ts';
import { englishFilm } from './parts.ts';
import { slotNames } from './slots.ts';

const onCoupon = ({ coupon }: { readonly coupon?: true | undefined }) => (coupon === true ? ', on its coupon' : '');

export function englishFailed(reading: FailedReading, figures: Figures): string {
  switch (reading.of) {
    case 'film':
      return reading.spot === undefined || reading.meanMicrometres === undefined
        ? `dry film ${figures.list(reading.micrometres.map((film) => figures.film(film)))} outside its rule`
        : `dry film of set ${reading.set}, at spot ${reading.spot}: mean ${figures.film(reading.meanMicrometres)}, outside its rule`;
    case 'adhesion':
      return `adhesion ${reading.rating}${onCoupon(reading)}`;
    case 'heat':
      return `read ${figures.temperature(reading.celsius)}, where ${figures.temperature(reading.highestCelsius)} is the most`;
    case 'rub':
      return `a solvent rub went through, ${reading.doubleRubs} double rubs${onCoupon(reading)}`;
    case 'wet':
      return englishFilmTests.read(reading, figures);
    case 'pull-off':
    case 'gloss':
    case 'hardness':
    case 'holidays':
    case 'visual':
      return `${englishFilmTests.read(reading, figures)}${onCoupon(reading)}`;
  }
}

export function englishReadingObjection(objection: ReadingObjection, figures: Figures): string {
  switch (objection.code) {
    case 'film-outside':
      return englishFilm(objection.finding, figures);
    case 'adhesion-failed':
      return objection.least !== undefined
        ? `Adhesion ${objection.rating} fails: the job asks ${objection.least} or better.`
        : `Adhesion ${objection.rating} fails: 3B or better passes, by ISO 2409 2 or better (common practice, no source).`;
    case 'overheated':
      return `The part read ${figures.temperature(objection.celsius)}; it or its film bears ${figures.temperature(objection.highestCelsius)} at the most.`;
    case 'rubbed-through':
      return `The film went through at ${objection.doubleRubs} double rubs (that this fails: common practice, no source).`;
    case 'test-failed':
      return englishFilmTests.fails(objection.read, objection.asked, figures);
  }
}

type Far = Extract<Unclear, { code: 'far-reading' }>;

export function englishFar(unclear: Far, figures: Figures): string {
  if (unclear.from === 'before')
    return `${unclear.part} read ${figures.temperature(unclear.before.celsius)} at ${figures.timeDown(unclear.before.at)}, and by the record it is still in the oven. Is it at ${figures.temperature(unclear.celsius)}?`;
  const asked = unclear.figures.map(({ slot, values, lowest, highest, bySheet }) => {
    const shown = (value: number) => figureIn(slots[slot].unit, value, figures);
    const read = `${slotNames[slot]} ${figures.list(values.map(shown))}`;
    return bySheet
      ? `${read}, more than three times off the sheet's film`
      : `${read}, where ${shown(lowest)} to ${shown(highest)} is usual (common practice, no source)`;
  });
  return `Is it so: ${figures.list(asked)}?`;
}
