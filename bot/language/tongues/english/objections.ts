// Objections and questions back, in English: what was checked, what the sheet or rule asks, what to do instead.

import type { Breach } from '../../../../core/calc/climate-window.ts';
import type { NoFigure } from '../../../../core/calc/dose.ts';
import type { Objection } from '../../../../core/objections.ts';
import { celsius, celsiusSpread, type Minutes } from '../../../../core/units.ts';
import { exampleIn } from '../../example-units.ts';
import type { Figures } from '../../figures.ts';
import { englishCureObjection } from './cure.ts';
import { englishMonitor } from './gas.ts';
import { englishHoldObjection } from './held.ts';
import { englishHoldReason } from './holds.ts';
import { englishInstrumentObjection } from './instruments.ts';
import { englishMaterialObjection } from './material.ts';
import { englishNoFigure } from './names.ts';
import { englishFilmObjection } from './parts.ts';
import { englishReadingObjection } from './readings.ts';
import { englishReleaseObjection } from './release.ts';
import { englishSessionObjection } from './session-objections.ts';
import { englishSteps } from './steps.ts';
import { englishTroubles } from './troubles.ts';

export function englishObjection(objection: Objection, figures: Figures): string {
  switch (objection.code) {
    case 'alarm-on':
      return `${englishTroubles[objection.what].title}${objection.place === undefined ? '' : ` in ${objection.place}`}, cried by ${objection.by} at ${figures.timeDown(objection.at)}, and nobody has ended it. Nothing new begins ${objection.isEverywhere ? 'anywhere' : 'there'} until a lead or supervisor says: alarm over.`;
    case 'gas-beyond':
      return englishMonitor.beyond(objection, figures);
    case 'step-lacking':
      return englishSteps(figures.profile.locale).lacking(objection, figures);
    case 'heat-not-known':
      return englishSteps(figures.profile.locale).bearsAsked(objection.ovenCelsius, figures);
    case 'uncovered-too-long':
      return englishSteps(figures.profile.locale).uncoveredTooLong(objection, figures);
    case 'gear-cleaned-late':
      return englishSteps(figures.profile.locale).cleanedLate(objection, figures);
    case 'filter-not-as-sheet':
      return englishSteps(figures.profile.locale).filterOther(objection, figures);
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
      return englishSessionObjection(objection, figures);
    case 'air-needed': {
      const what = { temperature: 'The air temperature', both: 'The air' }[objection.missing];
      const old =
        objection.lastReadAt === undefined
          ? 'nobody has read it yet'
          : `the last reading is of ${figures.timeDown(objection.lastReadAt)} and serves for ${figures.minutesDown(objection.limitMinutes)}`;
      return `${what} is not known: ${old}. Read it and say, for example, ${exampleIn('air 24C 48%', figures.units)}.`;
    }
    case 'air-outside':
      return `Outside the sheet's limits: ${figures.list(objection.breaches.map((breach) => englishBreach(breach, figures)))}. Wait, or change the air.`;
    case 'more-than-sheet-mixes':
      return `${figures.mass(objection.grams)} is more than the sheet's ${figures.mass(objection.mostGrams)} in one pot. Mix less, twice.`;
    case 'already-weighed':
      return `A and B met at ${figures.timeDown(objection.at)}. To correct that weighing, say amend.`;
    case 'not-weighed':
      return 'Nobody has said what A and B weighed. Say weigh first.';
    case 'ratio-out':
      return `Ratio off by ${figures.signedPercent(objection.errorPercent)}, the sheet allows ${figures.percent(objection.tolerancePercent, 1)} either way.`;
    case 'stirrer-off':
      return 'By the record the stirrer does not turn.';
    case 'already-released':
      return `Released at ${figures.timeDown(objection.at)} already.`;
    case 'already-filtered':
      return `Filtered at ${figures.timeDown(objection.at)} already.`;
    case 'blend-not-done': {
      const given = `${figures.minutesDown(objection.givenMinutes)} given, ${figures.percent(Math.floor(objection.progress * 100))} of what the sheet asks`;
      const what = objection.way === 'stir' ? 'Stirring' : 'Induction';
      const then =
        objection.dueAt === undefined ? 'Start the stirrer again.' : `Done at ${figures.timeUp(objection.dueAt)}.`;
      const why =
        objection.withoutFigure === undefined ? '' : ` No credit now: ${englishNoFigure[objection.withoutFigure]}.`;
      return `${what} is not done: ${given}.${why} ${then}`;
    }
    case 'not-filtered':
      return 'The sheet asks for filtering before the first coat, and nobody has said filter.';
    case 'past-pot-life':
      return `Pot life ended at ${figures.timeDown(objection.endedAt)}. This mix is waste; mix a new batch.`;
    case 'past-pot-life-at-worst':
      return englishSteps(figures.profile.locale).potAtWorst(objection, true, figures);
    case 'pot-dead':
      return `The mix was ${objection.seen} at ${figures.timeDown(objection.at)}. It is waste whatever the clock says${potInstead(objection)}`;
    case 'pot-empty':
      return `The pot was emptied at ${figures.timeDown(objection.at)}.`;
    case 'method-not-on-sheet':
      return `The sheet does not speak of ${objection.method}; it gives ${figures.list(objection.methods)}.`;
    case 'recoat-forbidden':
      return `The sheet forbids a coat over film that is there, cured or not: the line would never leave and the patch lets go. Last coat at ${figures.timeDown(objection.coatedAt)}.`;
    case 'recoat-too-early':
      return `The recoat window opens at ${figures.timeUp(objection.opensAt)}.`;
    case 'recoat-too-late':
      return `The recoat window closed at ${figures.timeDown(objection.closedAt)}. Ask what the sheet wants done to the film first.`;
    case 'not-coated':
      return 'No coat is recorded on this part.';
    case 'flash-off-not-over':
      return `Flash-off lasts until ${figures.timeUp(objection.leastAt)} at the least${objection.oven ? '; in an oven a wet film blisters, and its solvent vapour is a fire hazard' : ''}.`;
    case 'not-dry':
      return `Nobody has said that the film is dry to the touch${objection.oven ? '; in an oven a wet film blisters, and its solvent vapour is a fire hazard' : ''}. Touch, then say dry.`;
    case 'hotter-than-part-bears':
    case 'no-such-cure':
    case 'oven-outside-sheet':
    case 'already-curing':
    case 'not-curing':
    case 'cure-not-given':
    case 'still-in-oven':
      return englishCureObjection(objection, figures);
    case 'on-hold':
      return `On hold: ${englishHoldReason(objection, figures)}. A lead lifts that with permit hold and a reason, or says what becomes of it.`;
    case 'not-given':
    case 'film-half':
    case 'second-eyes':
      return englishReleaseObjection(objection, figures);
    case 'not-on-hold':
    case 'disposed':
    case 'not-told':
      return englishHoldObjection(objection, figures);
    case 'not-released':
      return 'It left the shop and nobody had released it. Have it fetched back, or held where it is.';
    case 'film-drying':
    case 'dip-once':
    case 'surface-life-over':
    case 'surface-outside':
    case 'not-prepared':
      return englishFilmObjection(objection, figures);
    case 'film-outside':
    case 'adhesion-failed':
    case 'rubbed-through':
    case 'test-failed':
    case 'overheated':
      return englishReadingObjection(objection, figures);
    case 'instrument-failed':
    case 'instrument-overdue':
      return englishInstrumentObjection(objection, figures);
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
      return englishMaterialObjection(objection, figures);
  }
}

