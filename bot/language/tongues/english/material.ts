// Cans, weighing in pieces, repair, reuse, stock and plans, in English.

import type { MaterialObjection, MaterialUnclear } from '../../../../core/can/can-objections.ts';
import type { Component } from '../../../../core/components.ts';
import type { Handling } from '../../../../core/verbs/said.ts';
import type { Figures } from '../../figures.ts';

export const englishComponents: Readonly<Record<Component, string>> = { 'part-a': 'Part A', 'part-b': 'Part B' };

export function englishMaterialObjection(objection: MaterialObjection, f: Figures): string {
  switch (objection.code) {
    case 'no-gas':
      return `${englishComponents[objection.component]} is lost once air is left over it. Have inert gas (argon or nitrogen) at hand, or use the whole can at once, and say which: gas or whole.`;
    case 'can-expired':
      return `Lot ${objection.lot} expired: its last day was ${objection.expires}. Take another can.`;
    case 'can-discarded':
      return `Can ${objection.can} was discarded at ${f.timeDown(objection.at)}.`;
    case 'can-doubtful':
      return `Can ${objection.can} stood without gas over it for ${f.minutesUp(objection.limitMinutes)} or more (in doubt since ${f.timeDown(objection.since)}). A lead looks at it and says check ${objection.can}.`;
    case 'check-by-lead':
      return `Whether can ${objection.can} may still be used is for a lead to look at and to say. Call one${objection.who.length === 0 ? '' : `: ${f.list(objection.who)}`}.`;
    case 'more-than-can-holds':
      return `${f.mass(objection.grams)} is more than the ${f.mass(objection.leftGrams)} left in can ${objection.can}. Check the scale, or name the second can: can ${objection.can} and its number.`;
    case 'can-of-other-sheet':
      return `Can ${objection.can} is of another product (${objection.sheet}).`;
    case 'part-a-not-stirred': {
      const then =
        objection.dueAt === undefined
          ? `Stir it ${f.minutesUp(objection.wantedMinutes)} in its can and say prestir ${objection.can} when you begin.`
          : `Its ${f.minutesUp(objection.wantedMinutes)} are over at ${f.timeUp(objection.dueAt)}.`;
      return `Can ${objection.can} is not stirred: a settled can gives a wrong portion. ${then}`;
    }
    case 'weighed-twice':
      return `${englishComponents[objection.component]} is in already: ${f.mass(objection.grams)} at ${f.timeDown(objection.at)}. If that figure was wrong, say amend; more of it on purpose is add.`;
    case 'b-before-a':
      return 'Part A is not in the vessel yet: A first, stirrer on, then B into A.';
    case 'adding-not-on-sheet':
      return 'The sheet says nothing of adding to bring a mix back. An off-ratio mix is waste: mix a new batch.';
    case 'added-too-late':
      return objection.filtered
        ? 'It is filtered already: nothing more goes in. An off-ratio mix is waste; mix a new batch.'
        : `Adding was possible until ${f.timeDown(objection.untilAt)}, by the sheet. An off-ratio mix is waste; mix a new batch.`;
    case 'adding-passes-most':
      return `With it the pot would hold ${f.mass(objection.mixedGrams)}; the sheet's most in one pot is ${f.mass(objection.mostGrams)}. An off-ratio mix is waste: ask a lead, and mix a new batch.`;
    case 'vessel-too-small':
      return `${f.volume(objection.mixedLitres)} would not leave room to stir in a vessel of ${f.volume(objection.vesselLitres)}. A new batch in a bigger one.`;
    case 'caught-not-filtered':
      return `${f.mass(objection.grams)} was caught at ${f.timeDown(objection.at)} and not filtered since. Filter it and say filter.`;
  }
}

export function englishMaterialUnclear(unclear: MaterialUnclear, f: Figures): string {
  const named = (numbers: readonly number[]) => (numbers.length === 0 ? 'none' : f.list(numbers.map(String)));
  switch (unclear.code) {
    case 'no-such-can':
      return `There is no can ${unclear.can}. Open: ${named(unclear.live)}.`;
    case 'which-can':
      if (unclear.live.length === 0) return 'No can is open. Say, for example, open A lot 7731 5kg gas.';
      return `From which can${unclear.component === undefined ? '' : ` of ${englishComponents[unclear.component]}`}? Open: ${named(unclear.live)}.`;
    case 'can-not-wanted':
      return `Can ${unclear.can} holds ${englishComponents[unclear.component]}, and none was weighed on this line.`;
    case 'other-unit':
      return unclear.readings
        .map(
          ({ component, grams, otherGrams, plannedGrams }) =>
            `${englishComponents[component]}: ${f.mass(grams)} was said, ${f.mass(plannedGrams)} is planned. In another unit the scale would have shown ${f.mass(otherGrams)}. Which is it?`,
        )
        .join(' ');
  }
}

