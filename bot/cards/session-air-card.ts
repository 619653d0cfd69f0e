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

export function sessionSums(t: Telling, session: Session): Sums {
  const words = t.words.session;
  const settings = t.shop.crew.spray;
  const batch = session.batch === undefined ? undefined : t.shop.batches.get(session.batch);
  const need = needOf({ session, batch, settings });
  const velocity = session.extraction?.running === true ? session.extraction.faceMetresPerSecond : undefined;
  const booth = settings.booths.get(session.place);
  const face = velocity === undefined ? [] : [speedFact(t, 'face-velocity', velocity)];
  const least = speedFact(t, 'face-least', leastFaceVelocity['air-operated']);
  const gives = fanGives(booth, velocity);
  const fan = gives === undefined ? [] : [airGivenFact(t, 'fan-gives', gives)];
  if (need === undefined) return { facts: [least, ...face, ...fan], lines: [words.noSum] };
  const assumed = gramsSprayed({ session, batch })?.assumed === true;
  const leftOut = [...new Set([...need.withoutLel, ...need.withoutLimit])];
  return {
    facts: [
      sprayedFact(t, need.gramsPerHour),
      solventRateFact(t, need.solventLitresPerHour),
      shareFact(t, settings.lelShare),
      ...(need.forLel === undefined ? [] : [airAskedFact(t, 'air-for-lel', need.forLel)]),
      ...(need.forExposure === undefined
        ? []
        : [
            ratioFact(t, 'mixing-factor', settings.mixingFactor),
            airAskedFact(t, 'air-for-exposure', need.forExposure),
          ]),
      least,
      ...face,
      ...fan,
      ...(gives === undefined || need.forLel === undefined ? [] : [ratioFact(t, 'fan-over-lel', gives / need.forLel)]),
      ...(gives === undefined || need.forExposure === undefined
        ? []
        : [ratioFact(t, 'fan-over-exposure', gives / need.forExposure)]),
    ],
    lines: [
      words.sumTerms(settings.lelShare, settings.mixingFactor, settings.mixingAssumed, t.f),
      ...(assumed ? [words.wholePot] : []),
      ...(gives === undefined ? [words.fanNotMeasured] : []),
      ...(booth === undefined ? [words.noBooth(session.place)] : []),
      ...(leftOut.length === 0 ? [] : [words.withoutFigure(leftOut, t.f)]),
      words.sumOnly,
    ],
  };
}

/** Formula and source of each figure. */
export function sumSources(t: Telling): Card['hazards'] {
  const { facts } = t.words;
  return [
    { text: facts['air-for-lel'], source: t.words.names.figureSource('lel') },
    { text: facts['air-for-exposure'], source: t.words.names.figureSource('exposure') },
    { text: facts['fan-gives'], source: t.words.names.figureSource('fan') },
    { text: facts['face-least'], source: t.words.names.figureSource('face') },
  ];
}

export function sessionAirCard(t: Telling, session: Session): Card {
  const { facts, lines } = sessionSums(t, session);
  const { titled } = t.words.session;
  return makeCard(titled(session.number, t.words.buttons.vent), 'plain', {
    facts,
    lines: [...lines, t.words.replies.caution],
    hazards: sumSources(t),
    actions: [tap(t, 'fan-on', `fan ${session.number} on {face-velocity}mps`)],
  });
}
