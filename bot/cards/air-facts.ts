// The air of a place as last read, with its dew point and, where a surface was read, the spread over it.

import { dewPoint } from '../../core/calc/air.ts';
import { isFailed } from '../../core/failed.ts';
import { airAt } from '../../core/place/place.ts';
import { celsiusSpread } from '../../core/units.ts';
import type { CardFact } from './card.ts';
import { notAfterFact, percentFact, spreadFact, type Telling, temperatureFact } from './card-context.ts';

export function airFacts(t: Telling, placeName: string): readonly CardFact[] {
  const place = t.shop.places.get(placeName);
  const { temperature, humidity } = airAt(place, t.now);
  const facts: CardFact[] = [];
  if (temperature?.celsius !== undefined) {
    facts.push(
      temperatureFact(t, 'air-temperature', temperature.celsius),
      notAfterFact(t, 'air-read-at', temperature.at),
    );
  }
  if (humidity?.relativeHumidityPercent !== undefined) {
    facts.push(percentFact(t, 'humidity', humidity.relativeHumidityPercent));
  }
  if (temperature?.celsius === undefined || humidity?.relativeHumidityPercent === undefined) return facts;
  const dew = dewPoint(temperature.celsius, humidity.relativeHumidityPercent);
  if (isFailed(dew)) return facts;
  facts.push(temperatureFact(t, 'dew-point', dew));
  const surface = place?.surfaces.findLast((reading) => reading.at <= t.now);
  if (surface !== undefined) {
    facts.push(
      temperatureFact(t, 'surface-temperature', surface.celsius),
      spreadFact(t, celsiusSpread(surface.celsius - dew)),
    );
  }
  return facts;
}
