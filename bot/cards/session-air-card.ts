// The sums of a session: what is asked of the air, what the fan gives, and what nobody measured.

import { leastFaceVelocity } from '../../core/calc/booth.ts';
import type { Session } from '../../core/session/session.ts';
import { fanGives } from '../../core/session/session-air.ts';
import { gramsSprayed, needOf } from '../../core/session/session-rules.ts';
import {
  airAskedFact,
  airGivenFact,
  ratioFact,
  shareFact,
  solventRateFact,
  speedFact,
  sprayedFact,
} from './air-figure-facts.ts';
import { type Card, type CardFact, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';

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
  const face = velocity === undefined ? [] : [speedFact(telling, 'face-velocity', velocity)];
  const least = speedFact(telling, 'face-least', leastFaceVelocity['air-operated']);
  const result = fanGives(booth, velocity);
  const fan = result === undefined ? [] : [airGivenFact(telling, 'fan-gives', result)];
  if (need === undefined) return { facts: [least, ...face, ...fan], lines: [words.noSum] };
  const assumed = gramsSprayed({ session, batch })?.assumed === true;
  const leftOut = [...new Set([...need.withoutLel, ...need.withoutLimit])];
  return {
    facts: [
      sprayedFact(telling, need.gramsPerHour),
      solventRateFact(telling, need.solventLitresPerHour),
      shareFact(telling, settings.lelShare),
      ...(need.forLel === undefined ? [] : [airAskedFact(telling, 'air-for-lel', need.forLel)]),
      ...(need.forExposure === undefined
        ? []
        : [
            ratioFact(telling, 'mixing-factor', settings.mixingFactor),
            airAskedFact(telling, 'air-for-exposure', need.forExposure),
          ]),
      least,
      ...face,
      ...fan,
      ...(result === undefined || need.forLel === undefined
        ? []
        : [ratioFact(telling, 'fan-over-lel', result / need.forLel)]),
      ...(result === undefined || need.forExposure === undefined
        ? []
        : [ratioFact(telling, 'fan-over-exposure', result / need.forExposure)]),
    ],
    lines: [
      words.sumTerms(settings.lelShare, settings.mixingFactor, settings.mixingAssumed, telling.figures),
      ...(assumed ? [words.wholePot] : []),
      ...(result === undefined ? [words.fanNotMeasured] : []),
      ...(booth === undefined ? [words.noBooth(session.place)] : []),
      ...(leftOut.length === 0 ? [] : [words.withoutFigure(leftOut, telling.figures)]),
      words.sumOnly,
    ],
  };
}

/** Formula and source of each figure. */
export function sumSources(telling: Telling): Card['hazards'] {
  const { facts } = telling.words;
  return [
    { text: facts['air-for-lel'], source: telling.words.names.figureSource('lel') },
    { text: facts['air-for-exposure'], source: telling.words.names.figureSource('exposure') },
    { text: facts['fan-gives'], source: telling.words.names.figureSource('fan') },
    { text: facts['face-least'], source: telling.words.names.figureSource('face') },
  ];
}

export function sessionAirCard(telling: Telling, session: Session): Card {
  const { facts, lines } = sessionSums(telling, session);
  const { titled } = telling.words.session;
  return makeCard(titled(session.number, telling.words.buttons.vent), 'plain', {
    facts,
    lines: [...lines, telling.words.replies.caution],
    hazards: sumSources(telling),
    actions: [tap(telling, 'fan-on', `fan ${session.number} on {face-velocity}mps`)],
  });
}
