// What can have happened to a part. A coat is filed under the part and under the batch that it came from.

import { z } from 'zod';
import { solventIds } from '../calc/solvents.ts';
import { dispositions, returnsTo } from '../disposition.ts';
import { event } from '../event.ts';
import { testShapes } from '../film-tests.ts';
import { adhesionRatings, contaminants, grits, prepWays, rubResults, surfaceGrades, waterBreaks } from '../grades.ts';
import { ReadWith } from '../instrument-kinds.ts';
import { methods } from '../methods.ts';
import {
  Celsius,
  Litres,
  Micrometres,
  MicrosiemensPerCentimetre,
  MilligramsPerSquareMetre,
  Millimetres,
  Minutes,
  SquareCentimetres,
  SquareMetres,
} from '../unit-schemas.ts';
import { holdingCodes } from './holding-codes.ts';

/** Every kind of test of `core/film-tests.ts`, each with this besides. */
const testsWith = <More extends z.ZodRawShape>(more: More) =>
  [
    z.object({ ...testShapes['pull-off'], ...more }),
    z.object({ ...testShapes.gloss, ...more }),
    z.object({ ...testShapes.hardness, ...more }),
    z.object({ ...testShapes.holidays, ...more }),
    z.object({ ...testShapes.visual, ...more }),
  ] as const;

/** The reading that failed, as it was when it held the part. */
export const FailedReading = z.discriminatedUnion('of', [
  z.object({
    of: z.literal('film'),
    micrometres: z.array(Micrometres).min(1),
    /** Told spot by spot: of which set, with which spot it failed, and by what mean. */
    set: z.number().int().positive().optional(),
    spot: z.number().int().positive().optional(),
    meanMicrometres: Micrometres.optional(),
  }),
  z.object({ of: z.literal('adhesion'), rating: z.enum(adhesionRatings), coupon: z.literal(true).optional() }),
  /** On the part, over what it or its film bears. */
  z.object({ of: z.literal('heat'), celsius: Celsius, highestCelsius: Celsius }),
  z.object({ of: z.literal('rub'), doubleRubs: z.number().int().positive(), coupon: z.literal(true).optional() }),
  /** Outside what the job asks. */
  z.object({ of: z.literal('wet'), micrometres: z.array(Micrometres).min(1) }),
  ...testsWith({ coupon: z.literal(true).optional() }),
]);
export type FailedReading = z.infer<typeof FailedReading>;

/** Why it was read again, after one that failed. */
const retest = z.string().optional();

