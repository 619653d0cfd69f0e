// What a crew might say next round its spray sessions, and in need.

import type { Command, Stance } from '../../core/commands.ts';
import { flushState, isRunning, type Session, unacknowledged } from '../../core/session/session.ts';
import { alarms } from '../../core/session/session-commands.ts';
import type { Setting } from '../../core/settings.ts';
import type { Shop } from '../../core/shop.ts';
import {
  celsius,
  type EpochMs,
  epochMs,
  grams,
  litres,
  metresPerSecond,
  milligramsPerCubicMetre,
  minutes,
  minutesAfter,
  percent,
  squareMetres,
} from '../../core/units.ts';
import { type Draw, oneOf, type Say } from './walk-acts.ts';

const crew = ['kari', 'omar', 'rosa'] as const;

export function sessionActs(shop: Shop, now: EpochMs): readonly Say[] {
  const sessions = [...shop.sessions.values()].slice(-2);
  const open = sessions.filter(({ closedAt }) => closedAt === undefined);
  const brief: Say = (draw) => briefOf(shop, now, draw);
  // Mostly what the latest open one wants next; now and then what makes no sense.
  const next = open.slice(-1).flatMap((session) => Array.from({ length: 14 }, (): Say => stepIn(shop, session)));
  const countsDown = shop.crew.alarms.some(({ ringsAt }) => ringsAt > now);
  const inAlarm: Say = (draw) =>
    draw(2) === 0
      ? { verb: 'no-alarm' }
      : { verb: 'alarm-over', ...(draw(2) === 0 ? { which: oneOf(draw, alarms) } : {}) };
  return [
    ...Array.from({ length: countsDown ? 6 : Math.min(2, shop.crew.alarms.length) }, () => inAlarm),
    cried,
    ...Array.from({ length: open.length > 0 ? 1 : 5 }, () => brief),
    ...next,
    ...Array.from({ length: open.length === 0 && sessions.length > 0 ? 5 : 0 }, () => unbriefed(shop)),
    ...sessions.slice(-1).flatMap(strange),
    settled,
    settled,
    told,
  ];
}

function briefOf(shop: Shop, now: EpochMs, draw: Draw): Command {
  const batch = [...shop.batches.keys()].at(-1);
  return {
    verb: 'brief',
    ...(batch === undefined || draw(3) === 0 ? {} : { batch: draw(9) === 0 ? 99 : batch }),
    ...(draw(3) === 0 ? { insideVessel: true } : {}),
    ...(draw(3) === 0 ? { startsAt: minutesAfter(now, minutes(oneOf(draw, [10, 30, 60]))) } : {}),
    ...(draw(3) === 0 ? { place: oneOf(draw, ['booth', 'pit-1', 'pit-1']) } : {}),
    ...(draw(2) === 0 ? { sprayers: [oneOf(draw, crew)] } : {}),
    ...(draw(4) === 0 ? { stays: [oneOf(draw, [...crew, 'nobody-here'])] } : {}),
    ...(draw(2) === 0 ? { attendant: 'omar' } : {}),
    ...(draw(2) === 0 ? { gramsPerHour: grams(oneOf(draw, [600, 2400])) } : {}),
  };
}

function stepIn(shop: Shop, session: Session): Say {
  const acts = actsIn(shop, session);
  return (draw) => acts[draw(acts.length)]?.(draw) ?? { verb: 'ok' };
}

