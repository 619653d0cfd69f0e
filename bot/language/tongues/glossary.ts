// The words of the trade that cards use and that may be asked about: where a sheet gives each, which standard defines or measures it,
// and which figures of a card are of it. What each means, every tongue says in its own words.

import type { FactId } from '../../cards/fact-ids.ts';

export interface TermRow {
  /** As the sheet's file names it. */
  readonly field?: string;
  /** That has the term or how it is measured; the words are ours. */
  readonly standard?: string;
  readonly facts?: readonly FactId[];
}

const terms = 'ISO 4618';

export const glossaryRows = {
  'part-a': { field: 'ratio', facts: ['part-a', 'part-a-total', 'part-a-stock'] },
  'part-b': { field: 'ratio', facts: ['part-b', 'part-b-exact', 'part-b-total', 'part-b-stock'] },
  ratio: { field: 'ratio', facts: ['ratio-error', 'ratio-tolerance', 'add-part-a', 'add-part-b'] },
  batch: { facts: ['batches', 'mixed-total'] },
  'pot-life': { field: 'potLife.time', standard: terms, facts: ['pot-life-ends'] },
  margin: { field: 'potLife.marginMinutes', facts: ['pot-margin-at'] },
  stirring: { field: 'blend', facts: ['stir-wanted', 'stir-given', 'stir-done-at'] },
  induction: { field: 'blend' },
  vortex: { field: 'steps.vortex' },
  filter: { field: 'filter' },
  vessel: { field: 'steps.vessel' },
  'pre-stir': { field: 'preStir', facts: ['can-stir-wanted', 'can-stir-done-at'] },
  blanket: { field: 'blanket', facts: ['blanket-by'] },
  headspace: { field: 'blanket.cans', facts: ['headspace', 'gas-needed'] },
  purge: { field: 'blanket.oxygenTargetPercent', facts: ['oxygen-left'] },
  can: { facts: ['cans', 'can-left'] },
  lot: {},
  caught: { facts: ['caught', 'caught-total'] },
  'left-over': { field: 'leftOver', facts: ['left-over', 'left-over-total'] },
  air: { field: 'air', facts: ['air-temperature', 'air-read-at', 'air-lowest', 'air-highest'] },
  humidity: { field: 'air', facts: ['humidity', 'humidity-lowest', 'humidity-highest'] },
  'dew-point': { standard: 'ISO 8502-4', facts: ['dew-point'] },
  spread: { field: 'air.leastSpreadCelsius', standard: 'ISO 8502-4', facts: ['spread'] },
  surface: { field: 'surface', standard: terms, facts: ['surface-temperature', 'surface-ends-at'] },
  'wet-bulb': {},
  grade: { field: 'surface.grade', standard: 'ISO 8501-1' },
  profile: { field: 'surface.profile', standard: 'ISO 8503', facts: ['profile'] },
  salts: { field: 'surface.salts', standard: 'ISO 8502-6, ISO 8502-9' },
  dust: { field: 'surface.dust', standard: 'ISO 8502-3' },
  wall: { facts: ['part-wall'] },
  area: { facts: ['part-area', 'area', 'coated-area'] },
  bears: { field: 'steps.partBears', facts: ['part-bears'] },
  'flow-coat': { field: 'methods' },
  dip: { field: 'methods' },
  film: { field: 'film', standard: terms, facts: ['film-mean', 'film-lowest', 'film-highest', 'film-wanted'] },
  'wet-film': { standard: 'ISO 2808', facts: ['wet-film-wanted'] },
  'volume-solids': { field: 'film.volumeSolidsPercent', standard: 'ISO 3233', facts: ['mixed-volume', 'mixed-mass'] },
  'transfer-efficiency': { standard: '40 CFR 60.313', facts: ['transfer-efficiency', 'applied-total'] },
  'open-time': { field: 'openTime', facts: ['open-until'] },
  'flash-off': { field: 'flashOff', standard: terms, facts: ['flash-least-at', 'flash-most-at'] },
  'touch-dry': {},
  'recoat-window': { field: 'recoat', facts: ['recoat-opens-at', 'recoat-closes-at'] },
  cure: { field: 'cure', standard: terms, facts: ['cure-given', 'cure-done-at', 'part-temperature', 'temp-due-at'] },
  stage: { field: 'cure.room.stages', facts: ['stage-handle-at', 'stage-service-at', 'stage-full-at'] },
  adhesion: { standard: 'ISO 2409, ASTM D3359' },
  rub: { standard: 'ASTM D5402' },
  coupon: {},
  release: {},
  hold: {},
  deviation: { facts: ['deviations', 'permissions', 'corrections'] },
  traveller: {},
  lead: {},
  brief: { field: 'spray' },
  session: {},
  spell: { field: 'spray.longestSpellMinutes', facts: ['spell-ends-at'] },
  extraction: { facts: ['fan-gives', 'fan-until', 'fan-over-lel', 'fan-over-exposure', 'fan-over-oven'] },
  'face-velocity': { facts: ['face-velocity', 'face-least'] },
  lel: { standard: '29 CFR 1910.94', facts: ['lel-share', 'air-for-lel', 'oven-air'] },
  'day-limit': { facts: ['air-for-exposure'] },
  'mixing-factor': { facts: ['mixing-factor'] },
  solvent: {
    field: 'spray.solvents',
    standard: terms,
    facts: ['solvent-per-hour', 'sprayed-per-hour', 'solvent-logged', 'solvent-in-load', 'materials-total'],
  },
  voc: { field: 'voc', standard: 'ISO 4618, 40 CFR 59.406(a)', facts: ['voc'] },
  flush: { field: 'flush' },
  earthed: { field: 'steps.bonding' },
  'data-sheet': { field: 'steps.papers' },
  sheet: {},
  ring: { facts: ['rings', 'rings-late', 'rings-unanswered', 'answer-median', 'late-minutes', 'due-at'] },
  door: { facts: ['door-openings', 'door-open', 'uncovered'] },
  event: { facts: ['events', 'happened-at', 'found', 'night-lowest', 'parts', 'planned-total'] },
} as const satisfies Readonly<Record<string, TermRow>>;

export type TermId = keyof typeof glossaryRows;

export interface TermSaid {
  /** In our own words. */
  readonly means: string;
  /** What the bot does with it. */
  readonly bot: string;
}

export type Glossary = Readonly<Record<TermId, TermSaid>>;
