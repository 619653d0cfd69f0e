// Commands round a spray session and in need, drawn at random within what a line can hold.

import fc from 'fast-check';
import { substanceIds } from '../../../core/calc/exposure-limits.ts';
import { type SolventId, solvents } from '../../../core/calc/solvents.ts';
import type { Command } from '../../../core/commands.ts';
import { methods } from '../../../core/methods.ts';
import { alarms, gears, qualifications, whereabouts } from '../../../core/session/session-commands.ts';
import {
  celsius,
  epochMs,
  grams,
  litres,
  metresPerSecond,
  milligramsPerCubicMetre,
  minutes,
  percent,
} from '../../../core/units.ts';
import { utc } from './shop-at-ten.ts';

const only = <V extends string>(verb: V) => fc.constant(verb);
const number = fc.integer({ min: 1, max: 1_000_000 });
const quarter = (max: number) => fc.integer({ min: 1, max: max * 4 }).map((value) => value / 4);
/** Names that a line could take for something else stand in quotes. */
export const person = fc.constantFrom(
  'kari',
  'lia',
  'noor-2',
  'Åse',
  'spray',
  'out',
  'booth 2',
  'at',
  '12',
  'a "b" \\c',
  'tank',
  'happened',
);
const people = fc.uniqueArray(person, { minLength: 1, maxLength: 4 });
const place = fc.constantFrom('booth', 'booth-2', 'hall', 'room');
const words = fc.constantFrom('hose by the door', 'permit at 9:40 already', 'a "green" one', '2l acetone', 'call 112');
const day = fc.constantFrom('2026-05-01', '2027-12-31', '2026-02-28');
const time = fc.integer({ min: utc('2026-01-01T00:00') / 60_000, max: utc('2026-03-02T22:00') / 60_000 });
const solvent = fc.constantFrom(...(Object.keys(solvents) as SolventId[]));
const speed = fc.integer({ min: 1, max: 4000 }).map((value) => metresPerSecond(value / 1000));

/** A brief that names a person twice, or nobody in a list, is not what a line says. */
const brief = fc
  .record(
    {
      verb: only('brief'),
      startsAt: time.map((at) => epochMs(at * 60_000)),
      batch: number,
      place,
      sprayers: people,
      stays: people,
      out: people,
      attendant: person,
      insideVessel: fc.constant(true as const),
      gramsPerHour: quarter(4000).map(grams),
    },
    { requiredKeys: ['verb'] },
  )
  // Half past two does not come in the night that the clocks go forward.
  .map(({ startsAt, ...rest }): Command => (startsAt === undefined ? rest : { ...rest, startsAt }));

export const drawnSession: readonly fc.Arbitrary<Command>[] = [
  brief,
  fc.record(
    { verb: only('near'), session: number, people, goes: fc.constantFrom(...whereabouts) },
    { requiredKeys: ['verb', 'people', 'goes'] },
  ),
  fc.record({ verb: only('ack'), session: number, people }, { requiredKeys: ['verb'] }),
  fc.record(
    { verb: only('fan'), session: number, running: fc.constant(true), faceMetresPerSecond: speed },
    { requiredKeys: ['verb', 'running'] },
  ),
  fc.record({ verb: only('fan'), session: number, running: fc.constant(false) }, { requiredKeys: ['verb', 'running'] }),
  fc.record(
    { verb: only('supplied'), session: number, supplied: fc.boolean() },
    { requiredKeys: ['verb', 'supplied'] },
  ),
  fc.record({ verb: only('spray-on'), session: number, place }, { requiredKeys: ['verb'] }),
  fc.record({ verb: only('spray-off'), session: number }, { requiredKeys: ['verb'] }),
  fc.record({ verb: only('rags'), session: number }, { requiredKeys: ['verb'] }),
  fc.record({ verb: only('close'), session: number }, { requiredKeys: ['verb'] }),
  fc.record(
    { verb: only('flush'), session: number, gear: fc.constantFrom(...gears), solvent, litres: quarter(40).map(litres) },
    { requiredKeys: ['verb', 'gear'] },
  ),
  fc.record({ verb: fc.constantFrom(...qualifications), person, until: day }),
  fc.record(
    {
      verb: only('breathing-check'),
      oxygen: quarter(100).map(percent),
      carbonMonoxide: quarter(1000),
      carbonDioxide: quarter(1000),
      oil: quarter(100).map(milligramsPerCubicMetre),
      dewPoint: quarter(60).map(celsius),
      odour: fc.constantFrom('none', 'noticeable'),
      cylinder: fc.constant(true as const),
      compressor: fc.constantFrom('2', 'north', 'The old one'),
    },
    { requiredKeys: ['verb', 'oxygen'] },
  ),
  fc.record(
    {
      ...{ verb: only('exposure'), person, substance: fc.constantFrom(...substanceIds) },
      ...{ taskMinutes: fc.integer({ min: 1, max: 1440 }).map(minutes), ppm: quarter(1000) },
      milligrams: quarter(1000).map(milligramsPerCubicMetre),
    },
    { requiredKeys: ['verb', 'person', 'substance', 'taskMinutes', 'ppm'] },
  ),
  fc.record(
    {
      ...{ verb: only('gases'), lel: quarter(100).map(percent), o2: quarter(100).map(percent) },
      ...{ co: quarter(1000), h2s: quarter(1000), place },
    },
    { requiredKeys: ['verb', 'lel', 'o2'] },
  ),
  fc.record(
    { verb: fc.constantFrom('lel', 'o2'), value: quarter(100).map(percent), place },
    { requiredKeys: ['verb', 'value'] },
  ),
  fc.record({ verb: fc.constantFrom('co', 'h2s'), value: quarter(1000), place }, { requiredKeys: ['verb', 'value'] }),
  fc.record({ verb: only('from-outside'), session: number }, { requiredKeys: ['verb'] }),
  fc.record(
    {
      verb: only('assess'),
      sheet: fc.constantFrom('demo-clear', 'demo-build'),
      place,
      method: fc.constantFrom(...methods),
      suppliedAir: fc.constantFrom('with', 'without'),
      until: day,
    },
    { requiredKeys: ['verb', 'method', 'suppliedAir', 'until'] },
  ),
  fc.record({ verb: only('near-miss'), text: words, anonymous: fc.boolean() }),
  ...alarms.map((alarm) => fc.record({ verb: only(alarm), note: words }, { requiredKeys: ['verb'] })),
  fc.record({ verb: only('hot'), batch: fc.integer({ min: 1, max: 999 }), note: words }, { requiredKeys: ['verb'] }),
  fc.record({ verb: only('no-alarm') }),
  fc.record({ verb: only('alarm-over') }),
  fc.record(
    {
      verb: only('alarm-over'),
      which: fc.constantFrom(...alarms, 'drill' as const, 'all' as const),
      place,
      pot: number,
      can: number,
    },
    { requiredKeys: ['verb'] },
  ),
  fc.record({ verb: only('drill'), what: fc.constantFrom(...alarms) }),
  fc.record({ verb: only('bell') }),
];
