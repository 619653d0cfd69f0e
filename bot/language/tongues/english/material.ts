// Cans, weighing in pieces, repair, reuse, stock and plans, in English.

import type { MaterialObjection, MaterialUnclear } from '../../../../core/can/can-objections.ts';
import type { Need } from '../../../../core/can/can-stock.ts';
import type { Component } from '../../../../core/components.ts';
import type { HeatSign } from '../../../../core/heat-care.ts';
import type { PartName } from '../../../../core/ids.ts';
import type { Method } from '../../../../core/methods.ts';
import type { PotYield } from '../../../../core/records/day-material.ts';
import type { EpochMs, Grams, Litres, Micrometres, Minutes } from '../../../../core/units.ts';
import type { Handling } from '../../../../core/verbs/said.ts';
import { exampleIn } from '../../example-units.ts';
import type { Figures } from '../../figures.ts';
import { englishPurge } from './purge.ts';
import { englishComponents, englishScaleTooCoarse, englishWeighing } from './weighing.ts';

const englishReacts: Readonly<Record<HeatSign, string>> = { hot: 'hot', smoking: 'smoking', bulging: 'swollen' };

export function englishMaterialObjection(objection: MaterialObjection, figures: Figures): string {
  switch (objection.code) {
    case 'no-gas':
      return `${englishComponents[objection.component]} is lost once air is left over it. Have inert gas (argon or nitrogen) at hand, or use the whole can at once, and say which: gas or whole.`;
    case 'lot-recalled':
      return `Lot ${objection.lot} was recalled, ${figures.timeDown(objection.at)}: ${objection.why}. Set it aside and take another.`;
    case 'can-expired':
      return `Lot ${objection.lot} expired: its last day was ${figures.date(objection.expires)}. Take another can.`;
    case 'can-open-too-long':
      return `Can ${objection.can} has stood open too long: by the sheet its last day was ${figures.date(objection.lastDay)}. Take another can.`;
    case 'can-discarded':
      return `Can ${objection.can} was discarded at ${figures.timeDown(objection.at)}.`;
    case 'can-doubtful': {
      const why =
        objection.limitMinutes === undefined
          ? 'was to be used whole, and some was left'
          : `stood without gas over it for ${figures.minutesUp(objection.limitMinutes)} or more`;
      return `Can ${objection.can} ${why} (in doubt since ${figures.timeDown(objection.since)}). A lead looks at it and says check ${objection.can}.`;
    }
    case 'can-reacts':
      return `Can ${objection.can} was ${englishReacts[objection.seen]} at ${figures.timeDown(objection.at)}: nobody opens, closes, stirs or pours it any more, and no check admits it. Stand off; throw it away, as the employer’s programme says, only once it is cold and no longer swollen: discard ${objection.can}, and why.`;
    case 'shut-without-gas':
      return `A can that is shut over air is lost: gas into can ${objection.can} first, then say blanket ${objection.can}. If it was used whole, say so: shut ${objection.can} whole.`;
    case 'whole-left-over':
      return `Can ${objection.can} was to be used whole: ${figures.mass(objection.leftGrams)} of it would be left. Gas over it first, or use it up.`;
    case 'check-by-lead':
      return `Whether can ${objection.can} may still be used is for a lead to look at and to say. Call one${objection.who.length === 0 ? '' : `: ${figures.list(objection.who)}`}.`;
    case 'more-than-can-holds':
      return `${figures.mass(objection.grams)} is more than the ${figures.mass(objection.leftGrams)} left in can ${objection.can}. Check the scale, or name the second can: can ${objection.can} and its number.`;
    case 'can-of-other-sheet':
      return `Can ${objection.can} is of another product (${objection.sheet}).`;
    case 'part-a-not-stirred': {
      const then =
        objection.dueAt === undefined
          ? `Stir it ${figures.minutesUp(objection.wantedMinutes)} in its can and say prestir ${objection.can} when you begin.`
          : `Its ${figures.minutesUp(objection.wantedMinutes)} are over at ${figures.timeUp(objection.dueAt)}.`;
      const stirred =
        objection.givenMinutes === undefined
          ? 'is not stirred'
          : `is not stirred long enough (${figures.minutesDown(objection.givenMinutes)} of ${figures.minutesUp(objection.wantedMinutes)})`;
      return `Can ${objection.can} ${stirred}: a settled can gives a wrong portion. ${then}`;
    }
    case 'scale-too-coarse':
      return englishScaleTooCoarse(objection, figures);
    case 'weighed-twice':
      return `${englishComponents[objection.component]} is in already: ${figures.mass(objection.grams)} at ${figures.timeDown(objection.at)}. If that figure was wrong, say amend; more of it on purpose is add.`;
    case 'b-before-a':
      return 'Part A is not in the vessel yet: A first, stirrer on, then B into A.';
    case 'adding-not-on-sheet':
      return 'The sheet says nothing of adding to bring a mix back. An off-ratio mix is waste: mix a new batch.';
    case 'added-too-late':
      return objection.filtered
        ? 'It is filtered already: nothing more goes in. An off-ratio mix is waste; mix a new batch.'
        : `Adding was possible until ${figures.timeDown(objection.untilAt)}, by the sheet. An off-ratio mix is waste; mix a new batch.`;
    case 'adding-passes-most':
      return `With it the pot would hold ${figures.mass(objection.mixedGrams)}; the sheet's most in one pot is ${figures.mass(objection.mostGrams)}. An off-ratio mix is waste: ask a lead, and mix a new batch.`;
    case 'vessel-too-small':
      return `${figures.volume(objection.mixedLitres)} would not leave room to stir in a vessel of ${figures.volume(objection.vesselLitres)}. A new batch in a bigger one.`;
    case 'caught-not-filtered':
      return `${figures.mass(objection.grams)} was caught at ${figures.timeDown(objection.at)} and not filtered since. Filter it and say filter.`;
    case 'caught-more-than-mixed':
      return `${figures.mass(objection.grams)} would then stand caught, and ${figures.mass(objection.mixedGrams)} was mixed. Weigh it again; of another pot, name its batch.`;
  }
}

