// Whether the figures of an act are such as are met with here: by what is usual, by the sheet and by what stands in the pot. By it a unit
// that was left out is told from another that would do as well; what does not fit is no fault, and is asked about.

import type { Command, CommandOf, Verb } from './commands.ts';
import { isFailed } from './failed.ts';
import { farFigures } from './far-figures.ts';
import type { BatchNumber, PartName, PersonName } from './ids.ts';
import { farBelow } from './part/load-decide.ts';
import type { Sheet } from './products/sheet.ts';
import { batchOf, liveBatches, onlyOne, type Shop, sheetFor } from './shop.ts';
import type { Celsius, Grams } from './units.ts';
import type { Amount } from './verbs/said.ts';

/** Our own figures, no source: how far beyond the sheet somebody still reads or sets a temperature. */
const beyondAir = 10;
const beyondOven = 20;
/** Without a sheet: from the frost to a hot shop. */
const anyAir = { lowestCelsius: 0, highestCelsius: 45 };
/** Nobody mixes less than covers a part or more than a drum, nor flushes with more than a bucket. */
const mixed = { least: 100, most: 50_000 };
const flushed = { least: 0.02, most: 20 };

/** `by`: who says it. */
export function figuresFit(shop: Shop, command: Command, by: PersonName): boolean {
  return farFigures(shop, command, by).length === 0 && fitsHere(shop, command.verb, command);
}

type Fits = { readonly [V in Verb]?: (command: CommandOf<V>, shop: Shop) => boolean };

function fitsHere<V extends Verb>(shop: Shop, verb: V, command: CommandOf<V>): boolean {
  return fits[verb]?.(command, shop) ?? true;
}

const fits: Fits = {
  air: ({ air }, shop) => isOfAir(air.celsius, shop),
  surface: ({ celsius }, shop) => isOfAir(celsius, shop),
  mix: ({ amount, air }, shop) => isOfAir(air?.celsius, shop) && isMixed(amount, shop),
  cure: ({ parts, way }, shop) =>
    way.kind !== 'oven' || way.setCelsius === undefined || isOfOven(way.setCelsius, sheetOf(shop, parts?.[0])),
  temp: ({ part, celsius }, shop) =>
    celsius <= (sheetOf(shop, part)?.cure.oven?.highestCelsius ?? 300) + beyondOven &&
    celsius >= lastInOven(shop, part) - farBelow,
  weigh: ({ batch, partAGrams, partBGrams }, shop) => isOfPot([partAGrams, partBGrams], batch, shop, 0.2),
  add: ({ batch, grams }, shop) => isOfPot([grams], batch, shop, 0),
  empty: ({ batch, leftGrams }, shop) => isOfPot([leftGrams], batch, shop, 0),
  catch: ({ batch, grams }, shop) => isOfPot([grams], batch, shop, 0),
  flush: ({ litres }) => litres === undefined || isWithin(litres, flushed),
};

const isWithin = (value: number, { least, most }: { readonly least: number; readonly most: number }): boolean =>
  value >= least && value <= most;

function isOfAir(celsius: Celsius | undefined, shop: Shop): boolean {
  const { lowestCelsius, highestCelsius } = sheetOf(shop)?.air ?? anyAir;
  const range = { least: lowestCelsius - beyondAir, most: highestCelsius + beyondAir };
  return celsius === undefined || isWithin(celsius, range);
}

/** Of the part's last coat, else the usual one. */
function sheetOf(shop: Shop, part?: PartName): Sheet | undefined {
  const known = part === undefined ? undefined : shop.parts.get(part);
  const usual = sheetFor(shop);
  return (known && batchOf(shop, known)?.sheet) ?? (isFailed(usual) ? undefined : usual);
}

/** degC: what stays in the oven does not lose so much. */
function lastInOven(shop: Shop, name: PartName | undefined): number {
  const part = name === undefined ? undefined : shop.parts.get(name);
  const isIn = part?.cure?.way === 'oven' && part.cure.run.to === undefined;
  return isIn ? (part.temperatures.at(-1)?.celsius ?? Number.NEGATIVE_INFINITY) : Number.NEGATIVE_INFINITY;
}

function isOfOven(set: Celsius, sheet: Sheet | undefined): boolean {
  const oven = sheet?.cure.oven;
  return (
    oven !== undefined && isWithin(set, { least: oven.atCelsius - beyondOven, most: oven.highestCelsius + beyondOven })
  );
}

/** What a sheet mixes by weight nobody asks for in litres, unless they say so. */
function isMixed(amount: Amount | undefined, shop: Shop): boolean {
  if (amount === undefined) return true;
  const sheet = sheetOf(shop);
  if (amount.kind === 'volume') return sheet?.ratio.basis === 'volume';
  return isWithin(amount.grams, { ...mixed, most: sheet?.mostMixGrams?.value ?? mixed.most });
}

/** No more than was planned for the pot, and half as much again; of a weighing no less than `least` of it either. */
function isOfPot(
  grams: readonly (Grams | undefined)[],
  number: BatchNumber | undefined,
  shop: Shop,
  least: number,
): boolean {
  const batch = number === undefined ? onlyOne(liveBatches(shop), () => true) : shop.batches.get(number);
  const said = grams.reduce<number>((sum, each) => sum + (each ?? 0), 0);
  return batch !== undefined && isWithin(said, { least: batch.plannedGrams * least, most: batch.plannedGrams * 1.5 });
}
