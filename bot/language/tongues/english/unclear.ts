// What a line cannot mean, in English, with what to say instead.

import type { Unclear } from '../../../../core/objections.ts';
import { exampleIn } from '../../example-units.ts';
import type { Figures } from '../../figures.ts';
import { englishInstrumentUnclear } from './instruments.ts';
import { englishMaterialUnclear } from './material.ts';
import { englishObjection } from './objections.ts';
import { englishCrewUnclear } from './parts.ts';
import { englishPartsIn } from './parts-in.ts';
import { englishFar } from './readings.ts';
import { englishSessionUnclear } from './session-objections.ts';
import { faultsTold } from './sheet-problems.ts';
import { englishSpots, englishSpotTold } from './spots.ts';
import { actNamed, englishUndoUnclear } from './undo.ts';

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
    case 'no-first-shift':
    case 'which-alarm':
    case 'more-than-a-day':
    case 'which-load':
      return englishCrewUnclear(unclear, figures);
    case 'no-such-instrument':
    case 'which-kind':
      return englishInstrumentUnclear(unclear, figures);
    case 'film-asked':
      return englishSpots.asksReadings;
    case 'spot-told':
      return englishSpotTold(unclear, figures);
    case 'far-reading':
      return englishFar(unclear, figures);
    case 'not-recalled':
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
      if (unclear.areNoneFit)
        return `There is no batch ${unclear.batch}, and what is said of it can be done to no live one.`;
      return `There is no batch ${unclear.batch}. Live: ${named(unclear.live, figures, `none; start one with ${exampleIn('mix 2.4kg', figures.units)}`)}.`;
    case 'which-batch':
      if (unclear.live.length > 0) return `Which batch? Live: ${named(unclear.live, figures, '')}.`;
      if (unclear.areNoneFit) return 'That can be done to no live batch: name one, or start another.';
      return `No batch is live. Start one with ${exampleIn('mix 2.4kg', figures.units)}.`;
    case 'no-such-part':
      return `There is no part ${unclear.part}. Known: ${named(unclear.live, figures, 'none yet')}.`;
    case 'which-part':
      return `Which part? Known: ${named(unclear.live, figures, 'none yet')}.`;
    case 'new-part': {
      const names = englishPartsIn.named(
        unclear.unknown.map(({ part }) => part),
        figures,
      );
      const near = [...new Set(unclear.unknown.flatMap((each) => each.near))];
      const [are, what] = unclear.unknown.length > 1 ? ['are', 'Are they new parts?'] : ['is', 'Is it a new part?'];
      return near.length === 0
        ? `${names} ${are} not known here. ${what}`
        : `${names} ${are} not known here. Near: ${named(near, figures, '')}. Which is meant?`;
    }
    case 'new-place':
      return unclear.near.length === 0
        ? `Nobody has named a place ${unclear.place} here. Is it a new one?`
        : `Nobody has named a place ${unclear.place} here. Near: ${named(unclear.near, figures, '')}. Which is meant?`;
    case 'parts-in':
      return englishPartsIn.asked(unclear.fresh.length);
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
    case 'not-own-entry': {
      const { by } = unclear.act.entry;
      const whose = unclear.wanted === 'supervisor' ? 'a supervisor' : 'a lead';
      return `${by} said that: ${actNamed(unclear.act, figures)}. It is put right by ${by}, or by ${whose}: ${figures.list(unclear.who)}.`;
    }
    case 'product-stands':
      return `Batch ${unclear.batch} has been in its vessel since ${figures.timeDown(unclear.at)}: what is weighed is of the product it was begun with. Empty it, and start another.`;
    case 'decision-stands':
      return 'A release counts from when it was given: no correction makes one or moves it. Say release, or hold, anew.';
    case 'nothing-rang':
      return 'Nothing waits for an answer.';
  }
}
