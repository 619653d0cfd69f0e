// What a job needs: wet volume with its losses, A and B, how many batches by pot life and the crew's pace, when each must
// be weighed to be ready, and whether the open cans hold it. It only reads: nothing is recorded.

import { coatingNeed, type Need, totalArea } from '../calc/coating-need.ts';
import { mixedDensity } from '../calc/density.ts';
import { type DoseRules, paceAt } from '../calc/dose.ts';
import { splitFill } from '../calc/mixing.ts';
import { mostWorthMixing } from '../calc/pot-reach.ts';
import { slowest } from '../calc/rate-law.ts';
import { transferEfficiencies, transferEfficiencyOf } from '../calc/transfer-efficiency.ts';
import { leftGrams } from '../can/can.ts';
import { gasState } from '../can/can-stock.ts';
import type { PlanAsked } from '../commands.ts';
import { type Component, components } from '../components.ts';
import { localDay } from '../crew/local-day.ts';
import { type Failed, failed, isFailed } from '../failed.ts';
import { defaultPlace, type PartName } from '../ids.ts';
import { type Method, methodRows } from '../methods.ts';
import { airAt } from '../place/place.ts';
import { mixRatio, rateLaw, type Sheet } from '../products/sheet.ts';
import type { SheetUnclear } from '../products/sheet-objections.ts';
import { lastSaid, standing } from '../settled.ts';
import { liveCans, type Shop, sheetFor } from '../shop.ts';
import {
  type Celsius,
  type EpochMs,
  epochMs,
  type Fraction,
  fraction,
  type Grams,
  grams,
  type Litres,
  litres,
  type Micrometres,
  type Minutes,
  minutes,
  minutesAfter,
  type SquareMetres,
} from '../units.ts';
import { potLifeMinutes } from './batch-clocks.ts';

export interface PlannedBatch {
  readonly grams: Grams;
  readonly partAGrams: Grams;
  readonly partBGrams: Grams;
  /** B into A at this time, for the blend to be done when it is wanted. */
  readonly weighAt: EpochMs;
  readonly readyAt: EpochMs;
}

export interface StockForPlan {
  readonly component: Component;
  readonly neededGrams: Grams;
  /** In cans that may be poured from; `undefined` where the crew has none on record. */
  readonly leftGrams: Grams | undefined;
}

export interface CoatingPlan {
  readonly sheet: Sheet;
  readonly method: Method;
  readonly dryFilmMicrometres: Micrometres;
  readonly filmAssumed: boolean;
  readonly filmOutside: boolean;
  readonly need: Need;
  readonly mixedGrams: Grams;
  readonly efficiency: Fraction;
  readonly efficiencyFrom: 'rule' | 'memory';
  readonly batches: readonly PlannedBatch[];
  /** Minutes of each pot left for applying; `undefined` where the crew's pace is not known. */
  readonly usableMinutes: Minutes | undefined;
  /** The temperature that the clocks were read at; `undefined`: their cautious side. */
  readonly celsius: Celsius | undefined;
  readonly stock: readonly StockForPlan[];
}

export type NoPlan =
  | { readonly kind: 'no-sheet'; readonly unclear: SheetUnclear }
  | { readonly kind: 'no-film' | 'no-densities'; readonly sheet: Sheet }
  | { readonly kind: 'no-area'; readonly parts: readonly PartName[] }
  | { readonly kind: 'no-time-left'; readonly sheet: Sheet }
  | { readonly kind: 'too-much' };

