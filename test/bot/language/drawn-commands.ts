// Every command there is, drawn at random within what a line can hold, for the way there and back.

import fc from 'fast-check';
import { commandOf } from '../../../bot/language/acts/read-fields.ts';
import { partNamed, placeNamed } from '../../../bot/language/names-typed.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { cleanLine } from '../../../bot/language/typed/clean-line.ts';
import { type Command, type Stance, verbRows, verbs } from '../../../core/commands.ts';
import { returnsTo } from '../../../core/disposition.ts';
import { methods } from '../../../core/methods.ts';
import { solventUses } from '../../../core/solvent-uses.ts';
import {
  celsius,
  epochMs,
  grams,
  litres,
  micrometres,
  millimetres,
  percent,
  squareMetres,
} from '../../../core/units.ts';
import type { Amendment, AmendTarget } from '../../../core/verbs/correction-verbs.ts';
import { drawnMaterial, drawnMaterialAmendment } from './drawn-material.ts';
import { partAndPeopleCommands } from './drawn-part-commands.ts';
import { drawnSession, person } from './drawn-session.ts';
import { drawnSetting } from './drawn-settings.ts';
import { utc } from './shop-at-ten.ts';

/** Down to a millionth: below it no unit here means anything. */
const between = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true }).map((value) => (Math.abs(value) < 1e-6 ? 0 : value));
/** Round figures as people type them, thousandths as scales show them, and any double. */
const figure = (min: number, max: number) =>
  fc.oneof(
    fc.integer({ min: Math.ceil(min), max: Math.floor(max) }),
    fc.integer({ min: Math.ceil(min), max: Math.floor(max) }).map((value) => Math.max(min, value - 0.799)),
    between(min, max),
  );

const mass = figure(0.001, 1_000_000).map(grams);
const degrees = (min: number, max: number) => figure(min, max).map(celsius);
const humidity = figure(0.1, 100).map(percent);
const films = fc.array(figure(0, 10_000).map(micrometres), { minLength: 1, maxLength: 6 });
const batch = fc.integer({ min: 1, max: 1_000_000 });
const part = fc
  .oneof(
    fc.stringMatching(/^[a-z]{2,9}-[0-9]{1,3}$/),
    fc.stringMatching(/^[a-z0-9][a-z0-9._/-]{0,12}$/),
    fc.constantFrom('válvula-3', 'impeller', 'p/4', 'rail_2'),
  )
  .filter((name) => partNamed(name, { hearing: shipped.every, parts: [] }) === name);
/** Numbers that follow one another under the same letters, some with zeros in front. */
const rowOfParts = fc
  .record({
    stem: fc.stringMatching(/^[a-z]{2,6}[-_]$/),
    from: fc.integer({ min: 1, max: 120 }),
    count: fc.integer({ min: 2, max: 40 }),
    digits: fc.integer({ min: 1, max: 3 }),
  })
  .map(({ stem, from, count, digits }) =>
    Array.from({ length: count }, (_, i) => `${stem}${String(from + i).padStart(digits, '0')}`),
  )
  .filter((names) => names.every((name) => partNamed(name, { hearing: shipped.every, parts: [] }) === name));
const parts = fc.oneof(
  { arbitrary: fc.uniqueArray(part, { minLength: 1, maxLength: 4 }), weight: 4 },
  { arbitrary: rowOfParts, weight: 1 },
);
const place = fc
  .oneof(fc.stringMatching(/^[a-z]{2,9}(-[0-9])?$/), fc.constantFrom('room', 'booth', 'oven'))
  .filter((name) => placeNamed(name, shipped.every) === name);
const sheet = fc.stringMatching(/^[a-z]{3,7}-[a-z]{3,7}$/);
const at = fc.integer({ min: utc('2024-01-01T00:00'), max: utc('2026-03-02T10:00') }).map(epochMs);

/** What a cleaned line can hold: no odd characters, no doubled spaces. */
const ownWords = fc
  .oneof(
    fc.constantFrom(
      'orange peel',
      'permit at 9:40 already',
      'the "green" one',
      'back\\slash',
      '12um 10m ago',
      'válvula',
    ),
    fc.string({ minLength: 1, maxLength: 24 }),
  )
  .filter((text) => text.trim() === text && cleanLine(`x ${JSON.stringify(text)} y`) === `x ${JSON.stringify(text)} y`);

const air = fc
  .record({ celsius: degrees(-40, 60), relativeHumidityPercent: humidity }, { requiredKeys: [] })
  .filter((said) => Object.keys(said).length > 0);

const only = <V extends string>(verb: V) => fc.constant(verb);

/** Acts that say no more than which batch, can or session. */
const numbered = verbs.flatMap((verb) => {
  const [only, ...others] = Object.entries(verbRows[verb].fields);
  if (only?.[1].told !== 'number' || others.length > 0) return [];
  return [fc.option(batch).map((number) => commandOf(verb, number === null ? {} : { [only[0]]: number }))];
});

