// Near misses, bell tests, and people's dates: told to the crew, and nobody is in need.

import type { CommandOf } from '../../core/commands.ts';
import type { Recorded } from '../../core/execute.ts';
import type { PersonName } from '../../core/ids.ts';
import type { Qualification } from '../../core/session/session-commands.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, tap, undoTap } from './card-context.ts';
import { leftBy } from './recorded-act.ts';
import { calledForNearMiss, toTellLine } from './whom-to-call.ts';

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
  return makeCard(words.qualified(person, said.verb, said.until, telling.figures), 'plain', {
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
  const serves = given.supplied === true || sheet?.sensitisers?.named.length === 0;
  return makeCard(words.assessedTitle, serves ? 'plain' : 'warn', {
    lines: [
      words.assessed({ ...given, sheet: sheet?.name ?? given.sheet }, telling.figures),
      ...(serves ? [] : [words.assessmentIdle(sheet?.name ?? given.sheet)]),
    ],
    actions: outcome.envelopes.slice(0, 1).map(({ seq }) => undoTap(telling, seq)),
  });
}
