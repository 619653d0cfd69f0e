// The lines of the brief and of other work with solvents, as data: what each rests on, and when it is told. The words
// stand in the catalogues. Paragraphs are of 29 CFR part 1910 as read; what nobody could read says so.

import type { Work } from './session-commands.ts';

export const commonPractice = 'common practice, no source';

export const briefLineIds = [
  'vessel',
  'extraction',
  'supplied-air',
  'downstream',
  'moved-out',
  'skin-and-eyes',
  'bonding',
  'earthing',
  'ignition',
  'phones',
  'sprinklers',
  'hot-work',
  'extinguisher',
  'eyewash',
  'second-person',
  'data-sheets',
  'days-supply',
  'fan-after',
  'vapour-dip',
  'vapour-mix',
  'ignition-path',
  'covered',
  'gloves',
  'bonding-pour',
  'air-pressure',
  'rags',
  'wipe-solvent',
] as const;
export type BriefLineId = (typeof briefLineIds)[number];

export interface BriefLine {
  readonly id: BriefLineId;
  readonly source: string;
  readonly works: readonly Work[];
}

const spray: readonly Work[] = ['spray'];
const open: readonly Work[] = ['flow', 'dip', 'wipe'];
const all: readonly Work[] = ['spray', 'mix', 'flow', 'dip', 'wipe'];

const line = (id: BriefLineId, works: readonly Work[], source: string): BriefLine => ({ id, works, source });

export const briefLines: readonly BriefLine[] = [
  line('vessel', spray, "29 CFR 1910.146; the employer's confined-space permit"),
  line('extraction', spray, '29 CFR 1910.94(c)(6) and 1910.107(b)(5)'),
  line('supplied-air', spray, commonPractice),
  line('downstream', spray, '29 CFR 1910.94(c)(6)(iii)'),
  line('moved-out', spray, commonPractice),
  line('skin-and-eyes', spray, commonPractice),
  line('bonding', spray, '29 CFR 1910.107(e)(9)'),
  line('earthing', spray, '29 CFR 1910.107(c)(9)'),
  line('ignition', spray, '29 CFR 1910.107(c)(2)'),
  line('phones', spray, commonPractice),
  line('sprinklers', spray, '29 CFR 1910.107(m)(1)'),
  line('hot-work', spray, commonPractice),
  line('extinguisher', spray, commonPractice),
  line('eyewash', spray, commonPractice),
  line('second-person', spray, commonPractice),
  line('data-sheets', all, commonPractice),
  line('days-supply', spray, '29 CFR 1910.107(e)(2)'),
  line('fan-after', spray, '29 CFR 1910.107(d)(2)'),
  line('vapour-dip', open, '29 CFR 1910.124'),
  line('vapour-mix', ['mix'], '29 CFR 1910.106(e)(3)(v)(a) and (a)(31)'),
  line('ignition-path', ['mix', ...open], '29 CFR 1910.106(e)(2)(iv)(c)'),
  line('covered', ['mix'], '29 CFR 1910.106(e)(2)(iv)(a)'),
  line('gloves', ['mix', ...open], commonPractice),
  line('bonding-pour', ['mix', 'flow', 'dip', 'wipe'], '29 CFR 1910.106(e)(6)(ii)'),
  line('air-pressure', ['mix'], '29 CFR 1910.106(e)(2)(iv)(d)'),
  line('rags', ['wipe'], '29 CFR 1910.107(g)(3)'),
  line('wipe-solvent', ['wipe'], '29 CFR 1910.107(g)(5)'),
];

export function linesFor(work: Work): readonly BriefLine[] {
  return briefLines.filter(({ works }) => works.includes(work));
}

/** What the figures of a session rest on: a formula and its source, worded in the catalogues. */
export const figureSourceIds = ['lel', 'exposure', 'fan', 'face', 'oven', 'purge', 'settled', 'flush'] as const;
export type FigureSourceId = (typeof figureSourceIds)[number];
