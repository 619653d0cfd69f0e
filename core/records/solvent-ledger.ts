// The solvent and VOC ledger: what was used of each coating, thinner and cleaning solvent, and the VOC in it. What has
// no figure counts in whole, the cautious way, and says so. Fields: 40 CFR 63.3930(d) to (g).

import type { Batch } from '../batch/batch.ts';
import { countsAsVoc } from '../calc/exempt-solvents.ts';
import { solvents } from '../calc/solvents.ts';
import { pouredTogether, type VocLiquid, vocContent } from '../calc/voc.ts';
import type { Component } from '../components.ts';
import { isFor } from '../event-readers.ts';
import { isFailed } from '../failed.ts';
import type { Entry, FactOf } from '../history.ts';
import { inNaturalOrder } from '../natural-order.ts';
import { componentDensity, type Sheet } from '../products/sheet.ts';
import {
  type EpochMs,
  type Grams,
  type GramsPerLitre,
  grams,
  gramsPerLitre,
  type KilogramsPerLitre,
  kilogramsPerLitre,
  type Litres,
  litres,
  type Percent,
} from '../units.ts';
import { solventNamed } from './solvent-names.ts';

export type LedgerKind = 'coating' | 'thinner' | 'cleaner';
/** Where the VOC figure comes from; `none`: the whole mass counts. */
export type LedgerFigure = 'sheet' | 'table' | 'none';

/** One use at one time. */
export interface LedgerEntry {
  readonly at: EpochMs;
  readonly kind: LedgerKind;
  readonly name: string;
  readonly grams: Grams;
  /** `undefined` where no density is known. */
  readonly litres: Litres | undefined;
  readonly vocGrams: Grams;
  readonly exemptLitres: Litres;
  readonly waterLitres: Litres;
  readonly volumeSolidsPercent: Percent | undefined;
  readonly figure: LedgerFigure;
}

export interface LedgerRow {
  readonly kind: LedgerKind;
  readonly name: string;
  readonly grams: Grams;
  readonly litres: Litres | undefined;
  readonly density: KilogramsPerLitre | undefined;
  readonly volumeSolidsPercent: Percent | undefined;
  readonly vocGrams: Grams;
  /** Of the litre as used, and of the litre less water and exempt solvents; `undefined` where there is no figure. */
  readonly actual: GramsPerLitre | undefined;
  readonly lessExempt: GramsPerLitre | undefined;
  readonly figure: LedgerFigure;
  readonly uses: number;
}

/** Everything weighed counts, thrown away or not: no credit is taken for waste. */
export function coatingEntries(batch: Batch): readonly LedgerEntry[] {
  return (['part-a', 'part-b'] as const).flatMap((component) => {
    const poured = batch.inVessel[component];
    return poured === undefined ? [] : [coatingEntry(batch.sheet, component, poured.grams, poured.at)];
  });
}

function coatingEntry(sheet: Sheet, component: Component, mass: Grams, at: EpochMs): LedgerEntry {
  const density = componentDensity(sheet, component);
  const volume = density === undefined ? undefined : litres(mass / (density * 1000));
  const figure = component === 'part-a' ? sheet.voc?.partA : sheet.voc?.partB;
  const base = { at, kind: 'coating' as const, name: sheet.name, grams: mass, litres: volume };
  const volumeSolidsPercent = sheet.film?.volumeSolidsPercent;
  if (volume === undefined || figure === undefined) {
    return {
      ...base,
      vocGrams: mass,
      exemptLitres: litres(0),
      waterLitres: litres(0),
      volumeSolidsPercent,
      figure: 'none',
    };
  }
  return {
    ...base,
    // Never more than the mass itself, whatever the sheet says.
    vocGrams: grams(Math.min(mass, volume * figure.actualGramsPerLitre)),
    exemptLitres: litres((volume * figure.exemptVolumePercent) / 100),
    waterLitres: litres((volume * figure.waterVolumePercent) / 100),
    volumeSolidsPercent,
    figure: 'sheet',
  };
}

/** Of a solvent whose density nobody gave: heavier than all common ones that hold no chlorine (table in calc). */
const cautiousKilogramsPerLitre = 1;

