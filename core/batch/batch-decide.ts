// What follows from a command about a batch: its events, or why not.

import { splitFill } from '../calc/mixing.ts';
import type { Command, CommandOf, Verb } from '../commands.ts';
import { type Decision, type Said, unclear } from '../decision.ts';
import { type Failed, failed, isFailed } from '../failed.ts';
import type { EventBody, NewEvent, SaidWith } from '../history.ts';
import type { BatchNumber } from '../ids.ts';
import { batchStream, defaultPlace, placeStream } from '../ids.ts';
import { known } from '../known.ts';
import { methodRows } from '../methods.ts';
import type { Unclear } from '../objections.ts';
import { isOwnKey } from '../own-key.ts';
import { airServing } from '../place/place.ts';
import { mixRatio, type Sheet } from '../products/sheet.ts';
import { sheetMeant } from '../products/shelf.ts';
import { judge, type Rule } from '../rules.ts';
import { lastSaid, standing } from '../settled.ts';
import { airLog, liveBatches, type Shop } from '../shop.ts';
import { type Grams, grams } from '../units.ts';
import { batchVerbs } from '../verbs/batch-verbs.ts';
import type { Amount } from '../verbs/said.ts';
import { type Batch, batchAsOf } from './batch.ts';
import { type BatchCase, catchRules, filterRules, mixRules, stirRules, stopRules } from './batch-rules.ts';

/** Which batch is meant: the one named, or the only live one that `fits`. */
export function findBatch(
  shop: Shop,
  named: BatchNumber | undefined,
  fits: (batch: Batch) => boolean,
): Batch | Failed<Unclear> {
  const live = liveBatches(shop);
  const numbers = live.map((batch) => batch.number);
  if (named !== undefined) {
    const batch = shop.batches.get(named);
    return batch ?? failed({ code: 'no-such-batch', batch: named, live: numbers });
  }
  const fitting = live.filter(fits);
  const only = fitting.length === 1 ? fitting[0] : live.length === 1 ? live[0] : undefined;
  return only ?? failed({ code: 'which-batch', live: numbers });
}

export function decideMix(shop: Shop, said: Said<CommandOf<'mix'>>): Decision {
  const { command, at } = said;
  const sheet = sheetMeant(shop.shelf, lastSaid(shop.crew, 'sheet')?.sheet, command.sheet);
  if (isFailed(sheet)) return unclear(sheet.failed);
  const plannedGrams = gramsOf(command.amount, sheet);
  if (plannedGrams === undefined) return unclear({ code: 'no-densities', sheet: sheet.id });
  const place = shop.places.get(defaultPlace);
  const limitMinutes = standing(shop.crew, 'air-limit').minutes;
  const serving = airServing(place, at, limitMinutes);
  const air = { ...serving, ...command.air, limitMinutes };
  const number = shop.nextNumber;
  return judge(shop, said, mixRules, [{ sheet, grams: plannedGrams, ...air }], (saidWith) => {
    const events: NewEvent[] = [];
    if (command.air !== undefined) {
      const body = { type: 'AirRead' as const, ...command.air };
      events.push({ streams: [placeStream(defaultPlace)], happenedAt: at, body, saidWith: { despite: [] } });
    }
    const { celsius, relativeHumidityPercent } = air;
    const read =
      celsius === undefined || relativeHumidityPercent === undefined
        ? {}
        : { air: { celsius, relativeHumidityPercent } };
    const body = {
      type: 'BatchOpened' as const,
      batch: number,
      sheet,
      plannedGrams,
      place: defaultPlace,
      ...read,
      ...known({ vesselLitres: command.vesselLitres }),
    };
    events.push({ streams: [batchStream(number)], happenedAt: at, body, saidWith });
    return events;
  });
}

function gramsOf(amount: Amount, sheet: Sheet): Grams | undefined {
  if (amount.kind === 'mass') return amount.grams;
  const split = splitFill(amount.litres, mixRatio(sheet.ratio));
  return isFailed(split) ? undefined : grams(split.partAGrams + split.partBGrams);
}

/** Of a batch what is decided in a file of its own; all else is a short act on its pot. */
const decidedApart = ['mix', 'weigh', 'add', 'judge'] as const satisfies readonly (keyof typeof batchVerbs)[];
type PotAct = CommandOf<Exclude<keyof typeof batchVerbs, (typeof decidedApart)[number]>>;

export function isPotAct(command: Command): command is PotAct {
  const apart: readonly Verb[] = decidedApart;
  return isOwnKey(batchVerbs, command.verb) && !apart.includes(command.verb);
}

export function decidePotAct(shop: Shop, said: Said<PotAct>): Decision {
  const { command } = said;
  switch (command.verb) {
    case 'stir': {
      const found = findBatch(shop, command.batch, ({ stirring }) => stirring.at(-1)?.to !== undefined);
      return onBatch(shop, said, found, stirRules, { type: 'StirrerStarted' });
    }
    case 'stop': {
      const running = findBatch(
        shop,
        command.batch,
        ({ stirring }) => stirring.length > 0 && stirring.at(-1)?.to === undefined,
      );
      return onBatch(shop, said, running, stopRules, { type: 'StirrerStopped' });
    }
    case 'filter': {
      const waiting = findBatch(
        shop,
        command.batch,
        ({ weighing, filteredAt, caught }) =>
          weighing !== undefined && (filteredAt === undefined || caught.some((each) => each.filteredAt === undefined)),
      );
      return onBatch(shop, said, waiting, filterRules, { type: 'MixFiltered' });
    }
    case 'catch': {
      const flowed = findBatch(shop, command.batch, ({ coats }) =>
        coats.some(({ method }) => methodRows[method].drains),
      );
      return onBatch(shop, said, flowed, catchRules, { type: 'MixCaught', grams: command.grams });
    }
    case 'uncover': {
      const covered = findBatch(
        shop,
        command.batch,
        ({ uncovered }) => uncovered.length === 0 || uncovered.at(-1)?.to !== undefined,
      );
      return onBatch(shop, said, covered, [], { type: 'PotUncovered' });
    }
    case 'cover': {
      const open = findBatch(
        shop,
        command.batch,
        ({ uncovered }) => uncovered.length > 0 && uncovered.at(-1)?.to === undefined,
      );
      return onBatch(shop, said, open, [], { type: 'PotCovered' });
    }
    case 'thick':
    case 'gel': {
      const wet = findBatch(shop, command.batch, ({ weighing }) => weighing !== undefined);
      const seen = command.verb === 'gel' ? 'gelled' : 'thick';
      return onBatch(shop, said, wet, [], { type: 'MixThickened', seen });
    }
    case 'empty': {
      const found = findBatch(shop, command.batch, () => true);
      return onBatch(shop, said, found, [], { type: 'PotEmptied', ...known({ leftGrams: command.leftGrams }) });
    }
  }
}

function onBatch(
  shop: Shop,
  said: Said,
  found: ReturnType<typeof findBatch>,
  rules: readonly Rule<BatchCase>[],
  body: EventBody,
): Decision {
  if (isFailed(found)) return unclear(found.failed);
  const situation: BatchCase = { batch: batchAsOf(found, said.at), air: airLog(shop, found.place), at: said.at };
  return judge(shop, said, rules, [situation], (saidWith: SaidWith) => [
    { streams: [batchStream(found.number)], happenedAt: said.at, body, saidWith },
  ]);
}