/** What to do with a dead pot, in place of what was asked. */
function potInstead({ seen, batch }: Extract<Objection, { code: 'pot-dead' }>): string {
  switch (seen) {
    case 'thick':
      return '.';
    case 'gelled':
      return `: nothing more goes in or comes out. Lid loose; if it gets warm, stand off and say hot ${batch}.`;
    case 'hot':
    case 'smoking':
      return ': nothing more goes in or comes out. Stand off until it is cold.';
    case 'bulging':
      return ': nobody opens or moves it. Stand off.';
  }
}

function englishBreach(breach: Breach, figures: Figures): string {
  const { given, allowed } = breach;
  const read = (show: (value: number) => string) => (given === 'not-read' ? 'not read' : show(given));
  const temperature = (value: number) => figures.temperature(celsius(value));
  const spread = (value: number) => figures.spread(celsiusSpread(value));
  switch (breach.limit) {
    case 'lowestAirCelsius':
      return `air ${read(temperature)}, at least ${temperature(allowed)}`;
    case 'highestAirCelsius':
      return `air ${read(temperature)}, at most ${temperature(allowed)}`;
    case 'lowestSurfaceCelsius':
      return `steel ${read(temperature)}, at least ${temperature(allowed)}`;
    case 'highestSurfaceCelsius':
      return `steel ${read(temperature)}, at most ${temperature(allowed)}`;
    case 'lowestHumidityPercent':
      return `humidity ${read(figures.percent)}, at least ${figures.percent(allowed)}`;
    case 'highestHumidityPercent':
      return `humidity ${read(figures.percent)}, at most ${figures.percent(allowed)}`;
    case 'leastSpreadCelsius':
      return `steel ${given === 'not-read' ? 'not read' : `${spread(Math.abs(given))} ${given < 0 ? 'below' : 'above'} the dew point`}, at least ${spread(allowed)} above it`;
  }
}

/** How a dose was held back, for the cards that show one. */
export function englishHeldBack(without: Readonly<Record<NoFigure, Minutes>>, figures: Figures): readonly string[] {
  return (['unknown', 'below', 'above'] as const)
    .filter((why) => without[why] >= 1)
    .map((why) => `${figures.minutesDown(without[why])} without a figure: ${englishNoFigure[why]}.`);
}