export function solventEntry({ material, use, amount }: FactOf<'SolventUsed'>, at: EpochMs): LedgerEntry {
  const id = solventNamed(material);
  const known = id === undefined ? undefined : solvents[id];
  const density: number | undefined = known !== undefined && 'density' in known ? known.density : undefined;
  const mass =
    amount.kind === 'mass' ? amount.grams : grams(amount.litres * 1000 * (density ?? cautiousKilogramsPerLitre));
  const volume =
    amount.kind === 'volume'
      ? amount.litres
      : density === undefined
        ? undefined
        : litres(amount.grams / (density * 1000));
  const counts = countsAsVoc(id ?? material, 'record');
  return {
    at,
    kind: use === 'thinning' ? 'thinner' : 'cleaner',
    name: id ?? material,
    grams: mass,
    litres: volume,
    vocGrams: counts ? mass : grams(0),
    exemptLitres: counts ? litres(0) : (volume ?? litres(0)),
    waterLitres: litres(0),
    volumeSolidsPercent: undefined,
    figure: density === undefined && amount.kind === 'volume' ? 'none' : 'table',
  };
}

/** What an entry tells of solvent. */
export function solventEntries({ fact, happenedAt }: Entry): readonly LedgerEntry[] {
  if (!isFor('ledger', fact)) return [];
  switch (fact.type) {
    case 'SolventUsed':
      return [solventEntry(fact, happenedAt)];
    case 'GearFlushed':
      return flushEntry(fact, happenedAt);
  }
}

/** What gear was flushed with, where somebody said how much. */
function flushEntry({ solvent, litres: volume, gear }: FactOf<'GearFlushed'>, at: EpochMs): readonly LedgerEntry[] {
  if (solvent === undefined || volume === undefined) return [];
  const use = gear === 'gun' ? 'gun-cleaning' : 'vessel-cleaning';
  return [
    solventEntry({ type: 'SolventUsed', material: solvent, use, amount: { kind: 'volume', litres: volume } }, at),
  ];
}

/** One row a name and kind, coatings first, each with what it sums to. */
export function ledgerRows(entries: readonly LedgerEntry[]): readonly LedgerRow[] {
  const groups = new Map<string, LedgerEntry[]>();
  for (const entry of entries) {
    const key = `${entry.kind} ${entry.name}`;
    groups.set(key, [...(groups.get(key) ?? []), entry]);
  }
  const order: readonly LedgerKind[] = ['coating', 'thinner', 'cleaner'];
  return [...groups.values()]
    .flatMap((group) => rowOf(group))
    .sort((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind) || inNaturalOrder(a.name, b.name));
}

function rowOf(group: readonly LedgerEntry[]): readonly LedgerRow[] {
  const [first] = group;
  if (first === undefined) return [];
  const mass = grams(group.reduce((sum, entry) => sum + entry.grams, 0));
  const volumes = group.map((entry) => entry.litres);
  const whole = volumes.every((volume) => volume !== undefined)
    ? litres(volumes.reduce<number>((sum, volume) => sum + (volume ?? 0), 0))
    : undefined;
  const figure = group.some((entry) => entry.figure === 'none') ? 'none' : first.figure;
  const content = figure === 'none' ? undefined : contentOf(group);
  return [
    {
      kind: first.kind,
      name: first.name,
      grams: mass,
      litres: whole,
      density: whole === undefined || whole === 0 ? undefined : kilogramsPerLitre(mass / whole / 1000),
      volumeSolidsPercent: first.volumeSolidsPercent,
      vocGrams: grams(group.reduce((sum, entry) => sum + entry.vocGrams, 0)),
      actual: content?.actual,
      lessExempt: content?.lessWaterAndExempt,
      figure,
      uses: group.length,
    },
  ];
}

function contentOf(group: readonly LedgerEntry[]) {
  const liquids = group.flatMap(({ litres: volume, vocGrams, exemptLitres, waterLitres }): readonly VocLiquid[] =>
    volume === undefined ? [] : [{ volume, voc: vocGrams, exempt: exemptLitres, water: waterLitres }],
  );
  const poured = pouredTogether(liquids);
  if (isFailed(poured)) return undefined;
  const content = vocContent(poured);
  // Nothing but exempt solvent has no content less exempt; its actual content is none.
  return isFailed(content) ? { actual: gramsPerLitre(0), lessWaterAndExempt: undefined } : content;
}

export interface LedgerTotals {
  readonly vocGrams: Grams;
  /** Coatings, thinners and cleaners together, exempt ones too. */
  readonly usedGrams: Grams;
  /** Rows whose VOC is their whole mass for want of a figure. */
  readonly withoutFigure: number;
}

export function ledgerTotals(entries: readonly LedgerEntry[]): LedgerTotals {
  return {
    vocGrams: grams(entries.reduce((sum, entry) => sum + entry.vocGrams, 0)),
    usedGrams: grams(entries.reduce((sum, entry) => sum + entry.grams, 0)),
    withoutFigure: ledgerRows(entries).filter(({ figure }) => figure === 'none').length,
  };
}
