// How every picture looks: one font that a package ships, colours far apart in lightness (they stay apart on a grey
// printer and for colour-blind eyes), and shapes or dashes wherever two lines meet.

import { DateTime } from 'luxon';
import type { BarKind } from '../../../core/records/timeline.ts';
import type { EpochMs } from '../../../core/units.ts';

/** A drawing as data, for the charting library. */
export type Drawing = Readonly<Record<string, unknown>>;

export const fontFamily = 'DejaVu Sans';

export const ink = '#1a1a1a';
export const paper = '#ffffff';
export const limitInk = '#7a7a7a';
export const bandInk = '#e3e3e3';

/** Fill, and height of the bar in its row: what runs within something else is drawn thinner and over it. */
export const barLook: Readonly<Record<BarKind, { readonly fill: string; readonly height: number }>> = {
  'pot-life': { fill: '#f3e35c', height: 20 },
  stirring: { fill: '#00549e', height: 8 },
  induction: { fill: '#00549e', height: 8 },
  'flash-off': { fill: '#e08a00', height: 20 },
  cure: { fill: '#7a1f52', height: 20 },
  'can-open': { fill: '#c9d3dc', height: 12 },
  spray: { fill: ink, height: 8 },
};

export const pictureWidth = 720;

export const pictureConfig: Drawing = {
  background: paper,
  padding: 16,
  config: {
    font: fontFamily,
    view: { stroke: '#b5b5b5' },
    title: { fontSize: 16, color: ink, anchor: 'start', offset: 8 },
    axis: {
      labelFontSize: 12,
      titleFontSize: 12,
      titleFontWeight: 'normal',
      labelColor: ink,
      titleColor: ink,
      gridColor: '#ececec',
    },
    axisY: { labelLimit: 180 },
    legend: {
      labelFontSize: 12,
      titleFontSize: 12,
      labelColor: ink,
      orient: 'bottom',
      direction: 'horizontal',
      symbolStrokeColor: ink,
      columnPadding: 18,
    },
  },
};

/**
 * The wall clock of the crew's zone as if it were universal time: the library draws only that or the machine's own. On
 * the two days a year when the clocks change, an hour is drawn twice or left out, as it was on the wall.
 */
export function wallMs(at: EpochMs, zone: string): number {
  return at + DateTime.fromMillis(at, { zone }).offset * 60_000;
}

/** Hours, and the date under midnight, each as the reader's country writes it: `pictureOf` says how. */
export const timeAxis: Drawing = {
  title: null,
  labelExpr:
    'hours(datum.value) === 0 || utchours(datum.value) === 0 && utcminutes(datum.value) === 0 ? utcFormat(datum.value, axisDay) : utcFormat(datum.value, axisClock)',
};

export const timeScale: Drawing = { type: 'utc' };