const details = fc.record(
  {
    serial: ownWords,
    job: ownWords,
    customer: ownWords,
    metal: ownWords,
    wallMillimetres: figure(0.1, 2000).map(millimetres),
    areaSquareMetres: figure(0.01, 10_000).map(squareMetres),
    highestCelsius: degrees(0, 1500),
  },
  { requiredKeys: [] },
);

type Change = fc.Arbitrary<Amendment>;
const someOf = (
  fields: Partial<{ [Field in keyof Required<Amendment>]: fc.Arbitrary<Required<Amendment>[Field]> }>,
): Change => fc.record(fields, { requiredKeys: [] }).filter((change) => Object.keys(change).length > 0);
const target = (verb: AmendTarget['verb'], on: object): fc.Arbitrary<AmendTarget> =>
  fc.record({ verb: fc.constant(verb), ...on }, { requiredKeys: ['verb'] });

const amendments = fc.oneof(
  drawnMaterialAmendment,
  fc.tuple(target('weigh', { batch }), someOf({ at, partAGrams: mass, partBGrams: mass })),
  fc.tuple(target('empty', { batch }), someOf({ at, leftGrams: mass })),
  fc
    .tuple(
      fc.constantFrom(
        'mix' as const,
        'stir' as const,
        'stop' as const,
        'filter' as const,
        'thick' as const,
        'gel' as const,
      ),
      at,
      batch,
    )
    .map(([verb, when, number]): [AmendTarget, Amendment] => [{ verb, batch: number }, { at: when }]),
  fc
    .tuple(part, fc.record({ ofBatch: batch, onPart: part }))
    .map(([name, change]): [AmendTarget, Amendment] => [{ verb: 'coat', part: name }, change]),
  fc
    .tuple(batch, fc.constantFrom('demo-clear', 'demo-build'))
    .map(([number, ofSheet]): [AmendTarget, Amendment] => [{ verb: 'mix', batch: number }, { ofSheet }]),
  fc
    .tuple(
      fc.constantFrom(
        ...(['spray-on', 'spray-off', 'fan', 'supplied', 'rags'] as const satisfies readonly AmendTarget['verb'][]),
      ),
      batch,
      at,
    )
    .map(([verb, session, when]): [AmendTarget, Amendment] => [{ verb, session }, { at: when }]),
  fc.tuple(target('coat', { batch, part }), someOf({ at, method: fc.constantFrom(...methods), appliedBy: person })),
  fc.tuple(target('cure', { part }), someOf({ at, celsius: degrees(0, 400) })),
  fc.tuple(target('temp', { part }), someOf({ at, celsius: degrees(-40, 400) })),
  fc.tuple(target('film', { part }), someOf({ at, filmMicrometres: films })),
  fc.tuple(target('wet', { part }), someOf({ at, filmMicrometres: films })),
  fc
    .tuple(fc.constantFrom('dry' as const, 'out' as const, 'release' as const, 'hold' as const), at, part)
    .map(([verb, when, name]): [AmendTarget, Amendment] => [{ verb, part: name }, { at: when }]),
  fc.tuple(target('air', { place }), someOf({ at, celsius: degrees(-40, 60), relativeHumidityPercent: humidity })),
  fc.tuple(target('surface', { place }), someOf({ at, celsius: degrees(-40, 60) })),
  fc.tuple(target('night', { place }), someOf({ at, celsius: degrees(-40, 60) })),
);

