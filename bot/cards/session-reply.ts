// Which card answers an act of a spray session, or a word of need.

import type { CommandOf } from '../../core/commands.ts';
import { nounOf } from '../../core/ids.ts';
import type { Alarm, Qualification } from '../../core/session/session-commands.ts';
import type { sessionVerbs } from '../../core/verbs/session-verbs.ts';
import { alarmCard, calledOffCard, drillCard } from './alarm-cards.ts';
import { alarmOverCard } from './alarms-over.ts';
import { potLines } from './before-spraying.ts';
import { breathingAirCard } from './breathing-air-card.ts';
import type { Card } from './card.ts';
import { assessedCard, bellCard, nearMissCard, qualifiedCard } from './crew-told-cards.ts';
import { exposureCard } from './exposure-card.ts';
import { cleanedCard } from './gear-cards.ts';
import { type Act, onSession } from './recorded-act.ts';
import {
  briefCard,
  closedCard,
  fanCard,
  flushedCard,
  placedCard,
  ragsCard,
  sessionCard,
  sprayOffCard,
  sprayOnCard,
} from './session-cards.ts';
import { peopleLines } from './session-lines.ts';

const alarm = ({ telling, command, outcome, request }: Act<CommandOf<Alarm>>): Card =>
  alarmCard(telling, command, outcome, request.by);
const qualified = ({ telling, command, outcome }: Act<CommandOf<Qualification>>): Card =>
  qualifiedCard(telling, outcome, command);

export const sessionReplies: { readonly [V in keyof typeof sessionVerbs]: (act: Act<CommandOf<V>>) => Card } = {
  brief: onSession(briefCard),
  near: onSession((telling, session, { command: { people, goes } }) =>
    placedCard(telling, session, telling.words.session.near(people, goes, telling.figures), people),
  ),
  ack: onSession((telling, session) =>
    sessionCard(telling, session, telling.words.session.read, potLines(telling, session)),
  ),
  fan: onSession((telling, session) => fanCard(telling, session, telling.words.session.extraction)),
  supplied: onSession((telling, session) => sessionCard(telling, session, telling.words.session.suppliedAir)),
  'from-outside': onSession((telling, session) =>
    sessionCard(telling, session, telling.words.session.fromOutside, peopleLines(telling, session)),
  ),
  'spray-on': onSession(sprayOnCard),
  'spray-off': onSession(sprayOffCard),
  flush: (act) =>
    act.outcome.envelopes.some(({ stream }) => nounOf(stream) === 'session')
      ? onSession<CommandOf<'flush'>>((telling, session, { command }) => flushedCard(telling, session, command))(act)
      : cleanedCard(act),
  rags: onSession(ragsCard),
  close: onSession(closedCard),
  fit: qualified,
  medical: qualified,
  training: qualified,
  assess: ({ telling, outcome }) => assessedCard(telling, outcome),
  'breathing-check': breathingAirCard,
  exposure: exposureCard,
  'near-miss': ({ telling, command, request }) => nearMissCard(telling, command, request.by),
  eyes: alarm,
  spill: alarm,
  fire: alarm,
  down: alarm,
  hot: alarm,
  'skin-burn': alarm,
  breathless: alarm,
  emergency: alarm,
  'no-alarm': ({ telling }) => calledOffCard(telling),
  'alarm-over': ({ telling, outcome, request }) => alarmOverCard(telling, outcome, request.by),
  drill: ({ telling, command, request }) => drillCard(telling, command, request.by),
  bell: ({ telling, outcome }) => bellCard(telling, outcome),
};
