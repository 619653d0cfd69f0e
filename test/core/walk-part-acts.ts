// What a crew might say next of one part: into the oven and out, read, released, held.

import type { Command } from '../../core/commands.ts';
import { type Part, phaseOfPart } from '../../core/part/part.ts';
import { celsius, epochMs, micrometres, millimetres } from '../../core/units.ts';
import type { CureWay } from '../../core/verbs/said.ts';
import { oneOf, type Say } from './walk-acts.ts';

/** What the heat-up of a part needs. */
const castIron = (part: string): Command => ({
  ...{ verb: 'part', part },
  details: { metal: 'cast-iron', wallMillimetres: millimetres(12) },
});

const heatShy = (part: string): Command => ({ verb: 'part', part, details: { highestCelsius: celsius(80) } });

export function partActs(part: Part): readonly Say[] {
  const parts = [part.name];
  const oven: Say = (draw) => ({
    verb: 'cure',
    parts,
    way: oneOf<CureWay>(draw, [
      { kind: 'oven' },
      { kind: 'oven', setCelsius: celsius(90) },
      { kind: 'oven', setCelsius: celsius(105) },
      { kind: 'oven', setCelsius: celsius(130) },
      { kind: 'oven', setCelsius: celsius(125) },
    ]),
  });
  const room: Say = () => ({ verb: 'cure', parts, way: { kind: 'room' } });
  const dry: Say = () => ({ verb: 'dry', parts });
  const out: Say = () => ({ verb: 'out', parts });
  const release: Say = () => ({ verb: 'release', parts });
  const hold: Say = () => ({ verb: 'hold', parts, why: 'orange peel' });
  const temp: Say = (draw) => ({ verb: 'temp', part: part.name, celsius: celsius(oneOf(draw, [92, 92, 60, 115])) });
  const film: Say = () => ({ verb: 'film', part: part.name, dryFilmMicrometres: [micrometres(12)] });
  const wet: Say = () => ({ verb: 'wet', part: part.name, wetFilmMicrometres: [micrometres(60), micrometres(65)] });
  switch (phaseOfPart(part).is) {
    case 'bare':
      return [dry, oven, oven, out, out, release, () => heatShy(part.name)];
    case 'flashing':
      return [dry, dry, oven, oven, wet, () => heatShy(part.name)];
    case 'dry':
      return [oven, oven, room, room, out, (draw) => (draw(2) === 0 ? castIron(part.name) : heatShy(part.name)), oven];
    case 'curing':
      return [temp, temp, out, out, out, oven, release, () => castIron(part.name)];
    case 'cured':
      return [release, release, release, hold, film, out];
    case 'released':
      return [release, hold, hold];
    default:
      return [release, dry];
  }
}

/** Released once nothing holds it, then twice, or held after all. */
export function settled(part: Part): readonly Say[] {
  const parts = [part.name];
  const release: Say = () => ({ verb: 'release', parts });
  const { is } = phaseOfPart(part);
  if (is === 'cured' && part.verdict === undefined) return [release];
  return is === 'released' ? [release, () => ({ verb: 'hold', parts, why: 'orange peel' })] : [];
}

/** A hold of after a release, as if it had been before it. */
export function heldAgain({ name, verdict, entries }: Part): readonly Say[] {
  const released = entries.findLast(({ fact }) => fact.type === 'PartReleased');
  if (verdict?.is !== 'held' || released === undefined) return [];
  const at = epochMs(released.happenedAt - 1);
  return [() => ({ verb: 'amend', of: { verb: 'hold', part: name }, change: { at }, why: 'told late' })];
}
