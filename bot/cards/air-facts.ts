// The air of a place as last read, with its dew point and, where a surface was read, the spread over it.

import { dewPoint } from '../../core/calc/air.ts';
import { isFailed } from '../../core/failed.ts';
import { airAt } from '../../core/place/place.ts';
import { celsiusSpread } from '../../core/units.ts';
import type { CardFact } from './card.ts';
import { notAfterFact, percentFact, spreadFact, type Telling, temperatureFact } from './card-context.ts';

export function airFacts(telling: Telling, placeName: string): readonly CardFact[] {
  const place = telling.shop.places.get(placeName);
  const { temperature, humidity } = airAt(place, telling.now);
  const facts: CardFact[] = [];
  if (temperature?.celsius !== undefined) {
    facts.push(
      temperatureFact(telling, 'air-temperature', temperature.celsius),
      notAfterFact(telling, 'air-read-at', temperature.at),
    );
  }
  if (humidity?.relativeHumidityPercent !== undefined) {
    facts.push(percentFact(telling, 'humidity', humidity.relativeHumidityPercent));
  }
  if (temperature?.celsius === undefined || humidity?.relativeHumidityPercent === undefined) return facts;
  const dew = dewPoint(temperature.celsius, humidity.relativeHumidityPercent);
  if (isFailed(dew)) return facts;
  facts.push(temperatureFact(telling, 'dew-point', dew));
  const surface = place?.surfaces.findLast((reading) => reading.at <= telling.now);
  if (surface !== undefined) {
    facts.push(
      temperatureFact(telling, 'surface-temperature', surface.celsius),
      spreadFact(telling, celsiusSpread(surface.celsius - dew)),
    );
  }
  return facts;
}
