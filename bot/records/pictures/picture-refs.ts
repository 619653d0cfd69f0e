// Which pictures belong to a question, by the reference that a card carries: a front end resolves it when it shows it.

import type { Part } from '../../../core/part/part.ts';
import { airCurve, cureCurve, filmCurve } from '../../../core/records/curves.ts';
import type { Span } from '../../../core/records/span.ts';
import { timelineOf } from '../../../core/records/timeline.ts';
import type { Telling } from '../../cards/card-context.ts';
import { airDrawings } from './air-drawing.ts';
import { axesFor } from './axes.ts';
import { cureDrawings, filmDrawing } from './part-drawing.ts';
import type { Drawing } from './picture-look.ts';
import { timelineDrawing } from './timeline-drawing.ts';

export type PictureOf =
  | { readonly of: 'days'; readonly first: string; readonly last: string }
  | { readonly of: 'part'; readonly part: string };

/** `pictures/day/2026-03-02.png`, `pictures/part/impeller-7.png`. */
export function pictureRef(picture: PictureOf): string {
  if (picture.of === 'part') return `pictures/part/${encodeURIComponent(picture.part)}.png`;
  const { first, last } = picture;
  return first === last ? `pictures/day/${first}.png` : `pictures/days/${first}_${last}.png`;
}

const date = String.raw`(\d{4}-\d{2}-\d{2})`;
const days = new RegExp(`^pictures/days?/${date}(?:_${date})?\\.png$`);
const part = /^pictures\/part\/([^/]+)\.png$/;

/** `undefined` for anything that is no reference. */
export function pictureFrom(ref: string): PictureOf | undefined {
  const [, first, last] = days.exec(ref) ?? [];
  if (first !== undefined) return { of: 'days', first, last: last ?? first };
  const name = part.exec(ref)?.[1];
  if (name === undefined) return undefined;
  try {
    return { of: 'part', part: decodeURIComponent(name) };
  } catch {
    return undefined;
  }
}

export function daysDrawings({ words, figures, shop, now }: Telling, span: Span): readonly Drawing[] {
  const { zone } = shop.crew;
  const bars = timelineOf(shop, span, now);
  const timeline = timelineDrawing(bars, words, zone);
  const axes = axesFor(figures);
  if (timeline === undefined) return airDrawings(airCurve(shop, span), words, zone, undefined, axes);
  return [timeline, ...airDrawings(airCurve(shop, span), words, zone, bars, axes)];
}

export function partDrawings({ words, figures, shop, now }: Telling, of: Part): readonly Drawing[] {
  const { zone } = shop.crew;
  const axes = axesFor(figures);
  const cure = cureCurve(shop, of, now);
  const film = filmDrawing(filmCurve(shop, of), words, axes);
  return [...(cure === undefined ? [] : cureDrawings(cure, words, zone, axes)), ...(film === undefined ? [] : [film])];
}
