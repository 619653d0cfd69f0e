// Answers about the past, in English: stretches of days, traces, the solvent ledger, proof, paper.

import type { LegalFrame } from '../../../../core/calc/legal-frame.ts';
import type { Can } from '../../../../core/can/can.ts';
import type { Component } from '../../../../core/components.ts';
import type { Correction, FactOf } from '../../../../core/history.ts';
import type { PartName, PersonName } from '../../../../core/ids.ts';
import type { Method } from '../../../../core/methods.ts';
import type { Coat } from '../../../../core/part/part.ts';
import type { ExportColumn } from '../../../../core/records/export-rows.ts';
import type { ThrownWhy } from '../../../../core/records/material.ts';
import type { LedgerField, RetentionId } from '../../../../core/records/retention.ts';
import type { LedgerKind, LedgerRow } from '../../../../core/records/solvent-ledger.ts';
import type { AirThen } from '../../../../core/records/trace.ts';
import type { SettingOf } from '../../../../core/settings.ts';
import type { EpochMs, Grams, GramsPerLitre, Minutes, Percent, SquareMetres } from '../../../../core/units.ts';
import type { Applied } from '../../../../core/who-applied.ts';
import type { Figures } from '../../figures.ts';
import { englishPaper, englishPictures } from './paper.ts';
import { englishRingName } from './rings.ts';
import { englishMaterialName } from './solvents.ts';
import { englishComponents } from './weighing.ts';

const thrownWhy: Readonly<Record<ThrownWhy, string>> = {
  'left-over': 'left over',
  'past-pot-life': 'past pot life',
  thick: 'thick',
  gelled: 'gelled',
  hot: 'hot',
  smoking: 'smoking',
  bulging: 'swollen',
};

/** What was coated of a batch: how much, and how many parts whose area nobody knows. */
export interface AreaCoated {
  readonly area: SquareMetres;
  readonly without: number;
}

type CanTold = Pick<Can, 'number' | 'component' | 'lot'>;
type CoatTold = Pick<FactOf<'CoatApplied'>, 'part' | 'batch' | 'method'>;
type CoatDone = Pick<Coat, 'at' | 'method' | 'batch'>;

/** `spray by kari, typed by omar`; `spray, sprayer not given, typed by omar`. */
const appliedBy = (method: Method, { person, typedBy }: Applied): string => {
  if (person === undefined) return `${method}, sprayer not given, typed by ${typedBy}`;
  return `${method} by ${person}${person === typedBy ? '' : `, typed by ${typedBy}`}`;
};
type Corrected = Pick<Correction, 'at' | 'by' | 'why'>;
type LedgerUse = Pick<LedgerRow, 'kind' | 'name' | 'litres' | 'grams' | 'vocGrams'>;

const ledgerKinds: Readonly<Record<LedgerKind, string>> = {
  coating: 'Coating',
  thinner: 'Thinner',
  cleaner: 'Cleaner',
};
const limitPer = { day: 'day', month: 'month', year: 'rolling year' };

