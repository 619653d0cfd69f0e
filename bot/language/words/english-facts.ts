// What happened, in English, in half a line: for corrections, deviations, the day and the trace.

import type { Fact } from '../../../core/history.ts';
import type { Figures } from '../figures.ts';
import { englishHoldReason } from './english-objections.ts';

export function englishFact(fact: Fact, f: Figures): string {
  switch (fact.type) {
    case 'BatchOpened':
      return `batch ${fact.batch} opened, ${f.mass(fact.plannedGrams)} of ${fact.sheet.name}`;
    case 'PartsWeighed':
      return `weighed A ${f.mass(fact.partAGrams)}, B ${f.mass(fact.partBGrams)}`;
    case 'StirrerStarted':
      return 'stirrer on';
    case 'StirrerStopped':
      return 'stirrer off';
    case 'MixFiltered':
      return 'filtered';
    case 'MixThickened':
      return fact.seen;
    case 'PotEmptied':
      return fact.leftGrams === undefined ? 'pot empty' : `pot empty, ${f.mass(fact.leftGrams)} left over`;
    case 'PartReceived':
      return 'part noted';
    case 'CoatApplied':
      return `${fact.part} coated (${fact.method}, batch ${fact.batch})`;
    case 'FilmDry':
      return 'dry to the touch';
    case 'CureStarted':
      return fact.setCelsius === undefined
        ? `cure (${fact.way})`
        : `cure (${fact.way}, ${f.temperature(fact.setCelsius)})`;
    case 'PartTemperatureRead':
      return `part at ${f.temperature(fact.celsius)}`;
    case 'CureEnded':
      return 'out of cure';
    case 'FilmRead':
      return `${fact.state} film ${f.list(fact.micrometres.map(f.film))}`;
    case 'PartReleased':
      return 'released';
    case 'PartHeld':
      return ['on hold', englishHoldReason({ why: fact.why, because: fact.because ?? [] }, f)]
        .filter((text) => text !== '')
        .join(', ');
    case 'AirRead': {
      const temperature = fact.celsius === undefined ? [] : [f.temperature(fact.celsius)];
      const humidity = fact.relativeHumidityPercent === undefined ? [] : [f.percent(fact.relativeHumidityPercent)];
      return `air ${[...temperature, ...humidity].join(' ')}`;
    }
    case 'SurfaceRead':
      return `surface ${f.temperature(fact.celsius)}`;
    case 'LowestRead':
      return `lowest ${f.temperature(fact.lowestCelsius)}`;
    case 'SettingChanged':
      return `set ${fact.setting.name}`;
    case 'Rang':
      return `rang ${fact.key}`;
    case 'RingAnswered':
      return `heard ${fact.key}`;
  }
}
