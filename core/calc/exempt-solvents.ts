// Compounds that 40 CFR 51.100(s) leaves out of VOC, as far as a solvent-borne coating shop meets them. Federal list;
// states and districts may exempt fewer, so a shop hands in its own list where it differs.

/** Read in the 2015 annual edition. `limits-only`: not VOC against a limit, still VOC in records and reports, (s)(5). */
export type Exemption = 'limits-and-records' | 'limits-only';

export const exemptSolvents: Readonly<Record<string, Exemption>> = {
  acetone: 'limits-and-records',
  'methyl-acetate': 'limits-and-records',
  'methyl-formate': 'limits-and-records',
  'dimethyl-carbonate': 'limits-and-records',
  'propylene-carbonate': 'limits-and-records',
  parachlorobenzotrifluoride: 'limits-and-records',
  'methylated-siloxanes': 'limits-and-records',
  'methylene-chloride': 'limits-and-records',
  perchloroethylene: 'limits-and-records',
  '1,1,1-trichloroethane': 'limits-and-records',
  '2-amino-2-methyl-1-propanol': 'limits-and-records',
  // From memory, the record-keeping part was later removed; until a shop's own list says so it counts, the cautious way.
  't-butyl-acetate': 'limits-only',
};

export type VocPurpose = 'limit' | 'record';

/** Whether the solvent counts as VOC. What is not on the list counts. */
export function countsAsVoc(
  solvent: string,
  purpose: VocPurpose,
  exempt: Readonly<Record<string, Exemption>> = exemptSolvents,
): boolean {
  const exemption = Object.hasOwn(exempt, solvent) ? exempt[solvent] : undefined;
  if (exemption === undefined) return true;
  return purpose === 'record' && exemption === 'limits-only';
}
