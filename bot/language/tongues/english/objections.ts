// Objections and questions back, in English: what was checked, what the sheet or rule asks, what to do instead.

import type { Breach } from '../../../../core/calc/climate-window.ts';
import type { NoFigure } from '../../../../core/calc/dose.ts';
import type { Objection, Unclear } from '../../../../core/objections.ts';
import { celsius, celsiusSpread, type Minutes } from '../../../../core/units.ts';
import { exampleIn } from '../../example-units.ts';
import type { Figures } from '../../figures.ts';
import { englishCureObjection } from './cure.ts';
import { englishMonitor } from './gas.ts';
import { englishHoldReason } from './holds.ts';
import { englishMaterialObjection, englishMaterialUnclear } from './material.ts';
import { englishNoFigure } from './names.ts';
import { englishCrewUnclear, englishFilmObjection } from './parts.ts';
import { englishFar, englishReadingObjection } from './readings.ts';
import { englishSessionObjection, englishSessionUnclear } from './session-objections.ts';
import { faultsTold } from './sheet-problems.ts';
import { englishSteps } from './steps.ts';
import { englishTroubles } from './troubles.ts';
import { englishUndoUnclear } from './undo.ts';

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
      return `On hold: ${englishHoldReason(objection, figures)}. A lead releases it with permit and a reason.`;
    case 'film-drying':
    case 'dip-once':
    case 'surface-life-over':
    case 'surface-outside':
    case 'not-prepared':
      return englishFilmObjection(objection, figures);
    case 'film-outside':
    case 'adhesion-failed':
    case 'rubbed-through':
    case 'overheated':
      return englishReadingObjection(objection, figures);
    case 'no-gas':
    case 'can-expired':
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

const named = (names: readonly (string | number)[], figures: Figures, none: string): string =>
  names.length === 0 ? none : figures.list(names.map(String));

export function englishUnclear(unclear: Unclear, figures: Figures): string {
  switch (unclear.code) {
    case 'no-such-session':
    case 'which-session':
    case 'not-spraying':
    case 'not-exposed':
    case 'watcher-sprays':
      return englishSessionUnclear(unclear, figures);
    case 'no-such-person':
    case 'may-not-settle':
    case 'may-not-judge':
    case 'handover-to-self':
    case 'nothing-to-take-over':
    case 'not-snoozed':
    case 'no-countdown':
    case 'no-alarm-on':
    case 'which-alarm':
    case 'which-load':
      return englishCrewUnclear(unclear, figures);
    case 'far-reading':
      return englishFar(unclear, figures);
    case 'no-such-can':
    case 'which-can':
    case 'can-not-wanted':
    case 'no-can-wanted':
    case 'can-size-needed':
    case 'other-unit':
      return englishMaterialUnclear(unclear, figures);
    case 'wet-bulb-cannot-be':
      return `Air at ${figures.temperature(unclear.celsius)} with a wet bulb at ${figures.temperature(unclear.wetBulbCelsius)} cannot be: the wet one is the colder, never below what dry air makes it, and nobody can tell below freezing. Read both again, dry first, then wet.`;
    case 'no-such-batch':
      return `There is no batch ${unclear.batch}. Live: ${named(unclear.live, figures, `none; start one with ${exampleIn('mix 2.4kg', figures.units)}`)}.`;
    case 'which-batch':
      if (unclear.live.length > 0) return `Which batch? Live: ${named(unclear.live, figures, '')}.`;
      return `No batch is live. Start one with ${exampleIn('mix 2.4kg', figures.units)}.`;
    case 'no-such-part':
      return `There is no part ${unclear.part}. Known: ${named(unclear.live, figures, 'none yet')}.`;
    case 'which-part':
      return `Which part? Known: ${named(unclear.live, figures, 'none yet')}.`;
    case 'new-part': {
      const names = figures.list(unclear.unknown.map(({ part }) => part));
      const near = [...new Set(unclear.unknown.flatMap((each) => each.near))];
      const [are, what] = unclear.unknown.length > 1 ? ['are', 'Are they new parts?'] : ['is', 'Is it a new part?'];
      return near.length === 0
        ? `${names} ${are} not known here. ${what}`
        : `${names} ${are} not known here. Near: ${named(near, figures, '')}. Which is meant?`;
    }
    case 'no-such-sheet':
      return `There is no sheet ${unclear.sheet}. Sheets: ${named(unclear.known, figures, 'none')}.`;
    case 'sheet-faulty':
      return `The sheet ${unclear.sheet} has faults and starts no mix until they are mended: ${faultsTold(unclear.faults)}.`;
    case 'which-sheet': {
      const faults = unclear.faults.length === 0 ? '' : ` Cannot be read: ${faultsTold(unclear.faults)}.`;
      const invented =
        unclear.invented === undefined
          ? ''
          : `${unclear.invented} is an invented product, and never the usual one beside the shop's own. `;
      return unclear.known.length === 0
        ? `${invented}None of the shop's own sheets can be read, and no other stands in for them.${faults}`
        : `${invented}Which product? Sheets: ${named(unclear.known, figures, '')}. Name one, or make one the usual: set sheet ${unclear.known[0]}.${faults}`;
    }
    case 'no-densities':
      return `The sheet ${unclear.sheet} gives no densities, so litres cannot become grams. Say it in kg.`;
    case 'in-the-future':
      return `${figures.timeDown(unclear.at)} is still to come; it is ${figures.timeDown(unclear.now)}.`;
    case 'may-not-permit': {
      const whose = { crew: 'anybody', lead: 'a lead or supervisor', supervisor: 'a supervisor', nobody: 'nobody' }[
        unclear.wanted
      ];
      const who = unclear.wanted === 'nobody' ? ' beforehand' : `: ${figures.list(unclear.who)}`;
      return `That may be lifted by ${whose}${who}. ${englishObjection(unclear.because, figures)}`;
    }
    case 'nothing-to-undo':
    case 'undo-too-late':
    case 'undo-not-last':
    case 'undo-rests':
    case 'undo-asks':
      return englishUndoUnclear(unclear, figures);
    case 'nothing-to-amend':
      return 'There is no such entry to amend.';
    case 'nothing-changed':
      return 'That is what the record says already. Name the figure or the time that was wrong: amend 1 weigh 1201g 1189g wrong scale.';
    case 'decision-stands':
      return 'A release counts from when it was given: no correction makes one or moves it. Say release, or hold, anew.';
    case 'nothing-rang':
      return 'Nothing waits for an answer.';
  }
}

/** How a dose was held back, for the cards that show one. */
export function englishHeldBack(without: Readonly<Record<NoFigure, Minutes>>, figures: Figures): readonly string[] {
  return (['unknown', 'below', 'above'] as const)
    .filter((why) => without[why] >= 1)
    .map((why) => `${figures.minutesDown(without[why])} without a figure: ${englishNoFigure[why]}.`);
}
