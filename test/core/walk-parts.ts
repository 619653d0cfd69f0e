// What a crew might say next of surfaces, touch-ups, loads and tests, and of itself.

import { type Batch, phaseOf } from '../../core/batch/batch.ts';
import type { Command } from '../../core/commands.ts';
import { heatUp } from '../../core/part/heat-up.ts';
import { ovenLoads } from '../../core/part/oven-load.ts';
import { type Part, phaseOfPart } from '../../core/part/part.ts';
import { openUntil } from '../../core/part/part-clocks.ts';
import { awaitsCoat, earliestSurfaceEnd, sheetsAtHand } from '../../core/part/surface-life.ts';
import { airLog, batchOf, type Shop } from '../../core/shop.ts';
import {
  celsius,
  type EpochMs,
  grams,
  micrometres,
  microsiemensPerCentimetre,
  milligramsPerSquareMetre,
  minutes,
  volts,
} from '../../core/units.ts';
import { type Draw, oneOf, type Say } from './walk-acts.ts';

export function crewActs(shop: Shop): readonly Say[] {
  const rung = [...shop.batches.values(), ...shop.parts.values()].flatMap(({ rings }) => [...rings.keys()]);
  const waiting = shop.crew.shifts.handovers.some(({ takenAt }) => takenAt === undefined);
  return [
    (draw) => ({ verb: 'shift', on: draw(2) === 0 }),
    () => ({ verb: 'used', material: 'acetone', amount: { kind: 'mass', grams: grams(400) }, use: 'gun-cleaning' }),
    (draw) => ({ verb: 'handover', to: oneOf(draw, ['rosa', 'omar', 'kari', 'nobody']) }),
    ...Array.from({ length: waiting ? 3 : 1 }, (): Say => () => ({ verb: 'takeover' })),
    () => ({ verb: 'first-shift' }),
    (draw) => ({ verb: 'first-shift-done', person: oneOf(draw, ['kari', 'omar', 'nobody']) }),
    () => ({ verb: 'first-shift-off' }),
    () => ({ verb: 'snooze', minutes: minutes(5) }),
    (draw) => ({ verb: 'remind', minutes: minutes(5 + draw(40)), text: 'look at it' }),
    (draw) => {
      const key = rung[draw(Math.max(1, rung.length))];
      return { verb: 'snooze', minutes: minutes(10), ...(key === undefined ? {} : { key }) };
    },
  ];
}

export function surfaceActs(shop: Shop): readonly Say[] {
  const pots = [...shop.batches.values()].filter((batch) => canCoat(batch));
  const waiting = [...shop.parts.values()].filter(awaitsCoat).slice(-2);
  const built = pots.filter(({ sheet }) => sheet.surfaceLife !== undefined);
  return [
    prep,
    prep,
    (draw) => ({
      verb: 'surface',
      part: surfaceName(draw),
      ...saidNew(draw),
      celsius: celsius(oneOf(draw, [20, 22, 11])),
    }),
    ...(waiting.length > 0 && built.length === 0 ? [build, build] : []),
    ...waiting.flatMap((part) => built.slice(-1).flatMap((batch) => [coatOf(part, batch), coatOf(part, batch)])),
    ...[...shop.parts.values()].flatMap((part) => pots.slice(-1).flatMap((batch) => touchUps(part, batch))),
  ];
}

/** A coat of the build on steel whose life is over, or a pot to make it from. */
export function surfaceLate(shop: Shop, now: EpochMs): readonly Say[] {
  const atHand = sheetsAtHand(shop);
  const late = [...shop.parts.values()].filter((part) => {
    const end = earliestSurfaceEnd(part, atHand, airLog(shop));
    return end !== undefined && end.at <= now;
  });
  const built = [...shop.batches.values()].filter((batch) => canCoat(batch) && batch.sheet.surfaceLife !== undefined);
  return late.flatMap((part) => built.slice(-1).map((batch) => coatOf(part, batch)));
}

/** Mostly it is said that a name is new: else it is asked about. */
export const saidNew = (draw: Draw): { readonly asNew?: true } => (draw(6) === 0 ? {} : { asNew: true });

