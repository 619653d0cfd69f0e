// Objections, in Spanish: what was checked, what the sheet or rule asks, what to do instead.

import type { Breach } from '../../../../core/calc/climate-window.ts';
import type { NoFigure } from '../../../../core/calc/dose.ts';
import type { SeenOfPot } from '../../../../core/heat-care.ts';
import type { Objection } from '../../../../core/objections.ts';
import type { RuleSource } from '../../../../core/rules.ts';
import { celsius, celsiusSpread, type Minutes } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';
import { spanishCureObjection } from './cure.ts';
import { spanishFilmObjection } from './film.ts';
import { spanishMonitor } from './gas.ts';
import { spanishHoldObjection } from './held.ts';
import { spanishHoldReason } from './holds.ts';
import { spanishInstrumentObjection } from './instruments.ts';
import { spanishMaterialObjection } from './material.ts';
import { atTime, capital, methodName, spanishPlace, theTime, told } from './names.ts';
import { spanishReadingObjection } from './readings.ts';
import { spanishReleaseObjection } from './release.ts';
import { spanishSessionObjection } from './session-objections.ts';
import { spanishSource } from './sources.ts';
import type { Spoken } from './spoken.ts';
import { spanishSteps } from './steps.ts';
import { spanishTroubles } from './troubles.ts';

export const spanishRuleSources = (say: Spoken): Readonly<Record<Exclude<RuleSource, 'regulation'>, string>> => ({
  sheet: say.the('sheet'),
  job: 'lo anotado en la pieza',
  'asked by the job': say.the('job'),
  'sheet or job': `${say.the('sheet')} o ${say.the('job')}`,
  employer: 'el programa de pintado de la empresa',
  label: 'lo anotado en la lata',
  'common practice, no source': 'práctica común, sin fuente',
  'the order of the work': 'el orden de los pasos',
});

/** `law`: of spraying, in the crew's country. */
export const spanishRuleSource = (say: Spoken, source: RuleSource, law: string): string =>
  source === 'regulation' ? spanishSource(say, law) : spanishRuleSources(say)[source];

export const spanishNoFigure = (say: Spoken): Readonly<Record<NoFigure, string>> => ({
  unknown: 'no hay lectura de temperatura lo bastante reciente',
  below: `más frío de lo que cubre ${say.the('sheet')}: pregunte al fabricante, o caliente la sala`,
  above: `más calor de lo que cubre ${say.the('sheet')}: pregunte al fabricante, o enfríe la sala`,
});

const wetInOven = (say: Spoken) =>
  `; en el horno una película húmeda hace ampollas, y su vapor de ${say.one('solvent')} puede arder`;

