// A product's data sheet as the shop keeps it: each figure stands with its source. A figure that the maker does not
// give is left out here and the sheet's reader takes the cautious side. Read once from a file; frozen into the event
// that starts a batch.

import { z } from 'zod';
import type { MixRatio } from '../calc/mixing.ts';
import type { RateLaw } from '../calc/rate-law.ts';
import type { Component } from '../components.ts';
import { methods } from '../methods.ts';
import * as units from '../units.ts';
import { above0, celsius, Duration, minutes, percent, range, source } from './sheet-duration.ts';
import { problemOf, rule, type SheetFault } from './sheet-fault.ts';
import { Blanket, ByMass, Film, GearLosses, LeftOver, OpenCans, PreStir, Repair } from './sheet-material.ts';
import { AfterCure, CureHumidity, CureStage, FilmRule } from './sheet-part.ts';
import { Flush, Sensitisers, Spray } from './sheet-spray.ts';
import { Steps } from './sheet-steps.ts';
import { Surface } from './sheet-surface.ts';
import { Voc } from './sheet-voc.ts';

const density = z
  .number()
  .min(0.5)
  .max(5)
  .transform((value) => units.kilogramsPerLitre(value));

const Densities = z.strictObject({ partAKilogramsPerLitre: density, partBKilogramsPerLitre: density });
const parts = { partsA: above0, partsB: above0, tolerancePercent: above0.max(20), source };

const Ratio = z.discriminatedUnion('basis', [
  /** Densities let a mix be asked for in litres. */
  z.strictObject({ basis: z.literal('weight'), ...parts, densities: Densities.optional() }),
  z.strictObject({ basis: z.literal('volume'), ...parts, densities: Densities }),
]);

/** What makes two parts one: stirring that must be given, or standing for an induction time. */
const Blend = z.strictObject({
  way: z.enum(['stir', 'induction']),
  time: Duration,
  /** What time outside the figure's range earns: nothing, unless the sheet says that its slowest serves. */
  withoutFigure: z.enum(['nothing', 'slowest']).default('nothing'),
});

const Recoat = z.discriminatedUnion('rule', [
  z.strictObject({ rule: z.literal('forbidden'), source }),
  z
    .strictObject({ rule: z.literal('window'), opensMinutes: minutes, closesMinutes: minutes, source })
    .refine((read) => read.opensMinutes < read.closesMinutes, rule('opens-below-closes')),
]);

export const Sheet = z.strictObject({
  id: z.string().regex(/^[a-z][a-z0-9-]{1,30}$/),
  name: z.string().min(1).max(60),
  revision: z.string().min(1).max(20),
  /** True for a product that does not exist. */
  invented: z.boolean(),
  ratio: Ratio,
  mostMixGrams: z.strictObject({ value: above0.transform((value) => units.grams(value)), source }).optional(),
  air: z.strictObject({
    ...range.shape,
    lowestRelativeHumidityPercent: percent.optional(),
    highestRelativeHumidityPercent: percent,
    leastSpreadCelsius: z
      .number()
      .min(0)
      .max(20)
      .transform((value) => units.celsiusSpread(value)),
    source,
  }),
  blend: Blend,
  potLife: z.strictObject({
    time: Duration,
    /** Left at the end to empty the pot and flush the gear. */
    marginMinutes: minutes,
    byMass: ByMass.optional(),
    /** What was in the pot when the maker took that time: a bigger one warms itself more and lives shorter. */
    testedWith: z.strictObject({ grams: above0.transform((value) => units.grams(value)), source }).optional(),
  }),
  preStir: PreStir.optional(),
  blanket: Blanket.optional(),
  openCans: OpenCans.optional(),
  repair: Repair.optional(),
  leftOver: LeftOver.optional(),
  film: Film.optional(),
  gearLosses: GearLosses.optional(),
  voc: Voc.optional(),
  spray: Spray.optional(),
  sensitisers: Sensitisers.optional(),
  flush: Flush.optional(),
  filter: z.strictObject({ micrometres: above0.transform((value) => units.micrometres(value)), source }).optional(),
  steps: Steps.optional(),
  methods: z.array(z.enum(methods)).min(1),
  surface: Surface.optional(),
  /** How long prepared steel may wait for its first coat. */
  surfaceLife: Duration.optional(),
  /** How long a wet film takes another pass of the same coat. */
  openTime: Duration.optional(),
  filmRule: FilmRule.optional(),
  recoat: Recoat,
  flashOff: z
    .strictObject({ leastMinutes: minutes, mostMinutes: minutes, source })
    .refine((read) => read.leastMinutes <= read.mostMinutes, rule('least-not-above-most')),
  cure: z
    .strictObject({
      oven: z
        .strictObject({
          minutes,
          atCelsius: celsius,
          /** The hottest at which the sheet still gives that time. */
          highestCelsius: celsius,
          after: AfterCure.optional(),
          source,
        })
        .refine((read) => read.atCelsius <= read.highestCelsius, rule('at-not-above-highest'))
        .optional(),
      room: z
        .strictObject({
          time: Duration,
          humidity: CureHumidity.optional(),
          stages: z.array(CureStage).default([]),
          after: AfterCure.optional(),
        })
        .optional(),
    })
    .refine((read) => read.oven !== undefined || read.room !== undefined, rule('oven-or-room')),
});
export type Sheet = z.infer<typeof Sheet>;

