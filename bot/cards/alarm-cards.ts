// In need: the shop's own numbers and steps first, then the sheet's section, then what not to do. It calls lead and
// supervisor. And near misses, bell tests, people's dates.

import type { CommandOf } from '../../core/commands.ts';
import type { Recorded } from '../../core/execute.ts';
import type { PersonName } from '../../core/ids.ts';
import { commonPractice } from '../../core/session/brief-lines.ts';
import type { Alarm, Qualification } from '../../core/session/session-commands.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, tap } from './telling.ts';
import { calledForNearMiss, calledInNeed, toTellLine } from './whom-to-call.ts';

export function alarmCard(t: Telling, { verb, note }: CommandOf<Alarm>, by: PersonName): Card {
  const words = t.words.session;
  const { title, section, steps, never } = words.troubles[verb];
  const { emergency } = t.shop.crew.spray;
  const own = emergency[verb];
  const called = calledInNeed(t.shop.crew, by);
  const common = t.words.ruleSources[commonPractice];
  return makeCard(title, 'stop', {
    lines: [
      emergency.call === undefined ? words.callNotSet : words.callNumber(emergency.call),
      own === undefined ? words.shopStepsNotSet(verb) : words.shopSteps(own),
      section,
      ...(note === undefined ? [] : [words.note(note)]),
      ...toTellLine(t.words, t.f.list(called)),
    ],
    hazards: [...steps, ...never].map((text) => ({ text, source: common })),
    ping: called,
    alarm: true,
  });
}

export function nearMissCard(t: Telling, { text, anonymous }: CommandOf<'near-miss'>, by: PersonName): Card {
  const words = t.words.session;
  const called = calledForNearMiss(t.shop.crew, by);
  return makeCard(words.nearMiss, 'plain', {
    lines: [
      words.nearMissText(text),
      ...(anonymous ? [words.anonymous] : []),
      ...toTellLine(t.words, t.f.list(called)),
    ],
    ping: called,
  });
}

export function bellCard(t: Telling, { envelopes }: Recorded): Card {
  const words = t.words.session;
  const people = envelopes.flatMap(({ body }) => (body.type === 'BellTested' ? body.people : []));
  return makeCard(words.bellTest(t.f.list(people)), 'plain', {
    lines: [words.bellLines],
    actions: [tap(t, 'ok', 'ok')],
  });
}

export function qualifiedCard(t: Telling, { verb, person, until }: CommandOf<Qualification>): Card {
  const words = t.words.session;
  return makeCard(words.qualified(person, words.qualifications[verb], until), 'plain', {
    actions: [tap(t, 'undo', 'undo')],
  });
}