export function spanishObjection(say: Spoken, objection: Objection, figures: Figures): string {
  switch (objection.code) {
    case 'alarm-on':
      return `${spanishTroubles(say)[objection.what].title}${objection.place === undefined ? '' : ` en ${spanishPlace(objection.place)}`}: alarma de ${objection.by}, ${figures.timeDown(objection.at)}, y nadie ha dado el fin de alarma. ${objection.isEverywhere ? 'En ningún sitio' : 'Ahí no'} empieza nada nuevo hasta que ${say.a('lead')} o un supervisor escriba: fin de alarma.`;
    case 'gas-beyond':
      return spanishMonitor(say).beyond(objection, figures);
    case 'step-lacking':
      return spanishSteps(say).lacking(objection, figures);
    case 'heat-not-known':
      return spanishSteps(say).bearsAsked(objection.ovenCelsius, figures);
    case 'uncovered-too-long':
      return spanishSteps(say).uncoveredTooLong(objection, figures);
    case 'gear-cleaned-late':
      return spanishSteps(say).cleanedLate(objection, figures);
    case 'filter-not-as-sheet':
      return spanishSteps(say).filterOther(objection, figures);
    case 'no-brief':
    case 'brief-lapsed':
    case 'brief-not-acknowledged':
    case 'ack-for-sprayer':
    case 'inside-vessel':
    case 'may-not-spray':
    case 'no-extraction-no-air':
    case 'fan-not-measured':
    case 'fan-too-weak':
    case 'confined-place':
    case 'not-qualified':
    case 'near-not-named':
    case 'breathing-air-not-fit':
    case 'breathing-air-unchecked':
    case 'dates-not-known':
    case 'air-not-summed':
    case 'supplied-air-or-none':
    case 'no-assessment':
    case 'gear-not-flushed':
    case 'rags-not-canned':
      return spanishSessionObjection(say, objection, figures);
    case 'air-needed': {
      const what = { temperature: 'No se sabe la temperatura del aire', both: 'No se sabe cómo está el aire' }[
        objection.missing
      ];
      const old =
        objection.lastReadAt === undefined
          ? 'nadie lo ha leído aún'
          : `la última lectura, ${atTime(figures, objection.lastReadAt)}, vale ${figures.minutesDown(objection.limitMinutes)}`;
      return `${what}: ${old}. Léalo y escriba, por ejemplo: aire ${figures.units === 'us' ? '75F' : '24C'} 48%.`;
    }
    case 'air-outside':
      return `Fuera de lo que pide ${say.the('sheet')}: ${objection.breaches.map((breach) => spanishBreach(breach, figures)).join('; ')}. Espere, o acondicione el aire.`;
    case 'more-than-sheet-mixes':
      return `${figures.mass(objection.grams)} pasan del máximo ${say.ofThe('sheet')}: ${figures.mass(objection.mostGrams)} de una vez. Mezcle menos cada vez.`;
    case 'already-weighed':
      return told`A y B se juntaron ${atTime(figures, objection.at)}. Para corregir ese pesaje, escriba corregir.`;
    case 'not-weighed':
      return 'Nadie ha dicho cuánto pesaron A y B. Péselas y anótelo primero.';
    case 'ratio-out':
      return `Desviación de la relación de mezcla: ${figures.signedPercent(objection.errorPercent)}; ${say.the('sheet')} admite ±${figures.percent(objection.tolerancePercent, 1)}.`;
    case 'stirrer-off':
      return 'Según el registro, el agitador no está en marcha.';
    case 'already-released':
      return told`Ya se liberó ${atTime(figures, objection.at)}.`;
    case 'already-filtered':
      return told`Ya se filtró ${atTime(figures, objection.at)}.`;
    case 'blend-not-done': {
      const given = `${figures.minutesDown(objection.givenMinutes)}, el ${figures.percent(Math.floor(objection.progress * 100))} de lo que pide ${say.the('sheet')}`;
      const what = objection.way === 'stir' ? 'Agitación sin terminar' : 'Inducción sin terminar';
      const then =
        objection.dueAt === undefined
          ? 'Arranque otra vez el agitador.'
          : told`Se cumple ${atTime(figures, objection.dueAt, 'up')}.`;
      const why =
        objection.withoutFigure === undefined
          ? ''
          : ` Ahora no cuenta: ${spanishNoFigure(say)[objection.withoutFigure]}.`;
      return `${what}: ${given}.${why} ${then}`;
    }
    case 'not-filtered':
      return `${capital(say.the('sheet'))} pide filtrar antes de la primera capa, y nadie ha dicho que se filtró.`;
    case 'past-pot-life':
      return told`La vida de la mezcla terminó ${atTime(figures, objection.endedAt)}. Ya no sirve, es residuo; haga otra.`;
    case 'past-pot-life-at-worst':
      return spanishSteps(say).potAtWorst(objection, true, figures);
    case 'pot-dead':
      return told`La mezcla estaba ${seenAs[objection.seen]} ${atTime(figures, objection.at)}. Ya no sirve, es residuo, diga lo que diga el reloj${potInstead(objection)}`;
    case 'pot-empty':
      return told`Se vació ${atTime(figures, objection.at)}.`;
    case 'method-not-on-sheet':
      return `${capital(say.the('sheet'))} no habla de ${methodName(say, objection.method)}; da ${figures.list(objection.methods.map((method) => methodName(say, method)))}.`;
    case 'recoat-forbidden':
      return told`${capital(say.the('sheet'))} prohíbe una capa sobre película que ya está, curada o no: la línea no se va y el parche se despega. Última capa, ${atTime(figures, objection.coatedAt)}.`;
    case 'recoat-too-early':
      return told`${capital(say.the('recoat-window'))} se abre ${atTime(figures, objection.opensAt, 'up')}.`;
    case 'recoat-too-late':
      return told`${capital(say.the('recoat-window'))} se cerró ${atTime(figures, objection.closedAt)}. Vea antes qué pide ${say.the('sheet')} que se le haga a la película.`;
    case 'not-coated':
      return 'No consta ninguna capa en esta pieza.';
    case 'flash-off-not-over':
      return `El oreo dura como mínimo hasta ${theTime(figures, objection.leastAt, 'up')}${objection.oven ? wetInOven(say) : ''}.`;
    case 'not-dry':
      return `Nadie ha dicho que la película esté seca al tacto${objection.oven ? wetInOven(say) : ''}. Tóquela y anótela seca.`;
    case 'hotter-than-part-bears':
    case 'no-such-cure':
    case 'oven-outside-sheet':
    case 'already-curing':
    case 'not-curing':
    case 'cure-not-given':
    case 'still-in-oven':
      return spanishCureObjection(say, objection, figures);
    case 'on-hold':
      return `Retenida: ${spanishHoldReason(say, objection, figures)}. La levanta ${say.a('lead')}: la misma línea, con permiso retención y el motivo; o dice qué se hace con ella.`;
    case 'not-given':
    case 'film-half':
    case 'second-eyes':
      return spanishReleaseObjection(say, objection, figures);
    case 'not-on-hold':
    case 'disposed':
    case 'not-told':
      return spanishHoldObjection(objection, figures);
    case 'not-released':
      return 'Salió del taller y nadie la había liberado. Que la traigan de vuelta, o que la retengan donde está.';
    case 'film-drying':
    case 'dip-once':
    case 'surface-life-over':
    case 'surface-outside':
    case 'not-prepared':
      return spanishFilmObjection(say, objection, figures);
    case 'film-outside':
    case 'adhesion-failed':
    case 'rubbed-through':
    case 'test-failed':
    case 'overheated':
      return spanishReadingObjection(say, objection, figures);
    case 'instrument-failed':
    case 'instrument-overdue':
      return spanishInstrumentObjection(objection, figures);
    case 'no-gas':
    case 'can-expired':
    case 'lot-recalled':
    case 'can-discarded':
    case 'can-doubtful':
    case 'can-reacts':
    case 'can-open-too-long':
    case 'shut-without-gas':
    case 'whole-left-over':
    case 'check-by-lead':
    case 'more-than-can-holds':
    case 'can-of-other-sheet':
    case 'part-a-not-stirred':
    case 'scale-too-coarse':
    case 'weighed-twice':
    case 'b-before-a':
    case 'adding-not-on-sheet':
    case 'added-too-late':
    case 'adding-passes-most':
    case 'vessel-too-small':
    case 'caught-not-filtered':
    case 'caught-more-than-mixed':
      return spanishMaterialObjection(say, objection, figures);
  }
}

