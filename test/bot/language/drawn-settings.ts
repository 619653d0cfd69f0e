// Every setting that there is, off the table of settings, drawn at random within what a line can hold.

import fc from 'fast-check';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { legalFrames } from '../../../core/calc/legal-frame.ts';
import { solventIds } from '../../../core/calc/solvents.ts';
import { ringsTo, roles } from '../../../core/crew/crew-commands.ts';
import { pencils, type TestAsked } from '../../../core/film-tests.ts';
import { adhesionRatings, surfaceGrades } from '../../../core/grades.ts';
import { emergencyFields } from '../../../core/session/session-commands.ts';
import type { SettingKind } from '../../../core/setting-kinds.ts';
import { Setting, type SettingRow, settingNames, settingRows } from '../../../core/settings.ts';
import { megapascals, micrometres, volts } from '../../../core/units.ts';

type Limits = NonNullable<SettingRow['limits']>;

const hour = fc.integer({ min: 0, max: 23 });
/** Down to a quarter, which a line says to the last digit. */
const within = ({ lowest, highest, above }: Limits) =>
  fc.integer({ min: lowest * 4 + (above === true ? 1 : 0), max: highest * 4 }).map((value) => value / 4);
/** Names that a line could take for something else stand in quotes. */
const person = fc.constantFrom('kari', 'noor-2', 'Ana María', 'lead', 'spray', 'at', '12', 'a "b" \\c', 'tank');
const words = fc.constantFrom('call 112', 'permit at 9:40 already', 'a "green" one', 'Bay two', 'hose by the door');

/** One of each at most. */
const drawnTestsAsked: fc.Arbitrary<readonly TestAsked[]> = fc.uniqueArray(
  fc.oneof(
    fc.constant({
      ...{ of: 'wet' as const, leastMicrometres: micrometres(60), mostMicrometres: micrometres(80) },
    }),
    within({ lowest: 1, highest: 90 }).map((least) => ({
      ...{ of: 'pull-off' as const, leastMegapascals: megapascals(least) },
    })),
    within({ lowest: 1, highest: 90 }).map((leastUnits) => ({ of: 'gloss' as const, leastUnits })),
    within({ lowest: 1, highest: 90 }).map((leastUnits) => ({ of: 'gloss' as const, leastUnits, mostUnits: 95 })),
    fc.constantFrom(...pencils).map((least) => ({ of: 'hardness' as const, least })),
    fc.constant({ of: 'holidays' as const }),
    within({ lowest: 1, highest: 9_000 }).map((most) => ({ of: 'holidays' as const, volts: volts(most) })),
    fc.constant({ of: 'visual' as const }),
  ),
  { minLength: 1, maxLength: 4, selector: ({ of }) => of },
);

const drawnFilmRule = fc.constantFrom(
  { rule: 'pa-2' as const },
  { rule: 'pa-2' as const, level: 3, spots: 5 },
  { rule: 'pa-2' as const, level: 1, leastMicrometres: 60, mostMicrometres: 100 },
  { rule: 'iso-19840' as const, leastMicrometres: 60, spots: 10 },
  { leastMicrometres: 10, mostMicrometres: 20, spots: 3 },
);

