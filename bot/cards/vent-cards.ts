// Answers to `vent`: a session's air, an oven load's, the oxygen left after a purge. And to `hazards`.

import { batchOvenFlow } from '../../core/calc/oven-air.ts';
import { oxygenAfterRelease, oxygenBand, oxygenDeficientBelow } from '../../core/calc/room-oxygen.ts';
import { faceFlow } from '../../core/calc/ventilation.ts';
import type { Question } from '../../core/commands.ts';
import { isFailed } from '../../core/failed.ts';
import { sheetMeant } from '../../core/products/shelf.ts';
import { linesFor } from '../../core/session/brief-lines.ts';
import { solventsIn } from '../../core/session/session-air.ts';
import type { VapourAsked, Work } from '../../core/session/session-commands.ts';
import { findSession } from '../../core/session/session-decide.ts';
import { lastSaid } from '../../core/settled.ts';
import { cubicMetres, litres } from '../../core/units.ts';
import { airAskedFact, airGivenFact, ratioFact } from './air-figure-facts.ts';
import { type Card, type CardFact, makeCard } from './card.ts';
import { percentFact, type Telling, volumeFact } from './card-context.ts';
import { sessionAirCard } from './session-air-card.ts';
import { sheetTaps } from './sheet-taps.ts';

export function ventCard(t: Telling, { asked }: Extract<Question, { ask: 'vent' }>): Card {
  switch (asked.of) {
    case 'session': {
      const session = findSession(t.shop, asked.session);
      if (!isFailed(session)) return sessionAirCard(t, session);
      return makeCard(t.words.replies.notClear, 'warn', { lines: [t.words.unclear(session.failed, t.f)] });
    }
    case 'oven':
      return ovenCard(t, asked);
    case 'purge':
      return purgeCard(t, asked);
    default: {
      const never: never = asked;
      return never;
    }
  }
}

/** By the crew's own sheet, all its solvent leaving in the oven. */
function ovenCard(t: Telling, asked: Extract<VapourAsked, { of: 'oven' }>): Card {
  const words = t.words.session;
  const sheet = sheetMeant(t.shop.shelf, lastSaid(t.shop.crew, 'sheet')?.sheet);
  const load = isFailed(sheet) ? undefined : solventsIn(sheet, asked.grams);
  const title = words.oven(asked.grams, asked.celsius, t.f);
  const flow = load === undefined ? undefined : batchOvenFlow(load, asked.celsius);
  if (load === undefined || flow === undefined || isFailed(flow)) {
    if (!isFailed(sheet)) return makeCard(title, 'warn', { lines: [words.noSum, t.words.replies.caution] });
    return makeCard(title, 'warn', {
      lines: [t.words.unclear(sheet.failed, t.f), t.words.replies.caution],
      actions: sheetTaps(t, sheet.failed, (id) => `set sheet ${id}`),
    });
  }
  const booth = t.shop.crew.spray.booths.get('oven');
  const face = asked.faceMetresPerSecond;
  const gives = booth === undefined || face === undefined ? undefined : faceFlow(booth.faceSquareMetres, face);
  const known = gives === undefined || isFailed(gives) ? undefined : gives;
  const solvent = litres(load.reduce((sum, part) => sum + part.litres, 0));
  const fan: readonly CardFact[] =
    known === undefined ? [] : [airGivenFact(t, 'fan-gives', known), ratioFact(t, 'fan-over-oven', known / flow)];
  return makeCard(title, known !== undefined && known < flow ? 'warn' : 'plain', {
    facts: [volumeFact(t, 'solvent-in-load', solvent), airAskedFact(t, 'oven-air', flow), ...fan],
    lines: [
      words.worstOven,
      ...(known === undefined ? [words.fanNotMeasured] : []),
      ...(booth === undefined ? [words.noBooth('oven')] : []),
      words.sumOnly,
      t.words.replies.caution,
    ],
    hazards: [
      { text: t.words.facts['oven-air'], source: t.words.names.figureSource('oven') },
      { text: t.words.facts['fan-gives'], source: t.words.names.figureSource('fan') },
    ],
  });
}

function purgeCard(t: Telling, asked: Extract<VapourAsked, { of: 'purge' }>): Card {
  const words = t.words.session;
  const gas = cubicMetres(asked.gasLitres / 1000);
  const room = cubicMetres(asked.roomLitres / 1000);
  const title = words.purge(asked.gas, asked.gasLitres, asked.roomLitres, t.f);
  const oxygen = oxygenAfterRelease(room, gas);
  if (isFailed(oxygen)) return makeCard(title, 'warn', { lines: [words.noSum, t.words.replies.caution] });
  const deficient = oxygenBand(oxygen) === 'deficient';
  return makeCard(title, deficient ? 'stop' : 'plain', {
    // Down to a hundredth: 19.496 is not 19.5.
    facts: [{ ...percentFact(t, 'oxygen-left', oxygen, 2), shown: t.f.percent(Math.floor(oxygen * 100) / 100, 2) }],
    lines: [
      ...(deficient ? [words.purgeDeficient(oxygenDeficientBelow, t.f)] : []),
      words.purgeMixed,
      ...(asked.gas === 'argon' ? [words.settles] : []),
      words.sumOnly,
      t.words.replies.caution,
    ],
    hazards: [
      { text: t.words.facts['oxygen-left'], source: t.words.names.figureSource('purge') },
      ...(asked.gas === 'argon' ? [{ text: words.settles, source: t.words.names.figureSource('settled') }] : []),
    ],
  });
}

export function workHazards(t: Telling, work: Work): Card['hazards'] {
  return linesFor(work).map(({ id, source }) => ({
    text: t.words.session.lines[id],
    source: t.words.names.source(source),
  }));
}

export function hazardsCard(t: Telling, work: Work): Card {
  const words = t.words.session;
  return makeCard(words.hazardsOf(work), 'plain', {
    lines: [t.words.replies.caution],
    hazards: workHazards(t, work),
  });
}