export function planCoating(shop: Shop, asked: PlanAsked, now: EpochMs): CoatingPlan | Failed<NoPlan> {
  const sheet = sheetFor(shop, asked.sheet);
  if (isFailed(sheet)) return failed({ kind: 'no-sheet', unclear: sheet.failed });
  const area = areaOf(shop, asked);
  if (isFailed(area)) return area;
  if (sheet.film === undefined) return failed({ kind: 'no-film', sheet });
  const { densities } = sheet.ratio;
  if (densities === undefined) return failed({ kind: 'no-densities', sheet });
  const { volumeSolidsPercent, lowestDryMicrometres, highestDryMicrometres } = sheet.film;
  const dryFilm = asked.dryFilmMicrometres ?? highestDryMicrometres;
  const { transfer: application, atomised } = methodRows[asked.method];
  const efficiency = transferEfficiencyOf(application);
  const gear = sheet.gearLosses;
  const need = coatingNeed(
    area,
    dryFilm,
    { volumeSolids: fraction(volumeSolidsPercent / 100), thinnerShare: fraction(0) },
    {
      transferEfficiency: efficiency,
      profileLitresPerSquareMetre: 0,
      // What is not sprayed needs neither hose nor gun; what its filter keeps it keeps.
      hoseLitres: atomised ? (gear?.hoseLitres ?? litres(0)) : litres(0),
      gunLitres: atomised ? (gear?.gunLitres ?? litres(0)) : litres(0),
      filterLitres: gear?.filterLitres ?? litres(0),
    },
  );
  if (isFailed(need)) return failed({ kind: 'too-much' });
  const weights = splitFill(need.mixedLitres, mixRatio(sheet.ratio));
  if (isFailed(weights)) return failed({ kind: 'too-much' });
  const { partAGrams, partBGrams } = weights;
  const mixedGrams = grams(partAGrams + partBGrams);
  const density = mixedDensity(partAGrams, partBGrams, densities);
  if (isFailed(density)) return failed({ kind: 'too-much' });
  const reading = airAt(shop.places.get(defaultPlace), now).temperature;
  const serves = reading !== undefined && now <= minutesAfter(reading.at, standing(shop.crew, 'air-limit').minutes);
  const celsius = serves ? reading.celsius : undefined;
  const usable = usableMinutes(shop, sheet, mixedGrams, celsius);
  const most = mostInOnePot(sheet, usable, lastSaid(shop.crew, 'rate')?.squareMetresPerHour, need, density);
  if (most !== undefined && most <= 0) return failed({ kind: 'no-time-left', sheet });
  const count = most === undefined ? 1 : Math.max(1, Math.ceil(mixedGrams / most - 1e-9));
  if (count > mostBatches) return failed({ kind: 'too-much' });
  return {
    sheet,
    method: asked.method,
    dryFilmMicrometres: dryFilm,
    filmAssumed: asked.dryFilmMicrometres === undefined,
    filmOutside: dryFilm < lowestDryMicrometres || dryFilm > highestDryMicrometres,
    need,
    mixedGrams,
    efficiency,
    celsius,
    usableMinutes: usable,
    efficiencyFrom: transferEfficiencies[application].fromMemory === efficiency ? 'memory' : 'rule',
    batches: batchesOf(shop, asked, sheet, { count, partAGrams, partBGrams, need, celsius, now }),
    stock: stockFor(shop, sheet, { partAGrams, partBGrams }, now),
  };
}

/** More pots than that from one line is a slip. */
const mostBatches = 50;

function areaOf(shop: Shop, asked: PlanAsked): SquareMetres | Failed<NoPlan> {
  const unknown: PartName[] = [];
  const sizes = asked.parts.flatMap((part) => {
    if ('count' in part) return [part];
    const each = shop.parts.get(part.part)?.details.areaSquareMetres;
    if (each === undefined) unknown.push(part.part);
    return each === undefined ? [] : [{ count: 1, eachSquareMetres: each }];
  });
  if (unknown.length > 0) return failed({ kind: 'no-area', parts: unknown });
  const area = totalArea(sizes);
  return isFailed(area) ? failed({ kind: 'too-much' }) : area;
}

function wholeMinutes(rules: DoseRules, celsius: Celsius | undefined): Minutes {
  const pace = paceAt(rules, celsius);
  return pace.perMinute > 0 ? minutes(1 / pace.perMinute) : slowest(rules.law);
}

