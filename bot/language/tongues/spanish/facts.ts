// What happened, in Spanish, in half a line: for corrections, deviations, the day and the trace.

import type { Fact, FactOf } from '../../../../core/history.ts';
import { readWith } from '../../../../core/made-with.ts';
import { patchTold } from '../../../../core/patch-test.ts';
import { isPlain, type PlainFact, plainVerb } from '../../../../core/verbs/plain.ts';
import { endingOfRing } from '../../ending.ts';
import type { Figures } from '../../figures.ts';
import { withNoted } from '../../noted-figures.ts';
import { spanishFilmTests } from './film-tests.ts';
import { spanishFirstShiftFact } from './first-shift.ts';
import { spanishGas } from './gas.ts';
import { spanishAssigned, spanishDisposed, spanishRetest } from './held.ts';
import { spanishHoldReason } from './holds.ts';
import { spanishInstrumentFact, spanishReadWith } from './instruments.ts';
import { spanishHandling } from './material.ts';
import { methodName, spanishMaterialName, taking, theEnding } from './names.ts';
import { spanishRubs } from './parts.ts';
import { spanishReminders } from './reminders.ts';
import { spanishRingName } from './rings.ts';
import { spanishSessionFact } from './session-facts.ts';
import { spanishSettings } from './settings.ts';
import { spanishSlots } from './slots.ts';
import type { Spoken } from './spoken.ts';
import { spanishSpotRead } from './spots.ts';
import { spanishSteps } from './steps.ts';
import { spanishSurface } from './surface.ts';
import { spanishVerbs } from './verbs.ts';
import { spanishComponents } from './weighing.ts';

const ways = { oven: 'horno', room: 'sala' };
const states = { wet: 'húmeda', dry: 'seca' };
const uses = {
  thinning: 'dilución',
  'gun-cleaning': 'lavado de pistola',
  'vessel-cleaning': 'lavado de recipientes',
  wiping: 'limpieza con trapo',
  other: 'otro uso',
};

export const spanishFact = (say: Spoken, fact: Fact, figures: Figures): string =>
  `${withNoted(
    isPlain(fact) ? spanishVerbs[plainVerb(fact)].done : happened(say, fact, figures),
    fact,
    figures,
    spanishSlots(say),
  )}${spanishReadWith(readWith(fact))}`;

