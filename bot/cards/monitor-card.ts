// A gas monitor's reading: beyond its limit what to do now stands first, and it rings everybody like a cry; within, what the limit
// is and whose.

import { type Gas, gasVerdict, isBeyond } from '../../core/calc/monitor-limits.ts';
import type { CommandOf } from '../../core/commands.ts';
import { monitorCheck } from '../../core/crew/monitor-check.ts';
import { alarmIn } from '../../core/crew/open-alarms.ts';
import type { Recorded } from '../../core/execute.ts';
import { nameIn, type PersonName } from '../../core/ids.ts';
import { type GasReading, gasesBeyond } from '../../core/place/place.ts';
import type { EpochMs } from '../../core/units.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, undoTap } from './card-context.ts';
import { type Act, leftBy } from './recorded-act.ts';
import { calledInNeed, callLine, toTellLine } from './whom-to-call.ts';

export const monitorCard = ({ telling, command, request, outcome }: Act<CommandOf<Gas>>): Card =>
  shownCard(telling, { gas: command.verb, value: command.value }, outcome, request.by);

/** Of one gas, with the entries that it left. */
export function shownCard(
  telling: Telling,
  { gas, value }: Pick<GasReading, 'gas' | 'value'>,
  outcome: Recorded,
  by: PersonName,
): Card {
  const { session: words } = telling.words;
  const [told] = outcome.envelopes;
  const place = told === undefined ? '' : nameIn(told.stream);
  const read = { gas, value, law: telling.shop.crew.spray.law.frame };
  const verdict = gasVerdict(read);
  const title = words.monitor.title(place, { gas, value }, telling.figures);
  const limit = words.monitor.limit({ gas, value }, verdict, telling.figures);
  const isOn = alarmIn(telling.shop.crew.alarms, place, telling.now) !== undefined;
  const untilClear = isOn ? [words.untilClear(place)] : [];
  const unproved = unprovedLines(telling, told?.happenedAt ?? telling.now);
  const undo = told === undefined ? [] : [undoTap(telling, told.seq)];
  if (!isBeyond(read)) {
    const shut = gasesBeyond(telling.shop.places.get(place), telling.now).some(
      (each) => each.gas === gas && each.unprovedWithinAt !== undefined,
    );
    const stays = shut ? [words.monitor.staysShut(place)] : [];
    const lines = [...stays, limit, ...unproved, ...untilClear, words.monitor.oneMoment];
    const isPlain = verdict.is === 'within' && !isOn && unproved.length === 0;
    return makeCard(title, isPlain ? 'plain' : 'warn', { lines, actions: undo });
  }
  const since = readSince(outcome, gas);
  if (since !== undefined)
    return makeCard(title, 'warn', { lines: [words.monitor.since(since, telling.figures), limit], actions: undo });
  const hasRung = leftBy(outcome, 'AlarmRaised').length > 0;
  const called = hasRung ? calledInNeed(telling.shop.crew, by) : [];
  return makeCard(title, 'stop', {
    lines: [
      words.monitor.now(gas, verdict.is),
      callLine(telling),
      limit,
      ...unproved,
      ...toTellLine(telling, called),
      ...untilClear,
    ],
    ping: called,
    ...(hasRung && { alarm: true }),
  });
}

/** What was said is of an earlier moment: the same gas was read there since. */
function readSince({ envelopes: [read], shop }: Recorded, gas: Gas): GasReading | undefined {
  if (read === undefined) return undefined;
  const last = shop.places.get(nameIn(read.stream))?.gas?.findLast((reading) => reading.gas === gas);
  return last !== undefined && last.at > read.happenedAt ? last : undefined;
}

/** Of a monitor that nobody keeps in check, or no longer: less known never reads as more. */
function unprovedLines({ words, shop, figures }: Telling, at: EpochMs): readonly string[] {
  const { monitor } = words.session;
  const check = monitorCheck(shop, at);
  switch (check.is) {
    case 'in':
      return [];
    case 'never':
      return [monitor.neverChecked];
    case 'out':
      return [monitor.outOfCheck(check.until, figures)];
  }
}
