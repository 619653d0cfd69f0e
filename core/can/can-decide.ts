// What follows from a command about a can: its events, or why not.

import { massFromVolume } from '../calc/density.ts';
import { isOn } from '../calc/runs.ts';
import type { CommandOf } from '../commands.ts';
import { personIn } from '../crew/crew.ts';
import { localDay } from '../crew/local-day.ts';
import { peopleFrom, roleMissing } from '../crew/who-may.ts';
import { accepted, type Deciders, type Decision, onCrew, type Said, unclear } from '../decision.ts';
import { type Failed, failed, isFailed } from '../failed.ts';
import type { EventBody } from '../history.ts';
import { type CanNumber, canStream, crewStream } from '../ids.ts';
import { known } from '../known.ts';
import { recalledAt } from '../lot-recalls.ts';
import type { Unclear } from '../objections.ts';
import { componentDensity, type Sheet } from '../products/sheet.ts';
import { judge } from '../rules.ts';
import { type Sealed, sealedOfLot } from '../sealed-stock.ts';
import { liveCans, onlyOne, type Shop, sheetFor } from '../shop.ts';
import type { canVerbs } from '../verbs/can-verbs.ts';
import { type Can, canAsOf, isGasSensitive, isShut } from './can.ts';
import { blanketTimes, doubtOf } from './can-clocks.ts';
import { blanketRules, canStirRules, checkRules, lidRules, openRules, shutRules } from './can-rules.ts';
import { lidOff, lidOffBefore } from './lid-off.ts';

export function decideOpen(shop: Shop, said: Said<CommandOf<'open'>>): Decision {
  const { command, at } = said;
  const { component, lot, litres, handling } = command;
  const sheet = sheetFor(shop, command.sheet);
  if (isFailed(sheet)) return unclear(sheet.failed);
  const sealed = sealedOfLot(shop.crew.sealed, { component, lot, sheet: sheet.id });
  const weight = weightOf(command, sheet, sealed);
  if (isFailed(weight)) return unclear(weight.failed);
  const from = sealed.find(({ grams, receivedAt }) => grams === weight.grams && receivedAt <= at);
  const expires = command.expires ?? from?.expires;
  const can = shop.nextNumber;
  const body: EventBody = {
    type: 'CanOpened',
    can,
    component,
    sheet,
    lot: from?.lot ?? lot,
    ...weight,
    ...known({ litres, expires, handling, delivery: from?.seq }),
  };
  const recalled = recalledAt(shop.crew.recalls, { lot, component }, at);
  const situation = { sheet, component, handling, lot, recalled, expires, onDate: localDay(shop.crew.zone, at) };
  return judge(shop, said, openRules, [situation], (saidWith) => [
    { streams: [canStream(can), ...(from === undefined ? [] : [crewStream])], happenedAt: at, body, saidWith },
  ]);
}

export function decideReceived(shop: Shop, said: Said<CommandOf<'received'>>): Decision {
  const { component, lot, grams, expires, count = 1 } = said.command;
  const sheet = sheetFor(shop, said.command.sheet);
  if (isFailed(sheet)) return unclear(sheet.failed);
  const received = { component, sheet: sheet.id, lot, count, grams, ...known({ expires }) };
  return onCrew(said, { type: 'StockReceived', ...received });
}

/** As said, or by the sheet's density: cans are sold by the gallon. Else as the only size of its lot that was received. */
function weightOf({ grams, litres, component, lot }: CommandOf<'open'>, sheet: Sheet, sealed: readonly Sealed[]) {
  if (grams !== undefined) return { grams };
  const sizes = [...new Set(sealed.map((each) => each.grams))];
  const [only] = sizes;
  if (litres === undefined && only !== undefined && sizes.length === 1) return { grams: only };
  if (litres === undefined) return failed<Unclear>({ code: 'can-size-needed', component, lot, sizes });
  const kilogramsPerLitre = componentDensity(sheet, component);
  const none = failed<Unclear>({ code: 'no-densities', sheet: sheet.id });
  if (kilogramsPerLitre === undefined) return none;
  const filled = massFromVolume(litres, kilogramsPerLitre);
  return isFailed(filled) ? none : { grams: filled, kilogramsPerLitre };
}

