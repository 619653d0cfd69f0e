// In need: first what to do now, then the shop's own numbers and steps, then who is told; the sheet's section and what not to
// do after that, and last what nobody has set. And near misses, bell tests, people's dates.

import type { CommandOf } from '../../core/commands.ts';
import { potsInUse } from '../../core/crew/alarm-decide.ts';
import type { Recorded } from '../../core/execute.ts';
import type { PersonName } from '../../core/ids.ts';
import { commonPractice } from '../../core/session/brief-lines.ts';
import type { Alarm, Qualification } from '../../core/session/session-commands.ts';
import { type Card, type CardAction, makeCard } from './card.ts';
import { type Telling, tap, undoTap } from './card-context.ts';
import { leftBy } from './recorded-act.ts';
import { calledForNearMiss, calledInNeed, toTellLine } from './whom-to-call.ts';

export function alarmCard(telling: Telling, { verb, note }: CommandOf<Alarm>, outcome: Recorded, by: PersonName): Card {
  const words = telling.words.session;
  const { title, now, section, never } = words.troubles[verb];
  const { emergency } = telling.shop.crew.spray;
  const own = emergency[verb];
  const called = calledInNeed(telling.shop.crew, by);
  const pot = leftBy(outcome, 'AlarmRaised')[0]?.batch;
  const pots = verb === 'hot' && pot === undefined ? potsInUse(telling.shop) : [];
  const common = telling.words.ruleSources[commonPractice];
  return makeCard(title, 'stop', {
    lines: [
      words.doNow(now.text, now.source),
      ...(emergency.call === undefined ? [] : [words.callNumber(emergency.call)]),
      ...(own === undefined ? [] : [words.shopSteps(own)]),
      ...(pot === undefined ? [] : [telling.words.replies.hotNow(pot)]),
      ...(pots.length > 1 ? [telling.words.replies.hotWhich] : []),
      ...toTellLine(telling, called),
      ...(note === undefined ? [] : [words.note(note)]),
      words.deferTo(section),
      // Nothing that is to be set for another day stands before what is to be done on this one.
      ...(emergency.call === undefined ? [words.callNotSet] : []),
      ...(own === undefined ? [words.shopStepsNotSet(verb)] : []),
    ],
    actions: pots.length > 1 ? pots.slice(0, mostPots).map((each) => whichPot(telling, each)) : [],
    hazards: never.map((text) => ({ text, source: common })),
    ping: called,
    alarm: true,
  });
}

/** More would not fit under a card. */
const mostPots = 4;

const whichPot = (telling: Telling, pot: number): CardAction => ({
  ...{ id: `hot-${pot}`, label: telling.words.page.batch(pot) },
  line: `hot ${pot}`,
});

export function nearMissCard(telling: Telling, { text, anonymous }: CommandOf<'near-miss'>, by: PersonName): Card {
  const words = telling.words.session;
  const called = calledForNearMiss(telling.shop.crew, by);
  return makeCard(words.nearMiss, 'plain', {
    lines: [words.nearMissText(text), ...(anonymous ? [words.anonymous] : []), ...toTellLine(telling, called)],
    ping: called,
  });
}

export function bellCard(telling: Telling, outcome: Recorded): Card {
  const words = telling.words.session;
  const people = leftBy(outcome, 'BellTested').flatMap((body) => body.people);
  return makeCard(words.bellTest(people, telling.figures), 'plain', {
    lines: [words.bellLines],
    actions: [tap(telling, 'ok', 'ok')],
  });
}

/** As it is filed: the name as the crew writes it. */
export function qualifiedCard(telling: Telling, outcome: Recorded, said: CommandOf<Qualification>): Card {
  const words = telling.words.session;
  const person = leftBy(outcome, 'QualificationDated')[0]?.person ?? said.person;
  return makeCard(words.qualified(person, said.verb, said.until), 'plain', {
    actions: outcome.envelopes.slice(0, 1).map(({ seq }) => undoTap(telling, seq)),
  });
}

/** As it was given, and whether it serves: not where the sheet names a sensitiser, or leaves it open. */
export function assessedCard(telling: Telling, outcome: Recorded): Card {
  const words = telling.words.session;
  const [given] = leftBy(outcome, 'AirAssessed');
  if (given === undefined) return makeCard(telling.words.replies.settled, 'plain');
  const found = telling.shop.shelf.get(given.sheet);
  const sheet = found?.kind === 'sheet' ? found.sheet : undefined;
  const serves = sheet?.sensitisers?.named.length === 0;
  return makeCard(words.assessedTitle, serves ? 'plain' : 'warn', {
    lines: [
      words.assessed(given.place, given.sheet, given.method, given.until),
      ...(serves ? [] : [words.assessmentIdle(sheet?.name ?? given.sheet)]),
    ],
    actions: outcome.envelopes.slice(0, 1).map(({ seq }) => undoTap(telling, seq)),
  });
}