function actsIn(shop: Shop, session: Session): readonly Say[] {
  const named = { session: session.number };
  const left = unacknowledged(session);
  const ack: Say = () => ({ verb: 'ack', ...named, people: left.length > 0 ? left : [...session.sprayers] });
  const fan: Say = (draw) => {
    const face = oneOf(draw, [undefined, 0.3, 0.6, 0.6, 0.6]);
    const running = draw(5) > 0;
    return {
      ...{ verb: 'fan', ...named, running },
      ...(running && face !== undefined ? { faceMetresPerSecond: metresPerSecond(face) } : {}),
    };
  };
  const supplied: Say = (draw) => ({ verb: 'supplied', ...named, supplied: draw(4) > 0 });
  const sprayOn: Say = (draw) => ({
    verb: 'spray-on',
    ...(draw(2) === 0 ? named : {}),
    ...(draw(8) === 0 ? { place: 'hall' } : {}),
  });
  const sprayOff: Say = () => ({ verb: 'spray-off', ...named });
  const coat: Say = (draw) => ({
    ...{ verb: 'coat', parts: [oneOf(draw, ['rail-2', 'lid-1', 'valve-4'])], method: 'spray' },
    batch: session.batch ?? [...shop.batches.keys()].at(-1) ?? 1,
  });
  const flush: Say = (draw) => {
    const solvent = oneOf(draw, [undefined, 'acetone', 'isopropyl-alcohol'] as const);
    return {
      ...{ verb: 'flush', ...named, gear: oneOf(draw, ['gun', 'vessels'] as const), litres: litres(0.3) },
      ...(solvent === undefined ? {} : { solvent }),
    };
  };
  const fromOutside: Say = () => ({ verb: 'from-outside', ...named });
  const ranOut: Say = (draw) => ({
    ...{ verb: 'medical', person: session.sprayers[0] ?? 'kari' },
    until: oneOf(draw, ['2026-03-01', '2027-01-31']),
  });
  const rags: Say = () => ({ verb: 'rags', ...named });
  const close: Say = () => ({ verb: 'close', ...named });
  const near: Say = (draw) => ({
    ...{ verb: 'near', ...named, people: [oneOf(draw, crew)] },
    goes: oneOf(draw, ['sprays', 'stays', 'out'] as const),
  });
  const bare =
    (gear: 'gun' | 'vessels'): Say =>
    () => ({ verb: 'flush', ...named, gear });
  if (isRunning(session)) return [coat, sprayOff, sprayOff, sprayOff, near];
  if (session.spraying.length > 0) {
    const gun = flushState(session, 'gun').done;
    const vessels = flushState(session, 'vessels').done;
    if (gun && vessels) return [close, close, close, close, close, rags];
    return [gun ? bare('vessels') : bare('gun'), gun ? bare('vessels') : flush, close, rags, coat];
  }
  const wanted =
    left.length > 0
      ? ack
      : session.extraction === undefined
        ? fan
        : session.suppliedAir === undefined
          ? supplied
          : sprayOn;
  return [
    wanted,
    wanted,
    wanted,
    wanted,
    wanted,
    sprayOn,
    near,
    coat,
    fan,
    booth,
    () => onlyRosa,
    fromOutside,
    ranOut,
    close,
  ];
}

function unbriefed(shop: Shop): Say {
  return (draw) => ({
    ...{ verb: 'coat', parts: [oneOf(draw, ['rail-2', 'lid-1', 'valve-4'])], method: 'spray' },
    batch: [...shop.batches.keys()].at(-1) ?? 1,
  });
}

const booth: Say = () => ({
  verb: 'set',
  setting: { name: 'booth', place: 'room', faceSquareMetres: squareMetres(4) },
});
const onlyRosa: Command = { verb: 'set', setting: { name: 'sprayers', people: ['rosa'] } };

/** A session that is not there, or somebody who is not on its brief. */
function strange(session: Session): readonly Say[] {
  return [
    (draw) => ({ verb: oneOf(draw, ['close', 'rags'] as const), session: oneOf(draw, [97, session.number]) }),
    (draw) => ({ verb: 'ack', session: session.number, people: [oneOf(draw, crew)] }),
    () => ({ verb: 'spray-off' }),
  ];
}

function settled(draw: Draw): Command {
  return {
    verb: 'set',
    setting: oneOf<Setting>(draw, [
      { name: 'brief', on: true },
      { name: 'brief', on: false },
      { name: 'brief-ahead', minutes: minutes(20) },
      { name: 'sprayers', people: ['rosa'] },
      { name: 'sprayers', people: [] },
      { name: 'booth', place: 'room', faceSquareMetres: squareMetres(4) },
      { name: 'booth', place: 'room', faceSquareMetres: squareMetres(4) },
      { name: 'confined', place: 'pit-1', on: false },
      { name: 'lel', percent: percent(10) },
      { name: 'mixing', factor: 3 },
      { name: 'emergency', field: 'call', text: 'invented numbers' },
      { name: 'quiet', fromHour: 22, toHour: 6 },
      { name: 'bell', on: true },
    ]),
  };
}

function cried(draw: Draw): Command {
  const verb = oneOf(draw, alarms);
  return draw(2) === 0
    ? { verb, unsure: true, note: 'somebody is hurt' }
    : { verb, place: oneOf(draw, ['booth', 'booth', 'room', 'oven']) };
}

