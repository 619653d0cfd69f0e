// The lines of the brief and of other work with solvents, as data: what each rests on, and when it is told. The words
// stand in the catalogues. Paragraphs are of 29 CFR part 1910 as read; what nobody could read says so.

import { keysOf } from '../own-key.ts';
import type { Work } from './session-commands.ts';

export const commonPractice = 'common practice, no source';

const spray: readonly Work[] = ['spray'];
const open: readonly Work[] = ['flow', 'dip', 'wipe'];
const all: readonly Work[] = ['spray', 'mix', 'flow', 'dip', 'wipe'];

const rows = {
  vessel: { works: spray, source: "29 CFR 1910.146; the employer's confined-space permit" },
  extraction: { works: spray, source: '29 CFR 1910.94(c)(6) and 1910.107(b)(5)' },
  'supplied-air': { works: spray, source: commonPractice },
  downstream: { works: spray, source: '29 CFR 1910.94(c)(6)(iii)' },
  'moved-out': { works: spray, source: commonPractice },
  'skin-and-eyes': { works: spray, source: commonPractice },
  bonding: { works: spray, source: '29 CFR 1910.107(e)(9)' },
  earthing: { works: spray, source: '29 CFR 1910.107(c)(9)' },
  ignition: { works: spray, source: '29 CFR 1910.107(c)(2)' },
  phones: { works: spray, source: commonPractice },
  sprinklers: { works: spray, source: '29 CFR 1910.107(m)(1)' },
  'hot-work': { works: spray, source: commonPractice },
  extinguisher: { works: spray, source: commonPractice },
  eyewash: { works: spray, source: commonPractice },
  'second-person': { works: spray, source: commonPractice },
  'data-sheets': { works: all, source: commonPractice },
  'days-supply': { works: spray, source: '29 CFR 1910.107(e)(2)' },
  'fan-after': { works: spray, source: '29 CFR 1910.107(d)(2)' },
  'vapour-dip': { works: open, source: '29 CFR 1910.124' },
  'vapour-mix': { works: ['mix'], source: '29 CFR 1910.106(e)(3)(v)(a) and (a)(31)' },
  'ignition-path': { works: ['mix', ...open], source: '29 CFR 1910.106(e)(2)(iv)(c)' },
  covered: { works: ['mix'], source: '29 CFR 1910.106(e)(2)(iv)(a)' },
  gloves: { works: ['mix', ...open], source: commonPractice },
  'bonding-pour': { works: ['mix', 'flow', 'dip', 'wipe'], source: '29 CFR 1910.106(e)(6)(ii)' },
  'air-pressure': { works: ['mix'], source: '29 CFR 1910.106(e)(2)(iv)(d)' },
  rags: { works: ['wipe'], source: '29 CFR 1910.107(g)(3)' },
  'wipe-solvent': { works: ['wipe'], source: '29 CFR 1910.107(g)(5)' },
} satisfies Readonly<Record<string, { works: readonly Work[]; source: string }>>;

export type BriefLineId = keyof typeof rows;

export interface BriefLine {
  readonly id: BriefLineId;
  readonly source: string;
  readonly works: readonly Work[];
}

export const briefLines: readonly BriefLine[] = keysOf(rows).map((id) => ({
  id,
  ...rows[id],
}));

export function linesFor(work: Work): readonly BriefLine[] {
  return briefLines.filter(({ works }) => works.includes(work));
}

/** What the figures of a session rest on: a formula and its source, worded in the catalogues. */
export const figureSourceIds = [
  'lel',
  'exposure',
  'fan',
  'face',
  'oven',
  'oven-purge',
  'purge',
  'settled',
  'flush',
] as const;
export type FigureSourceId = (typeof figureSourceIds)[number];