/** A coat on steel that is rougher than any of the sheets asks for. */
export function roughCoats(shop: Shop): readonly Say[] {
  const pots = [...shop.batches.values()].filter((batch) => canCoat(batch));
  const rough = [...shop.parts.values()].filter(
    (part) => awaitsCoat(part) && (part.prepared?.profileMicrometres ?? 0) > 75,
  );
  return rough.flatMap((part) => pots.slice(-1).map((batch) => coatOf(part, batch)));
}

const canCoat = (batch: Batch): boolean => ['filtered', 'blending', 'paused'].includes(phaseOf(batch).is);

const build: Say = () => ({ verb: 'mix', amount: { kind: 'mass', grams: grams(6450) }, sheet: 'own-build' });

const surfaceName = (draw: Draw): string => oneOf(draw, ['gate-5', 'gate-6', 'gaet-5']);

function prep(draw: Draw): Command {
  return {
    ...{ verb: 'prep', parts: [surfaceName(draw)], ...saidNew(draw), grade: oneOf(draw, ['sa2.5', 'sp10']) },
    ...(draw(2) === 0 ? {} : { profileMicrometres: micrometres(oneOf(draw, [60, 60, 90])) }),
    ...oneOf<Partial<Extract<Command, { verb: 'prep' }>>>(draw, [
      {},
      { saltsMilligramsPerSquareMetre: milligramsPerSquareMetre(12), dustRating: 1 },
      { saltsMicrosiemensPerCentimetre: microsiemensPerCentimetre(12), dustRating: 1 },
    ]),
  };
}

const coatOf =
  (part: Part, batch: Batch): Say =>
  () => ({ verb: 'coat', parts: [part.name], batch: batch.number, method: 'brush' });

/** Another pass while the film is wet, or as if it were. */
export function touchUps(part: Part, batch: Batch): readonly Say[] {
  if (phaseOfPart(part).is !== 'flashing') return [];
  return [
    (draw) => ({
      ...{ verb: 'coat', parts: [part.name], batch: batch.number, pass: 'same-coat' },
      method: oneOf(draw, ['brush', 'brush', 'dip']),
    }),
  ];
}

export function loadActs(shop: Shop): readonly Say[] {
  const dry = [...shop.parts.values()].filter((part) => phaseOfPart(part).is === 'dry').map(({ name }) => name);
  const loaded = ovenLoads(shop).length > 0;
  return [
    ...(dry.length > 1 ? [(): Command => ({ verb: 'cure', parts: dry.slice(0, 3), way: { kind: 'oven' } })] : []),
    ...[...shop.parts.keys()].slice(-1).flatMap(filmTests),
    ...(loaded ? [door, door, (): Command => ({ verb: 'out', parts: [] })] : [door]),
  ];
}

/** A film may be tested whenever there is one, or none. */
function filmTests(part: string): readonly Say[] {
  const test: Say = (draw) =>
    oneOf<Command>(draw, [
      { verb: 'rub', part, doubleRubs: 50, result: 'no-effect' },
      { verb: 'adhesion', part, rating: '5B' },
      { verb: 'rub', part, doubleRubs: 25, result: 'softened', coupon: true },
      { verb: 'rub', part, doubleRubs: 50, result: 'through' },
      { verb: 'adhesion', part, rating: '1B', coupon: true },
      { verb: 'gloss', part, glossUnits: 85 },
      { verb: 'holidays', part, found: 0, volts: volts(500) },
      { verb: 'holidays', part, found: 2, volts: volts(500), coupon: true },
      { verb: 'film', part, dryFilmMicrometres: [micrometres(4), micrometres(5)] },
    ]);
  return [test, test];
}

const door: Say = (draw) => ({ verb: 'door', parts: [], ...(draw(2) === 0 ? {} : { openMinutes: minutes(5) }) });

/** Times at which a surface, a wet film or a load turns. */
export function surfaceEdges(shop: Shop): readonly (EpochMs | undefined)[] {
  const atHand = sheetsAtHand(shop);
  return [...shop.parts.values()].flatMap((part) => {
    const batch = batchOf(shop, part);
    const coat = part.coats.at(-1);
    const air = airLog(shop, batch?.place);
    const end = earliestSurfaceEnd(part, atHand, air)?.at;
    if (batch === undefined || coat === undefined) return [end];
    const open = phaseOfPart(part).is === 'flashing' ? openUntil(batch.sheet, coat, air) : undefined;
    return [end, open, heatUp(part, batch.sheet, air)?.reachesAt];
  });
}