export const drawnCommand: fc.Arbitrary<Command> = fc.oneof(
  fc.record(
    {
      verb: only('mix'),
      amount: fc.oneof(
        fc.record({ kind: only('mass'), grams: mass }),
        fc.record({ kind: only('volume'), litres: figure(0.01, 1000).map(litres) }),
      ),
      sheet,
      air,
    },
    { requiredKeys: ['verb', 'amount'] },
  ),
  fc.record(
    { verb: only('weigh'), batch, partAGrams: mass, partBGrams: mass },
    { requiredKeys: ['verb', 'partAGrams', 'partBGrams'] },
  ),
  ...numbered,
  fc.record({ verb: only('empty'), batch, leftGrams: figure(0, 1_000_000).map(grams) }, { requiredKeys: ['verb'] }),
  fc
    .record(
      {
        verb: only('part'),
        part,
        details,
        more: fc.array(fc.record({ part, details }), { minLength: 1, maxLength: 3 }),
      },
      { requiredKeys: ['verb', 'part', 'details'] },
    )
    .filter(
      ({ part: first, more = [] }) => new Set([first, ...more.map((each) => each.part)]).size === more.length + 1,
    ),
  fc
    .record({ verb: only('part'), row: rowOfParts, details })
    .map(({ verb, row: [part = '', ...more], details: said }) => ({
      ...{ verb, part, details: said },
      more: more.map((each) => ({ part: each, details: said })),
    })),
  ...drawnSession,
  ...partAndPeopleCommands({ only, part, parts, figure }),
  fc.record(
    {
      verb: only('coat'),
      parts,
      batch,
      method: fc.constantFrom(...methods),
      pass: only('same-coat'),
      appliedBy: person,
      place: fc.constantFrom('tank-9', 'pit', 'booth-2'),
      fromOutside: fc.constant(true as const),
      asNew: fc.constant(true as const),
    },
    { requiredKeys: ['verb', 'parts', 'method'] },
  ),
  fc.record({ verb: only('dry'), parts }),
  fc.record({
    verb: only('cure'),
    parts,
    way: fc.oneof(
      fc.record({ kind: only('oven'), setCelsius: degrees(0, 400) }, { requiredKeys: ['kind'] }),
      fc.record({ kind: only('room') }),
    ),
  }),
  fc.record({ verb: only('temp'), part, celsius: degrees(-40, 400) }, { requiredKeys: ['verb', 'celsius'] }),
  fc.record({ verb: only('out'), parts: fc.oneof(parts, fc.constant([])) }),
  fc.record({ verb: only('wet'), part, wetFilmMicrometres: films }),
  fc.record({ verb: only('film'), part, dryFilmMicrometres: films }),
  fc.record({ verb: only('release'), parts }),
  fc.record({ verb: only('shipped'), parts }),
  fc.record(
    { verb: only('hold'), parts, why: ownWords, owner: fc.constantFrom('kari', 'omar'), toDo: ownWords },
    { requiredKeys: ['verb', 'parts', 'why'] },
  ),
  fc.record({ verb: only('see-to'), parts, owner: fc.constantFrom('kari', 'omar') }),
  fc.record({ verb: only('see-to'), parts, toDo: ownWords }),
  fc.record({ verb: fc.constantFrom('rework' as const, 'scrap' as const), parts, why: ownWords }),
  fc.record(
    { verb: only('return'), parts, to: fc.constantFrom(...returnsTo), why: ownWords },
    { requiredKeys: ['verb', 'parts', 'why'] },
  ),
  fc.record(
    {
      verb: only('concession'),
      parts,
      person: fc.constantFrom('Ms. Hale', 'Kim'),
      document: fc.constantFrom('QA-118', 'letter 4711'),
      date: fc.constantFrom('2026-02-27', '2025-12-31'),
    },
    { requiredKeys: ['verb', 'parts'] },
  ),
  fc.record({ verb: only('air'), place, air, wetBulbCelsius: degrees(-40, 60) }, { requiredKeys: ['verb', 'air'] }),
  fc.record({ verb: only('surface'), place, celsius: degrees(-40, 120) }, { requiredKeys: ['verb', 'celsius'] }),
  fc.record({ verb: only('surface'), part, celsius: degrees(-40, 120) }),
  fc.record(
    { verb: only('night'), place, lowestCelsius: degrees(-40, 60) },
    { requiredKeys: ['verb', 'lowestCelsius'] },
  ),
  fc.record({ verb: only('ok') }),
  fc.record({
    verb: only('ok'),
    key: fc.constantFrom('batch/1/stir-done', 'crew/bell/12/Ana María'),
    also: fc.subarray(['part/a-1/flash-least', 'session/4/flush/1'], { minLength: 1 }),
  }),
  fc.record({ verb: only('undo') }),
  fc.record({ verb: only('undo'), entry: fc.integer({ min: 1, max: 99_999 }) }),
  fc.record({
    verb: only('undo'),
    entry: fc.integer({ min: 1, max: 99_999 }),
    despite: fc.integer({ min: 1, max: 99_999 }),
  }),
  fc
    .tuple(amendments, fc.oneof(ownWords, fc.constant('')))
    .map(([[of, change], why]): Command => ({ verb: 'amend', of, change, why })),
  fc
    .tuple(part, ownWords)
    .map(
      ([name, holdWhy]): Command => ({ verb: 'amend', of: { verb: 'hold', part: name }, change: { holdWhy }, why: '' }),
    ),
  fc.record({
    verb: only('used'),
    material: fc.constantFrom('acetone', 'isopropyl-alcohol', 'shop-thinner-2'),
    amount: fc.oneof(
      fc.record({ kind: only('mass'), grams: mass }),
      fc.record({ kind: only('volume'), litres: figure(0.01, 1000).map(litres) }),
    ),
    use: fc.constantFrom(...solventUses),
  }),
  fc.record({ verb: only('set'), setting: drawnSetting }),
  { arbitrary: drawnMaterial, weight: 6 },
);

export const drawnStance: fc.Arbitrary<Stance> = fc.oneof(
  fc.record({ is: only('asked') }),
  fc.record({ is: only('happened') }),
  fc.record({ is: only('permitted'), why: ownWords }),
);

export const drawnAt = fc.option(at, { nil: undefined });

/** Clock changes of an hour and of half an hour, offsets of three quarters of an hour, and none. */
export const drawnZone = fc.constantFrom(
  'UTC',
  'Europe/Madrid',
  'America/New_York',
  'Australia/Lord_Howe',
  'Asia/Kathmandu',
);
