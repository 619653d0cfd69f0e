// Answers to `vent`: a session's air, an oven load's, the oxygen left after a purge. And to `hazards`.

import { phaseOf } from '../../core/batch/batch.ts';
import { batchOvenFlow } from '../../core/calc/oven-air.ts';
import { oxygenAfterRelease, oxygenBand, oxygenDeficientBelow } from '../../core/calc/room-oxygen.ts';
import { faceFlow } from '../../core/calc/ventilation.ts';
import type { Question } from '../../core/commands.ts';
import { isFailed } from '../../core/failed.ts';
import { linesFor } from '../../core/session/brief-lines.ts';
import { solventsIn } from '../../core/session/session-air.ts';
import type { VapourAsked, Work } from '../../core/session/session-commands.ts';
import { findSession } from '../../core/session/session-decide.ts';
import { sheetFor } from '../../core/shop.ts';
import { cubicMetres, litres } from '../../core/units.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { cautionLines } from './caution.ts';
import { factsOf } from './facts.ts';
import { sessionAirCard } from './session-air-card.ts';
import { sheetTaps } from './sheet-taps.ts';
import { wayLines } from './step-lines.ts';

export function ventCard(telling: Telling, { asked }: Extract<Question, { ask: 'vent' }>): Card {
  switch (asked.of) {
    case 'session': {
      const session = findSession(telling.shop, asked.session);
      if (!isFailed(session)) return sessionAirCard(telling, session);
      return makeCard(telling.words.replies.notClear, 'warn', {
        lines: [telling.words.unclear(session.failed, telling.figures)],
      });
    }
    case 'oven':
      return ovenCard(telling, asked);
    case 'purge':
      return purgeCard(telling, asked);
    default: {
      const never: never = asked;
      return never;
    }
  }
}

/** By the crew's own sheet, all its solvent leaving in the oven. */
function ovenCard(telling: Telling, asked: Extract<VapourAsked, { of: 'oven' }>): Card {
  const words = telling.words.session;
  const sheet = sheetFor(telling.shop);
  const load = isFailed(sheet) ? undefined : solventsIn(sheet, asked.grams);
  const title = words.oven(asked.grams, asked.celsius, telling.figures);
  const flow = load === undefined ? undefined : batchOvenFlow(load, asked.celsius);
  if (load === undefined || flow === undefined || isFailed(flow)) {
    if (!isFailed(sheet)) return makeCard(title, 'warn', { lines: [words.noSum, ...cautionLines(telling)] });
    return makeCard(title, 'warn', {
      lines: [telling.words.unclear(sheet.failed, telling.figures), ...cautionLines(telling)],
      actions: sheetTaps(telling, sheet.failed, (id) => `set sheet ${id}`),
    });
  }
  const booth = telling.shop.crew.spray.booths.get('oven');
  const face = asked.faceMetresPerSecond;
  const result = booth === undefined || face === undefined ? undefined : faceFlow(booth.faceSquareMetres, face);
  const known = result === undefined || isFailed(result) ? undefined : result;
  const solvent = litres(load.reduce((sum, part) => sum + part.litres, 0));
  return makeCard(title, known !== undefined && known < flow ? 'warn' : 'plain', {
    facts: factsOf(telling, {
      'solvent-in-load': solvent,
      'oven-air': flow,
      'fan-gives': known,
      'fan-over-oven': known && known / flow,
    }),
    lines: [
      words.worstOven,
      ...(known === undefined ? [words.fanNotMeasured] : []),
      ...(booth === undefined ? [words.noBooth('oven')] : []),
      words.sumOnly,
      ...cautionLines(telling),
    ],
    hazards: [
      { text: telling.words.facts['oven-air'], source: telling.words.names.figureSource('oven') },
      { text: telling.words.facts['fan-gives'], source: telling.words.names.figureSource('fan') },
    ],
  });
}

function purgeCard(telling: Telling, asked: Extract<VapourAsked, { of: 'purge' }>): Card {
  const words = telling.words.session;
  const gas = cubicMetres(asked.gasLitres / 1000);
  const room = cubicMetres(asked.roomLitres / 1000);
  const title = words.purge(asked.gas, asked.gasLitres, asked.roomLitres, telling.figures);
  const oxygen = oxygenAfterRelease(room, gas);
  if (isFailed(oxygen)) return makeCard(title, 'warn', { lines: [words.noSum, ...cautionLines(telling)] });
  const deficient = oxygenBand(oxygen) === 'deficient';
  return makeCard(title, deficient ? 'stop' : 'plain', {
    facts: factsOf(telling, { 'oxygen-left': oxygen }),
    lines: [
      ...(deficient ? [words.purgeDeficient(oxygenDeficientBelow, telling.figures)] : []),
      words.purgeMixed,
      ...(asked.gas === 'argon' ? [words.settles] : []),
      words.sumOnly,
      ...cautionLines(telling),
    ],
    hazards: [
      { text: telling.words.facts['oxygen-left'], source: telling.words.names.figureSource('purge') },
      ...(asked.gas === 'argon' ? [{ text: words.settles, source: telling.words.names.figureSource('settled') }] : []),
    ],
  });
}

export function workHazards(telling: Telling, work: Work, lines = linesFor(work)): Card['hazards'] {
  return lines.map(({ id, source }) => ({
    text: telling.words.session.lines[id],
    source: telling.words.names.source(source),
  }));
}

/** Of a method also how it goes on, for the pot that is in use. */
export function hazardsCard(telling: Telling, { work, method }: Extract<Question, { ask: 'hazards' }>): Card {
  const words = telling.words.session;
  const [pot, ...others] = [...telling.shop.batches.values()].filter((batch) => phaseOf(batch).is === 'filtered');
  const isIt = pot !== undefined && method !== undefined && others.length === 0 && pot.sheet.methods.includes(method);
  return makeCard(words.hazardsOf(work), 'plain', {
    lines: [...(method === undefined ? [] : wayLines(telling, method, pot?.sheet)), ...cautionLines(telling)],
    hazards: workHazards(telling, work),
    actions: isIt ? [tap(telling, 'coat', `coat {part} ${pot.number} ${method}`)] : [],
  });
}
