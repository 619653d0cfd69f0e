// On whose rule the figures of a session and of an oven rest, country by country; the formula round it is worded in the
// catalogues. Where a country's own figure is not kept, the card says so and whose stands in.

import type { LegalFrame } from '../calc/legal-frame.ts';

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

/** What is of the United States is called so where another law holds. */
export const namedAbroad = (source: string, frame: LegalFrame): string =>
  frame !== 'us' && /^(?:\d+ CFR|Maine|a California|MIL-)/.test(source) ? `USA: ${source}` : source;

type Laws = Readonly<Record<LegalFrame, string>>;

/** Named there, with a figure that the project does not keep. */
function standsIn(us: string, named: { readonly eu: string; readonly uk: string; readonly mexico: string }): Laws {
  const from = (law: string) => `${law}, whose figure is not kept; in its place USA, ${us}`;
  return { us, eu: from(named.eu), uk: from(named.uk), mexico: from(named.mexico), elsewhere: `USA: ${us}` };
}

const dayLimits: Laws = {
  us: '29 CFR 1910.1000',
  eu: 'the lists under Directive 98/24/EC; what is from memory says so',
  uk: 'EH40/2005, from memory',
  mexico: 'NOM-010-STPS-2014, from memory',
  elsewhere: 'the lowest that is kept of any country or of NIOSH',
};
const booth = { eu: 'EN 16985', uk: 'EN 16985', mexico: 'NOM-010-STPS-2014' };
const oven = { eu: 'EN 1539', uk: 'EN 1539', mexico: 'NOM-002-STPS-2010' };
const fire = { eu: 'Directive 1999/92/EC', uk: 'DSEAR 2002', mexico: 'NOM-002-STPS-2010' };

/** Nothing where the figure is a sum of physics. */
export const figureLaws: Readonly<Record<FigureSourceId, Laws | undefined>> = {
  lel: standsIn('29 CFR 1910.94(c)(6)(ii)', booth),
  exposure: dayLimits,
  fan: undefined,
  face: standsIn('29 CFR 1910.107(b)(5)(i); small booths: 1910.94(c)(6)(i), Table G-10', booth),
  oven: standsIn('NFPA 86, from memory', oven),
  'oven-purge': standsIn(
    'NFPA 86, four volumes, from memory; 3 min: 29 CFR 1910.107(j)(4)(iii)(b), written for booths that dry',
    oven,
  ),
  purge: standsIn('29 CFR 1910.146(b)', {
    eu: 'Directive 89/391/EEC',
    uk: 'Confined Spaces Regulations 1997',
    mexico: 'NOM-033-STPS-2015',
  }),
  settled: undefined,
  flush: standsIn('29 CFR 1910.107(g)(5)', fire),
};

/** Of the rules of spraying, as an objection names them. */
export const sprayLaws: Laws = {
  us: '29 CFR 1910.94 and 1910.107',
  eu: 'Directives 98/24/EC and 1999/92/EC, EN 16985',
  uk: 'COSHH 2002, DSEAR 2002, EN 16985',
  mexico: 'NOM-010-STPS-2014, NOM-002-STPS-2010',
  elsewhere: 'USA: 29 CFR 1910.94 and 1910.107',
};
