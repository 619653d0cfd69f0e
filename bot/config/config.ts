// Flags, environment and the crew's file, read once and parsed by zod. A fault names the flag or field.

import { parseArgs } from 'node:util';
import { DateTime, IANAZone } from 'luxon';
import { z } from 'zod';
import type { CrewFile } from '../../core/crew/crew.ts';
import type { Failed } from '../../core/failed.ts';
import { ownValue } from '../../core/own-key.ts';
import { alarms } from '../../core/session/session-commands.ts';
import { minutes } from '../../core/units.ts';
import { shipped, type Tongues } from '../language/tongues/tongues.ts';
import { slackCrewFields, slackPersonFields } from '../slack/slack-crew.ts';
import { readPublicUrls } from './public-urls.ts';

const zone = z
  .string()
  .refine((name) => IANAZone.isValidZone(name), 'not a time zone; say, for example, Europe/Madrid');
const languageOf = ({ languages, languageTyped }: Tongues) =>
  z.string().transform((typed, ctx): string => {
    const known = languageTyped(typed);
    if (known !== undefined) return known;
    ctx.addIssue({ code: 'custom', message: `not a language here; there are ${[...languages.keys()].join(', ')}` });
    return z.NEVER;
  });
const publicUrls = z.array(z.string()).transform((typed, ctx): readonly string[] => {
  const read = readPublicUrls(typed);
  if ('urls' in read) return read.urls;
  ctx.addIssue({
    code: 'custom',
    message: `"${read.notOne}" is not an address; say https://bell.example, without a path`,
  });
  return z.NEVER;
});
const unitSystem = z.enum(['metric', 'us']);
const name = z.string().min(1).max(40);

const flagsOf = (tongues: Tongues) =>
  z.strictObject({
    help: z.boolean().default(false),
    json: z.boolean().default(false),
    clock: z
      .string()
      .regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2})?$/, 'say a local date and time: 2026-03-02T08:00')
      .optional(),
    zone: zone.optional(),
    speed: z.coerce.number('say a number: 60').positive('say a number above zero: 60').max(100_000).optional(),
    data: z.string().min(1).optional(),
    as: name.default('lead'),
    crew: z.string().min(1).optional(),
    sheets: z.string().min(1).optional(),
    lang: languageOf(tongues).default('en'),
    /** As a service: in Slack where its tokens are set. */
    serve: z.boolean().default(false),
    /** The shop page: its port, whether the network may open it, and the invented shift. */
    port: z.coerce.number('say a number: 4180').int().min(0).max(65_535).default(4180),
    lan: z.boolean().default(false),
    /** Besides this machine's own addresses: by which others the page may be called. */
    'public-url': publicUrls.default([]),
    demo: z.boolean().default(false),
    /** The invented shift without the page. */
    terminal: z.boolean().default(false),
  });
export type Flags = z.infer<ReturnType<typeof flagsOf>>;

const Environment = z.object({ BATCHBELL_DATA: z.string().min(1).optional() });
/** Said where a service gets its settings, not its flags. */
const publicUrlVariable = 'BATCHBELL_PUBLIC_URL';

const crewFileOf = (language: ReturnType<typeof languageOf>) =>
  z.strictObject({
    name: z.string().min(1).max(60),
    zone: zone.optional(),
    /** Of what many read. Left out: as the first of its people has it. */
    language: language.optional(),
    units: unitSystem.optional(),
    people: z
      .array(
        z.strictObject({
          name,
          role: z.enum(['crew', 'lead', 'supervisor']),
          language: language.optional(),
          units: unitSystem.optional(),
          ...slackPersonFields,
        }),
      )
      .min(1),
    digestHour: z.number().int().min(0).max(23).optional(),
    escalationMinutes: z.number().positive().max(1440).optional(),
    /** The shop's own numbers and steps for need. */
    emergency: z.partialRecord(z.enum(['call', ...alarms]), z.string().min(1)).optional(),
    ...slackCrewFields,
  });

/** A flag, variable or field that cannot serve; the program ends with 2. */

