// What happened, in English, in half a line: for corrections, deviations, the day and the trace.

import type { Fact, FactOf } from '../../../../core/history.ts';
import { readWith } from '../../../../core/made-with.ts';
import { patchTold } from '../../../../core/patch-test.ts';
import { isPlain, type PlainFact, plainVerb } from '../../../../core/verbs/plain.ts';
import { endingOfRing, timeOf } from '../../ending.ts';
import type { Figures } from '../../figures.ts';
import { withNoted } from '../../noted-figures.ts';
import { englishFilmTests } from './film-tests.ts';
import { englishFirstShiftFact } from './first-shift.ts';
import { englishGas } from './gas.ts';
import { englishAssigned, englishDisposed, englishRetest } from './held.ts';
import { englishHoldReason } from './holds.ts';
import { englishInstrumentFact, englishReadWith } from './instruments.ts';
import { englishMaterial } from './material.ts';
import { englishRubs } from './parts.ts';
import { englishReminders } from './reminders.ts';
import { englishRingName } from './rings.ts';
import { englishSessionFact } from './session-facts.ts';
import { slotNames } from './slots.ts';
import { englishSpotRead } from './spots.ts';
import { englishSteps } from './steps.ts';
import { englishSurface } from './surface.ts';
import { englishVerbs } from './verbs.ts';
import { englishComponents } from './weighing.ts';

export const englishFact = (fact: Fact, figures: Figures): string =>
  `${withNoted(isPlain(fact) ? englishVerbs[plainVerb(fact)].done : happened(fact, figures), fact, figures, slotNames)}${englishReadWith(readWith(fact))}`;

