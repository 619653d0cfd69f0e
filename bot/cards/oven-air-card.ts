// The air that an oven load needs, as its fan moves it hot: asked by `vent oven`, and on the card of what goes in.

import { purgeBeforeHeat } from '../../core/calc/ventilation.ts';
import { type NoOvenAir, ovenAir, wetInOven } from '../../core/coat/oven-air-need.ts';
import { isFailed } from '../../core/failed.ts';
import { fanGives } from '../../core/session/session-air.ts';
import type { VapourAsked } from '../../core/session/session-commands.ts';
import { sheetFor } from '../../core/shop.ts';
import type { PartNow } from '../../core/status.ts';
import { grams, squareMetres } from '../../core/units.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { cautionLines } from './caution.ts';
import { factsOf } from './facts.ts';
import { figureSource } from './figure-source.ts';
import { oldTableLines } from './limit-lines.ts';
import { sheetTaps } from './sheet-taps.ts';

/** A duct 80 cm wide: what is larger is the opening of a door. Our reading, no source. */
const largestDuct = squareMetres(0.5);

/** By the crew's own sheet, all its solvent leaving in the oven. */
export function ovenCard(telling: Telling, asked: Extract<VapourAsked, { of: 'oven' }>): Card {
  const words = telling.words.session;
  const sheet = sheetFor(telling.shop);
  const title = words.oven(asked.grams, asked.celsius, telling.figures);
  if (isFailed(sheet)) {
    return makeCard(title, 'warn', {
      lines: [telling.words.unclear(sheet.failed, telling.figures), ...cautionLines(telling)],
      actions: sheetTaps(telling, sheet.failed, (id) => `set sheet ${id}`),
    });
  }
  const need = ovenAir([{ sheet, grams: asked.grams }], asked.celsius);
  if (isFailed(need)) {
    return makeCard(title, 'warn', { lines: [noOvenAir(telling, need.failed), ...cautionLines(telling)] });
  }
  const opening = telling.shop.crew.spray.booths.get('oven');
  const isDoor = opening !== undefined && opening.faceSquareMetres > largestDuct;
  const duct = isDoor ? undefined : opening;
  const known = fanGives(duct, asked.faceMetresPerSecond);
  const purge =
    known !== undefined && duct?.cubicMetres !== undefined ? purgeBeforeHeat(duct.cubicMetres, known) : undefined;
  return makeCard(title, known === undefined || known < need.flow ? 'warn' : 'plain', {
    facts: factsOf(telling, {
      'solvent-in-load': need.solventLitres,
      'oven-air': need.flow,
      'fan-gives': known,
      'fan-over-oven': known && known / need.flow,
    }),
    lines: [
      words.worstOven,
      ...oldTableLines(
        telling,
        (sheet.spray?.solvents ?? []).map(({ solvent }) => solvent),
      ),
      ...(known === undefined ? [words.fanNotMeasured] : []),
      ...(isDoor ? [words.ovenDoor(opening.faceSquareMetres, telling.figures)] : []),
      ...(duct === undefined ? [words.ovenDuct] : []),
      ...(purge === undefined || isFailed(purge) ? [] : [words.ovenPurge(purge, telling.figures)]),
      words.sumOnly,
      ...cautionLines(telling),
    ],
    hazards: [
      { text: telling.words.facts['oven-air'], source: figureSource(telling, 'oven') },
      { text: telling.words.facts['fan-gives'], source: figureSource(telling, 'fan') },
      vapourHazard(telling),
    ],
  });
}

export const vapourHazard = (telling: Telling): Card['hazards'][number] => ({
  text: telling.words.session.ovenVapour,
  source: figureSource(telling, 'oven-purge'),
});

function noOvenAir(telling: Telling, without: NoOvenAir): string {
  const words = telling.words.session;
  switch (without.why) {
    case 'no-solvents':
      return words.ovenNoSolvents(without.sheet);
    case 'no-figure':
      return words.ovenNoFigure(without.solvents, telling.figures);
    case 'too-hot':
      return words.ovenTooHot(without.hottestCelsius, telling.figures);
  }
}

/** While it can still be done: what is told of the oven once the load is in it comes too late. */
export const withOvenPurge = (telling: Telling, { next }: PartNow, card: Card): Card =>
  next().some(({ id }) => id === 'cure-oven') ? { ...card, hazards: [...card.hazards, vapourHazard(telling)] } : card;

/** What went into the oven now, with what else is in it: its vapour, the purge before it, and the air that its fan must move. */
export function withOvenAir(telling: Telling, { part, sheet }: PartNow, card: Card): Card {
  const oven = part.cure?.setCelsius ?? sheet?.cure.oven?.atCelsius;
  if (part.cure?.way !== 'oven' || part.cure.run.to !== undefined || oven === undefined) return card;
  const wet = wetInOven(telling.shop);
  const mixed = grams(wet.reduce((sum, mix) => sum + mix.grams, 0));
  const need = ovenAir(wet, oven);
  const line = isFailed(need)
    ? noOvenAir(telling, need.failed)
    : telling.words.session.ovenLoad(mixed, need.flow, oven, telling.figures);
  return {
    ...card,
    lines: [...card.lines, line],
    hazards: [...card.hazards, vapourHazard(telling)],
    actions: [...card.actions, tap(telling, 'vent', `vent oven ${mixed}g ${oven}C {face-velocity}mps`)],
  };
}