export function englishMaterialUnclear(unclear: MaterialUnclear, figures: Figures): string {
  const named = (numbers: readonly number[]) => (numbers.length === 0 ? 'none' : figures.list(numbers.map(String)));
  switch (unclear.code) {
    case 'not-recalled':
      return `No recall of lot ${unclear.lot} is on.`;
    case 'no-such-can':
      return `There is no can ${unclear.can}. Open: ${named(unclear.live)}.`;
    case 'which-can':
      if (unclear.live.length === 0)
        return `No can is open. Say, for example, ${exampleIn('open A lot 7731 5kg gas', figures.units)}.`;
      return `From which can${unclear.component === undefined ? '' : ` of ${englishComponents[unclear.component]}`}? Open: ${named(unclear.live)}.`;
    case 'can-not-wanted':
      return `Can ${unclear.can} holds ${englishComponents[unclear.component]}, and none was weighed on this line.`;
    case 'can-size-needed':
      return unclear.sizes.length === 0
        ? `How much is in it? Of lot ${unclear.lot} no can of ${englishComponents[unclear.component]} stands sealed by the record. Say its weight behind the lot.`
        : `Which size? Of lot ${unclear.lot} there stand sealed cans of ${figures.list(unclear.sizes.map(figures.mass))}.`;
    case 'no-can-wanted':
      return `Of batch ${unclear.batch} no ${englishComponents[unclear.component]} waits for its can: it is not weighed yet, or its can is named. A wrong one is put right with undo.`;
    case 'other-unit':
      return unclear.readings
        .map(
          ({ component, grams, otherGrams, plannedGrams }) =>
            `${englishComponents[component]}: ${figures.mass(grams)} was said, ${figures.mass(plannedGrams)} is planned. ${otherGrams === undefined ? 'A digit seems to be missing or one too many: what does the scale show?' : `In another unit the scale would have shown ${figures.mass(otherGrams)}. Which is it?`}`,
        )
        .join(' ');
  }
}

/** What a card tells of sealed cans. */
interface SealedTold {
  readonly left: number;
  readonly component: Component;
  readonly lot: string;
  readonly grams: Grams;
  readonly sheet: string;
}

const lossSources = {
  rule: 'the lower of two rules, 40 CFR 60.313 and 60.453',
  memory: 'from memory, no source',
};

const needs: Readonly<Record<Need['is'], string>> = {
  doubtful: 'in doubt',
  reacts: 'hot or swollen',
  'lid-off': 'without gas',
  low: 'running low',
  'expires-soon': 'near expiry',
  expired: 'past expiry',
  'open-long': 'near the last day open',
  'open-too-long': 'past the last day open',
};

