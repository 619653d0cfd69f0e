// Lines of readings and the limits beside them, shared by the pictures. Lines differ in dash and point shape as well as
// in colour.

import { type Drawing, ink, limitInk, paper, pictureWidth, timeAxis, timeScale } from './picture-look.ts';

export interface Series {
  readonly series: string;
  /** On the wall clock, see `wallMs`. */
  readonly at: number;
  readonly value: number;
}

const colours = [ink, '#00549e', '#b55d00'] as const;
const dashes = [
  [1, 0],
  [6, 4],
  [2, 3],
] as const;
const shapes = ['circle', 'square', 'diamond'] as const;

/** Readings as points, joined: a reading holds until the next. */
function lineLayer(
  values: readonly Series[],
  order: readonly string[],
  axis: string,
  scale: Drawing,
  domain?: readonly number[],
): Drawing {
  const used = order.filter((series) => values.some((value) => value.series === series));
  const pick = <T>(of: readonly T[]) => used.map((series) => of[order.indexOf(series) % of.length]);
  const field = (range: readonly unknown[]) => ({
    field: 'series',
    type: 'nominal',
    title: null,
    scale: { domain: used, range },
    // One line is named by its picture's title.
    ...(used.length === 1 && { legend: null }),
  });
  return {
    data: { values },
    mark: { type: 'line', interpolate: 'step-after', strokeWidth: 2, point: { size: 60, filled: true } },
    encoding: {
      x: {
        field: 'at',
        type: 'temporal',
        scale: { ...timeScale, ...(domain !== undefined && { domain }) },
        axis: timeAxis,
      },
      y: { field: 'value', type: 'quantitative', title: axis, scale },
      color: field(pick(colours)),
      strokeDash: field(pick(dashes)),
      shape: field(pick(shapes)),
    },
  };
}

/** Dashed rules across the picture, and over what is between them each one's value on a white ground. */
export function withLimits(limits: readonly number[], label: string, layers: readonly Drawing[]): readonly Drawing[] {
  if (limits.length === 0) return layers;
  const values = limits.map((limit) => ({ limit, text: `${label} ${limit}`.trim() }));
  const rule = { type: 'rule', color: limitInk, strokeDash: [8, 4], strokeWidth: 1.5 };
  // The lower of two stands under its rule, out of the way of what lies between them.
  const below = limits.length > 1 ? Math.min(...limits) : undefined;
  return [
    { data: { values }, mark: rule, encoding: { y: limitField } },
    ...layers,
    ...limitTexts(
      values.filter(({ limit }) => limit !== below),
      -7,
    ),
    ...limitTexts(
      values.filter(({ limit }) => limit === below),
      9,
    ),
  ];
}

const limitField = { field: 'limit', type: 'quantitative' };

function limitTexts(
  values: readonly { readonly limit: number; readonly text: string }[],
  dy: number,
): readonly Drawing[] {
  const encoding = { y: limitField, x: { value: 'width' }, text: { field: 'text' } };
  const text = { type: 'text', align: 'right', dy, dx: -6, fontSize: 11 };
  return values.length === 0
    ? []
    : [
        { data: { values }, mark: { ...text, color: paper, stroke: paper, strokeWidth: 4 }, encoding },
        { data: { values }, mark: { ...text, color: '#4d4d4d' }, encoding },
      ];
}

/** A line a series, with its limits; nothing where there is nothing to draw. */
export function linePanel(
  title: string,
  {
    axis,
    limit,
    domain,
  }: { readonly axis: string; readonly limit: string; readonly domain: readonly number[] | undefined },
  values: readonly Series[],
  limits: readonly number[],
  order: readonly string[],
): readonly Drawing[] {
  if (values.length === 0) return [];
  const scale = pointScale([...values.map(({ value }) => value), ...limits]);
  const line = lineLayer(values, order, axis, scale, domain);
  return [{ title, width: pictureWidth, height: 150, layer: withLimits(limits, limit, [line]) }];
}

/** Room above and below, so that a limit's name is not cut off. */
export function pointScale(values: readonly number[]): Drawing {
  const low = Math.min(...values);
  const high = Math.max(...values);
  const room = Math.max(1, (high - low) * 0.12);
  return { domain: [Math.floor(low - room), Math.ceil(high + room)], nice: false, zero: false };
}
