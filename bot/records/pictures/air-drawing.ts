// The air over the day with the limits of the sheets in use: temperatures above, humidity below.

import type { AirCurve } from '../../../core/records/curves.ts';
import type { Timeline } from '../../../core/records/timeline.ts';
import type { Celsius, EpochMs } from '../../../core/units.ts';
import type { Words } from '../../language/tongues/tongues.ts';
import { type Axes, metricAxes } from './axes.ts';
import { linePanel, type Series } from './line-layers.ts';
import { type Drawing, wallMs } from './picture-look.ts';

/** `undefined` where nobody read the air. */
export function airDrawings(
  curve: AirCurve,
  words: Words,
  zone: string,
  /** Of the bars above, so that both stand on one scale of time. */
  ends?: Pick<Timeline, 'from' | 'to'>,
  { temperature }: Pick<Axes, 'temperature'> = metricAxes,
): readonly Drawing[] {
  const { pictures } = words.records;
  const at = (time: EpochMs) => wallMs(time, zone);
  const read = [...curve.points, ...curve.surfaces].map((point) => at(point.at));
  const domain = ends === undefined ? undefined : [Math.min(at(ends.from), ...read), Math.max(at(ends.to), ...read)];
  const of = (series: string, pick: (point: AirCurve['points'][number]) => number | undefined): Series[] =>
    curve.points.flatMap((point) => {
      const value = pick(point);
      return value === undefined ? [] : [{ series, at: at(point.at), value }];
    });
  const shown = (value: Celsius | undefined) => (value === undefined ? undefined : temperature.of(value));
  const temperatures = [
    ...of(pictures.airLine, ({ celsius }) => shown(celsius)),
    ...of(pictures.dewLine, ({ dewPointCelsius }) => shown(dewPointCelsius)),
    ...curve.surfaces.map((surface) => ({
      series: pictures.surfaceLine,
      at: at(surface.at),
      value: temperature.of(surface.celsius),
    })),
  ];
  const humidity = of(pictures.humidity, ({ relativeHumidityPercent }) => relativeHumidityPercent);
  const { limits } = curve;
  const celsiusLimits = limits === undefined ? [] : [limits.lowestCelsius, limits.highestCelsius].map(temperature.of);
  const humidityLimits =
    limits === undefined
      ? []
      : [limits.lowestHumidityPercent, limits.highestHumidityPercent].filter((value) => value !== undefined);
  const look = { limit: pictures.limit, domain };
  const order = [pictures.airLine, pictures.dewLine, pictures.surfaceLine];
  return [
    ...linePanel(pictures.air, { ...look, axis: temperature.title }, temperatures, celsiusLimits, order),
    ...linePanel(pictures.humidity, { ...look, axis: pictures.humidityAxis }, humidity, humidityLimits, [
      pictures.humidity,
    ]),
  ];
}