/** A flag stands before its variable. */
export function readFlags(
  args: readonly string[],
  environment: Readonly<Record<string, string | undefined>> = {},
  tongues = shipped,
): Flags | Failed<string> {
  try {
    const { values } = parseArgs({
      args: [...args],
      options: {
        help: { type: 'boolean', short: 'h' },
        json: { type: 'boolean' },
        clock: { type: 'string' },
        zone: { type: 'string' },
        speed: { type: 'string' },
        data: { type: 'string' },
        as: { type: 'string' },
        crew: { type: 'string' },
        sheets: { type: 'string' },
        lang: { type: 'string' },
        serve: { type: 'boolean' },
        port: { type: 'string' },
        lan: { type: 'boolean' },
        'public-url': { type: 'string', multiple: true },
        demo: { type: 'boolean' },
        terminal: { type: 'boolean' },
      },
    });
    const read = flagsOf(tongues).safeParse(values);
    if (!read.success) return { failed: issues(read.error, '--') };
    const named = ownValue(environment, publicUrlVariable);
    if (values['public-url'] !== undefined || named === undefined) return read.data;
    const inVariable = publicUrls.safeParse([named]);
    return inVariable.success
      ? { ...read.data, 'public-url': inVariable.data }
      : { failed: issues(inVariable.error, publicUrlVariable) };
  } catch (error) {
    return { failed: error instanceof Error ? error.message : String(error) };
  }
}

/** Of a start that the crew's wall clock never shows. */
export function clockFault({ clock }: Pick<Flags, 'clock'>, zone: string): Failed<string> | undefined {
  if (clock === undefined) return undefined;
  const start = DateTime.fromISO(clock, { zone });
  if (!start.isValid) return { failed: '--clock: no such date and time' };
  if (clock.startsWith(start.toFormat("yyyy-LL-dd'T'HH:mm"))) return undefined;
  return { failed: `--clock: ${clock} does not exist in ${zone}, where the clocks go forward over it` };
}

export function readEnvironment(environment: Readonly<Record<string, string | undefined>>) {
  return Environment.parse({ BATCHBELL_DATA: environment.BATCHBELL_DATA || undefined });
}

const usualDigestHour = 17;
const usualEscalation = minutes(10);

/** `content`: of the crew's file, if there is one. Without it, whoever speaks is the lead. */
export function readCrew(
  file: string | undefined,
  content: string | undefined,
  flags: Flags,
  tongues = shipped,
): CrewFile | Failed<string> {
  if (content === undefined) {
    return {
      name: 'crew',
      zone: flags.zone ?? 'UTC',
      language: flags.lang,
      units: 'metric',
      people: [{ name: flags.as, role: 'lead', language: flags.lang, units: 'metric' }],
      digestHour: usualDigestHour,
      escalationMinutes: usualEscalation,
    };
  }
  let json: unknown;
  try {
    json = JSON.parse(content);
  } catch (error) {
    return { failed: `${file}: not JSON: ${String(error)}` };
  }
  const read = crewFileOf(languageOf(tongues)).safeParse(json);
  if (!read.success) return { failed: issues(read.error, `${file} `) };
  const { people, zone: own, digestHour, escalationMinutes, emergency } = read.data;
  return {
    name: read.data.name,
    zone: flags.zone ?? own ?? 'UTC',
    language: read.data.language ?? people[0]?.language ?? flags.lang,
    units: read.data.units ?? people[0]?.units ?? 'metric',
    people: people.map(({ slack: _, rings, ...person }) => ({
      ...person,
      ...(rings === undefined ? {} : { rings }),
      language: person.language ?? read.data.language ?? flags.lang,
      units: person.units ?? read.data.units ?? 'metric',
    })),
    digestHour: digestHour ?? usualDigestHour,
    escalationMinutes: escalationMinutes === undefined ? usualEscalation : minutes(escalationMinutes),
    ...(emergency === undefined ? {} : { emergency }),
  };
}

function issues(error: z.ZodError, prefix: string): string {
  return error.issues.map((issue) => `${prefix}${issue.path.join('.')}: ${issue.message}`).join('; ');
}
