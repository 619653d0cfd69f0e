// The sums of a session: what is asked of the air, what the fan gives, and what nobody measured.

import { leastFaceVelocityOf } from '../../core/calc/booth.ts';
import type { Session } from '../../core/session/session.ts';
import { fanGives } from '../../core/session/session-air.ts';
import { gramsSprayed, needOf } from '../../core/session/spray-case.ts';
import { stayOutOf } from '../../core/stay-out.ts';
import { type Card, type CardFact, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { cautionLines } from './caution.ts';
import { factsOf } from './facts.ts';
import { figureSource } from './figure-source.ts';
import { limitLines } from './limit-lines.ts';

interface Sums {
  readonly facts: readonly CardFact[];
  readonly lines: readonly string[];
}

export function sessionSums(telling: Telling, session: Session): Sums {
  const words = telling.words.session;
  const settings = telling.shop.crew.spray;
  const batch = session.batch === undefined ? undefined : telling.shop.batches.get(session.batch);
  const need = needOf({ session, batch, settings });
  const velocity = session.extraction?.running === true ? session.extraction.faceMetresPerSecond : undefined;
  const booth = settings.booths.get(session.place);
  const result = fanGives(booth, velocity);
  const least = {
    'face-least': leastFaceVelocityOf(booth?.faceSquareMetres),
    'face-velocity': velocity,
    'fan-gives': result,
  };
  if (need === undefined) return { facts: factsOf(telling, least), lines: [words.noSum] };
  const assumed = gramsSprayed({ session, batch })?.assumed === true;
  const leftOut = [...new Set([...need.withoutLel, ...need.withoutLimit])];
  const { forLel, forExposure } = need;
  const over = (asked: number | undefined) =>
    result === undefined || asked === undefined ? undefined : result / asked;
  return {
    facts: factsOf(telling, {
      'sprayed-per-hour': need.gramsPerHour,
      'solvent-per-hour': need.solventLitresPerHour,
      'lel-share': settings.lelShare,
      'air-for-lel': forLel,
      'mixing-factor': forExposure === undefined ? undefined : settings.mixingFactor,
      'air-for-exposure': forExposure,
      ...least,
      'fan-over-lel': over(forLel),
      'fan-over-exposure': over(forExposure),
    }),
    lines: [
      words.sumTerms(settings.lelShare, settings.mixingFactor, settings.mixingAssumed, telling.figures),
      ...(assumed ? [words.wholePot] : []),
      ...(result === undefined ? [words.fanNotMeasured] : []),
      ...(booth === undefined ? [words.noBooth(session.place, telling.figures)] : []),
      ...(leftOut.length === 0 ? [] : [words.withoutFigure(leftOut, telling.figures)]),
      words.sumOnly,
    ],
  };
}

const sources = [
  ['air-for-lel', 'lel'],
  ['air-for-exposure', 'exposure'],
  ['fan-gives', 'fan'],
  ['face-least', 'face'],
] as const;

/** Formula and source of each figure. */
export function sumSources(telling: Telling): Card['hazards'] {
  const { facts } = telling.words;
  return sources.map(([fact, source]) => ({ text: facts[fact], source: figureSource(telling, source) }));
}

export function sessionAirCard(telling: Telling, session: Session): Card {
  const { facts, lines } = sessionSums(telling, session);
  const { titled } = telling.words.session;
  return makeCard(titled(session.number, telling.words.buttons.vent), 'plain', {
    facts,
    lines: [...lines, ...limitLines(telling, session.sheet), ...cautionLines(telling)],
    hazards: sumSources(telling),
    actions:
      stayOutOf(telling.shop, session.place, telling.now) === undefined
        ? [tap(telling, 'fan-on', `fan ${session.number} on {face-velocity}mps`)]
        : [],
  });
}
