// What happened, in English, in half a line: for corrections, deviations, the day and the trace.

import type { Fact } from '../../../../core/history.ts';
import { isPlain, type PlainFact, plainVerb } from '../../../../core/verbs/plain.ts';
import { endingOfRing, timeOf } from '../../ending.ts';
import type { Figures } from '../../figures.ts';
import { withNoted } from '../../noted-figures.ts';
import { englishHoldReason } from './holds.ts';
import { englishComponents } from './material.ts';
import { englishParts, englishRubs } from './parts.ts';
import { englishSessionFact } from './session-facts.ts';
import { slotNames } from './slots.ts';
import { englishVerbs } from './verbs.ts';

export const englishFact = (fact: Fact, f: Figures): string =>
  withNoted(isPlain(fact) ? englishVerbs[plainVerb(fact)].done : happened(fact, f), fact, f, slotNames);

function happened(fact: Exclude<Fact, PlainFact>, f: Figures): string {
  switch (fact.type) {
    case 'BatchOpened':
      return `batch ${fact.batch} opened, ${f.mass(fact.plannedGrams)} of ${fact.sheet.name}`;
    case 'PartsWeighed':
      return `weighed A ${f.mass(fact.partAGrams)}, B ${f.mass(fact.partBGrams)}`;
    case 'PartWeighed':
      return `weighed ${englishComponents[fact.component]} ${f.mass(fact.grams)}`;
    case 'PartAdded':
      return `added ${englishComponents[fact.component]} ${f.mass(fact.grams)}`;
    case 'MixCaught':
      return `caught ${f.mass(fact.grams)}`;
    case 'CanOpened':
      return `can ${fact.can} opened: ${englishComponents[fact.component]}, lot ${fact.lot}, ${f.mass(fact.grams)}`;
    case 'CanChecked':
      return `looked at by ${fact.role === 'crew' ? 'somebody of the crew' : `a ${fact.role}`}`;
    case 'CanDiscarded':
      return fact.why === '' ? 'discarded' : `discarded, ${fact.why}`;
    case 'MixThickened':
      return fact.seen;
    case 'PotEmptied':
      return fact.leftGrams === undefined ? 'pot empty' : `pot empty, ${f.mass(fact.leftGrams)} left over`;
    case 'JudgedAnew':
      return `judged anew by edition ${fact.edition} of the rules`;
    case 'PartReceived':
      return 'part noted';
    case 'SurfacePrepared':
      return `prepared ${englishParts.grades[fact.grade]}`;
    case 'CoatApplied':
      return `${fact.part} ${fact.pass === undefined ? 'coated' : 'touched up'} (${fact.method}, batch ${fact.batch})`;
    case 'CureStarted':
      return fact.setCelsius === undefined
        ? `cure (${fact.way})`
        : `cure (${fact.way}, ${f.temperature(fact.setCelsius)})`;
    case 'PartTemperatureRead':
      return `${fact.on ?? 'part'} at ${f.temperature(fact.celsius)}`;
    case 'DoorOpened':
      return fact.openMinutes === undefined ? 'oven door opened' : `oven door opened, ${f.minutesUp(fact.openMinutes)}`;
    case 'FilmRead':
      return `${fact.state} film ${f.list(fact.micrometres.map(f.film))}`;
    case 'AdhesionTested':
      return `adhesion ${fact.rating}${fact.coupon === true ? ' (coupon)' : ''}`;
    case 'SolventRubbed':
      return `${fact.doubleRubs} double rubs, ${englishRubs[fact.result]}${fact.coupon === true ? ' (coupon)' : ''}`;
    case 'PhotoFiled':
      return fact.caption === undefined ? 'picture filed' : `picture filed, ${fact.caption}`;
    case 'PartHeld':
      return ['on hold', englishHoldReason({ ...fact, because: fact.because ?? [] }, f)]
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
    case 'SolventUsed': {
      const amount = fact.amount.kind === 'mass' ? f.mass(fact.amount.grams) : f.volume(fact.amount.litres);
      return `used ${amount} of ${fact.material} (${fact.use})`;
    }
    case 'HashGiven':
      return `hash of event ${fact.seq} given out on a ${fact.on}`;
    case 'SessionBriefed':
    case 'PeoplePlaced':
    case 'ExtractionSaid':
    case 'SuppliedAirSaid':
    case 'BriefAcknowledged':
    case 'SprayStarted':
    case 'SprayStopped':
    case 'GearFlushed':
    case 'WasteCanned':
    case 'SessionClosed':
    case 'AlarmRaised':
    case 'NearMissTold':
    case 'BellTested':
    case 'QualificationDated':
      return englishSessionFact(fact, f);
    case 'Rang':
      return `rang ${fact.key}`;
    case 'RingSnoozed':
      return `put off ${fact.key} until ${timeOf(f, endingOfRing(fact.key, fact.until))}`;
    case 'ShiftBegun':
      return 'on shift';
    case 'ShiftEnded':
      return 'off shift';
    case 'HandedOver':
      return `handed over to ${fact.to}`;
    case 'TakenOver':
      return 'took over';
    case 'RingAnswered':
      return `heard ${fact.key}`;
  }
}
