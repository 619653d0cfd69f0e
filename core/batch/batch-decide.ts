// What follows from a command about a batch: its events, or why not.

import { splitFill } from '../calc/mixing.ts';
import { isOn } from '../calc/runs.ts';
import type { CommandOf, Verb } from '../commands.ts';
import { scalesAt } from '../crew/scales.ts';
import { type Deciders, type Decision, type Said, unclear } from '../decision.ts';
import { type Failed, failed, isFailed } from '../failed.ts';
import type { EventBody, NewEvent } from '../history.ts';
import type { BatchNumber } from '../ids.ts';
import { batchStream, defaultPlace, placeStream } from '../ids.ts';
import { known } from '../known.ts';
import { methodRows } from '../methods.ts';
import type { Unclear } from '../objections.ts';
import { airServing } from '../place/place.ts';
import { mixRatio, type Sheet } from '../products/sheet.ts';
import { judge, type Rule } from '../rules.ts';
import { standing } from '../settled.ts';
import { airLog, liveBatches, onlyOne, type Shop, sheetFor } from '../shop.ts';
import { type EpochMs, type Grams, grams } from '../units.ts';
import type { batchVerbs } from '../verbs/batch-verbs.ts';
import type { AirSaid, Amount } from '../verbs/said.ts';
import { type Batch, batchAsOf } from './batch.ts';
import { potLifeTimes } from './batch-clocks.ts';
import { type BatchCase, mixRules, potRules } from './batch-rules.ts';
import { vesselAnswer } from './vessel-answer.ts';

/** Which batch is meant: the one named, or the only live one that `fits`. `usedAt`: its mix is used then, so no waste is offered. */
export function findBatch(
  shop: Shop,
  named: BatchNumber | undefined,
  fits: (batch: Batch) => boolean,
  usedAt?: EpochMs,
): Batch | Failed<Unclear> {
  const found = named === undefined ? onlyOne(liveBatches(shop), fits) : shop.batches.get(named);
  if (found !== undefined) return found;
  const all = liveBatches(shop);
  const live = all
    .filter((batch) => usedAt === undefined || (fits(batch) && !isWaste(shop, batch, usedAt)))
    .map(({ number }) => number);
  const among = { live, ...(live.length === 0 && all.length > 0 && { areNoneFit: true }) };
  return failed(
    named === undefined ? { code: 'which-batch', ...among } : { code: 'no-such-batch', batch: named, ...among },
  );
}

/** Thick, gelled, or past its life. */
function isWaste(shop: Shop, batch: Batch, at: EpochMs): boolean {
  const endAt = potLifeTimes(batch, airLog(shop, batch.place))?.endAt;
  return batch.thickened !== undefined || (endAt !== undefined && endAt <= at);
}

export function decideMix(shop: Shop, said: Said<CommandOf<'mix'>>): Decision {
  const { command, at } = said;
  const sheet = sheetFor(shop, command.sheet);
  if (isFailed(sheet)) return unclear(sheet.failed);
  const plannedGrams = gramsOf(command.amount, sheet);
  if (plannedGrams === undefined) return unclear({ code: 'no-densities', sheet: sheet.id });
  const place = shop.places.get(defaultPlace);
  const limitMinutes = standing(shop.crew, 'air-limit').minutes;
  const serving = airServing(place, at, limitMinutes);
  const air = { ...serving, ...command.air, ...readWith(command.air), limitMinutes };
  const number = shop.nextNumber;
  const { vesselLitres } = command;
  const scales = scalesAt(shop.crew, at);
  return judge(shop, said, mixRules, [{ sheet, grams: plannedGrams, vesselLitres, scales, ...air }], (saidWith) => {
    const events: NewEvent[] = [];
    if (command.air !== undefined) {
      const body = { type: 'AirRead' as const, ...command.air };
      events.push({ streams: [placeStream(defaultPlace)], happenedAt: at, body });
    }
    const { celsius, relativeHumidityPercent } = air;
    const isRead = celsius !== undefined && relativeHumidityPercent !== undefined;
    const body = {
      type: 'BatchOpened' as const,
      batch: number,
      sheet,
      plannedGrams,
      place: defaultPlace,
      ...(isRead && { air: { celsius, relativeHumidityPercent } }),
      ...known({ vesselLitres, vesselOf: command.vesselOf }),
    };
    events.push({ streams: [batchStream(number)], happenedAt: at, body, saidWith });
    return [...events, ...vesselAnswer(shop, said, sheet, number)];
  });
}

