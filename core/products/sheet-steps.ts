// The steps that a maker's paper asks for besides its figures and clocks, a group each, with the page that asks. A group that
// is left out is neither said nor asked: the paper is silent about it.

import { z } from 'zod';
import { filterMaterials } from '../filters.ts';
import { methods } from '../methods.ts';
import * as units from '../units.ts';
import { vesselMaterials } from '../vessels.ts';
import { above0, minutes, percent, source } from './sheet-duration.ts';
import { rule } from './sheet-fault.ts';
import { MakerPaper } from './sheet-papers.ts';

/** What protects whoever handles the mix. */
export const protections = ['gloves', 'goggles', 'face-shield', 'coverall', 'apron', 'respirator'] as const;
export type Protection = (typeof protections)[number];

const turning = above0.transform((value) => units.revolutionsPerMinute(value));
/** What gear that was cleaned late may cost. */
export const lateCosts = ['gear', 'next-film'] as const;
export type LateCost = (typeof lateCosts)[number];

const asked = z.strictObject({ source });
const worn = z.array(z.enum(protections)).min(1);

export const Steps = z.strictObject({
  /** The maker's instructions and the safety data sheets of both parts are read, at each revision of the papers. */
  papers: z.strictObject({ named: z.array(MakerPaper).min(1).max(9).optional(), source }).optional(),
  /** Stirrer, lamps and whatever else runs by the mix are rated for flammable liquids. */
  equipment: asked.optional(),
  /** Vessels of metal are bonded to each other and earthed while the mix is poured. */
  bonding: asked.optional(),
  /** What the vessel may be of, and how much of it the mix may fill. */
  vessel: z
    .strictObject({ materials: z.array(z.enum(vesselMaterials)).min(1), mostFullPercent: percent, source })
    .optional(),
  /** Covered while it is stirred: when an open lid rings, and how long it may be off in all. */
  covered: z
    .strictObject({
      ringMinutes: minutes,
      mostMinutes: minutes,
      /** What is left of the pot life where it was off for longer. */
      potLifePercent: above0.max(100).optional(),
      source,
    })
    .refine((read) => read.ringMinutes <= read.mostMinutes, rule('ring-not-above-most'))
    .optional(),
  /** A slight vortex and no faster: a deep one beats air in. */
  vortex: z
    .strictObject({
      speed: z
        .strictObject({
          lowestRevolutionsPerMinute: turning,
          highestRevolutionsPerMinute: turning,
          /** What is left of the pot life where it turned faster. */
          fastPotLifePercent: above0.max(100).optional(),
        })
        .refine(
          (read) => read.lowestRevolutionsPerMinute < read.highestRevolutionsPerMinute,
          rule('lowest-below-highest'),
        )
        .optional(),
      source,
    })
    .optional(),
  /** What it is filtered through, besides the grade, and whether into a second clean vessel. */
  filtering: z.strictObject({ through: z.enum(filterMaterials), secondVessel: z.boolean(), source }).optional(),
  /** What everybody wears who mixes or pours, who applies by each method, and who cleans, flushes or wipes with solvent. */
  protection: z
    .strictObject({
      mixing: worn,
      applying: z.array(z.strictObject({ method: z.enum(methods), worn })).default([]),
      cleaning: worn.optional(),
      source,
    })
    .optional(),
  /** How soon gear of every method is cleaned after its last coat; with what stands in the group of the flush. */
  cleaning: z
    .strictObject({
      ringMinutes: minutes,
      mostMinutes: minutes,
      /** The vessels too, from when the pot is empty. */
      vessels: z.boolean().default(false),
      /** What it may cost where it is late: the gear itself, or the film that comes next. */
      lateCosts: z.enum(lateCosts).optional(),
      source,
    })
    .refine((read) => read.ringMinutes <= read.mostMinutes, rule('ring-not-above-most'))
    .optional(),
  /** Oven or room goes by what the part bears. */
  partBears: asked.optional(),
  cleanOven: asked.optional(),
  cleanRoom: asked.optional(),
});
export type Steps = z.infer<typeof Steps>;
export type StirSpeed = NonNullable<NonNullable<Steps['vortex']>['speed']>;
