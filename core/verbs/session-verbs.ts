// What can be said round a spray session, and in need. Which session may be left out where only one is open.

import { substanceIds } from '../calc/exposure-limits.ts';
import { solventIds } from '../calc/solvents.ts';
import type { HeatSign } from '../heat-care.ts';
import type { CanNumber, PlaceName } from '../ids.ts';
import { methods } from '../methods.ts';
import { alarms, gears, whereabouts } from '../session/session-commands.ts';
import {
  choice,
  count,
  day,
  duration,
  instant,
  mark,
  mass,
  mist,
  ownWords,
  people,
  person,
  place,
  ppm,
  share,
  sheet,
  speed,
  temperature,
  text,
  unasked,
  volume,
  yesOrNo,
} from './slot.ts';
import { verb } from './verb.ts';

const vouching = { vouches: true } as const;
const session = count('session');
const ofSession = verb({ session });
const note = ownWords('told');
/** Rings by itself a little later, unless somebody says no: the line does not tell for certain that it is so now. */
const unsure = unasked<boolean>('own-way');
const named = unasked<PlaceName>('own-way');
const alarm = verb({ note, unsure, place: named }, { endsInWords: true, calls: true });
/** The last day on which it counts. */
const qualification = verb(
  { person: person('person', { required: true }), until: day('until-day', { required: true }) },
  { leastRole: 'lead', vouches: true },
);

/** What an assessment allows: to spray without supplied air, or with it alone. */
const assessedAir = { without: 'without-supplied-air', with: 'with-supplied-air' };

export const sessionVerbs = {
  brief: verb(
    {
      batch: count('batch'),
      /** Posted ahead of this time. */
      startsAt: instant('starts-at'),
      place: place('place'),
      sprayers: people('people', { behind: 'spray' }),
      stays: people('people', { behind: 'stays' }),
      out: people('people', { behind: 'out' }),
      /** Stands outside; the timers go there. */
      attendant: person('people', { behind: 'outside' }),
      insideVessel: mark('people', 'vessel'),
      /** Mix that will be sprayed in an hour. */
      gramsPerHour: mass('spray-rate'),
    },
    vouching,
  ),
  near: verb(
    {
      session,
      people: people('people', { required: true }),
      goes: choice('whereabouts', whereabouts, { required: true, offered: ['out', 'stays', 'sprays'] }),
    },
    vouching,
  ),
  /** Of the speaker, or of others who said it before the speaker as their witness. */
  ack: verb({ session, people: people('people') }, vouching),
  fan: verb(
    {
      session,
      /** What is measured runs. */
      running: yesOrNo('fan-state', { required: true, shownBy: 'faceMetresPerSecond', offered: ['on', 'no'] }),
      faceMetresPerSecond: speed('face-velocity', { amend: true }),
    },
    { ...vouching, leaves: { type: 'ExtractionSaid' } },
  ),
  supplied: verb(
    { session, supplied: yesOrNo('yes-or-no', { required: true, amend: true }, ['yes', 'no']) },
    { ...vouching, leaves: { type: 'SuppliedAirSaid' } },
  ),
  /** Of a place whose name means a vessel, a pit or their like: sprayed into from outside, nobody in it. */
  'from-outside': verb({ session }, vouching),
  'spray-on': verb({ session, place: place('place') }, { ...vouching, leaves: { type: 'SprayStarted' } }),
  'spray-off': verb({ session }, { leaves: { type: 'SprayStopped' } }),
  /** Of a session, or by its number of a batch. Without a solvent: through with the whole of the sheet's sequence. */
  flush: verb(
    {
      session,
      gear: choice('gear', gears, { usual: 'gun', amend: true }),
      solvent: choice('solvent', solventIds, { amend: true }),
      litres: volume('flush-volume', { amend: true }, { units: ['mL', 'L', 'fl oz'], highest: 200_000, above: false }),
    },
    { leaves: { type: 'GearFlushed' }, on: 'session' },
  ),
  rags: verb({ session }, { leaves: { type: 'WasteCanned' } }),
  close: ofSession,
  fit: qualification,
  medical: qualification,
  training: qualification,
  /** Spraying there without supplied air, or with it alone, until that day: a day that has passed ends it. */
  assess: verb(
    {
      sheet: sheet('sheet'),
      place: place('place'),
      method: choice('method', methods, { usual: 'spray' }),
      suppliedAir: choice('assessed-air', ['without', 'with'], { required: true }, assessedAir),
      until: day('until-day', { required: true }),
    },
    { leastRole: 'supervisor', decision: true },
  ),
  /** What an analysis or the tubes showed of the air that hoods and masks are fed with. */
  'breathing-check': verb(
    {
      oxygen: share('air-oxygen', { behind: 'o2' }, { above: false }),
      carbonMonoxide: ppm('air-co', { behind: 'co' }),
      carbonDioxide: ppm('air-co2', { behind: 'co2' }),
      oil: mist('air-oil', { behind: 'oil' }),
      dewPoint: temperature('air-dew', { behind: 'dew' }, { lowest: -110 }),
      odour: choice('odour', ['none', 'noticeable'], {}, { none: 'no-smell', noticeable: 'smell' }),
      cylinder: mark('air-supply', 'cylinder'),
      compressor: text('compressor', { behind: 'compressor' }),
    },
    { oneOf: ['oxygen', 'carbonMonoxide', 'carbonDioxide', 'oil', 'dewPoint', 'odour'], vouches: true },
  ),
  /** What a sampler on one person showed over one task. */
  exposure: verb(
    {
      person: person('person', { required: true }),
      substance: choice('substance', substanceIds, { required: true, offered: ['acetone', 'toluene', 'xylene'] }),
      taskMinutes: duration(
        'task-time',
        { required: true, offered: ['15m', '2h', '8h'] },
        { highest: 1440, lowest: 0, above: true },
      ),
      ppm: ppm('breathed'),
      milligrams: mist('breathed-mass'),
    },
    { oneOf: ['ppm', 'milligrams'] },
  ),
  'near-miss': verb(
    {
      text: ownWords('told', { required: true }),
      anonymous: unasked<boolean, { orNone: true }>('own-way', { orNone: true }),
    },
    { endsInWords: true },
  ),
  eyes: alarm,
  spill: alarm,
  fire: alarm,
  down: alarm,
  /** A pot or a can that heats, smokes or swells. */
  hot: verb(
    {
      batch: count('batch'),
      note,
      unsure,
      place: named,
      can: unasked<CanNumber>('own-way'),
      /** Left out, it is a pot. */
      heats: unasked<'can' | 'either'>('own-way'),
      seen: unasked<HeatSign>('own-way'),
    },
    { endsInWords: true, calls: true },
  ),
  /** Soaked, splashed or burnt. */
  'skin-burn': alarm,
  breathless: alarm,
  /** What it is nobody has said. */
  emergency: alarm,
  /** To a countdown: anybody's. */
  'no-alarm': verb({}),
  /** The only one that is on; of several which, by what, where, or what it is of. */
  'alarm-over': verb(
    {
      which: choice('alarm-to-end', [...alarms, 'drill', 'all']),
      place: place('place'),
      pot: count('batch'),
      can: count('can', { behind: 'can' }),
    },
    { leastRole: 'lead', decision: true },
  ),
  drill: verb({ what: choice('alarm', alarms, { required: true }) }, { leastRole: 'lead', decision: true }),
  /** Everybody is to answer: is the bell alive? */
  bell: verb({}),
};
