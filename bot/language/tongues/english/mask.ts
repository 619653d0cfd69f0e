// Respirators, in English.

import type { PlaceName } from '../../../../core/ids.ts';
import type { Mask, MaskJudged, NoCartridge, UseOfMask } from '../../../../core/session/mask.ts';
import type { Figures } from '../../figures.ts';
import { englishSolvents } from './solvents.ts';

const facepieces: Readonly<Record<Mask['facepiece'], string>> = {
  'quarter-mask': 'quarter mask',
  'half-mask': 'half mask',
  'full-facepiece': 'full face mask',
  'helmet-or-hood': 'hood',
  'loose-fitting': 'loose-fitting hood',
};

const types: Readonly<Record<Mask['type'], string>> = {
  'air-purifying': 'with cartridges',
  'powered-air-purifying': 'with cartridges and a blower',
  'supplied-air-demand': 'with supplied air on demand',
  'supplied-air-continuous-flow': 'with supplied air',
  'supplied-air-pressure-demand': 'with supplied air under pressure',
  'self-contained-demand': 'with a bottle on the back, on demand',
  'self-contained-pressure-demand': 'with a bottle on the back',
};

const never: Readonly<Record<NoCartridge, string>> = {
  sensitiser: 'NOT here: the sheet names a respiratory sensitiser. Supplied air or no spraying',
  'sensitiser-open':
    'NOT here: the sheet leaves open whether it holds a respiratory sensitiser. Supplied air or no spraying',
  'oxygen-low':
    'NOT here: the oxygen was last read too low. Nobody goes in without supplied air and the employer’s permit',
  explosive: 'NOT here: a tenth of the explosive limit was last read. Everybody out',
};

export const englishMask = {
  title: (sheet: string) => `Respirator for spraying ${sheet}`,
  judged: ({ mask, factor, never: why, enough }: MaskJudged, figures: Figures) => {
    const named = `${facepieces[mask.facepiece]} ${types[mask.type]}`;
    const name = named.charAt(0).toUpperCase() + named.slice(1);
    if (why !== undefined) return `${name}: ${never[why]}.`;
    if (factor === undefined) return `${name}: the table gives no factor.`;
    const short = enough === false ? ', NOT enough here' : '';
    return `${name}: factor ${figures.decimal(factor)}${short}.`;
  },
  use: ({ solvent, most }: UseOfMask, figures: Figures) =>
    most === undefined
      ? `${englishSolvents[solvent]}: no figure was read up to which it may be worn.`
      : `${englishSolvents[solvent]}: up to ${figures.ppm(most.ppm)}${most.cappedBy === 'factor' ? '' : most.cappedBy === 'idlh' ? ', where it is dangerous at once' : ', a tenth of its explosive limit'}.`,
  concentration: (times: number | undefined, place: PlaceName | undefined, figures: Figures) =>
    times === undefined
      ? 'What is breathed there is not known: brief, measure the fan, or ask whoever samples the air.'
      : `Estimated in ${place ?? ''}, not measured: the vapours together ${figures.ratio(times)} times their day limits. Mist is in no sum.`,
  niosh: (factor: number, figures: Figures) =>
    `NIOSH’s own card counts ${figures.decimal(factor)} for supplied air in continuous flow: the lower is the cautious one.`,
  changeOut:
    'Change-out of cartridges: the maker’s figures for these solvents, or an end-of-service indicator (29 CFR 1910.134(d)(3)(iii)(B)); as an upper bound say change-out toluene 40ppm 60%.',
  mist: 'A cartridge for vapour stops no mist: a prefilter stands before it (common practice, no source).',
  restsOn: 'Without supplied air it rests on the supervisor’s standing assessment as well.',
  factor: 'Assigned protection factor; a hood counts 1,000 only on its maker’s test evidence, else 25',
  source: '29 CFR 1910.134(d)(3)(i)(A), Table 1',
};