/** The blend at this temperature; where the sheet gives no figure, its slowest. */
function blendMinutes(sheet: Sheet, celsius: Celsius | undefined): Minutes {
  const rules: DoseRules = { law: rateLaw(sheet.blend.time), caution: 'at-least', withoutFigure: 'slowest' };
  return wholeMinutes(rules, celsius);
}

function usableMinutes(shop: Shop, sheet: Sheet, mass: Grams, celsius: Celsius | undefined): Minutes | undefined {
  if (lastSaid(shop.crew, 'rate')?.squareMetresPerHour === undefined) return undefined;
  // By the mass of the whole job: smaller pots live longer, so the count errs on the side of one pot more.
  const onePot = grams(Math.min(mass, sheet.mostMixGrams?.value ?? mass));
  const life = potLifeMinutes(sheet, onePot, celsius);
  return minutes(Math.max(0, life - blendMinutes(sheet, celsius) - sheet.potLife.marginMinutes));
}

/** The most to mix at once; `undefined` where nothing limits it. */
function mostInOnePot(
  sheet: Sheet,
  usable: Minutes | undefined,
  rate: number | undefined,
  need: Need,
  density: number,
): number | undefined {
  const bySheet = sheet.mostMixGrams?.value;
  if (usable === undefined || rate === undefined || need.squareMetres <= 0) return bySheet;
  const onParts = need.mixedLitres - need.gearLitres;
  const pace = {
    squareMetresPerMinute: rate / 60,
    litresPerSquareMetre: onParts / need.squareMetres,
    gearLitres: need.gearLitres,
  };
  const volume = mostWorthMixing(usable, pace);
  if (isFailed(volume)) return bySheet;
  const byTime: Litres = volume;
  return Math.min(bySheet ?? Number.POSITIVE_INFINITY, byTime * density * 1000);
}

interface ToSplit {
  readonly count: number;
  readonly partAGrams: Grams;
  readonly partBGrams: Grams;
  readonly need: Need;
  readonly celsius: Celsius | undefined;
  readonly now: EpochMs;
}

/** Equal pots, each ready when the one before is used up at the crew's pace. */
function batchesOf(shop: Shop, asked: PlanAsked, sheet: Sheet, job: ToSplit): readonly PlannedBatch[] {
  const blend = blendMinutes(sheet, job.celsius);
  const firstReadyAt = asked.readyAt ?? minutesAfter(job.now, blend);
  const rate = lastSaid(shop.crew, 'rate')?.squareMetresPerHour;
  const perPot = rate === undefined || rate <= 0 ? 0 : ((job.need.squareMetres / job.count) * 60) / rate;
  return Array.from({ length: job.count }, (_, i) => {
    const readyAt = minutesAfter(firstReadyAt, minutes(i * perPot));
    return {
      grams: grams((job.partAGrams + job.partBGrams) / job.count),
      partAGrams: grams(job.partAGrams / job.count),
      partBGrams: grams(job.partBGrams / job.count),
      weighAt: epochMs(readyAt - blend * 60_000),
      readyAt,
    };
  });
}

function stockFor(
  shop: Shop,
  sheet: Sheet,
  needed: { readonly partAGrams: Grams; readonly partBGrams: Grams },
  now: EpochMs,
): readonly StockForPlan[] {
  const today = localDay(shop.crew.zone, now);
  return components.map((component) => {
    const cans = liveCans(shop).filter((can) => can.component === component && can.sheet.id === sheet.id);
    const usable = cans.filter(
      (can) =>
        !['doubtful', 'reacts'].includes(gasState(can, now).is) && (can.expires === undefined || today <= can.expires),
    );
    const left = usable.reduce((sum, can) => sum + leftGrams(can), 0);
    return {
      component,
      neededGrams: component === 'part-a' ? needed.partAGrams : needed.partBGrams,
      leftGrams: cans.length === 0 ? undefined : grams(left),
    };
  });
}