const drawn: { readonly [Kind in SettingKind]: (limits: Limits) => fc.Arbitrary<object> } = {
  sheet: () => fc.record({ sheet: fc.constantFrom('demo-clear', 'demo-build') }),
  duration: (limits) => fc.record({ minutes: within(limits) }),
  hour: () => fc.record({ hour }),
  hours: () => fc.record({ fromHour: hour, toHour: hour }),
  switch: () => fc.record({ on: fc.boolean() }),
  'place-switch': () => fc.record({ place: fc.constantFrom('booth', 'tank-3', 'pit'), on: fc.boolean() }),
  percent: (limits) => fc.record({ percent: within(limits) }),
  factor: (limits) => fc.record({ factor: within(limits) }),
  rate: (limits) => fc.record({ squareMetresPerHour: within(limits) }),
  'last-day': () => fc.record({ until: fc.constantFrom('2026-12-31', '2027-02-28') }),
  'gas-flow': (limits) => fc.record({ litresPerMinute: within(limits) }),
  quota: () => fc.record({ grams: within({ lowest: 1, highest: 1e6 }), per: fc.constantFrom('day', 'month', 'year') }),
  'crew-name': () => fc.record({ crewName: words }),
  zone: () => fc.record({ zone: fc.constantFrom(...Intl.supportedValuesOf('timeZone'), 'UTC') }),
  language: () => fc.record({ language: fc.constantFrom(...shipped.languages.keys()) }),
  units: () => fc.record({ units: fc.constantFrom('metric', 'us') }),
  rings: () => fc.record({ rings: fc.constantFrom(...ringsTo) }),
  law: () => fc.record({ law: fc.constantFrom(...legalFrames) }),
  'day-limit': (limits) => fc.record({ solvent: fc.constantFrom(...solventIds), ppm: within(limits) }),
  people: () => fc.record({ people: fc.uniqueArray(person, { maxLength: 3 }) }),
  roles: () =>
    fc.record({
      given: fc.array(fc.record({ person, role: fc.constantFrom(...roles) }), { minLength: 1, maxLength: 3 }),
    }),
  booth: () =>
    fc.record(
      {
        place: fc.constantFrom('booth', 'booth-2', 'hall', 'room'),
        faceSquareMetres: within({ lowest: 1, highest: 40 }),
        cubicMetres: within({ lowest: 1, highest: 900 }),
      },
      { requiredKeys: ['place', 'faceSquareMetres'] },
    ),
  scale: () =>
    fc
      .record({
        scale: fc.constantFrom('scale', 'bench', 'floor', 'scale-2'),
        stepGrams: fc.option(within({ lowest: 1, highest: 1_000 }), { nil: undefined }),
        mostGrams: fc.option(within({ lowest: 1_001, highest: 1e6 }), { nil: undefined }),
      })
      .map(({ scale, stepGrams, mostGrams }) =>
        stepGrams === undefined ? { scale } : { scale, stepGrams, ...(mostGrams === undefined ? {} : { mostGrams }) },
      ),
  'job-limits': () =>
    fc
      .record(
        {
          job: fc.constantFrom('88', 'A-12', 'sa2.5', 'off', 'at 9:40', 'a "b" \\c'),
          grades: fc.uniqueArray(fc.constantFrom(...surfaceGrades), { minLength: 1, maxLength: 3 }),
          profile: fc.record({
            leastMicrometres: within({ lowest: 1, highest: 40 }),
            mostMicrometres: within({ lowest: 41, highest: 900 }),
          }),
          mostSaltsMilligramsPerSquareMetre: within({ lowest: 0, highest: 200 }),
          mostDustRating: fc.integer({ min: 0, max: 5 }),
          mostDustSize: fc.integer({ min: 0, max: 5 }),
          waterBreak: fc.constant(true as const),
          film: fc.constant(true as const),
          filmRule: drawnFilmRule,
          tests: drawnTestsAsked,
          leastAdhesion: fc.constantFrom(...adhesionRatings),
          leastDoubleRubs: fc.integer({ min: 1, max: 1_000 }),
          secondEyes: fc.constant(true as const),
        },
        { requiredKeys: ['job'] },
      )
      // A rule is told with its film.
      .map((limits) => (limits.filmRule === undefined ? limits : { ...limits, film: true as const })),
  emergency: () => fc.record({ field: fc.constantFrom(...emergencyFields), text: words }),
};

/** The same hour twice is none at all, and reads back as midnight to midnight. */
const noSpan = (setting: Setting): Setting =>
  setting.name === 'quiet' && setting.fromHour === setting.toHour ? { ...setting, fromHour: 0, toHour: 0 } : setting;

export const drawnSetting: fc.Arbitrary<Setting> = fc.oneof(
  ...settingNames.map((name) => {
    const { kind, limits = { lowest: 1, highest: 100 } }: SettingRow = settingRows[name];
    return drawn[kind](limits).map((value) => noSpan(Setting.parse({ name, ...value })));
  }),
);
