// Everything that can be set, one row each: its kind of value, whose it is, who may set it, where it is offered. Its type,
// its stored shape, its reader, its line, its fields and its place in the help follow from the row; its words stand in each
// tongue's folder.

import { z } from 'zod';
import { shareOfLel } from './calc/vapour.ts';
import type { Role } from './crew/crew-commands.ts';
import { type SettingKind, type SettingValues, settingKinds } from './setting-kinds.ts';
import { minutes, percent } from './units.ts';

export type SettingRow = {
  readonly [Kind in SettingKind]: {
    readonly kind: Kind;
    /** What lifts safety, moves clocks that others rely on, or says who is told and when, is the lead's or more. */
    readonly leastRole: Role;
    readonly roleToPutOff?: Role;
    /** Of whoever says it; left out, of the crew. */
    readonly personal?: true;
    /** What holds where nobody has said. */
    readonly usual?: SettingValues[Kind];
    /** Several stand beside each other, one of each of these. */
    readonly each?: keyof SettingValues[Kind];
    /** What lies outside is a slip of the thumb. */
    readonly limits?: { readonly lowest: number; readonly highest: number; readonly above?: true };
    /** Its place on the form that sets up the crew, or on one's own. */
    readonly field?: number;
    /** Its place among the taps under the settings as they stand. */
    readonly tap?: number;
  };
}[SettingKind];

