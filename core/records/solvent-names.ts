// Solvents by the names that shops use for them.

import { type SolventId, solvents } from '../calc/solvents.ts';
import { isOwnKey, ownValue } from '../own-key.ts';

const shopNames: Readonly<Record<string, SolventId>> = {
  ipa: 'isopropyl-alcohol',
  isopropanol: 'isopropyl-alcohol',
  'isopropyl-alcohol-99': 'isopropyl-alcohol',
  '2-propanol': 'isopropyl-alcohol',
  alcohol: 'ethanol',
  'alcohol-isopropilico': 'isopropyl-alcohol',
  'alcohol-isopropílico': 'isopropyl-alcohol',
  mek: 'methyl-ethyl-ketone',
  butanone: 'methyl-ethyl-ketone',
  mibk: 'methyl-isobutyl-ketone',
  xylol: 'xylene',
  xylenes: 'xylene',
  toluol: 'toluene',
  pgmea: 'methoxypropyl-acetate',
  pma: 'methoxypropyl-acetate',
  'white-spirit': 'mineral-spirits',
  'n-butyl-acetate': 'butyl-acetate',
  'n-butanol': 'butanol',
};

/** `undefined` for a name that the table of solvents does not have. */
export function solventNamed(name: string): SolventId | undefined {
  const typed = name.toLowerCase().trim().replace(/\s+/g, '-');
  if (isOwnKey(solvents, typed)) return typed;
  return ownValue(shopNames, typed);
}