const seenAs: Readonly<Record<SeenOfPot, string>> = {
  thick: 'espesa',
  gelled: 'gelificada',
  hot: 'caliente',
  smoking: 'echando humo',
  bulging: 'hinchada',
};

/** What to do with a dead pot, in place of what was asked. */
function potInstead({ seen, batch }: Extract<Objection, { code: 'pot-dead' }>): string {
  switch (seen) {
    case 'thick':
      return '.';
    case 'gelled':
      return `: no entra ni sale nada más. Tapa suelta; si se calienta, apártese y escriba: caliente ${batch}.`;
    case 'hot':
    case 'smoking':
      return ': no entra ni sale nada más. Apártese hasta que esté fría.';
    case 'bulging':
      return ': que nadie la abra ni la mueva. Apártese.';
  }
}

function spanishBreach(breach: Breach, figures: Figures): string {
  const { given, allowed } = breach;
  const read = (show: (value: number) => string) => (given === 'not-read' ? 'sin leer' : show(given));
  const temperature = (value: number) => figures.temperature(celsius(value));
  const spread = (value: number) => figures.spread(celsiusSpread(value));
  switch (breach.limit) {
    case 'lowestAirCelsius':
      return `aire ${read(temperature)}, mínimo ${temperature(allowed)}`;
    case 'highestAirCelsius':
      return `aire ${read(temperature)}, máximo ${temperature(allowed)}`;
    case 'lowestSurfaceCelsius':
      return `sustrato ${read(temperature)}, mínimo ${temperature(allowed)}`;
    case 'highestSurfaceCelsius':
      return `sustrato ${read(temperature)}, máximo ${temperature(allowed)}`;
    case 'lowestHumidityPercent':
      return `humedad ${read(figures.percent)}, mínimo ${figures.percent(allowed)}`;
    case 'highestHumidityPercent':
      return `humedad ${read(figures.percent)}, máximo ${figures.percent(allowed)}`;
    case 'leastSpreadCelsius':
      return `sustrato ${given === 'not-read' ? 'sin leer' : `${spread(Math.abs(given))} ${given < 0 ? 'por debajo' : 'por encima'} del punto de rocío`}, mínimo ${spread(allowed)} por encima`;
  }
}

/** How a dose was held back, for the cards that show one. */
export function spanishHeldBack(
  say: Spoken,
  without: Readonly<Record<NoFigure, Minutes>>,
  figures: Figures,
): readonly string[] {
  return (['unknown', 'below', 'above'] as const)
    .filter((why) => without[why] >= 1)
    .map((why) => `${figures.minutesDown(without[why])} sin dato: ${spanishNoFigure(say)[why]}.`);
}