function happened(say: Spoken, fact: Exclude<Fact, PlainFact>, figures: Figures): string {
  switch (fact.type) {
    case 'BatchOpened':
      return `mezcla ${fact.batch} abierta, ${figures.mass(fact.plannedGrams)} de ${fact.sheet.name}`;
    case 'PartsWeighed':
      return `pesadas A ${figures.asRead(fact.partAGrams)}, B ${figures.asRead(fact.partBGrams)}`;
    case 'PartWeighed':
      return `pesada ${spanishComponents[fact.component]} ${figures.asRead(fact.grams)}`;
    case 'PartAdded':
      return `añadidos ${figures.asRead(fact.grams)} de ${spanishComponents[fact.component]}`;
    case 'MixFiltered':
      return spanishSteps(say).filtered(fact, figures);
    case 'CanNamed':
      return `${spanishComponents[fact.component]} tomada de ${figures.list(fact.fromCans.map(({ can }) => `la lata ${can}`))}`;
    case 'MixCaught':
      return `recogidos ${figures.mass(fact.grams)}`;
    case 'CanOpened':
      return `lata ${fact.can} abierta: ${spanishComponents[fact.component]}, lote ${fact.lot}, ${figures.mass(fact.grams)}${expires(fact, figures)}`;
    case 'StockReceived':
      return `recibidas ${fact.count} × ${figures.mass(fact.grams)} de ${spanishComponents[fact.component]}, lote ${fact.lot}${expires(fact, figures)}`;
    case 'LotRecalled':
      return `lote ${fact.lot} retirado, ${fact.why}`;
    case 'RecallEnded':
      return `el lote ${fact.lot} ya no está retirado, ${fact.why}`;
    case 'LidOff':
      return fact.handling === undefined ? 'lata destapada' : `lata destapada, ${spanishHandling[fact.handling]}`;
    case 'LidOn':
      if (fact.handling !== undefined) return 'lata tapada, gastada entera';
      return fact.stayed === true ? 'lata tapada, como estaba' : 'lata tapada, sin gas';
    case 'CanChecked':
      return `revisada por ${fact.role === 'crew' ? `alguien ${say.ofThe('crew')}` : say.a(fact.role)}`;
    case 'CanDiscarded':
      return fact.why === '' ? 'desechada' : `desechada, ${fact.why}`;
    case 'MixThickened':
      return fact.seen === 'gelled' ? 'gelificada' : 'espesa';
    case 'PotEmptied':
      return fact.leftGrams === undefined ? 'vaciada' : `vaciada, sobran ${figures.mass(fact.leftGrams)}`;
    case 'JudgedAnew':
      return `juzgada de nuevo por la edición ${fact.edition} de las reglas`;
    case 'PartReceived':
      return 'pieza anotada';
    case 'SurfacePrepared':
      return ['superficie preparada', spanishSurface.preparation({ ...fact, salts: patchTold(fact)?.salts }, figures)]
        .filter((text) => text !== '')
        .join(', ');
    case 'CoatApplied':
      return `${fact.part}: capa ${fact.pass === undefined ? 'aplicada' : 'retocada'} (${methodName(say, fact.method)}, mezcla ${fact.batch}${fact.appliedBy === undefined ? '' : `, por ${fact.appliedBy}`})${toldFirst(fact)}`;
    case 'CureStarted':
      return fact.setCelsius === undefined
        ? `entra en curado (${ways[fact.way]})`
        : `entra en curado (${ways[fact.way]}, ${figures.temperature(fact.setCelsius)})`;
    case 'PartTemperatureRead':
      return `${fact.on ?? 'pieza'} a ${figures.temperature(fact.celsius)}`;
    case 'DoorOpened':
      return fact.openMinutes === undefined
        ? 'puerta del horno abierta'
        : `puerta del horno abierta, ${figures.minutesUp(fact.openMinutes)}`;
    case 'FilmRead':
      return fact.spot === undefined
        ? `película ${states[fact.state]} ${figures.list(fact.micrometres.map(figures.film))}${spanishRetest(fact)}`
        : `${spanishSpotRead(fact, figures)}${spanishRetest(fact)}`;
    case 'AdhesionTested':
      return `adherencia ${fact.rating}${fact.coupon === true ? ' (probeta)' : ''}${spanishRetest(fact)}`;
    case 'SolventRubbed':
      return `${fact.doubleRubs} dobles frotes, ${spanishRubs[fact.result]}${fact.coupon === true ? ' (probeta)' : ''}${spanishRetest(fact)}`;
    case 'FilmTested':
      return `${spanishFilmTests(say).read(fact, figures)}${fact.coupon === true ? ' (probeta)' : ''}${spanishRetest(fact)}`;
    case 'PhotoFiled':
      return fact.caption === undefined ? 'foto archivada' : `foto archivada, ${fact.caption}`;
    case 'PartHeld':
      return [
        'pieza retenida',
        spanishHoldReason(say, { ...fact, because: fact.because ?? [] }, figures),
        ...spanishAssigned(fact),
      ]
        .filter((text) => text !== '')
        .join(', ');
    case 'HoldAssigned':
      return ['retención', ...spanishAssigned(fact)].join(': ');
    case 'PartDisposed':
      return spanishDisposed(fact, figures);
    case 'FailureAnswered':
      return `vale la repetición: ${fact.why}`;
    case 'AirRead': {
      const temperature = fact.celsius === undefined ? [] : [figures.temperature(fact.celsius)];
      const humidity =
        fact.relativeHumidityPercent === undefined ? [] : [figures.percent(fact.relativeHumidityPercent)];
      return `aire ${[...temperature, ...humidity].join(' ')}`;
    }
    case 'SurfaceRead':
      return `sustrato ${figures.temperature(fact.celsius)}`;
    case 'GasRead':
      return spanishGas(fact, figures);
    case 'LowestRead':
      return `mínima ${figures.temperature(fact.lowestCelsius)}`;
    case 'SettingChanged':
      return `ajuste: ${spanishSettings(say).names[fact.setting.name].label}`;
    case 'SolventUsed': {
      const amount = fact.amount.kind === 'mass' ? figures.mass(fact.amount.grams) : figures.volume(fact.amount.litres);
      return `gastados ${amount} de ${spanishMaterialName(fact.material)} (${uses[fact.use]})`;
    }
    case 'InstrumentKept':
    case 'InstrumentChecked':
    case 'InstrumentTaken':
      return spanishInstrumentFact(fact, figures);
    case 'HashGiven':
      return `huella de la anotación ${fact.seq} dada en ${{ digest: 'el resumen', traveller: say.a('traveller'), backup: 'una copia' }[fact.on]}`;
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
      return spanishSessionFact(say, fact, figures);
    case 'StepAnswered':
      return spanishSteps(say).fact(fact, figures);
    case 'Rang':
      return `aviso: ${spanishRingName(say, fact.key, figures)}`;
    case 'RingSnoozed':
      return `aplazado hasta ${theEnding(figures, endingOfRing(fact.key, fact.until))}: ${spanishRingName(say, fact.key, figures)}`;
    case 'ReminderWanted':
      return spanishReminders.fact(figures.timeUp(fact.until), fact.text);
    case 'FirstShiftBegun':
    case 'FirstShiftCountersigned':
    case 'FirstShiftLeft':
      return spanishFirstShiftFact(fact);
    case 'ShiftBegun':
      return 'entra de turno';
    case 'ShiftEnded':
      return 'sale de turno';
    case 'HandedOver':
      return `${say.one('handover')} a ${fact.to}`;
    case 'TakenOver':
      return taking(say, 'toma', 'recibe');
    case 'RingAnswered':
      return `enterado: ${spanishRingName(say, fact.key, figures)}`;
  }
}

/** De una capa que antes se anotó de otra pieza o de otra mezcla. */
function toldFirst({ toldOf }: FactOf<'CoatApplied'>): string {
  if (toldOf === undefined) return '';
  return `; antes anotada de ${toldOf.part}, mezcla ${toldOf.batch}${toldOf.why === '' ? '' : ` (${toldOf.why})`}`;
}

const expires = ({ expires }: FactOf<'CanOpened' | 'StockReceived'>, figures: Figures): string =>
  expires === undefined ? '' : `, caduca ${figures.date(expires)}`;
