// Solvents by the names that the tables of their figures print, in English.

import type { SolventId } from '../../../../core/calc/solvents.ts';
import { ownValue } from '../../../../core/own-key.ts';

export const englishSolvents: Readonly<Record<SolventId, string>> = {
  acetone: 'acetone',
  'isopropyl-alcohol': 'isopropyl alcohol',
  ethanol: 'ethanol',
  toluene: 'toluene',
  xylene: 'xylene',
  'butyl-acetate': 'n-butyl acetate',
  'methyl-ethyl-ketone': 'methyl ethyl ketone',
  'methyl-isobutyl-ketone': 'methyl isobutyl ketone',
  'ethyl-acetate': 'ethyl acetate',
  butanol: 'n-butanol',
  cyclohexanone: 'cyclohexanone',
  butoxyethanol: '2-butoxyethanol',
  'methoxypropyl-acetate': 'methoxypropyl acetate (PGMEA)',
  propanol: '1-propanol',
  methanol: 'methanol',
  'methyl-acetate': 'methyl acetate',
  'methyl-propyl-ketone': 'methyl n-propyl ketone',
  'varnish-naphtha': 'naphtha, VM&P',
  'mineral-spirits': 'naphtha, 100 flash (Stoddard solvent)',
  'propyl-acetate': 'n-propyl acetate',
  'isopropyl-acetate': 'isopropyl acetate',
  'isoamyl-acetate': 'isoamyl acetate',
  turpentine: 'turpentine',
};

const byMaterial: Readonly<Record<string, string>> = englishSolvents;

/** A solvent by its id, else the shop's own name for what was used. */
export const englishMaterialName = (material: string): string => ownValue(byMaterial, material) ?? material;
