// A part's own pictures: its temperature with the cure's progress, and its film readings with their limits.

import type { CureCurve, FilmCurve } from '../../../core/records/curves.ts';
import type { EpochMs } from '../../../core/units.ts';
import type { Words } from '../../language/tongues/tongues.ts';
import { type Axes, metricAxes } from './axes.ts';
import { linePanel, pointScale, withLimits } from './line-layers.ts';
import { bandInk, type Drawing, ink, pictureWidth, timeAxis, timeScale, wallMs } from './picture-look.ts';

export function cureDrawings(
  curve: CureCurve,
  words: Words,
  zone: string,
  { temperature }: Pick<Axes, 'temperature'> = metricAxes,
): readonly Drawing[] {
  const { pictures } = words.records;
  const at = (time: EpochMs) => wallMs(time, zone);
  const series = curve.way === 'oven' ? pictures.partLine : pictures.roomLine;
  const temperatures = curve.temperatures.map((reading) => ({
    series,
    at: at(reading.at),
    value: temperature.of(reading.celsius),
  }));
  const limits = [curve.lowestCelsius, curve.highestCelsius].filter((value) => value !== undefined).map(temperature.of);
  const domain = [at(curve.from), at(curve.to)];
  const progress = {
    width: pictureWidth,
    height: 110,
    layer: withLimits([100], '', [
      {
        data: { values: curve.progress.map((point) => ({ at: at(point.at), share: point.share * 100 })) },
        mark: { type: 'area', color: '#c9b7d6', line: { color: '#7a1f52', strokeWidth: 2 } },
        encoding: {
          x: { field: 'at', type: 'temporal', scale: { ...timeScale, domain }, axis: timeAxis },
          y: { field: 'share', type: 'quantitative', title: pictures.progressAxis, scale: { domain: [0, 105] } },
        },
      },
    ]),
  };
  const look = { axis: temperature.title, limit: pictures.limit, domain };
  const read = linePanel(pictures.cure, look, temperatures, limits, [series]);
  return read.length === 0 ? [{ title: pictures.cure, ...progress }] : [...read, progress];
}

export function filmDrawing(
  { readings, limits }: FilmCurve,
  words: Words,
  { film }: Pick<Axes, 'film'> = metricAxes,
): Drawing | undefined {
  const { pictures } = words.records;
  if (readings.length === 0) return undefined;
  const marks = limits === undefined ? [] : [limits.leastMicrometres, limits.mostMicrometres].map(film.of);
  const scale = pointScale([...readings.map(({ micrometres }) => film.of(micrometres)), ...marks]);
  const band =
    limits === undefined
      ? []
      : [
          {
            data: { values: [{ least: film.of(limits.leastMicrometres), most: film.of(limits.mostMicrometres) }] },
            mark: { type: 'rect', color: bandInk },
            encoding: { y: { field: 'least', type: 'quantitative' }, y2: { field: 'most' } },
          },
        ];
  return {
    title: pictures.film,
    width: pictureWidth,
    height: 170,
    layer: [
      ...band,
      ...withLimits(marks, pictures.limit, [
        {
          data: {
            values: readings.map((reading) => ({
              ...reading,
              shown: film.of(reading.micrometres),
              state: pictures[reading.state],
            })),
          },
          mark: { type: 'point', filled: true, size: 110, stroke: ink, strokeWidth: 1.2, opacity: 1 },
          encoding: {
            x: { field: 'number', type: 'ordinal', title: pictures.reading, axis: { labelAngle: 0 } },
            y: { field: 'shown', type: 'quantitative', title: film.title, scale },
            shape: {
              field: 'state',
              type: 'nominal',
              title: null,
              scale: { domain: [pictures.wet, pictures.dry], range: ['triangle-up', 'circle'] },
            },
            color: {
              field: 'state',
              type: 'nominal',
              title: null,
              scale: { domain: [pictures.wet, pictures.dry], range: ['#9fc5e8', '#1a1a1a'] },
            },
          },
        },
      ]),
    ],
  };
}