export const englishRecords = {
  span: (first: string, last: string, figures: Figures) =>
    first === last ? `The whole day: ${figures.date(first)}` : `${figures.date(first)} to ${figures.date(last)}`,
  idle: 'Nothing was recorded in this time.',
  noSuchSpan: 'There are no such days.',
  yield: (batch: number, planned: Grams, mixed: Grams, figures: Figures) =>
    `Batch ${batch}: planned ${figures.mass(planned)}, mixed ${figures.mass(mixed)}`,
  applied: (batch: number, applied: Grams, { area, without }: AreaCoated, figures: Figures) => {
    const on = area > 0 ? ` on ${figures.area(area)}` : '';
    return `Batch ${batch}: applied ${figures.mass(applied)}${on}${without > 0 ? ` (${without} without a known area)` : ''}`;
  },
  notSaidLeft: (batch: number) => `Batch ${batch}: nobody has said what was left over.`,
  thrown: (batch: number, mass: Grams, why: ThrownWhy, figures: Figures) =>
    `Batch ${batch}: ${figures.mass(mass)} thrown away, ${thrownWhy[why]}`,
  caught: (batch: number, mass: Grams, figures: Figures) =>
    `Batch ${batch}: ${figures.mass(mass)} caught and used again`,
  ratio: (batch: number, errorPercent: number, figures: Figures) =>
    `Batch ${batch}: ratio ${figures.signedPercent(errorPercent)}`,
  stir: (batch: number, wanted: Minutes, given: Minutes, figures: Figures) =>
    `Batch ${batch}: stirring wanted ${figures.minutesUp(wanted)}, given ${figures.minutesDown(given)}`,
  coated: ({ part, batch, method }: CoatTold, at: EpochMs, applied: Applied, figures: Figures) =>
    `${figures.timeDown(at)} ${part}: batch ${batch}, ${appliedBy(method, applied)}`,
  released: (parts: readonly PartName[], figures: Figures) => `Released: ${figures.list(parts)}`,
  held: (part: string, what: string) => `${part}: ${what}`,
  deviation: (at: EpochMs, by: PersonName, what: string, figures: Figures) =>
    `! ${figures.timeDown(at)} ${by}: ${what}`,
  permission: (at: EpochMs, by: PersonName, what: string, why: string, figures: Figures) =>
    `! ${figures.timeDown(at)} ${by}, allowed beforehand (${why}): ${what}`,
  correction: ({ at, by, why }: Corrected, was: string, is: string, figures: Figures) =>
    `Corrected ${figures.timeDown(at)} by ${by}: was ${was}, is ${is}${why === '' ? '' : ` (${why})`}`,
  slowest: (key: string, minutes: Minutes, figures: Figures) =>
    `Slowest answer: ${englishRingName(key, figures)}, ${figures.minutesUp(minutes)}`,
  can: ({ number, component, lot }: CanTold, poured: Grams, left: Grams, figures: Figures) =>
    `Can ${number}: ${englishComponents[component]} lot ${lot}, ${figures.mass(poured)} poured, ${figures.mass(left)} left`,
  air: (at: EpochMs, what: string, figures: Figures) => `${figures.timeDown(at)} ${what}`,
  lastHash: (seq: number, hash: string) => `Record up to event ${seq}: ${hash}`,
  /** Its beginning, which is enough to ask by; whole on paper. */
  lastHashShort: (seq: number, hash: string) => `Record up to event ${seq}: verify ${hash.slice(0, 16)}`,
  more: (count: number) => `… and ${count} more; export has them all.`,
  noPicture: 'No picture could be drawn.',
  picture: (path: string) => `picture: ${path}`,

  tracePart: (part: string) => `Trace: ${part}`,
  traceBatch: (batch: number) => `Trace: batch ${batch}`,
  traceLot: (lot: string) => `Trace: lot ${lot}`,
  bookedAs: (details: readonly string[], figures: Figures) => `Booked in as ${figures.list(details)}`,
  details: { serial: 'serial', job: 'job', customer: 'customer', metal: '', wall: 'wall' },
  phase: (phase: string) => `Stands: ${phase}`,
  coat: (number: number, { at, method, batch }: CoatDone, applied: Applied, sheet: string, figures: Figures) =>
    `Coat ${number}: ${figures.timeDown(at)} ${appliedBy(method, applied)}, batch ${batch}, ${sheet}`,
  lot: ({ number, component, lot }: CanTold, mass: Grams, figures: Figures) =>
    `  ${englishComponents[component]}: lot ${lot}, can ${number}, ${figures.mass(mass)}`,
  stirredInCan: (given: Minutes, wanted: Minutes, figures: Figures) =>
    `stirred in the can ${(given < wanted ? figures.minutesDown : figures.minutesUp)(given)} of ${figures.minutesUp(wanted)}`,
  gasOverIt: (at: EpochMs, open: Minutes, figures: Figures) =>
    `gas over it at ${figures.timeDown(at)}, ${figures.minutesUp(open)} after the lid came off`,
  gasNotTold: 'gas over it not told',
  traceCan: ({ number, component, lot }: CanTold) => `Can ${number}: ${englishComponents[component]}, lot ${lot}`,
  canLabel: (can: number) => `can ${can}`,
  pouredInto: (batch: number, mass: Grams, figures: Figures) => `${figures.mass(mass)} poured into batch ${batch}`,
  lotNotGiven: (component: Component) => `  Lot of ${englishComponents[component]} not given.`,
  noLots: '  Lots not known: nobody told of a can.',
  airThen: ({ celsius, relativeHumidityPercent, dewPointCelsius, surfaceCelsius }: AirThen, figures: Figures) => {
    const known = [
      ...(celsius === undefined ? [] : [`air ${figures.temperature(celsius)}`]),
      ...(relativeHumidityPercent === undefined ? [] : [`humidity ${figures.percent(relativeHumidityPercent)}`]),
      ...(dewPointCelsius === undefined ? [] : [`dew point ${figures.temperature(dewPointCelsius)}`]),
      ...(surfaceCelsius === undefined ? [] : [`surface ${figures.temperature(surfaceCelsius)}`]),
    ];
    return known.length === 0 ? '  Air: not read in time.' : `  Air: ${figures.list(known)}`;
  },
  /** `late`: so long after it happened it was written. */
  step: (at: EpochMs, by: PersonName, what: string, late: Minutes | undefined, figures: Figures) =>
    `${figures.timeDown(at)} ${by}: ${what}${late === undefined ? '' : ` (written ${figures.minutesUp(late)} later)`}`,
  steps: 'Steps',
  judgedBy: (editions: readonly number[], figures: Figures) =>
    `Judged by ${editions.length === 1 ? 'edition' : 'editions'} ${figures.list(editions.map(String))} of the rules.`,
  onParts: (parts: readonly PartName[], figures: Figures) =>
    parts.length === 0 ? 'Went on no part so far.' : `Went on: ${figures.list(parts)}`,
  inBatch: (batch: number, mass: Grams, parts: readonly PartName[], figures: Figures) =>
    `Batch ${batch}: ${figures.mass(mass)}, on ${parts.length === 0 ? 'no part' : figures.list(parts)}`,
  canLeft: ({ number, component }: CanTold, sheet: string, left: Grams, figures: Figures) =>
    `Can ${number}: ${englishComponents[component]} ${sheet}, ${figures.mass(left)} left`,
  partStands: (part: PartName, stands: readonly string[], figures: Figures) => `${part}: ${figures.list(stands)}`,
  notKnown: 'not loaded',
  nothingKnown: (what: string) => `Nothing is recorded of ${what}.`,
  lotLabel: (lot: string) => `lot ${lot}`,
  batchLabel: (batch: number) => `batch ${batch}`,

  found: (what: string) => `Looked for: ${what}`,
  foundNone: (what: string) => `Nothing is booked in under ${what}.`,
  foundPart: (part: PartName, details: readonly string[], phase: string, figures: Figures) =>
    `${part}${details.length === 0 ? '' : ` (${figures.list(details)})`}: ${phase}`,
  foundCan: ({ number, component, lot }: CanTold) => `Can ${number}: ${englishComponents[component]} lot ${lot}`,

  ledger: (first: string, last: string, figures: Figures) =>
    `Solvent and VOC: ${figures.date(first)}${first === last ? '' : ` to ${figures.date(last)}`}`,
  ledgerRow: ({ kind, name, litres, grams, vocGrams }: LedgerUse, figures: Figures) => {
    const volume = litres === undefined ? 'volume not known' : figures.volume(litres);
    const amount = `${volume}, ${figures.mass(grams)}`;
    return `${ledgerKinds[kind]} ${englishMaterialName(name)}: ${amount}, VOC ${figures.mass(vocGrams)}`;
  },
  ledgerContent: (actual: GramsPerLitre, lessExempt: GramsPerLitre | undefined, figures: Figures) =>
    `  VOC content ${figures.contentUp(actual)} actual, ${lessExempt === undefined ? 'none (exempt only)' : figures.contentUp(lessExempt)} less water and exempt`,
  ledgerDensity: (density: GramsPerLitre, figures: Figures) => `  density ${figures.contentUp(density)}`,
  ledgerSolids: (percent: Percent, figures: Figures) => `  volume solids ${figures.percent(percent)}`,
  ledgerNoFigure: '  No VOC figure: its whole mass counts, the cautious way.',
  ledgerPart: (label: string, voc: Grams, figures: Figures) => `${figures.date(label)}: VOC ${figures.mass(voc)}`,
  ledgerRule: (frame: LegalFrame): string =>
    frame === 'us'
      ? 'Everything weighed counts, thrown away or not; exempt solvents by 40 CFR 51.100(s). A state may exempt fewer.'
      : 'Everything weighed counts, thrown away or not. Left out are the solvents that the USA exempts (40 CFR 51.100(s)), acetone among them: ask whether they count here.',
  limit: ({ grams, per }: SettingOf<'voc-limit'>, used: Grams, percent: number, figures: Figures) =>
    `Limit ${figures.mass(grams)} a ${limitPer[per]}: ${figures.mass(used)} so far, ${figures.percent(percent)}`,
  limitPer,
  limitNear: 'Near the limit: four fifths are used.',
  limitOver: 'Over the limit that the shop set.',
  noLimits: (figures: Figures) => `No limit is set: set voc-limit ${figures.units === 'us' ? '660lb' : '300kg'}/month.`,
  solventNoted: (material: string, amount: FactOf<'SolventUsed'>['amount'], figures: Figures) =>
    `${englishMaterialName(material)}: ${amount.kind === 'mass' ? figures.mass(amount.grams) : figures.volume(amount.litres)} noted`,

  export: {
    heads: {
      event: 'event',
      happened_at: 'happened_at',
      recorded_at: 'recorded_at',
      by: 'by',
      type: 'type',
      state: 'state',
      batch: 'batch',
      part: 'part',
      can: 'can',
      place: 'place',
      part_a_g: 'part_a_g',
      part_b_g: 'part_b_g',
      mass_g: 'mass_g',
      volume_l: 'volume_l',
      temperature_degC: 'temperature_degC',
      humidity_percent: 'humidity_percent',
      film_state: 'film_state',
      film_um: 'film_um',
      film_mean_um: 'film_mean_um',
      film_set: 'film_set',
      film_spot: 'film_spot',
      film_beside: 'film_beside',
      film_left_out_um: 'film_left_out_um',
      film_base_um: 'film_base_um',
      ...{ test: 'test', test_result: 'test_result' },
      method: 'method',
      applied_by: 'applied_by',
      cure_way: 'cure_way',
      serial: 'serial',
      job: 'job',
      customer: 'customer',
      material: 'material',
      lot: 'lot',
      reason: 'reason',
      despite: 'despite',
      permitted: 'permitted',
      corrected_by: 'corrected_by',
      corrected_at: 'corrected_at',
      corrected_why: 'corrected_why',
      hash: 'hash',
      instrument: 'instrument',
      instrument_checked: 'instrument_checked',
      instrument_check: 'instrument_check',
      instrument_due: 'instrument_due',
    } satisfies Readonly<Record<ExportColumn, string>>,
    states: { stands: 'stands', late: 'late', corrected: 'corrected', undone: 'undone' } as Readonly<
      Record<string, string>
    >,
    /** Of the crew whose file names none. */
    file: (crew: string) => crew,
  },
  exported: (rows: number) => `Exported: ${rows} events`,
  written: (where: string) => `Written: ${where}`,
  exportHow:
    'One row an event, times with their zone, units in the headers. Text that a spreadsheet would take for a formula has an apostrophe in front.',
  traveller: (what: string) => `Traveller: ${what}`,
  travellerNone: (what: string) => `No part is booked in under job ${what}.`,
  pages: (count: number) => (count === 1 ? 'One page.' : `${count} pages.`),

  verified: 'The record holds together',
  broken: 'The record does not hold together',
  verifiedLines: (events: number, at: EpochMs, figures: Figures) =>
    `${events} events, the last of ${figures.timeDown(at)}; each makes its own hash and follows from the one before.`,
  verifiedEmpty: 'Nothing is recorded yet.',
  givenFound: (count: number) => `${count} hashes given out on digests and travellers stand where they stood.`,
  edited: (seq: number, type: string, stream: string) =>
    `Event ${seq} (${type}, ${stream}) was changed: it no longer makes its own hash.`,
  missing: (from: number, to: number) => (from === to ? `Event ${from} is gone.` : `Events ${from} to ${to} are gone.`),
  replaced: (seq: number, type: string, stream: string) =>
    `Event ${seq} (${type}, ${stream}) does not follow from the one before it: another stood in one of their places.`,
  tailCut: (endsAt: number, known: number) =>
    `The record ends at event ${endsAt}, but ${known} were written: its tail was cut.`,
  givenDiffers: (seq: number) => `The hash given out for event ${seq} is not the one that stands there now.`,
  hashFound: (hash: string, seq: number, at: EpochMs, figures: Figures) =>
    `${hash} stands at event ${seq}, written ${figures.timeDown(at)}.`,
  hashNotFound: (hash: string) =>
    `${hash} stands nowhere in this record: its tail was cut, it was made anew, or the hash is another crew's.`,
  proofLimits: 'This shows changes since a hash was given out. It cannot show what was never written down.',

  backedUp: (file: string) => `Copied: ${file}`,
  backupStays: 'It lies on the machine that keeps the record, in its folder “copies”.',
  backupHow: 'To restore, start with the copy: --data and where it lies. Then verify.',
  backupFailed: (why: string) => `No copy was made: ${why}`,
  backupWho: (who: readonly PersonName[], figures: Figures) => `Ask for it: ${figures.list(who)}.`,
  backupRole: 'A copy of the whole record is for a lead or a supervisor to take.',
  backupName: 'Say a plain file name, letters, digits, dot and dash: backup friday.sqlite.',

  keep: 'How long records are kept at least',
  keepYears: (what: string, years: number, source: string) => `${what}: ${years} years (${source})`,
  keepUntil: (what: string, until: string, source: string) => `${what}: ${until} (${source})`,
  ledgerHolds: (field: string, source: string) => `The solvent ledger holds ${field} (${source})`,
  ledgerFields: {
    name: 'the name of each material',
    volume: 'its volume',
    'volume-solids': 'its volume solids',
    density: 'its density',
    'voc-less-exempt': 'its VOC content less water and exempt',
    'voc-actual': 'its actual VOC content',
  } satisfies Readonly<Record<LedgerField, string>>,
  keepRule: 'Nothing is ever deleted here. Read in the 2015 edition: check today’s text, and your own permit.',
  kept: {
    'solvent-use': 'Use of coatings, thinners and cleaners, first 2 years on site',
    'voc-district-log': 'Monthly VOC log of one district',
    'voc-state-records': 'VOC records of one state',
    'painter-training': 'Painter training is valid',
    'fit-test': 'Respirator fit test',
    exposure: 'Exposure records of people',
    medical: 'Medical records of people, after they leave',
    'substance-identity': 'Which substance was used, where and when',
    'coating-record': 'The coating record of a part',
  } satisfies Readonly<Record<RetentionId, string>>,
  keptUntil: {
    'fit-test': 'until the next one',
    'coating-record': 'the contract’s term and its warranty; no figure was found',
  } as Readonly<Partial<Record<RetentionId, string>>>,

  pictures: englishPictures,
  paper: englishPaper,
};
