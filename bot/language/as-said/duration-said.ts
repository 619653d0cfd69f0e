// How long ago: `20 back`, `about ten minutes ago`, `hace 20`, `hace como media hora`. Without its unit it is in minutes.

import { meaningOf } from '../hearing.ts';
import { partsKnown } from '../parts-said/parts-known.ts';
import type { Unit } from '../typed/units-typed.ts';
import { isMark, isOfParts } from './marks.ts';
import { figureAt, type TimeAt, type TimeLine } from './time-line.ts';
import { lengthOf, longestAt } from './words.ts';

/** Fewer of them, without their unit, may be hours. */
const fewestMinutes = 5;

export function durationSaid(line: TimeLine, at: number): TimeAt | undefined {
  const { said, times } = line;
  const before = longestAt(said, at, times.ago);
  const from = before === undefined ? at : at + lengthOf(before);
  const about = longestAt(said, from, times.about);
  const figureFrom = about === undefined ? from : from + lengthOf(about);
  const span = spanAt(line, figureFrom);
  if (span === undefined) return undefined;
  const behind = before === undefined ? longestAt(said, span.to, times.back) : undefined;
  if (before === undefined && behind === undefined) return undefined;
  const to = behind === undefined ? span.to : span.to + lengthOf(behind);
  // `filter 12 back` may be of the back; `20 ago` is of the clock.
  const isAgo = before !== undefined || meaningOf(behind ?? '', line.context.hearing) === 'ago';
  const ago = `${span.minutes}min ago`;
  // `holding impeller nine back`
  const named = said[at - 1]?.word ?? '';
  if (!isAgo && !span.hasUnit && (isOfParts(named, line.context) || isMark(named, line.context))) return undefined;
  // `keeping 9 back`, a part.
  const mayBePart = !isAgo && !span.hasUnit && partsKnown(line.context.parts).numbers.has(span.minutes);
  const typed = said.slice(at, to).map(({ text }) => text);
  return {
    to,
    texts: mayBePart ? [ago, typed.join(' ')] : [ago],
    isSure: about === undefined && (span.hasUnit || isAgo),
  };
}

export interface SpanSaid {
  readonly minutes: number;
  readonly to: number;
  readonly hasUnit: boolean;
}

/** `fifteen minutes`, `half an hour`; bare, `15`. */
export function spanAt(line: TimeLine, at: number): SpanSaid | undefined {
  const { said, context } = line;
  const phrase = longestAt(said, at, [...context.hearing.minutes.keys()]);
  const minutes = phrase === undefined ? undefined : context.hearing.minutes.get(phrase);
  if (phrase !== undefined && minutes !== undefined) return { minutes, to: at + lengthOf(phrase), hasUnit: true };
  const glued = /^(\d{1,2})(\p{L}+)$/u.exec(said[at]?.word ?? '');
  if (glued !== null) return inUnit(Number(glued[1]), unitIn(line, glued[2]), at + 1);
  const figure = figureAt(line, at);
  if (figure === undefined) return undefined;
  const unit = unitIn(line, said[figure.to]?.word);
  if (unit !== undefined) return inUnit(figure.value, unit, figure.to + 1);
  // `hace 24 grados`: of something else than time.
  if (context.hearing.units.has(said[figure.to]?.word ?? '')) return undefined;
  return figure.value < fewestMinutes ? undefined : { minutes: figure.value, to: figure.to, hasUnit: false };
}

function unitIn({ context }: TimeLine, word: string | undefined): Unit | undefined {
  const unit = word === undefined ? undefined : context.hearing.units.get(word);
  return unit === undefined || unit === 'degree' || unit.is !== 'duration' ? undefined : unit;
}

const inUnit = (value: number, unit: Unit | undefined, to: number): SpanSaid | undefined =>
  unit && { minutes: unit.of(value), to, hasUnit: true };
