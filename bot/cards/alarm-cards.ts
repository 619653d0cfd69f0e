// In need: first what to do now, then the numbers and the shop's own steps, then who is told; the sheet's section and what not
// to do after that, and last what nobody has set. What may be no cry says when it rings.

import type { CommandOf } from '../../core/commands.ts';
import { type Heating, mayHeatNow } from '../../core/crew/alarm-decide.ts';
import { countdownMs, type OpenAlarm } from '../../core/crew/open-alarms.ts';
import type { Recorded } from '../../core/execute.ts';
import type { FactOf } from '../../core/history.ts';
import type { PersonName } from '../../core/ids.ts';
import { known } from '../../core/known.ts';
import { commonPractice } from '../../core/session/brief-lines.ts';
import type { Alarm } from '../../core/session/session-commands.ts';
import type { Trouble } from '../language/tongues/english/troubles.ts';
import { type Card, type CardAction, makeCard } from './card.ts';
import { lineOf, type Telling, tap } from './card-context.ts';
import { heatTrouble } from './dead-pot.ts';
import { leftBy } from './recorded-act.ts';
import { calledInNeed, callLine, toTellLine } from './whom-to-call.ts';

export function alarmCard(telling: Telling, command: CommandOf<Alarm>, outcome: Recorded, by: PersonName): Card {
  if (command.unsure === true) return mayBeCryCard(telling, command);
  const words = telling.words.session;
  const { verb, note, place } = command;
  const { title, section, never } = troubleOf(telling, command);
  const own = telling.shop.crew.spray.emergency[verb];
  const called = calledInNeed(telling.shop.crew, by);
  const [raised] = leftBy(outcome, 'AlarmRaised');
  const isNamed = raised?.batch !== undefined || raised?.can !== undefined;
  const hot = command.verb === 'hot' && !isNamed ? command : undefined;
  const which = hot === undefined ? [] : mayHeatNow(telling.shop, hot.heats);
  const common = telling.words.ruleSources[commonPractice];
  return makeCard(title, 'stop', {
    lines: [
      ...doNow(telling, command),
      ...(own === undefined ? [] : [words.shopSteps(own)]),
      ...ofThing(telling, raised),
      ...(hot?.can === undefined ? [] : [telling.words.material.canUnknown(hot.can)]),
      ...(which.length > 1 ? [telling.words.replies.hotWhich] : []),
      ...toTellLine(telling, called),
      ...(note === undefined ? [] : [words.note(note)]),
      words.untilClear(place),
      words.deferTo(section),
      // Nothing that is to be set for another day stands before what is to be done on this one.
      ...(own === undefined && verb !== 'emergency' ? [words.shopStepsNotSet(verb)] : []),
    ],
    // No tap ends it: a thumb on the wrong card must not.
    actions: which.length > 1 ? which.slice(0, mostPots).map((each) => whichTap(telling, each, hot)) : [],
    hazards: never.map((text) => ({ text, source: common })),
    ping: called,
    alarm: true,
  });
}

/** What to do, and whom to call: the first two lines of every such card. */
function doNow(telling: Telling, alarm: CommandOf<Alarm>): readonly string[] {
  const { session } = telling.words;
  const { now } = troubleOf(telling, alarm);
  return [session.doNow(now.text, now.source), callLine(telling)];
}

const troubleOf = (telling: Telling, alarm: CommandOf<Alarm>): Trouble =>
  alarm.verb === 'hot' ? heatTrouble(telling, alarm.seen) : telling.words.session.troubles[alarm.verb];

/** What is not to be done with the pot or the can that it is of. */
function ofThing({ words }: Telling, raised: FactOf<'AlarmRaised'> | undefined): readonly string[] {
  const { batch, can, seen } = raised ?? {};
  if (can !== undefined) return [words.material.canLeft(can)];
  if (batch === undefined) return [];
  return [seen === 'bulging' ? words.replies.swollenNow(batch) : words.replies.hotNow(batch)];
}

function mayBeCryCard(telling: Telling, command: CommandOf<Alarm>): Card {
  const { session } = telling.words;
  const { verb, note, place } = command;
  return makeCard(session.mayBeCry, 'stop', {
    lines: [
      ...doNow(telling, command).slice(0, 1),
      session.ringsUnless(countdownMs / 1000),
      ...doNow(telling, command).slice(1),
      ...(note ? [session.note(note)] : []),
    ],
    actions: [ringTap(telling, verb, note, place), tap(telling, 'no-alarm', 'no-alarm')],
  });
}

const ringTap = (telling: Telling, verb: Alarm, note: string | undefined, place: string | undefined): CardAction =>
  tap(
    telling,
    'ring-everybody',
    lineOf(telling, { command: { verb, ...known({ note, place }) }, stance: { is: 'asked' } }),
  );

/** When the countdown of a line that may be a cry is over. */
export function cryRing(telling: Telling, { what, by, at, note, place }: OpenAlarm) {
  const { session } = telling.words;
  return {
    lines: [
      ...doNow(telling, { verb: what }),
      ...(note === undefined ? [] : [session.dayTold(at, by, session.note(note), telling.figures)]),
      session.untilClear(place),
      session.deferTo(session.troubles[what].section),
    ],
    taps: [],
    tone: 'stop',
  } as const;
}

export const calledOffCard = ({ words: { session } }: Telling): Card => makeCard(session.calledOff, 'plain');

export function drillCard(telling: Telling, { what }: CommandOf<'drill'>, by: PersonName): Card {
  const { session } = telling.words;
  const called = calledInNeed(telling.shop.crew, by);
  return makeCard(session.drill(what), 'warn', {
    lines: [session.drillSaid, ...doNow(telling, { verb: what }), ...toTellLine(telling, called)],
    actions: [tap(telling, 'ok', 'ok'), tap(telling, 'alarm-over', 'alarm-over')],
    ping: called,
    alarm: true,
  });
}

/** More would not fit under a card. */
const mostPots = 4;

/** What was said of it goes with the tap. */
function whichTap({ words }: Telling, { batch, can }: Heating, hot: CommandOf<'hot'> | undefined): CardAction {
  const { note, seen } = hot ?? {};
  const said = seen === undefined || note === undefined ? '' : ` ${JSON.stringify(note)}`;
  return batch !== undefined
    ? { id: `hot-${batch}`, label: words.page.batch(batch), line: `hot ${batch}${said}` }
    : { id: `hot-can-${can}`, label: words.page.can(can ?? 0), line: `hot "can ${can}"` };
}
