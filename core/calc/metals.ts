// What a part is made of, as far as its heating goes.

export type Metal = 'steel' | 'stainless' | 'aluminium' | 'cast-iron' | 'copper' | 'brass' | 'zinc';

export interface HeatProperties {
  readonly kilogramsPerCubicMetre: number;
  readonly wattsPerMetreKelvin: number;
  readonly joulesPerKilogramKelvin: number;
}

/**
 * EN ISO 10456 (before it DIN EN 12524), table of design values, from memory; aluminium stands for its alloys. Stainless is the
 * austenitic kind, which takes the most heat: 500 J/(kg K) stands in EN 10088-1 as well; DIN EN 12524 had 460 for every kind.
 */
export const heatProperties: Readonly<Record<Metal, HeatProperties>> = {
  steel: { kilogramsPerCubicMetre: 7800, wattsPerMetreKelvin: 50, joulesPerKilogramKelvin: 450 },
  stainless: { kilogramsPerCubicMetre: 7900, wattsPerMetreKelvin: 17, joulesPerKilogramKelvin: 500 },
  aluminium: { kilogramsPerCubicMetre: 2800, wattsPerMetreKelvin: 160, joulesPerKilogramKelvin: 880 },
  'cast-iron': { kilogramsPerCubicMetre: 7500, wattsPerMetreKelvin: 50, joulesPerKilogramKelvin: 450 },
  copper: { kilogramsPerCubicMetre: 8900, wattsPerMetreKelvin: 380, joulesPerKilogramKelvin: 380 },
  brass: { kilogramsPerCubicMetre: 8400, wattsPerMetreKelvin: 120, joulesPerKilogramKelvin: 380 },
  zinc: { kilogramsPerCubicMetre: 7200, wattsPerMetreKelvin: 110, joulesPerKilogramKelvin: 380 },
};
