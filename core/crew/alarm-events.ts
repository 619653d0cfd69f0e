// What is told to lead and supervisor whatever else runs: trouble in one word, near misses, bell tests; until when a
// person's fit test, medical and training count; and the supervisor's assessments. Filed under the crew.

import { z } from 'zod';
import { breathingStandards } from '../calc/breathing-air.ts';
import { substanceIds } from '../calc/exposure-limits.ts';
import { event } from '../event.ts';
import { heatSigns } from '../heat-care.ts';
import { methods } from '../methods.ts';
import { alarms, qualifications } from '../session/session-commands.ts';
import { Celsius, MilligramsPerCubicMetre, Minutes, PartsPerMillion, Percent } from '../unit-schemas.ts';

/** Of an alarm what names it. */
const AlarmTold = z.object({
  what: z.enum(alarms),
  note: z.string().optional(),
  batch: z.number().int().positive().optional(),
  can: z.number().int().positive().optional(),
  seen: z.enum(heatSigns).optional(),
  place: z.string().optional(),
});
export type AlarmTold = z.infer<typeof AlarmTold>;

export const AlarmEvent = z.discriminatedUnion('type', [
  event('AlarmRaised', {
    what: z.enum(alarms),
    note: z.string().optional(),
    /** Of a hot pot, where it is known which: then filed under that batch too, and ends its pot. */
    batch: z.number().int().positive().optional(),
    /** The same of a can that heats or swells. */
    can: z.number().int().positive().optional(),
    /** Where more is told of it than that it is hot. */
    seen: z.enum(heatSigns).optional(),
    /** Known, and named with it: until all is clear nobody begins anything there. */
    place: z.string().optional(),
  }),
  /** May be a cry: it rings by itself, unless somebody says before that it is none. */
  event('CryHeard', { what: z.enum(alarms), note: z.string(), place: z.string().optional() }),
  /** By whoever said no while it could still be stopped. */
  event('AlarmCalledOff', {}),
  event('DrillBegun', { what: z.enum(alarms) }),
  /** Of what it was the end, drills apart. */
  event('AlarmsEnded', {
    ends: z.array(z.enum(alarms)),
    drills: z.array(z.enum(alarms)),
    /** Each that was no drill, as it was told. */
    of: z.array(AlarmTold).optional(),
    /** By the record's numbers, drills with them; left out, it was the end of all. */
    seqs: z.array(z.number().int().positive()).optional(),
  }),
  /** Without an author where that was asked: then the envelope has none either. */
  event('NearMissTold', { text: z.string(), anonymous: z.boolean() }),
  /** Everybody is to answer by name. */
  event('BellTested', { people: z.array(z.string()) }),
  /** Of what hoods and masks are fed with; what is left out was not read. */
  event('BreathingAirChecked', {
    /** By which it was judged. */
    standard: z.enum(breathingStandards),
    oxygen: Percent.optional(),
    carbonMonoxide: PartsPerMillion.optional(),
    carbonDioxide: PartsPerMillion.optional(),
    oil: MilligramsPerCubicMetre.optional(),
    dewPoint: Celsius.optional(),
    odour: z.enum(['none', 'noticeable']).optional(),
    cylinder: z.literal(true).optional(),
    compressor: z.string().optional(),
    /** Below which the dew point of a compressor's air must lie. */
    ambientCelsius: Celsius.optional(),
  }),
  /** Of one person over one task, outside of any mask. */
  event('ExposureMeasured', {
    person: z.string(),
    substance: z.enum(substanceIds),
    ppm: PartsPerMillion,
    taskMinutes: Minutes,
  }),
  event('QualificationDated', {
    person: z.string(),
    what: z.enum(qualifications),
    /** ISO, the last day. */
    until: z.string(),
  }),
  /** Spraying without supplied air, as whoever supervises answers for it. */
  event('AirAssessed', {
    place: z.string(),
    sheet: z.string(),
    revision: z.string(),
    method: z.enum(methods),
    /** Only with supplied air: nothing is allowed without. */
    supplied: z.literal(true).optional(),
    /** ISO, the last day. */
    until: z.string(),
  }),
]);
export type AlarmEvent = z.infer<typeof AlarmEvent>;