export const PartEvent = z.discriminatedUnion('type', [
  event('PartReceived', {
    serial: z.string().optional(),
    job: z.string().optional(),
    customer: z.string().optional(),
    metal: z.string().optional(),
    wallMillimetres: Millimetres.optional(),
    areaSquareMetres: SquareMetres.optional(),
    highestCelsius: Celsius.optional(),
  }),
  event('SurfacePrepared', {
    /** Left out where only what was taken off was told. */
    grade: z.enum(surfaceGrades).optional(),
    removed: z.array(z.enum(contaminants)).min(1).optional(),
    solvents: z.array(z.enum(solventIds)).min(1).optional(),
    prepWays: z.array(z.enum(prepWays)).min(1).optional(),
    /** Of what it was sanded with. */
    grit: z.enum(grits).optional(),
    profileMicrometres: Micrometres.optional(),
    saltsMilligramsPerSquareMetre: MilligramsPerSquareMetre.optional(),
    /** Of a patch test: over the water's own, with the water and the patch where they are not the standard's. */
    saltsMicrosiemensPerCentimetre: MicrosiemensPerCentimetre.optional(),
    extractLitres: Litres.optional(),
    patchSquareCentimetres: SquareCentimetres.optional(),
    /** ISO 8502-3, how much: 0 to 5. */
    dustRating: z.number().int().min(0).max(5).optional(),
    /** ISO 8502-3, how big: 0 to 5. */
    dustSize: z.number().int().min(0).max(5).optional(),
    /** ASTM F22. */
    waterBreak: z.enum(waterBreaks).optional(),
  }),
  /** Said when the coat ends: flash-off runs from here. */
  event('CoatApplied', {
    part: z.string(),
    batch: z.number().int().positive(),
    method: z.enum(methods),
    /** Another pass of the coat before it, over film still wet. */
    pass: z.literal('same-coat').optional(),
    /** Who put it on, where somebody said; whoever typed it is only who typed it. */
    appliedBy: z.string().optional(),
    /** Where, if somebody said. */
    place: z.string().optional(),
    fromOutside: z.literal(true).optional(),
    /** Of which part and batch it was told first, where that was wrong. */
    toldOf: z.object({ part: z.string(), batch: z.number().int().positive(), why: z.string() }).optional(),
  }),
  event('FilmDry', {}),
  event('CureStarted', { way: z.enum(['oven', 'room']), setCelsius: Celsius.optional() }),
  event('PartTemperatureRead', {
    celsius: Celsius,
    /** Which part of a load it was read on, where it counts for the others too. */
    on: z.string().optional(),
    instrument: ReadWith,
  }),
  /** The oven's door, with the load inside. */
  event('DoorOpened', { openMinutes: Minutes.optional() }),
  event('CureEnded', {}),
  event('FilmRead', {
    state: z.enum(['wet', 'dry']),
    micrometres: z.array(Micrometres).min(1),
    retest,
    /** Told spot by spot: of which set of the part, and which spot of it. */
    set: z.number().int().positive().optional(),
    spot: z.number().int().positive().optional(),
    /** Each reading is a spot of its own, from that one on. */
    each: z.literal(true).optional(),
    /** Read beside the spot of this number, which failed, to mark how far that goes. */
    near: z.number().int().positive().optional(),
    /** Read of the same spot and left out, as its rule lets one. */
    dropped: z.array(Micrometres).min(1).optional(),
    /** What the gauge shows on the bare metal. */
    baseMicrometres: Micrometres.optional(),
    instrument: ReadWith,
  }),
  /** On the part, or on a witness coupon that went with it. */
  event('AdhesionTested', { rating: z.enum(adhesionRatings), coupon: z.literal(true).optional(), retest }),
  event('SolventRubbed', {
    doubleRubs: z.number().int().positive(),
    result: z.enum(rubResults),
    coupon: z.literal(true).optional(),
    retest,
  }),
  /** A test of another kind, on the part or its coupon. */
  z.discriminatedUnion('of', testsWith({ type: z.literal('FilmTested'), coupon: z.literal(true).optional(), retest })),
  /** A picture of the part, or of the batch under whose stream it is filed. The picture itself stays where it is. */
  event('PhotoFiled', {
    /** Where it lies: a place and its name there, `slack:F0123`. */
    reference: z.string().min(1),
    caption: z.string().optional(),
  }),
  event('PartReleased', {}),
  /** Out of the shop. Of one that was not released a hold goes with it. */
  event('PartLeft', {}),
  event('PartHeld', {
    why: z.string(),
    /** Deviations that hold the part by themselves. */
    because: z.array(z.enum(holdingCodes)).optional(),
    failed: z.array(FailedReading).optional(),
    /** Who sees to it, where somebody said. */
    owner: z.string().optional(),
    toDo: z.string().optional(),
  }),
  /** Of a hold that stands: who sees to it, what is to be done, or both. */
  /** What becomes of the part. A rework begins its coats anew; a concession is the customer's, and a release follows it. */
  event('PartDisposed', {
    as: z.enum(dispositions),
    why: z.string(),
    /** The customer's, with the document that says so and its date (ISO), of a concession. */
    person: z.string().optional(),
    document: z.string().optional(),
    date: z.string().optional(),
    to: z.enum(returnsTo).optional(),
  }),
  /** Readings that failed, and why the one that passed counts in their place. */
  event('FailureAnswered', { why: z.string(), failed: z.array(FailedReading).min(1) }),
  event('HoldAssigned', { owner: z.string().optional(), toDo: z.string().optional() }),
]);
export type PartEvent = z.infer<typeof PartEvent>;