export const settingRows = {
  /** How the crew is called. */
  crew: { kind: 'crew-name', leastRole: 'lead', field: 1 },
  /** What was recorded keeps its instants; days are told by the new wall clock. */
  zone: { kind: 'zone', leastRole: 'lead', field: 2 },
  /** Of what many read at once: a batch's message, the board. */
  'crew-language': { kind: 'language', leastRole: 'lead', field: 3 },
  'crew-units': { kind: 'units', leastRole: 'lead', field: 4 },
  /** And the role of whom it concerns, as it was and as it will be. */
  role: { kind: 'roles', leastRole: 'lead' },
  sheet: { kind: 'sheet', leastRole: 'lead', field: 5, tap: 2 },
  /** Older than this, an air reading no longer serves. About 4 h: FHWA-RD-98-084 check form; MIL-HDBK-1110 9.6.6. */
  'air-limit': {
    ...{ kind: 'duration', leastRole: 'lead', usual: { minutes: minutes(240) } },
    ...{ limits: { lowest: 1, highest: 10_080 }, tap: 5 },
  },
  /** What the customer asks of the steel; `core/crew/job-limits.ts` says what stands. */
  job: { kind: 'job-limits', leastRole: 'lead', each: 'job' },
  /** The crew says how its surfaces are prepared. The first of which it does puts it on by itself. */
  prep: { kind: 'switch', leastRole: 'lead', usual: { on: false } },
  /** A coat, or the preparation before it, may name parts that nobody has: then nobody is asked whether they are new. */
  'new-parts': { kind: 'switch', leastRole: 'lead', usual: { on: false } },
  /** From the shop's permit; the ledger warns near it. One a length of time. */
  'voc-limit': { kind: 'quota', leastRole: 'lead', each: 'per' },
  /** When the day's card comes. */
  digest: { kind: 'hour', leastRole: 'lead', tap: 3 },
  /** When the morning's list is told. */
  morning: { kind: 'hour', leastRole: 'lead', usual: { hour: 7 } },
  quiet: { kind: 'hours', leastRole: 'lead', usual: { fromHour: 0, toHour: 0 }, field: 6, tap: 4 },
  /** Whoever begins a shift is asked whether they hear the bell. */
  bell: { kind: 'switch', leastRole: 'lead', usual: { on: false } },
  emergency: { kind: 'emergency', leastRole: 'lead', each: 'field' },
  /** The crew briefs before it sprays. Put off, every card of a sprayed coat says so; the next brief puts it on again. */
  brief: { kind: 'switch', leastRole: 'lead', roleToPutOff: 'supervisor', usual: { on: true } },
  /** Common practice, no source. */
  'brief-ahead': {
    ...{ kind: 'duration', leastRole: 'lead', usual: { minutes: minutes(15) } },
    limits: { lowest: 1, highest: 1_440 },
  },
  /** The only ones who may spray; nobody named lifts the rule. */
  sprayers: { kind: 'people', leastRole: 'lead', usual: { people: [] } },
  /** What it shows and carries. The finest step that is sold to a workshop, and the coarsest that anybody mixes by. */
  scale: { kind: 'scale', leastRole: 'lead', each: 'scale', limits: { lowest: 0.0001, highest: 1_000 } },
  booth: { kind: 'booth', leastRole: 'lead', each: 'place' },
  /** Whether a place's name means one that people are closed in: a tank, a pit. Where nobody has said, the name itself says. */
  confined: { kind: 'place-switch', leastRole: 'lead', each: 'place' },
  /** A stricter share of the lower explosive limit than a quarter. */
  lel: {
    ...{ kind: 'percent', leastRole: 'lead', usual: { percent: percent(shareOfLel.oshaSpray * 100) } },
    limits: { lowest: 1, highest: 25 },
  },
  /**
   * How many times more air the room needs because nothing mixes perfectly. Rooms need 3 to 10 times what perfect mixing
   * would: from memory, no source.
   */
  mixing: { kind: 'factor', leastRole: 'lead', usual: { factor: 5 }, limits: { lowest: 1, highest: 100 } },
  /** Under whose law it works, where its zone does not say or says it wrongly; `core/crew/crew-law.ts` says what stands. */
  law: { kind: 'law', leastRole: 'supervisor' },
  /**
   * What counts of a solvent over a day, in the place of what is kept: advice made the limit, or the country's own. A law it
   * makes stricter and never softer (`core/calc/day-limit.ts`).
   */
  limit: {
    ...{ kind: 'day-limit', leastRole: 'supervisor', each: 'solvent' },
    limits: { lowest: 0, highest: 10_000, above: true },
  },
  /** What the crew coats in an hour: for plans only. A hectare an hour is no crew of eight. */
  rate: { kind: 'rate', leastRole: 'crew', limits: { lowest: 0, highest: 10_000, above: true } },
  /** Until when the gas monitor is in check: bumped and calibrated as its maker says. */
  monitor: { kind: 'last-day', leastRole: 'lead' },
  /** At which the gas runs over an open can: then its card says how long. A flow meter of a cylinder: from memory, no source. */
  'gas-flow': { kind: 'gas-flow', leastRole: 'lead', limits: { lowest: 0, highest: 100, above: true } },
  units: { kind: 'units', leastRole: 'crew', personal: true, field: 2, tap: 1 },
  language: { kind: 'language', leastRole: 'crew', personal: true, field: 1 },
  /** Where a chat platform rings for them. */
  rings: { kind: 'rings', leastRole: 'crew', personal: true, field: 3 },
} as const satisfies Readonly<Record<string, SettingRow>>;

type Rows = typeof settingRows;
export type SettingName = keyof Rows;
export type KindOf<Name extends SettingName> = Rows[Name]['kind'];

export type SettingOf<Name extends SettingName> = {
  readonly [Each in Name]: { readonly name: Each } & SettingValues[KindOf<Each>];
}[Name];
export type Setting = SettingOf<SettingName>;

export const settingNames = Object.keys(settingRows) as readonly SettingName[];

const [first, ...others] = settingNames.map((name) =>
  z.object({ name: z.literal(name), ...settingKinds[settingRows[name].kind] }),
);
if (first === undefined) throw new Error('there is nothing to set');
/** As it is stored. No type follows a name to the shape of its kind: this is where the two are said to be one. */
export const Setting = z.discriminatedUnion('name', [first, ...others]) as z.ZodType as z.ZodType<Setting>;

/** What holds of it where nobody has said. */
export type UsuallySet = {
  [Name in SettingName]: Rows[Name] extends { readonly usual: object } ? Name : never;
}[SettingName];

export const usualSettings: readonly Setting[] = settingNames.flatMap((name) => {
  const row: SettingRow = settingRows[name];
  return row.usual === undefined ? [] : [Setting.parse({ name, ...row.usual })];
});
