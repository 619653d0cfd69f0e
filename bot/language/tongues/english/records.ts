// Answers about the past, in English: stretches of days, traces, the solvent ledger, proof, paper.

import type { ExportColumn } from '../../../../core/records/export-rows.ts';
import type { ThrownWhy } from '../../../../core/records/material.ts';
import type { LedgerField, RetentionId } from '../../../../core/records/retention.ts';
import type { BarKind } from '../../../../core/records/timeline.ts';
import type { EpochMs } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';
import { englishMaterialName } from './solvents.ts';

const thrownWhy: Readonly<Record<ThrownWhy, string>> = {
  'left-over': 'left over',
  'past-pot-life': 'past pot life',
  thick: 'thick',
  gelled: 'gelled',
  hot: 'hot',
};

export const englishRecords = {
  span: (first: string, last: string) => (first === last ? `The whole day: ${first}` : `${first} to ${last}`),
  idle: 'Nothing was recorded in this time.',
  noSuchSpan: 'There are no such days.',
  yield: (batch: number, planned: string, mixed: string) => `Batch ${batch}: planned ${planned}, mixed ${mixed}`,
  applied: (batch: number, applied: string, area: string) => `Batch ${batch}: applied ${applied}${area}`,
  onArea: (area: string) => ` on ${area}`,
  areaMissing: (count: number) => ` (${count} without a known area)`,
  notSaidLeft: (batch: number) => `Batch ${batch}: nobody has said what was left over.`,
  thrown: (batch: number, mass: string, why: ThrownWhy) => `Batch ${batch}: ${mass} thrown away, ${thrownWhy[why]}`,
  caught: (batch: number, mass: string) => `Batch ${batch}: ${mass} caught and used again`,
  ratio: (batch: number, error: string) => `Batch ${batch}: ratio ${error}`,
  stir: (batch: number, wanted: string, given: string) => `Batch ${batch}: stirring wanted ${wanted}, given ${given}`,
  coated: (part: string, batch: number, method: string, time: string, by: string) =>
    `${time} ${part}: ${method}, batch ${batch}, by ${by}`,
  released: (parts: string) => `Released: ${parts}`,
  held: (part: string, what: string) => `${part}: ${what}`,
  deviation: (time: string, by: string, what: string) => `! ${time} ${by}: ${what}`,
  permission: (time: string, by: string, what: string, why: string) =>
    `! ${time} ${by}, allowed beforehand (${why}): ${what}`,
  correction: (time: string, by: string, was: string, is: string, why: string) =>
    `Corrected ${time} by ${by}: was ${was}, is ${is}${why === '' ? '' : ` (${why})`}`,
  slowest: (key: string, minutes: string) => `Slowest answer: ${key}, ${minutes}`,
  can: (can: number, letter: string, lot: string, poured: string, left: string) =>
    `Can ${can}: Part ${letter} lot ${lot}, ${poured} poured, ${left} left`,
  air: (time: string, what: string) => `${time} ${what}`,
  lastHash: (seq: number, hash: string) => `Record up to event ${seq}: ${hash}`,
  more: (count: number) => `… and ${count} more; export has them all.`,
  noPicture: 'No picture could be drawn.',
  picture: (path: string) => `picture: ${path}`,

  tracePart: (part: string) => `Trace: ${part}`,
  traceBatch: (batch: number) => `Trace: batch ${batch}`,
  traceLot: (lot: string) => `Trace: lot ${lot}`,
  bookedAs: (what: string) => `Booked in as ${what}`,
  details: { serial: 'serial', job: 'job', customer: 'customer', metal: '', wall: 'wall' },
  phase: (phase: string) => `Stands: ${phase}`,
  coat: (number: number, time: string, by: string, method: string, batch: number, sheet: string) =>
    `Coat ${number}: ${time} ${method} by ${by}, batch ${batch}, ${sheet}`,
  lot: (letter: string, lot: string, can: number, mass: string) => `  Part ${letter}: lot ${lot}, can ${can}, ${mass}`,
  noLots: '  Lots not known: nobody told of a can.',
  airThen: (what: string) => `  Air: ${what}`,
  airNotRead: '  Air: not read in time.',
  airFigures: { air: 'air', humidity: 'humidity', dewPoint: 'dew point', surface: 'surface' },
  step: (time: string, by: string, what: string) => `${time} ${by}: ${what}`,
  late: (late: string) => ` (written ${late} later)`,
  steps: 'Steps',
  judgedBy: (count: number, editions: string) =>
    `Judged by ${count === 1 ? 'edition' : 'editions'} ${editions} of the rules.`,
  onParts: (parts: string) => `Went on: ${parts}`,
  onNoPart: 'Went on no part so far.',
  inBatch: (batch: number, mass: string, parts: string) => `Batch ${batch}: ${mass}, on ${parts}`,
  noParts: 'no part',
  canLeft: (can: number, letter: string, sheet: string, left: string) =>
    `Can ${can}: Part ${letter} ${sheet}, ${left} left`,
  partStands: (part: string, phase: string) => `${part}: ${phase}`,
  notKnown: 'not loaded',
  nothingKnown: (what: string) => `Nothing is recorded of ${what}.`,
  lotLabel: (lot: string) => `lot ${lot}`,
  batchLabel: (batch: number) => `batch ${batch}`,

  found: (what: string) => `Found: ${what}`,
  foundNone: (what: string) => `Nothing is booked in under ${what}.`,
  foundPart: (part: string, details: string, phase: string) =>
    `${part}${details === '' ? '' : ` (${details})`}: ${phase}`,
  foundCan: (can: number, letter: string, lot: string) => `Can ${can}: Part ${letter} lot ${lot}`,

  ledger: (first: string, last: string) =>
    first === last ? `Solvent and VOC: ${first}` : `Solvent and VOC: ${first} to ${last}`,
  ledgerKinds: { coating: 'Coating', thinner: 'Thinner', cleaner: 'Cleaner' },
  ledgerRow: (kind: string, name: string, amount: string, voc: string) =>
    `${kind} ${englishMaterialName(name)}: ${amount}, VOC ${voc}`,
  ledgerContent: (actual: string, lessExempt: string) =>
    `  VOC content ${actual} actual, ${lessExempt} less water and exempt`,
  ledgerDensity: (density: string) => `  density ${density}`,
  ledgerSolids: (share: string) => `  volume solids ${share}`,
  noExempt: 'none (exempt only)',
  ledgerNoFigure: '  No VOC figure: its whole mass counts, the cautious way.',
  ledgerNoVolume: 'volume not known',
  ledgerDay: (date: string, voc: string) => `${date}: VOC ${voc}`,
  ledgerMonth: (month: string, voc: string) => `${month}: VOC ${voc}`,
  ledgerRule:
    'Everything weighed counts, thrown away or not; exempt solvents by 40 CFR 51.100(s). A state may exempt fewer.',
  limit: (per: string, limit: string, used: string, share: string) =>
    `Limit ${limit} a ${per}: ${used} so far, ${share}`,
  limitPer: { day: 'day', month: 'month', year: 'rolling year' },
  limitNear: 'Near the limit: four fifths are used.',
  limitOver: 'Over the limit that the shop set.',
  noLimits: 'No limit is set: set voc-limit 300kg/month.',
  solventNoted: (material: string, amount: string) => `${englishMaterialName(material)}: ${amount} noted`,

  export: {
    /** A column without one goes by its own name. */
    heads: {} as Readonly<Partial<Record<ExportColumn, string>>>,
    states: {} as Readonly<Record<string, string>>,
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
  verifiedLines: (events: number, time: string) =>
    `${events} events, the last of ${time}; each makes its own hash and follows from the one before.`,
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
  hashFound: (hash: string, seq: number, time: string) => `${hash} stands at event ${seq}, written ${time}.`,
  hashNotFound: (hash: string) =>
    `${hash} stands nowhere in this record: its tail was cut, it was made anew, or the hash is another crew's.`,
  proofLimits: 'This shows changes since a hash was given out. It cannot show what was never written down.',

  backedUp: (file: string) => `Copied: ${file}`,
  backupStays: 'It lies on the machine that keeps the record, in its folder “copies”.',
  backupHow: 'To restore, start with the copy: --data and where it lies. Then verify.',
  backupFailed: (why: string) => `No copy was made: ${why}`,
  backupWho: (who: string) => `Ask for it: ${who}.`,
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

  pictures: {
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
    dewLine: 'dew point',
    surfaceLine: 'surface',
    partLine: 'part',
    roomLine: 'room',
    limit: 'limit',
    wet: 'wet',
    dry: 'dry',
    marks: { coat: 'coat', thick: 'thick', released: 'released', held: 'on hold' },
    bars: {
      stirring: 'stirring',
      induction: 'induction',
      'pot-life': 'pot life',
      'flash-off': 'flash-off',
      cure: 'cure',
      'can-open': 'lid off',
      spray: 'spraying',
    } satisfies Readonly<Record<BarKind, string>>,
    batch: (name: string) => `Batch ${name}`,
    can: (name: string) => `Can ${name}`,
    session: (name: string) => `Session ${name}`,
    empty: 'Nothing to draw.',
  },

  paper: {
    /** Begins the file's name. */
    file: 'traveller',
    title: 'Traveller',
    part: 'Part',
    product: 'Product',
    steps: 'Steps',
    when: 'Time',
    who: 'Who',
    what: 'What',
    coats: 'Coats',
    readings: 'Film readings',
    acceptance: 'Acceptance',
    rule: {
      own: 'the sheet’s own rule',
      'iso-19840': 'ISO 19840',
      'pa-2': 'SSPC-PA 2',
      range: 'the sheet’s film range, no acceptance rule named',
    },
    noRule: 'No acceptance rule is named for this product: readings are given, no verdict.',
    judged: (rule: string, least: string, most: string, source: string) =>
      `By ${rule}: ${least} to ${most}. Source: ${source}.`,
    noReadings: 'No dry film was read.',
    readingLine: (state: 'wet' | 'dry', list: string) => `${state === 'wet' ? 'Wet' : 'Dry'} film: ${list}`,
    statistics: (mean: string, low: string, high: string, count: number) =>
      `${count} dry readings: mean ${mean}, lowest ${low}, highest ${high}.`,
    deviations: 'Deviations and permissions',
    noDeviations: 'None by the record.',
    struck: 'Corrected entries stand with what they replaced, who corrected them, and why.',
    corrected: (by: string, time: string, why: string) => `corrected ${time} by ${by}${why === '' ? '' : `: ${why}`}`,
    invented: 'An invented product: practice only, not for a customer.',
    released: (by: string, time: string) => `Released by ${by}, ${time}.`,
    notReleased: 'Not released.',
    held: (why: string) => `On hold${why === '' ? '' : `: ${why}`}.`,
    recordEnd: (seq: number, hash: string) => `Record up to event ${seq}, SHA-256 ${hash}`,
    printed: (crew: string, at: EpochMs, figures: Figures) => `${crew}, printed ${figures.iso(at)}`,
    page: (number: number, of: number) => `${number} / ${of}`,
  },
};
