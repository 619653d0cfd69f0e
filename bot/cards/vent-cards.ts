// Answers to `vent`: a session's air, an oven load's, the oxygen left after a purge. And to `hazards`.

import { phaseOf } from '../../core/batch/batch.ts';
import { oxygenAfterRelease, oxygenBand, oxygenDeficientBelow } from '../../core/calc/room-oxygen.ts';
import type { Question } from '../../core/commands.ts';
import { isFailed } from '../../core/failed.ts';
import { linesFor } from '../../core/session/brief-lines.ts';
import type { VapourAsked, Work } from '../../core/session/session-commands.ts';
import { findSession } from '../../core/session/session-decide.ts';
import { sheetFor } from '../../core/shop.ts';
import { saidBeforeCleaning } from '../../core/steps/steps-said.ts';
import { cubicMetres } from '../../core/units.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { cautionLines } from './caution.ts';
import { factsOf } from './facts.ts';
import { figureSource } from './figure-source.ts';
import { ovenCard } from './oven-air-card.ts';
import { sessionAirCard } from './session-air-card.ts';
import { saidLines, wayLines } from './step-lines.ts';

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
      { text: telling.words.facts['oxygen-left'], source: figureSource(telling, 'purge') },
      ...(asked.gas === 'argon' ? [{ text: words.settles, source: figureSource(telling, 'settled') }] : []),
    ],
  });
}

export function workHazards(telling: Telling, work: Work, lines = linesFor(work)): Card['hazards'] {
  return lines.map(({ id, source }) => ({
    text: telling.words.session.lines[id],
    source: telling.words.names.source(source[telling.shop.crew.spray.law.frame]),
  }));
}

/** Of a method also how it goes on, for the pot that is in use. */
export function hazardsCard(telling: Telling, { work, method }: Extract<Question, { ask: 'hazards' }>): Card {
  const words = telling.words.session;
  const [pot, ...others] = [...telling.shop.batches.values()].filter((batch) => phaseOf(batch).is === 'filtered');
  const isIt = pot !== undefined && method !== undefined && others.length === 0 && pot.sheet.methods.includes(method);
  const usual = sheetFor(telling.shop);
  const sheet = pot?.sheet ?? (isFailed(usual) ? undefined : usual);
  const wiping = work === 'wipe' && sheet !== undefined ? saidLines(telling, saidBeforeCleaning(sheet)) : [];
  const lines = method === undefined ? wiping : wayLines(telling, method, sheet);
  return makeCard(words.hazardsOf(work), 'plain', {
    lines: [...lines, ...cautionLines(telling)],
    hazards: workHazards(telling, work),
    actions: isIt ? [tap(telling, 'coat', `coat {part} ${pot.number} ${method}`)] : [],
  });
}