/** Which can is meant: the one named, or the only live one that `fits`. */
export function findCan(shop: Shop, named: CanNumber | undefined, fits: (can: Can) => boolean): Can | Failed<Unclear> {
  const of = liveCans(shop);
  const live = of.map(({ number }) => number);
  if (named === undefined) return onlyOne(of, fits) ?? failed({ code: 'which-can', component: undefined, live });
  return shop.cans.get(named) ?? failed({ code: 'no-such-can', can: named, live });
}

const isGasWanted = (can: Can): boolean => blanketTimes(can) !== undefined;

export const canActs: Deciders<Exclude<keyof typeof canVerbs, 'open' | 'received' | 'recall' | 'recall-over'>> = {
  lid: (shop, said) => {
    const { handling } = said.command;
    const can = findCan(shop, said.command.can, ({ lidOff }) => !isOn(lidOff));
    if (isFailed(can)) return unclear(can.failed);
    const situation = { sheet: can.sheet, component: can.component, handling, can, at: said.at };
    return judge(shop, said, lidRules, [situation], (saidWith) => [lidOff(can, handling, said.at, saidWith)]);
  },
  shut: (shop, said) => {
    const { handling } = said.command;
    const can = findCan(shop, said.command.can, isGasWanted);
    if (isFailed(can)) return unclear(can.failed);
    const found = canAsOf(can, said.at);
    if (handling === 'gas') return blanketed(shop, said, found);
    const body = { type: 'LidOn' as const, ...known({ handling }), ...(isShut(found) && { stayed: true as const }) };
    const situation = { can: found, handling, at: said.at };
    return judge(shop, said, shutRules, [situation], (saidWith) => [
      { streams: [canStream(can.number)], happenedAt: said.at, body, saidWith },
    ]);
  },
  blanket: (shop, said) => {
    const can = findCan(shop, said.command.can, isGasWanted);
    return isFailed(can) ? unclear(can.failed) : blanketed(shop, said, canAsOf(can, said.at));
  },
  prestir: (shop, said) => {
    const { handling, can: named } = said.command;
    const can = findCan(shop, named, ({ component, sheet }) => component === 'part-a' && sheet.preStir !== undefined);
    if (isFailed(can)) return unclear(can.failed);
    const found = canAsOf(can, said.at);
    const body = { type: 'CanStirred' as const };
    return judge(shop, said, canStirRules, [{ can: found, handling, at: said.at }], (saidWith) => [
      ...lidOffBefore(found, handling, said.at, saidWith),
      { streams: [canStream(can.number)], happenedAt: said.at, body, saidWith },
    ]);
  },
  discard: (shop, { command, at }) => {
    const can = findCan(shop, command.can, isGasSensitive);
    if (isFailed(can)) return unclear(can.failed);
    return accepted({
      ...{ streams: [canStream(can.number)], happenedAt: at },
      body: { type: 'CanDiscarded', why: command.why },
    });
  },
  check: (shop, said) => {
    const can = findCan(shop, said.command.can, (each) => doubtOf(each, said.at) !== undefined);
    if (isFailed(can)) return unclear(can.failed);
    const { role } = personIn(shop.crew, said.by);
    const missing = roleMissing(shop.crew, said.by, { say: 'check' });
    const nobodyLeads = role === 'crew' && missing === undefined;
    const who = missing === undefined ? [] : peopleFrom(shop.crew, missing);
    const body = { type: 'CanChecked' as const, role, ...(nobodyLeads && { nobodyLeads }) };
    const asked = { can: canAsOf(can, said.at), at: said.at };
    return judge(shop, said, checkRules, [{ ...asked, role, nobodyLeads, who }], (saidWith) => [
      { streams: [canStream(can.number)], happenedAt: said.at, body, saidWith },
    ]);
  },
};

/** Gas over it, the lid on; `found`: the can as it was before. */
function blanketed(shop: Shop, said: Said, found: Can): Decision {
  const body = { type: 'CanBlanketed' as const };
  return judge(shop, said, blanketRules, [{ can: found, at: said.at }], (saidWith) => [
    { streams: [canStream(found.number)], happenedAt: said.at, body, saidWith },
  ]);
}
