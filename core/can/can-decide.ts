// What follows from a command about a can: its events, or why not.

import { massFromVolume } from '../calc/density.ts';
import type { CommandOf } from '../commands.ts';
import { personIn } from '../crew/crew.ts';
import { localDay } from '../crew/local-day.ts';
import { peopleFrom, roleMissing } from '../crew/who-may.ts';
import { type Decision, type Said, unclear } from '../decision.ts';
import { type Failed, failed, isFailed } from '../failed.ts';
import type { EventBody, NewEvent } from '../history.ts';
import { type CanNumber, canStream } from '../ids.ts';
import { known } from '../known.ts';
import type { Unclear } from '../objections.ts';
import type { Sheet } from '../products/sheet.ts';
import { componentDensity } from '../products/sheet-density.ts';
import { sheetMeant } from '../products/shelf.ts';
import { judge } from '../rules.ts';
import { lastSaid } from '../settled.ts';
import { liveCans, type Shop } from '../shop.ts';
import type { EpochMs } from '../units.ts';
import { type Can, isGasSensitive } from './can.ts';
import { blanketTimes, doubtfulSince } from './can-clocks.ts';
import { checkRules, openRules } from './can-rules.ts';

export function decideOpen(shop: Shop, said: Said<CommandOf<'open'>>): Decision {
  const { command, at } = said;
  const { component, lot, litres, expires, handling } = command;
  const sheet = sheetMeant(shop.shelf, lastSaid(shop.crew, 'sheet')?.sheet, command.sheet);
  if (isFailed(sheet)) return unclear(sheet.failed);
  const weight = weightOf(command, sheet);
  if (isFailed(weight)) return unclear(weight.failed);
  const can = shop.nextNumber;
  const body: EventBody = {
    type: 'CanOpened',
    can,
    component,
    sheet,
    lot,
    ...weight,
    ...known({ litres, expires, handling }),
  };
  const situation = { sheet, component, handling, lot, expires, onDate: localDay(shop.crew.zone, at) };
  return judge(shop, said, openRules, [situation], (saidWith) => [
    { streams: [canStream(can)], happenedAt: at, body, saidWith },
  ]);
}

/** As said, or by the sheet's density: cans are sold by the gallon. */
function weightOf({ grams, litres, component }: CommandOf<'open'>, sheet: Sheet) {
  if (grams !== undefined) return { grams };
  const kilogramsPerLitre = componentDensity(sheet, component);
  const none = failed<Unclear>({ code: 'no-densities', sheet: sheet.id });
  if (litres === undefined || kilogramsPerLitre === undefined) return none;
  const filled = massFromVolume(litres, kilogramsPerLitre);
  return isFailed(filled) ? none : { grams: filled, kilogramsPerLitre };
}

/** Which can is meant: the one named, or the only live one that `fits`. */
export function findCan(shop: Shop, named: CanNumber | undefined, fits: (can: Can) => boolean): Can | Failed<Unclear> {
  const live = liveCans(shop);
  const numbers = live.map((can) => can.number);
  if (named !== undefined) {
    const can = shop.cans.get(named);
    return can ?? failed({ code: 'no-such-can', can: named, live: numbers });
  }
  const fitting = live.filter(fits);
  const only = fitting.length === 1 ? fitting[0] : live.length === 1 ? live[0] : undefined;
  return only ?? failed({ code: 'which-can', component: undefined, live: numbers });
}

type CanVerb = 'lid' | 'blanket' | 'check' | 'prestir' | 'discard';

export function decideCanAct(shop: Shop, said: Said<CommandOf<CanVerb>>): Decision {
  const { command, at } = said;
  const found = findCan(shop, command.can, fitsFor(command.verb, at));
  if (isFailed(found)) return unclear(found.failed);
  const { role } = personIn(shop.crew, said.by);
  const missing = roleMissing(shop.crew, said.by, { say: 'check' });
  const nobodyLeads = role === 'crew' && missing === undefined;
  const who = missing === undefined ? [] : peopleFrom(shop.crew, missing);
  const events = (saidWith: NewEvent['saidWith']): readonly NewEvent[] => [
    { streams: [canStream(found.number)], happenedAt: at, body: bodyOf(), saidWith },
  ];
  return command.verb === 'check'
    ? judge(shop, said, checkRules, [{ can: found, role, nobodyLeads, who }], events)
    : { kind: 'accepted', events: events({ despite: [] }) };

  function bodyOf(): EventBody {
    switch (command.verb) {
      case 'lid':
        return { type: 'LidOff' };
      case 'blanket':
        return { type: 'CanBlanketed' };
      case 'check':
        return { type: 'CanChecked', role, ...(nobodyLeads ? { nobodyLeads } : {}) };
      case 'prestir':
        return { type: 'CanStirred' };
      case 'discard':
        return { type: 'CanDiscarded', why: command.why };
    }
  }
}

function fitsFor(verb: CanVerb, at: EpochMs): (can: Can) => boolean {
  switch (verb) {
    case 'lid':
      return (can) => can.lidOff.at(-1)?.to !== undefined;
    case 'blanket':
      return (can) => blanketTimes(can) !== undefined;
    case 'check':
      return (can) => doubtfulSince(can, at) !== undefined;
    case 'prestir':
      return (can) => can.component === 'part-a' && can.sheet.preStir !== undefined;
    case 'discard':
      return isGasSensitive;
  }
}