/** The sheet's ratio as the sums take it. */
export function mixRatio({ basis, partsA, partsB, densities }: Sheet['ratio']): MixRatio {
  if (basis === 'volume') return { basis, partsA, partsB, densities };
  return densities === undefined ? { basis, partsA, partsB } : { basis, partsA, partsB, densities };
}

/** Of one part of the product, where the sheet gives it. */
export function componentDensity({ ratio }: Pick<Sheet, 'ratio'>, component: Component) {
  const { densities } = ratio;
  return component === 'part-a' ? densities?.partAKilogramsPerLitre : densities?.partBKilogramsPerLitre;
}

/** A duration of the sheet as the law that the clocks run by. */
export function rateLaw(duration: Duration): RateLaw {
  switch (duration.kind) {
    case 'plain':
      return duration.range === undefined
        ? { kind: 'plain', minutes: duration.minutes }
        : { kind: 'plain', minutes: duration.minutes, range: duration.range };
    case 'table':
      return { kind: 'table', points: duration.points };
    case 'q10':
      return duration;
    case 'arrhenius':
      return { ...duration, activation: duration.activationKilojoulesPerMole };
  }
}

/** The oven's cure as a law: full credit from the sheet's temperature up to the hottest that it speaks of. */
export function ovenLaw(oven: NonNullable<Sheet['cure']['oven']>): RateLaw {
  return {
    kind: 'plain',
    minutes: oven.minutes,
    range: { lowestCelsius: oven.atCelsius, highestCelsius: oven.highestCelsius },
  };
}

export type ReadSheet =
  /** `papersIn`: the folder in which the papers lie that it names, where it came from a file. */
  | { readonly kind: 'sheet'; readonly sheet: Sheet; readonly papersIn?: string }
  | { readonly kind: 'faulty'; readonly id: string; readonly faults: readonly SheetFault[] };

/** Reads one file's content. Every fault is listed at once, by file and field. `id` is the file's name without ending. */
export function readSheet(file: string, content: string): ReadSheet {
  const id = file.replace(/\.json$/, '');
  let json: unknown;
  try {
    json = JSON.parse(content);
  } catch (error) {
    return { kind: 'faulty', id, faults: [{ file, field: '', problem: { is: 'not-json', said: String(error) } }] };
  }
  const read = Sheet.safeParse(json);
  if (!read.success) {
    const faults = read.error.issues.map((issue) => ({
      file,
      field: issue.path.join('.'),
      problem: problemOf(issue, json),
    }));
    return { kind: 'faulty', id, faults };
  }
  if (read.data.id !== id) {
    return { kind: 'faulty', id, faults: [{ file, field: 'id', problem: { is: 'not-files-id', id } }] };
  }
  return { kind: 'sheet', sheet: read.data };
}

/** The shop's sheets by id, faulty ones included: those block a mix and say why. */
export type SheetShelf = ReadonlyMap<string, ReadSheet>;