export const englishMaterial = {
  ...englishWeighing,
  component: englishComponents,
  handling: { gas: 'gas at hand', whole: 'to be used whole' } satisfies Record<Handling, string>,
  canOpened: (can: number, component: Component, lot: string) =>
    `Can ${can}: ${englishComponents[component]}, lot ${lot}`,
  byDensity: (sold: Litres, filled: Grams, figures: Figures) =>
    `${figures.volume(sold)}, ${figures.mass(filled)} by the sheet's density.`,
  canNumber: (can: number) => `Write ${can} on the can.`,
  lidOffSince: (at: EpochMs, figures: Figures) =>
    `Lid off since ${figures.timeDown(at)}. Gas over it, lid on, then say blanket.`,
  wholeNow: 'To be used whole: what is left after the pour needs gas all the same.',
  lidOn: (can: number) => `Can ${can}: lid on`,
  withoutGasSince: (at: EpochMs, figures: Figures) =>
    `No gas over it since ${figures.timeDown(at)}. Lid off, gas in, lid on, then say blanket.`,
  leftOverSince: (at: EpochMs, figures: Figures) =>
    `In doubt since ${figures.timeDown(at)}: to be used whole, and some was left.`,
  lidOff: (can: number) => `Can ${can}: lid off`,
  gasBefore: (can: number) => `Can ${can}: gas from before its lid came off`,
  blanketed: (can: number) => `Can ${can}: gas over it, lid on`,
  noGasNeeded: 'The sheet does not ask for gas over this one.',
  checked: (can: number) => `Can ${can}: looked at and taken`,
  doubtfulSince: (at: EpochMs, figures: Figures) => `In doubt since ${figures.timeDown(at)}: too long without gas.`,
  canLeft: (can: number) =>
    `Can ${can}: nobody opens, closes, stirs or pours it. Once it is cold and no longer swollen: discard ${can}, and why.`,
  canUnknown: (can: number) =>
    `No can ${can} is on record: look from afar which can it is. Nobody opens or moves it, whatever its number.`,
  looseLid: 'Gas over it all the same, lid loose, not tight: with moist air in it, it can swell.',
  leadChecks: (can: number) => `Nothing is poured from it until a lead has looked and says check ${can}.`,
  minutesAnew: 'There is still no gas over it: the minutes count again from now.',
  headspaceUnknown:
    'How big the can is stands neither on the sheet nor in the record: no figure for the gas. Say it of the next one, brimful: open A lot 7731 5kg 6L.',
  purge: englishPurge,
  gasSlowly: 'Let in slowly, so that it mixes; gas that streams straight out again is not enough.',
  canStirring: (can: number) => `Can ${can}: stirring before the pour`,
  preStirBeyond: 'The sheet gives no time for so much; its longest stands.',
  discarded: (can: number) => `Can ${can}: discarded`,
  discardHeats:
    'If it has gelled or is warm it can go on heating: away from people and from whatever burns, lid loose, if it can still be moved; then stand off. Do not close it tight.',
  swellsShut:
    'With moist air in it and its lid on tight, it can swell and burst: lid loose, and nothing else goes into that can again.',
  swellsSource: 'DGUV Information 213-078, 10.15.1, of isocyanates; common practice',
  preStirFirst: (minutes: Minutes, can: number, figures: Figures) =>
    `Stir it ${figures.minutesUp(minutes)} in its can before a pour: prestir ${can}.`,
  fromCan: (can: number, lot: string, left: Grams, figures: Figures) =>
    `From can ${can} (lot ${lot}): ${figures.mass(left)} left.`,
  canEmpty: (can: number, lot: string) => `From can ${can} (lot ${lot}): empty by the record.`,
  blanketNow: (can: number, at: EpochMs, figures: Figures) =>
    `Gas over can ${can} now: lid off since ${figures.timeDown(at)}.`,
  noCanKnown: 'No can is on record for this: lots are not traced.',
  whichCan: (component: Component) => `From which can did ${englishComponents[component]} come?`,
  canNamed: (batch: number, component: Component) => `Batch ${batch}: can of ${englishComponents[component]} noted`,
  wentInto: (batch: number) => `Poured into batch ${batch}`,
  partIn: (batch: number, component: Component) => `Batch ${batch}: ${englishComponents[component]} is in`,
  nextA: 'Part A goes in first as a rule. The clocks start when both are in.',
  repairBeyondPlan: (needed: Grams, planned: Grams, figures: Figures) =>
    `To bring it back the pot would have to hold ${figures.mass(needed)}, and ${figures.mass(planned)} was planned: no repair. Check the scale; this mix is waste, ask a lead.`,
  repairVesselUnknown: (needed: Litres, figures: Figures) =>
    `Nobody said how big the vessel is: look whether it holds ${figures.volume(needed)}.`,
  canStands: (can: number, component: Component, state: string) =>
    `Can ${can}, ${englishComponents[component]}: ${state}`,
  added: (batch: number, grams: Grams, component: Component, figures: Figures) =>
    `Batch ${batch}: ${figures.mass(grams)} of ${englishComponents[component]} added`,
  stirAgain: 'Stirring starts again for the whole. Pot life runs on from first contact.',
  uncoveredSoFar: (minutes: Minutes, figures: Figures) =>
    `Uncovered for ${figures.minutesUp(minutes)} so far: air shortens a pot’s life.`,
  caught: (batch: number, grams: Grams, figures: Figures) => `Batch ${batch}: ${figures.mass(grams)} caught`,
  caughtFilter: 'It keeps the batch’s age and pot life. Filter it again before it is used.',
  setAsideVented: 'Left-over mix may heat and give off gas: vented, never under a tight lid, as the sheet says.',
  setAsideLoose: 'It may react with moisture: never under a tight lid, it can swell and burst.',
  setAside: 'Left-over mix may heat. Set it aside as the sheet says.',
  stock: 'Stock',
  noStock: (figures: Figures) =>
    `No can is open by the record. Say, for example, ${exampleIn('open A lot 7731 5kg exp 2026-12 gas', figures.units)}.`,
  stockRow: (
    can: number,
    component: Component,
    lot: string,
    sheet: string,
    left: Grams,
    details: readonly string[],
    figures: Figures,
  ) =>
    `Can ${can}, ${englishComponents[component]} ${sheet}, lot ${lot}: ${figures.mass(left)}${details.length === 0 ? '' : `; ${details.join(', ')}`}`,
  received: (count: number, component: Component, lot: string, each: Grams, figures: Figures) =>
    `Received: ${count} × ${figures.mass(each)} of ${englishComponents[component]}, lot ${lot}`,
  sealedRow: ({ left, component, lot, grams, sheet }: SealedTold, details: readonly string[], figures: Figures) =>
    `Sealed: ${left} × ${figures.mass(grams)} ${englishComponents[component]} ${sheet}, lot ${lot}${details.length === 0 ? '' : `; ${details.join(', ')}`}`,
  sealedLeft: (lot: string, left: number) =>
    `Sealed cans of lot ${lot} left by the record: ${left === 0 ? 'none' : left}.`,
  noneSealed: (lot: string) =>
    `By the record no such can of lot ${lot} stood sealed: received is not told, or all are opened.`,
  openDays: (days: number) => (days === 0 ? 'opened today' : days === 1 ? 'open 1 day' : `open ${days} days`),
  openLeft: (days: number) =>
    days < 0 ? 'open too long by the sheet' : days === 0 ? 'to be used up today' : `to be used up within ${days} d`,
  expiresIn: (days: number) =>
    days < 0 ? `expired ${-days} d ago` : days === 0 ? 'expires today' : `${days} d to expiry`,
  gas: {
    reacts: (seen: HeatSign, at: EpochMs, figures: Figures) =>
      `${englishReacts[seen]} since ${figures.timeDown(at)}: stand off`,
    blanketed: (at: EpochMs, figures: Figures) => `gas over it since ${figures.timeDown(at)}`,
    'lid-off': (at: EpochMs, figures: Figures) => `lid off since ${figures.timeDown(at)}`,
    without: (at: EpochMs, figures: Figures) => `no gas over it since ${figures.timeDown(at)}`,
    doubtful: (at: EpochMs, figures: Figures) => `in doubt since ${figures.timeDown(at)}`,
  },
  gasFor: (headspace: Litres, gas: Litres, figures: Figures) =>
    `headspace ${figures.volume(headspace)}, gas ${figures.volume(gas)}`,
  low: 'running low',
  morning: 'This morning',
  /** Why a morning will have a list, in a list of what rings. */
  morningCans: (is: Need['is'], cans: readonly number[], figures: Figures) =>
    `${cans.length === 0 ? 'sealed cans' : cans.length === 1 ? 'can' : 'cans'} ${figures.list(cans.map(String))} ${needs[is]}`.replace(
      / {2}/,
      ' ',
    ),
  morningCure: 'what cures in the room',
  morningNothing: 'Nothing of the stock needs anybody.',
  plan: (method: Method) => `Plan (${method})`,
  planStart: (n: number, weighAt: EpochMs, readyAt: EpochMs, figures: Figures) =>
    `Batch ${n}: B into A at ${figures.timeDown(weighAt)}, ready ${figures.timeUp(readyAt)}`,
  planLate: (n: number, weighAt: EpochMs, figures: Figures) =>
    `Batch ${n} should have been weighed at ${figures.timeDown(weighAt)}: it will be late.`,
  planFilmAssumed: (film: Micrometres, figures: Figures) =>
    `No film was named: the most of the sheet’s range, ${figures.film(film)}.`,
  planFilmOutside: (lowest: Micrometres, highest: Micrometres, figures: Figures) =>
    `The sheet’s film is ${figures.film(lowest)} to ${figures.film(highest)}.`,
  planMethodNot: (method: Method) => `The sheet does not speak of ${method}.`,
  planLoss: (efficiency: number, from: keyof typeof lossSources, figures: Figures) =>
    `${figures.percent(efficiency * 100)} of what leaves the gear stays on the part (${lossSources[from]}).`,
  planGear: (litres: Litres, figures: Figures) => `${figures.volume(litres)} stays in hose, gun and filter.`,
  planNoRate: (figures: Figures) =>
    `How fast the crew coats is not known: set rate ${figures.units === 'us' ? '40ft2/h' : '4m2/h'}. Batches are counted by the sheet’s largest mix only.`,
  planByTime: (minutes: Minutes, figures: Figures) =>
    `${figures.minutesDown(minutes)} of each pot’s life are left for applying, after the stir and the time to finish.`,
  planNoTime: 'No time of the pot life is left for applying at this temperature.',
  planStockShort: (component: Component, needed: Grams, left: Grams, figures: Figures) =>
    `Not enough ${englishComponents[component]}: ${figures.mass(needed)} needed, ${figures.mass(left)} left in the open cans.`,
  planStockUnknown: 'No open can is on record: the stock was not compared.',
  planNoFilm: 'The sheet gives no volume solids and film: no sum can be made.',
  planNoDensities: 'The sheet gives no densities: litres cannot become grams.',
  planNoArea: (parts: readonly PartName[], figures: Figures) =>
    `No area is known for ${figures.list(parts)}. Say it: part ${parts[0] ?? ''} ${figures.units === 'us' ? '8ft2' : '0.8m2'}.`,
  planTooMuch: 'These figures are beyond what can be summed.',
  planNotRead: 'No air reading: the clocks take their cautious side.',
  planGoesBy: 'Figures go by the sheet; weigh what you use, and the next plan is better.',
  dayCan: (can: number, component: Component, lot: string, taken: Grams, left: Grams, figures: Figures) =>
    `Can ${can} ${englishComponents[component]}, lot ${lot}: ${figures.mass(taken)} taken, ${figures.mass(left)} left`,
  dayAdded: (batch: number, grams: Grams, component: Component, figures: Figures) =>
    `Batch ${batch}: ${figures.mass(grams)} of ${englishComponents[component]} added to bring it back`,
  dayUncovered: (batch: number, minutes: Minutes, figures: Figures) =>
    `Batch ${batch}: uncovered for ${figures.minutesUp(minutes)}`,
  dayYield: (
    batch: number,
    { mixedGrams, caughtGrams, unfilteredGrams, leftOverGrams }: PotYield,
    figures: Figures,
  ) => {
    const refiltered =
      unfilteredGrams > 0 ? `, ${figures.mass(unfilteredGrams)} of it not filtered again` : ' and filtered again';
    const caught = caughtGrams > 0 ? `, ${figures.mass(caughtGrams)} caught${refiltered}` : '';
    const left = leftOverGrams === undefined ? '' : `, ${figures.mass(leftOverGrams)} left over`;
    return `Batch ${batch}: ${figures.mass(mixedGrams)} mixed${caught}${left}`;
  },
};