export const englishMaterial = {
  component: englishComponents,
  handling: { gas: 'gas at hand', whole: 'to be used whole' } satisfies Record<Handling, string>,
  canOpened: (can: number, component: Component, lot: string) =>
    `Can ${can}: ${englishComponents[component]}, lot ${lot}`,
  canNumber: (can: number) => `Write ${can} on the can.`,
  lidOffSince: (time: string) => `Lid off since ${time}. Gas over it, lid on, then say blanket.`,
  wholeNow: 'To be used whole: what is left after the pour needs gas all the same.',
  lidOff: (can: number) => `Can ${can}: lid off`,
  blanketed: (can: number) => `Can ${can}: gas over it, lid on`,
  noGasNeeded: 'The sheet does not ask for gas over this one.',
  checked: (can: number) => `Can ${can}: looked at and taken`,
  doubtfulSince: (time: string) => `In doubt since ${time}: too long without gas.`,
  leadChecks: (can: number) => `Nothing is poured from it until a lead has looked and says check ${can}.`,
  lidStillOff: 'The lid is still off: the minutes count again from now.',
  headspaceUnknown: 'How big the can is stands neither on the sheet nor in the record: no figure for the gas.',
  gasSlowly: 'Let in slowly, so that it mixes; gas that streams straight out again is not enough.',
  canStirring: (can: number) => `Can ${can}: stirring before the pour`,
  preStirBeyond: 'The sheet gives no time for so much; its longest stands.',
  discarded: (can: number) => `Can ${can}: discarded`,
  discardHeats:
    'If it has gelled or is warm it can go on heating: away from people and from whatever burns, lid loose, if it can still be moved; then stand off. Do not close it tight.',
  preStirFirst: (minutes: string, can: number) => `Stir it ${minutes} in its can before a pour: prestir ${can}.`,
  fromCan: (can: number, lot: string, left: string) => `From can ${can} (lot ${lot}): ${left} left.`,
  canEmpty: (can: number, lot: string) => `From can ${can} (lot ${lot}): empty by the record.`,
  blanketNow: (can: number, time: string) => `Gas over can ${can} now: lid off since ${time}.`,
  noCanKnown: 'No can is on record for this: lots are not traced.',
  partIn: (batch: number, component: Component) => `Batch ${batch}: ${englishComponents[component]} is in`,
  nextB: (exact: string, least: string, most: string) =>
    `Next: Part B, ${exact} (${least} to ${most}). Its contact with A starts the clocks.`,
  nextA: 'Part A goes in first as a rule. The clocks start when both are in.',
  repairAdd: (what: string, component: Component, until: string) =>
    `To bring it back: add ${what} of ${englishComponents[component]}, until ${until}. Stirring starts again for the whole, pot life does not.`,
  repairBeyondPlan: (needed: string, planned: string) =>
    `To bring it back the pot would have to hold ${needed}, and ${planned} was planned: no repair. Check the scale; this mix is waste, ask a lead.`,
  repairVesselUnknown: (needed: string) => `Nobody said how big the vessel is: look whether it holds ${needed}.`,
  added: (batch: number, what: string, component: Component) =>
    `Batch ${batch}: ${what} of ${englishComponents[component]} added`,
  stirAgain: 'Stirring starts again for the whole. Pot life runs on from first contact.',
  covered: (batch: number) => `Batch ${batch}: covered`,
  uncovered: (batch: number) => `Batch ${batch}: uncovered`,
  uncoveredSoFar: (minutes: string) => `Uncovered for ${minutes} so far: air shortens a pot’s life.`,
  caught: (batch: number, what: string) => `Batch ${batch}: ${what} caught`,
  caughtFilter: 'It keeps the batch’s age and pot life. Filter it again before it is used.',
  setAsideVented: 'Left-over mix may heat and give off gas: vented, never under a tight lid, as the sheet says.',
  setAside: 'Left-over mix may heat. Set it aside as the sheet says.',
  potLifeByMass: (percent: string) => `So much in one pot: the sheet gives it ${percent} of the usual pot life.`,
  potLifeBeyondMass: 'More than the sheet speaks of: its shortest pot life stands.',
  stock: 'Stock',
  noStock: 'No can is open by the record. Say, for example, open A lot 7731 5kg exp 2026-12 gas.',
  stockRow: (can: number, component: Component, lot: string, sheet: string, left: string, details: string) =>
    `${can} ${englishComponents[component]} ${sheet}, lot ${lot}: ${left}${details}`,
  openDays: (days: number) => (days === 0 ? 'opened today' : days === 1 ? 'open 1 day' : `open ${days} days`),
  expiresIn: (days: number) =>
    days < 0 ? `expired ${-days} d ago` : days === 0 ? 'expires today' : `${days} d to expiry`,
  gas: {
    'not-needed': '',
    blanketed: (time: string) => `gas over it since ${time}`,
    'lid-off': (time: string) => `lid off since ${time}`,
    doubtful: (time: string) => `in doubt since ${time}`,
  },
  gasFor: (headspace: string, gas: string) => `headspace ${headspace}, gas ${gas}`,
  low: 'running low',
  morning: 'This morning',
  morningNothing: 'Nothing of the stock needs anybody.',
  plan: (method: string) => `Plan (${method})`,
  planBatch: (n: number, mass: string, a: string, b: string) => `Batch ${n}: mix ${mass} (A ${a}, B ${b})`,
  planStart: (n: number, weigh: string, ready: string) => `Batch ${n}: B into A at ${weigh}, ready ${ready}`,
  planLate: (n: number, weigh: string) => `Batch ${n} should have been weighed at ${weigh}: it will be late.`,
  planFilmAssumed: (film: string) => `No film was named: the most of the sheet’s range, ${film}.`,
  planFilmOutside: (lowest: string, highest: string) => `The sheet’s film is ${lowest} to ${highest}.`,
  planMethodNot: (method: string) => `The sheet does not speak of ${method}.`,
  planLoss: (efficiency: string, source: string) =>
    `${efficiency} of what leaves the gear stays on the part (${source}).`,
  planSources: {
    rule: 'the lower of two rules, 40 CFR 60.313 and 60.453',
    memory: 'from memory, no source',
  },
  planGear: (gear: string) => `${gear} stays in hose, gun and filter.`,
  planNoRate:
    'How fast the crew coats is not known: set rate 4m2/h. Batches are counted by the sheet’s largest mix only.',
  planByTime: (minutes: string) =>
    `${minutes} of each pot’s life are left for applying, after the stir and the time to finish.`,
  planNoTime: 'No time of the pot life is left for applying at this temperature.',
  planStockShort: (component: Component, needed: string, left: string) =>
    `Not enough ${englishComponents[component]}: ${needed} needed, ${left} left in the open cans.`,
  planStockUnknown: 'No open can is on record: the stock was not compared.',
  planNoFilm: 'The sheet gives no volume solids and film: no sum can be made.',
  planNoDensities: 'The sheet gives no densities: litres cannot become grams.',
  planNoArea: (parts: string) => `No area is known for ${parts}. Say it: part impeller-7 0.8m2.`,
  planTooMuch: 'These figures are beyond what can be summed.',
  planNotRead: 'No air reading: the clocks take their cautious side.',
  planGoesBy: 'Figures go by the sheet; weigh what you use, and the next plan is better.',
  dayCan: (can: number, component: Component, lot: string, taken: string, left: string) =>
    `Can ${can} ${englishComponents[component]}, lot ${lot}: ${taken} taken, ${left} left`,
  dayAdded: (batch: number, what: string, component: Component) =>
    `Batch ${batch}: ${what} of ${englishComponents[component]} added to bring it back`,
  dayUncovered: (batch: number, minutes: string) => `Batch ${batch}: uncovered for ${minutes}`,
  dayYield: (batch: number, mixed: string, caught: string, left: string) =>
    `Batch ${batch}: ${mixed} mixed, ${caught} caught and filtered again, ${left} left over`,
};
