// What is told to lead and supervisor whatever else runs: trouble in one word, near misses, bell tests; and until when a
// person's fit test, medical and training count. Filed under the crew.

import { z } from 'zod';
import { alarms, qualifications } from '../session/session-commands.ts';

export const AlarmRaised = z.object({
  type: z.literal('AlarmRaised'),
  what: z.enum(alarms),
  note: z.string().optional(),
  /** Of a hot pot, where it is known which: then filed under that batch too, and ends its pot. */
  batch: z.number().int().positive().optional(),
});

/** Without an author where that was asked: then the envelope has none either. */
export const NearMissTold = z.object({ type: z.literal('NearMissTold'), text: z.string(), anonymous: z.boolean() });

/** Everybody is to answer by name. */
export const BellTested = z.object({ type: z.literal('BellTested'), people: z.array(z.string()) });

export const QualificationDated = z.object({
  type: z.literal('QualificationDated'),
  person: z.string(),
  what: z.enum(qualifications),
  /** ISO, the last day. */
  until: z.string(),
});

export const AlarmEvent = z.discriminatedUnion('type', [AlarmRaised, NearMissTold, BellTested, QualificationDated]);
export type AlarmEvent = z.infer<typeof AlarmEvent>;