function happened(fact: Exclude<Fact, PlainFact>, figures: Figures): string {
  switch (fact.type) {
    case 'BatchOpened':
      return `batch ${fact.batch} opened, ${figures.mass(fact.plannedGrams)} of ${fact.sheet.name}`;
    case 'PartsWeighed':
      return `weighed A ${figures.asRead(fact.partAGrams)}, B ${figures.asRead(fact.partBGrams)}`;
    case 'PartWeighed':
      return `weighed ${englishComponents[fact.component]} ${figures.asRead(fact.grams)}`;
    case 'PartAdded':
      return `added ${englishComponents[fact.component]} ${figures.asRead(fact.grams)}`;
    case 'MixFiltered':
      return englishSteps(figures.profile.locale).filtered(fact, figures);
    case 'CanNamed':
      return `${englishComponents[fact.component]} came from ${figures.list(fact.fromCans.map(({ can }) => `can ${can}`))}`;
    case 'MixCaught':
      return `caught ${figures.mass(fact.grams)}`;
    case 'CanOpened':
      return `can ${fact.can} opened: ${englishComponents[fact.component]}, lot ${fact.lot}, ${figures.mass(fact.grams)}${expires(fact, figures)}`;
    case 'StockReceived':
      return `received ${fact.count} × ${figures.mass(fact.grams)} of ${englishComponents[fact.component]}, lot ${fact.lot}${expires(fact, figures)}`;
    case 'LotRecalled':
      return `lot ${fact.lot} recalled, ${fact.why}`;
    case 'RecallEnded':
      return `recall of lot ${fact.lot} over, ${fact.why}`;
    case 'LidOff':
      return fact.handling === undefined ? 'lid off' : `lid off, ${englishMaterial.handling[fact.handling]}`;
    case 'LidOn':
      if (fact.handling !== undefined) return 'lid on, used whole';
      return fact.stayed === true ? 'lid on, as it was' : 'lid on, without gas';
    case 'CanChecked':
      return `looked at by ${fact.role === 'crew' ? 'somebody of the crew' : `a ${fact.role}`}`;
    case 'CanDiscarded':
      return fact.why === '' ? 'discarded' : `discarded, ${fact.why}`;
    case 'MixThickened':
      return fact.seen;
    case 'PotEmptied':
      return fact.leftGrams === undefined ? 'pot empty' : `pot empty, ${figures.mass(fact.leftGrams)} left over`;
    case 'JudgedAnew':
      return `judged anew by edition ${fact.edition} of the rules`;
    case 'PartReceived':
      return 'part noted';
    case 'SurfacePrepared':
      return `prepared ${englishSurface.preparation({ ...fact, salts: patchTold(fact)?.salts }, figures)}`.trimEnd();
    case 'CoatApplied':
      return `${fact.part} ${fact.pass === undefined ? 'coated' : 'touched up'} (${fact.method}, batch ${fact.batch}${fact.appliedBy === undefined ? '' : `, by ${fact.appliedBy}`})${toldFirst(fact)}`;
    case 'CureStarted':
      return fact.setCelsius === undefined
        ? `cure (${fact.way})`
        : `cure (${fact.way}, ${figures.temperature(fact.setCelsius)})`;
    case 'PartTemperatureRead':
      return `${fact.on ?? 'part'} at ${figures.temperature(fact.celsius)}`;
    case 'DoorOpened':
      return fact.openMinutes === undefined
        ? 'oven door opened'
        : `oven door opened, ${figures.minutesUp(fact.openMinutes)}`;
    case 'FilmRead':
      return fact.spot === undefined
        ? `${fact.state} film ${figures.list(fact.micrometres.map(figures.film))}${englishRetest(fact)}`
        : `${englishSpotRead(fact, figures)}${englishRetest(fact)}`;
    case 'AdhesionTested':
      return `adhesion ${fact.rating}${fact.coupon === true ? ' (coupon)' : ''}${englishRetest(fact)}`;
    case 'SolventRubbed':
      return `${fact.doubleRubs} double rubs, ${englishRubs[fact.result]}${fact.coupon === true ? ' (coupon)' : ''}${englishRetest(fact)}`;
    case 'FilmTested':
      return `${englishFilmTests.read(fact, figures)}${fact.coupon === true ? ' (coupon)' : ''}${englishRetest(fact)}`;
    case 'PhotoFiled':
      return fact.caption === undefined ? 'picture filed' : `picture filed, ${fact.caption}`;
    case 'PartHeld':
      return ['on hold', englishHoldReason({ ...fact, because: fact.because ?? [] }, figures), ...englishAssigned(fact)]
        .filter((text) => text !== '')
        .join(', ');
    case 'HoldAssigned':
      return ['hold', ...englishAssigned(fact)].join(': ');
    case 'PartDisposed':
      return englishDisposed(fact, figures);
    case 'FailureAnswered':
      return `retest counts: ${fact.why}`;
    case 'AirRead': {
      const temperature = fact.celsius === undefined ? [] : [figures.temperature(fact.celsius)];
      const humidity =
        fact.relativeHumidityPercent === undefined ? [] : [figures.percent(fact.relativeHumidityPercent)];
      return `air ${[...temperature, ...humidity].join(' ')}`;
    }
    case 'SurfaceRead':
      return `surface ${figures.temperature(fact.celsius)}`;
    case 'GasRead':
      return englishGas(fact, figures);
    case 'LowestRead':
      return `lowest ${figures.temperature(fact.lowestCelsius)}`;
    case 'SettingChanged':
      return `set ${fact.setting.name}`;
    case 'SolventUsed': {
      const amount = fact.amount.kind === 'mass' ? figures.mass(fact.amount.grams) : figures.volume(fact.amount.litres);
      return `used ${amount} of ${fact.material} (${fact.use})`;
    }
    case 'InstrumentKept':
    case 'InstrumentChecked':
    case 'InstrumentTaken':
      return englishInstrumentFact(fact, figures);
    case 'HashGiven':
      return `hash of event ${fact.seq} given out on a ${fact.on}`;
    case 'SessionBriefed':
    case 'PeoplePlaced':
    case 'ExtractionSaid':
    case 'SuppliedAirSaid':
    case 'BriefAcknowledged':
    case 'SprayedFromOutside':
    case 'SprayStarted':
    case 'SprayStopped':
    case 'GearFlushed':
    case 'WasteCanned':
    case 'SessionClosed':
    case 'AlarmRaised':
    case 'CryHeard':
    case 'AlarmCalledOff':
    case 'DrillBegun':
    case 'AlarmsEnded':
    case 'NearMissTold':
    case 'BellTested':
    case 'AirAssessed':
    case 'QualificationDated':
    case 'BreathingAirChecked':
    case 'ExposureMeasured':
      return englishSessionFact(fact, figures);
    case 'StepAnswered':
      return englishSteps(figures.profile.locale).fact(fact, figures);
    case 'Rang':
      return `rang: ${englishRingName(fact.key, figures)}`;
    case 'RingSnoozed':
      return `put off until ${timeOf(figures, endingOfRing(fact.key, fact.until))}: ${englishRingName(fact.key, figures)}`;
    case 'ReminderWanted':
      return englishReminders.fact(figures.timeUp(fact.until), fact.text);
    case 'FirstShiftBegun':
    case 'FirstShiftCountersigned':
    case 'FirstShiftLeft':
      return englishFirstShiftFact(fact);
    case 'ShiftBegun':
      return 'on shift';
    case 'ShiftEnded':
      return 'off shift';
    case 'HandedOver':
      return `handed over to ${fact.to}`;
    case 'TakenOver':
      return 'took over';
    case 'RingAnswered':
      return `heard: ${englishRingName(fact.key, figures)}`;
  }
}

/** Of a coat that was told of another part or another batch before. */
function toldFirst({ toldOf }: FactOf<'CoatApplied'>): string {
  if (toldOf === undefined) return '';
  return `; first told of ${toldOf.part}, batch ${toldOf.batch}${toldOf.why === '' ? '' : ` (${toldOf.why})`}`;
}

const expires = ({ expires }: FactOf<'CanOpened' | 'StockReceived'>, figures: Figures): string =>
  expires === undefined ? '' : `, expires ${figures.date(expires)}`;
