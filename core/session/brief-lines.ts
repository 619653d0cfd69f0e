// The lines of the brief and of other work with solvents, as data: on what each rests in each country, and when it is told. The
// words stand in the catalogues. Paragraphs of 29 CFR part 1910 are cited as read; those of other countries are named from
// memory, and where one says nothing of a figure the card says whose stands in.

import type { LegalFrame } from '../calc/legal-frame.ts';
import { keysOf } from '../own-key.ts';
import type { Work } from './session-commands.ts';

export const commonPractice = 'common practice, no source';

const spray: readonly Work[] = ['spray'];
const open: readonly Work[] = ['flow', 'dip', 'wipe'];
const all: readonly Work[] = ['spray', 'mix', 'flow', 'dip', 'wipe'];

/** Explosive air: the directive's own annexes, and what Great Britain and Mexico have in its place. */
const fire: Abroad = {
  eu: 'Directive 1999/92/EC, from memory',
  uk: 'DSEAR 2002, from memory',
  mexico: 'NOM-002-STPS-2010, from memory',
};
/** What is breathed and touched. */
const health: Abroad = {
  eu: 'Directive 98/24/EC, from memory',
  uk: 'COSHH 2002, from memory',
  mexico: 'NOM-010-STPS-2014, from memory',
};
const booths: Abroad = {
  eu: 'EN 16985, from memory',
  uk: 'EN 16985; COSHH 2002, from memory',
  mexico: 'NOM-010-STPS-2014, from memory',
};

type Abroad = Readonly<Record<'eu' | 'uk' | 'mexico', string>>;

/** `figure`: the law abroad asks for the thing, and the figure on the line is the United States' own. */
function told(us: string, abroad: Abroad, figure?: string): Readonly<Record<LegalFrame, string>> {
  const stood = (law: string) => (figure === undefined ? law : `${law}; ${figure}: USA, ${us}`);
  return { us, eu: stood(abroad.eu), uk: stood(abroad.uk), mexico: stood(abroad.mexico), elsewhere: `USA: ${us}` };
}
const practice: Readonly<Record<LegalFrame, string>> = {
  us: commonPractice,
  eu: commonPractice,
  uk: commonPractice,
  mexico: commonPractice,
  elsewhere: commonPractice,
};

const rows = {
  vessel: {
    works: spray,
    source: told("29 CFR 1910.146; the employer's confined-space permit", {
      eu: "the employer's confined-space permit; Directive 89/391/EEC, from memory",
      uk: "the employer's confined-space permit; Confined Spaces Regulations 1997, from memory",
      mexico: "the employer's confined-space permit; NOM-033-STPS-2015, from memory",
    }),
  },
  extraction: {
    works: spray,
    source: told(
      '29 CFR 1910.107(b)(5)(i); small booths: 1910.94(c)(6)(i), Table G-10',
      booths,
      '0.51 m/s and 0.64 m/s',
    ),
  },
  'supplied-air': { works: spray, source: practice },
  downstream: { works: spray, source: told('29 CFR 1910.94(c)(6)(iii)', health) },
  'moved-out': { works: spray, source: practice },
  'skin-and-eyes': { works: spray, source: practice },
  bonding: { works: spray, source: told('29 CFR 1910.107(e)(9)', fire) },
  earthing: { works: spray, source: told(`29 CFR 1910.107(c)(9); the part itself: ${commonPractice}`, fire) },
  ignition: { works: spray, source: told('29 CFR 1910.107(c)(2)', fire, '6 m') },
  phones: { works: spray, source: practice },
  sprinklers: { works: spray, source: told('29 CFR 1910.107(m)(1)', fire, 'this rule') },
  'hot-work': { works: spray, source: practice },
  extinguisher: { works: spray, source: practice },
  eyewash: { works: spray, source: practice },
  'second-person': { works: spray, source: practice },
  'data-sheets': { works: all, source: practice },
  'days-supply': { works: spray, source: told('29 CFR 1910.107(e)(2)', fire, 'a day or shift') },
  'fan-after': { works: spray, source: told('29 CFR 1910.107(d)(2)', booths) },
  'vapour-dip': { works: ['flow', 'dip'], source: told('29 CFR 1910.124', fire, 'a quarter') },
  // What 1910.124 asks of dip tanks and flow coating it asks of no brush.
  'vapour-wipe': { works: ['wipe'], source: told('29 CFR 1910.106(a)(31)', fire, 'a quarter') },
  'vapour-mix': {
    works: ['mix'],
    source: told('29 CFR 1910.106(e)(3)(v)(a) and (a)(31)', fire, '18 m³/h'),
  },
  'ignition-path': { works: ['mix', ...open], source: told('29 CFR 1910.106(e)(2)(iv)(c)', fire) },
  covered: { works: ['mix'], source: told('29 CFR 1910.106(e)(2)(iv)(a)', fire) },
  gloves: { works: ['mix', ...open], source: practice },
  'bonding-pour': { works: ['mix', 'flow', 'dip', 'wipe'], source: told('29 CFR 1910.106(e)(6)(ii)', fire) },
  'air-pressure': { works: ['mix'], source: told('29 CFR 1910.106(e)(2)(iv)(d)', fire) },
  rags: { works: ['wipe'], source: told('29 CFR 1910.106(e)(9)(iii)', fire) },
  'wipe-solvent': { works: ['wipe'], source: told('29 CFR 1910.107(g)(5), written for spraying', fire, '38 °C') },
} satisfies Readonly<Record<string, { works: readonly Work[]; source: Readonly<Record<LegalFrame, string>> }>>;

export type BriefLineId = keyof typeof rows;

export interface BriefLine {
  readonly id: BriefLineId;
  readonly source: Readonly<Record<LegalFrame, string>>;
  readonly works: readonly Work[];
}

export const briefLines: readonly BriefLine[] = keysOf(rows).map((id) => ({
  id,
  ...rows[id],
}));

export function linesFor(work: Work): readonly BriefLine[] {
  return briefLines.filter(({ works }) => works.includes(work));
}
