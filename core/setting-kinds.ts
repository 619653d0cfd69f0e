// What a setting can be set to, one shape a kind, as it is stored. A kind knows nothing of what it is set for.

import { z } from 'zod';
import { legalFrames } from './calc/legal-frame.ts';
import { solventIds } from './calc/solvents.ts';
import { ringsTo, roles } from './crew/crew-commands.ts';
import { TestAsked } from './film-tests.ts';
import { adhesionRatings, surfaceGrades } from './grades.ts';
import { emergencyFields } from './session/session-commands.ts';
import {
  CubicMetres,
  Grams,
  LitresPerMinute,
  Micrometres,
  MilligramsPerSquareMetre,
  Minutes,
  PartsPerMillion,
  Percent,
  SquareMetres,
  SquareMetresPerHour,
} from './unit-schemas.ts';

const hour = z.number().int().min(0).max(23);

/** Of a scale that is the only one, and that nobody gave a name. */
export const usualScale = 'scale';

export const settingKinds = {
  sheet: { sheet: z.string() },
  duration: { minutes: Minutes },
  /** On the hour, by the crew's wall clock. */
  hour: { hour },
  /** From one hour up to another; the same twice for none. */
  hours: { fromHour: hour, toHour: hour },
  switch: { on: z.boolean() },
  /** Whether it is so of this place. */
  'place-switch': { place: z.string(), on: z.boolean() },
  percent: { percent: Percent },
  factor: { factor: z.number().min(1).max(100) },
  /** What is coated in an hour. */
  rate: { squareMetresPerHour: SquareMetresPerHour },
  /** Of the gas that goes over what is left in a can. */
  'gas-flow': { litresPerMinute: LitresPerMinute },
  /** ISO, the last day on which it counts. */
  'last-day': { until: z.iso.date() },
  /** So much in such a time. */
  quota: { grams: Grams, per: z.enum(['day', 'month', 'year']) },
  law: { law: z.enum(legalFrames) },
  /** Averaged over a working day. */
  'day-limit': { solvent: z.enum(solventIds), ppm: PartsPerMillion },
  'crew-name': { crewName: z.string() },
  /** IANA. */
  zone: { zone: z.string() },
  language: { language: z.string() },
  units: { units: z.enum(['metric', 'us']) },
  rings: { rings: z.enum(ringsTo) },
  people: { people: z.array(z.string()).readonly() },
  /** Of several at once: who gives them may by then be none of those who may. */
  roles: { given: z.array(z.object({ person: z.string(), role: z.enum(roles) }).readonly()).readonly() },
  /** The open face through which the air goes, and the room behind it. */
  booth: { place: z.string(), faceSquareMetres: SquareMetres, cubicMetres: CubicMetres.optional() },
  /** The step that it shows and the most that it carries; without a step it is gone. */
  scale: { scale: z.string(), stepGrams: Grams.optional(), mostGrams: Grams.optional() },
  /** What a job asks of the steel before its coat, and of a part before its release; nothing left, where it asks no more. */
  'job-limits': {
    job: z.string(),
    grades: z.array(z.enum(surfaceGrades)).min(1).readonly().optional(),
    profile: z.object({ leastMicrometres: Micrometres, mostMicrometres: Micrometres }).readonly().optional(),
    mostSaltsMilligramsPerSquareMetre: MilligramsPerSquareMetre.optional(),
    /** ISO 8502-3, how much: 0 to 5. */
    mostDustRating: z.number().int().min(0).max(5).optional(),
    /** ISO 8502-3, how big: 0 to 5. */
    mostDustSize: z.number().int().min(0).max(5).optional(),
    /** ASTM F22. */
    waterBreak: z.literal(true).optional(),
    /** Before a release: a dry film by its sheet's rule, a cross-cut, double rubs, and somebody who did not coat it. */
    film: z.literal(true).optional(),
    /** By another rule than its sheet's. */
    filmRule: z
      .object({
        rule: z.enum(['iso-19840', 'pa-2']).optional(),
        leastMicrometres: Micrometres.optional(),
        mostMicrometres: Micrometres.optional(),
        level: z.literal([1, 2, 3, 4, 5]).optional(),
        spots: z.number().int().positive().optional(),
      })
      .readonly()
      .optional(),
    /** What the gauge shows on its bare steel: taken off each reading of a film that is told spot by spot. */
    filmBaseMicrometres: Micrometres.optional(),
    leastAdhesion: z.enum(adhesionRatings).optional(),
    leastDoubleRubs: z.number().int().positive().optional(),
    /** One of each at most. */
    tests: z.array(TestAsked).min(1).readonly().optional(),
    secondEyes: z.literal(true).optional(),
  },
  /** The shop's own numbers to call, or its steps for one kind of trouble. */
  emergency: { field: z.enum(emergencyFields), text: z.string() },
} satisfies Record<string, z.ZodRawShape>;

export type SettingKind = keyof typeof settingKinds;

export type SettingValues = {
  readonly [Kind in SettingKind]: Readonly<z.infer<z.ZodObject<(typeof settingKinds)[Kind]>>>;
};
