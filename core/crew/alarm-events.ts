// What is told to lead and supervisor whatever else runs: trouble in one word, near misses, bell tests; until when a
// person's fit test, medical and training count; and the supervisor's assessments. Filed under the crew.

import { z } from 'zod';
import { event } from '../event.ts';
import { methods } from '../methods.ts';
import { alarms, qualifications } from '../session/session-commands.ts';

export const AlarmEvent = z.discriminatedUnion('type', [
  event('AlarmRaised', {
    what: z.enum(alarms),
    note: z.string().optional(),
    /** Of a hot pot, where it is known which: then filed under that batch too, and ends its pot. */
    batch: z.number().int().positive().optional(),
  }),
  /** Without an author where that was asked: then the envelope has none either. */
  event('NearMissTold', { text: z.string(), anonymous: z.boolean() }),
  /** Everybody is to answer by name. */
  event('BellTested', { people: z.array(z.string()) }),
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
    /** ISO, the last day. */
    until: z.string(),
  }),
]);
export type AlarmEvent = z.infer<typeof AlarmEvent>;
