// Whose law is quoted, and what counts of a solvent: the limit, where it is from, and what is advised beyond it; in English.

import type { SolventId } from '../../../../core/calc/solvents.ts';
import type { CrewLaw } from '../../../../core/crew/crew-law.ts';
import type { PartsPerMillion } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';
import { englishSolvents } from './solvents.ts';

export const englishLaw = {
  /** Where other rules hold than those that are quoted, or may hold. */
  elsewhere: ({ frame, assumed }: CrewLaw, locale: string): string | undefined => {
    if (frame === 'elsewhere' || (assumed && locale !== 'en-US')) {
      return 'The rules quoted are of the United States: ask which hold here.';
    }
    return undefined;
  },
  sayWhose: 'Nothing tells under whose law this crew works: a supervisor says set law eu, uk, mexico, us or elsewhere.',
  counted: (solvent: SolventId, ppm: PartsPerMillion, source: string, figures: Figures) =>
    `${englishSolvents[solvent]}: ${figures.ppm(ppm)} over the day counts (${source})`,
  advised: (advice: PartsPerMillion, times: number, solvent: SolventId, figures: Figures) =>
    `NIOSH advises ${figures.ppm(advice)}, which takes ${figures.decimal(times)} times the air: say set limit ${solvent} ${figures.ppm(advice)} and it counts.`,
  standIn: (solvent: SolventId, ppm: PartsPerMillion, source: string, figures: Figures) =>
    `${englishSolvents[solvent]}: no limit of this country's own is kept. The lowest known stands in, ${figures.ppm(ppm)} over the day (${source}). Ask whoever sees to health here, and set it: set limit ${solvent}, and the ppm`,
  setHere: (solvent: SolventId, ppm: PartsPerMillion, figures: Figures) =>
    `${englishSolvents[solvent]}: ${figures.ppm(ppm)} over the day counts, as set here`,
  diisocyanates:
    'Diisocyanates: whoever sprays or stays near has the training that REACH asks for (annex XVII, entry 74, every five years; from memory). Its date is noted as training.',
  indicative:
    'The directives’ limits are indicative: the country’s own may be lower. Ask whoever sees to health here, and say set limit where it is.',
  oldTable: (ids: readonly SolventId[], figures: Figures) =>
    `Lower explosive limit from the old table alone (29 CFR 1910.94, Table G-11), which newer ones often undercut: ${figures.list(ids.map((id) => englishSolvents[id]))}. Ask the maker.`,
};