/** What is read with the mix is one reading. */
const readWith = (air: AirSaid | undefined) =>
  air?.relativeHumidityPercent === undefined ? {} : { humidityCelsius: air.celsius };

function gramsOf(amount: Amount, sheet: Sheet): Grams | undefined {
  if (amount.kind === 'mass') return amount.grams;
  const split = splitFill(amount.litres, mixRatio(sheet.ratio));
  return isFailed(split) ? undefined : grams(split.partAGrams + split.partBGrams);
}

/** Of a batch what is decided in a file of its own; all else is a short act on its pot. */
type DecidedApart = 'mix' | 'weigh' | 'drawn' | 'add' | 'judge';
type PotVerb = Exclude<keyof typeof batchVerbs, DecidedApart>;

export const potActs: Deciders<PotVerb> = {
  stir: onPot(({ stirring }) => stirring.at(-1)?.to !== undefined, { type: 'StirrerStarted' }),
  stop: onPot(({ stirring }) => isOn(stirring), { type: 'StirrerStopped' }),
  filter: onPot(
    ({ weighing, filteredAt, caught }) =>
      weighing !== undefined && (filteredAt === undefined || caught.some((each) => each.filteredAt === undefined)),
    ({ filterMicrometres, filterOf, filteredInto }) => ({
      type: 'MixFiltered',
      ...known({ filterMicrometres, filterOf, filteredInto }),
    }),
  ),
  catch: onPot(
    ({ coats }) => coats.some(({ method }) => methodRows[method].drains),
    ({ grams }) => ({ type: 'MixCaught', grams }),
  ),
  uncover: onPot(({ uncovered }) => !isOn(uncovered), { type: 'PotUncovered' }),
  cover: onPot(({ uncovered }) => isOn(uncovered), { type: 'PotCovered' }),
  thick: onPot(({ weighing }) => weighing !== undefined, { type: 'MixThickened', seen: 'thick' }),
  gel: onPot(({ weighing }) => weighing !== undefined, { type: 'MixThickened', seen: 'gelled' }),
  empty: onPot(
    () => true,
    ({ leftGrams }) => ({ type: 'PotEmptied', ...known({ leftGrams }) }),
  ),
};

/** `fits`: which pot is meant where nobody names one. */
function onPot<C extends CommandOf<PotVerb>>(
  fits: (batch: Batch) => boolean,
  leaves: EventBody | ((command: C) => EventBody),
): (shop: Shop, said: Said<C>) => Decision {
  return (shop, said) => {
    const { command, at } = said;
    const found = findBatch(shop, command.batch, fits, command.verb === 'filter' ? at : undefined);
    if (isFailed(found)) return unclear(found.failed);
    const body = typeof leaves === 'function' ? leaves(command) : leaves;
    const caughtGrams = body.type === 'MixCaught' ? body.grams : undefined;
    const filter = body.type === 'MixFiltered' ? body : undefined;
    const told = known({ caughtGrams, filter });
    const situation = { batch: batchAsOf(found, at), air: airLog(shop, found.place), at, ...told };
    const rules: Readonly<Partial<Record<Verb, readonly Rule<BatchCase>[]>>> = potRules;
    return judge(shop, said, rules[command.verb] ?? [], [situation], (saidWith) => [
      { streams: [batchStream(found.number)], happenedAt: at, body, saidWith },
    ]);
  };
}
