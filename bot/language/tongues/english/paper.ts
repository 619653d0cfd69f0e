// Pictures and paper, in English: their labels, and what stands on a traveller.

import type { Correction } from '../../../../core/history.ts';
import type { PartName, PersonName } from '../../../../core/ids.ts';
import type { FilmLimits } from '../../../../core/records/curves.ts';
import type { BarKind } from '../../../../core/records/timeline.ts';
import type { EpochMs, Micrometres } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';
import { englishTerms } from './terms.ts';

export interface FilmsRead extends Readonly<Record<'mean' | 'lowest' | 'highest', Micrometres>> {
  readonly count: number;
}

type Corrected = Pick<Correction, 'at' | 'by' | 'why'>;

const filmRules: Readonly<Record<FilmLimits['rule'], string>> = {
  own: 'the sheet’s own rule',
  'iso-19840': 'ISO 19840',
  'pa-2': 'SSPC-PA 2',
  range: 'the sheet’s film range, no acceptance rule named',
};

export const englishPictures = {
  timeline: 'The day by batch and part',
  air: 'Air',
  humidity: 'Humidity',
  cure: 'Cure',
  film: 'Film readings',
  humidityAxis: '% RH',
  progressAxis: 'cure time given, %',
  progress: 'cure time given',
  reading: 'reading number',
  airLine: 'air',
  dewLine: englishTerms['dew-point'].one,
  surfaceLine: 'surface',
  partLine: 'part',
  roomLine: 'room',
  limit: 'limit',
  wet: 'wet',
  dry: 'dry',
  marks: { coat: 'coat', thick: 'thick', released: 'released', held: 'on hold' },
  bars: {
    stirring: englishTerms.stirring.one,
    induction: englishTerms.induction.one,
    'pot-life': englishTerms['pot-life'].one,
    'flash-off': englishTerms['flash-off'].one,
    cure: 'cure',
    'can-open': 'lid off',
    spray: englishTerms.spraying.one,
  } satisfies Readonly<Record<BarKind, string>>,
  batch: (name: string) => `Batch ${name}`,
  can: (name: string) => `Can ${name}`,
  session: (name: string) => `Session ${name}`,
  empty: 'Nothing to draw.',
};

export const englishPaper = {
  /** Begins the file's name. */
  file: 'traveller',
  title: 'Traveller',
  heading: (parts: readonly PartName[], figures: Figures) => `Traveller ${figures.list(parts)}`,
  part: 'Part',
  product: 'Product',
  steps: 'Steps',
  when: 'Time',
  who: 'Who',
  what: 'What',
  coats: 'Coats',
  readings: 'Film readings',
  acceptance: 'Acceptance',
  noRule: 'No acceptance rule is named for this product: readings are given, no verdict.',
  judged: ({ rule, leastMicrometres, mostMicrometres, source }: FilmLimits, figures: Figures) =>
    `By ${filmRules[rule]}: ${figures.film(leastMicrometres)} to ${figures.film(mostMicrometres)}. Source: ${source}.`,
  noReadings: 'No dry film was read.',
  readingLine: (state: 'wet' | 'dry', films: readonly Micrometres[], figures: Figures) =>
    `${state === 'wet' ? 'Wet' : 'Dry'} film: ${figures.list(films.map(figures.film))}`,
  statistics: ({ mean, lowest, highest, count }: FilmsRead, figures: Figures) =>
    `${count} dry readings: mean ${figures.film(mean)}, lowest ${figures.film(lowest)}, highest ${figures.film(highest)}.`,
  deviations: 'Deviations and permissions',
  noDeviations: 'None by the record.',
  struck: 'Corrected entries stand with what they replaced, who corrected them, and why.',
  corrected: ({ by, at, why }: Corrected, figures: Figures) =>
    `corrected ${figures.dated(at)} by ${by}${why === '' ? '' : `: ${why}`}`,
  invented: 'An invented product: practice only, not for a customer.',
  released: (by: PersonName, at: EpochMs, figures: Figures) => `Released by ${by}, ${figures.dated(at)}.`,
  notReleased: 'Not released.',
  held: (why: string) => `On hold${why === '' ? '' : `: ${why}`}.`,
  recordEnd: (seq: number, hash: string) => `Record up to event ${seq}, SHA-256 ${hash}`,
  printed: (crew: string, at: EpochMs, figures: Figures) => `${crew}, printed ${figures.iso(at)}`,
  page: (number: number, of: number) => `${number} / ${of}`,
};