function told(draw: Draw): Command {
  return oneOf<Command>(draw, [
    { verb: oneOf(draw, alarms) },
    { verb: 'no-alarm' },
    { verb: 'alarm-over' },
    { verb: 'drill', what: oneOf(draw, alarms) },
    { verb: 'near-miss', text: 'hose by the door', anonymous: draw(2) === 0 },
    { verb: 'bell' },
    {
      verb: 'assess',
      place: oneOf(draw, ['room', 'booth']),
      sheet: 'own-clear',
      method: 'spray',
      suppliedAir: 'without',
      until: '2027-01-31',
    },
    { verb: 'shift', on: true },
    { verb: 'shift', on: false },
    {
      verb: oneOf(draw, ['fit', 'medical', 'training'] as const),
      person: oneOf(draw, crew),
      until: oneOf(draw, ['2026-03-01', '2026-03-04', '2027-01-31']),
    },
  ]);
}

/** The end of a spell or of a countdown, to be met a millisecond before, at, and after. */
export function sessionEdges(shop: Shop): readonly EpochMs[] {
  const countdowns = shop.crew.alarms.map(({ ringsAt }) => ringsAt);
  const spells = [...shop.sessions.values()].flatMap(({ spraying, sheet, closedAt }) => {
    const from = spraying[0]?.from;
    const longest = sheet.spray?.longestSpellMinutes;
    const ends = from === undefined || longest === undefined ? [] : [minutesAfter(from, longest)];
    return [...ends, ...(closedAt === undefined ? [] : [epochMs(closedAt)])];
  });
  return [...countdowns, ...spells];
}

/** A gas monitor beyond its limit, work that begins there all the same, readings within it and of the air: the last of some walks. */
export const lastRead: readonly { readonly command: Command; readonly stance: Stance }[] = [
  { command: { verb: 'lel', value: percent(12), place: 'booth' }, stance: { is: 'asked' } },
  { command: { verb: 'brief', place: 'booth' }, stance: { is: 'asked' } },
  { command: { verb: 'brief', place: 'booth' }, stance: { is: 'happened' } },
  { command: { verb: 'o2', value: percent(20.9), place: 'booth' }, stance: { is: 'asked' } },
  { command: { verb: 'co', value: 40, place: 'room' }, stance: { is: 'asked' } },
  { command: { verb: 'gases', lel: percent(0), o2: percent(20.9), place: 'room' }, stance: { is: 'asked' } },
  { command: { verb: 'h2s', value: 2 }, stance: { is: 'asked' } },
  // Twenty hours of it, and then ten more.
  ...[1200, 600].map((task) => ({
    command: {
      ...{ verb: 'exposure' as const, person: 'kari', substance: 'acetone' as const },
      ...{ taskMinutes: minutes(task), ppm: 12 },
    },
    stance: { is: 'asked' as const },
  })),
  // Two thermometers of which the wet one is the warmer.
  { command: { verb: 'air', air: { celsius: celsius(24) }, wetBulbCelsius: celsius(26) }, stance: { is: 'asked' } },
  { command: { verb: 'air', air: { celsius: celsius(24) }, wetBulbCelsius: celsius(17) }, stance: { is: 'asked' } },
];

/** Within what either standard asks, beside what is said of it. */
const breathed = {
  ...{ verb: 'breathing-check' as const, oxygen: percent(20.9), oil: milligramsPerCubicMetre(0.1) },
  odour: 'none' as const,
};

/** Breathing air that fails, then a check that is not whole, each before the gun that is fed by it: the last of some walks. */
export function breathedBadly(session: number): readonly { readonly command: Command; readonly stance: Stance }[] {
  const asked = (command: Command) => ({ command, stance: { is: 'asked' as const } });
  const sprayed = (['asked', 'happened'] as const).map((is) => ({
    command: { verb: 'spray-on' as const, session },
    stance: { is },
  }));
  return [
    asked({ verb: 'supplied', session, supplied: true }),
    asked({ ...breathed, carbonMonoxide: 14, carbonDioxide: 400 }),
    ...sprayed,
    asked({ verb: 'spray-off', session }),
    asked({ ...breathed, carbonMonoxide: 4 }),
    ...sprayed,
  ];
}
