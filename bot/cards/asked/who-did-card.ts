// Who did what, and when: the last acts on what was named, or the last of one kind; of a place and of nobody named, who is
// there.

import { actsDone } from '../../../core/asked/acts-done.ts';
import type { ThingMeant } from '../../../core/asked/things-meant.ts';
import type { Verb } from '../../../core/commands.ts';
import type { Entry } from '../../../core/history.ts';
import { nameIn, nounOf, type StreamId, sessionStream } from '../../../core/ids.ts';
import { openSessions } from '../../../core/shop.ts';
import { type Card, makeCard } from '../card.ts';
import type { Telling } from '../card-context.ts';
import { traceTap } from '../trace-cards.ts';
import { actCalled, doneLine } from './done-line.ts';

const mostTold = 5;

export function whoDidCard(telling: Telling, act: Verb | undefined, named: readonly ThingMeant[]): Card {
  // `did lia coat 7 or was it omar`: whoever it was, it is asked of 7.
  const nobody = named.filter(({ is }) => is !== 'person');
  const things = nobody.length > 0 ? nobody : named;
  const place = things.find((thing) => thing.is === 'place');
  if (place !== undefined && act === undefined) return peopleThere(telling, place.place);
  if (things.length === 0 && act === undefined) return peopleThere(telling, undefined);
  const { asked } = telling.words;
  const done = actsDone(telling.shop, things, act).toReversed();
  const [last, ...earlier] = done;
  const [thing] = things;
  if (last === undefined) {
    const name = nameTold(telling, thing);
    const notDone = act === undefined ? asked.nothingDone(name) : asked.notDone(actCalled(telling, act));
    return makeCard(act === undefined || name === '' ? notDone : asked.titled(name, notDone), 'plain');
  }
  const part = thing?.is === 'part' ? [traceTap(telling, thing.part.name)] : [];
  const batch = thing?.is === 'batch' ? [traceTap(telling, `batch ${thing.number}`)] : [];
  return makeCard(asked.titled(nameTold(telling, thing, last), doneLine(telling, last)), 'plain', {
    lines: earlier.slice(0, mostTold - 1).map((entry) => doneLine(telling, entry)),
    actions: [...part, ...batch],
  });
}

/** On its own stream first: a coat is one of its part. */
function nameTold(telling: Telling, thing: ThingMeant | undefined, last?: Entry): string {
  const stream = last?.stream;
  if (thing === undefined) return stream === undefined ? '' : streamTold(telling, stream);
  switch (thing.is) {
    case 'part':
      return thing.part.name;
    case 'person':
      return thing.person;
    case 'place':
      return telling.words.names.place(thing.place);
    case 'batch':
      return telling.words.page.batch(thing.number);
    case 'can':
      return telling.words.page.can(thing.number);
    case 'session':
      return streamTold(telling, sessionStream(thing.number));
  }
}

function streamTold({ words }: Telling, stream: StreamId): string {
  const name = nameIn(stream);
  switch (nounOf(stream)) {
    case 'batch':
      return words.page.batch(Number(name));
    case 'can':
      return words.page.can(Number(name));
    case 'place':
      return words.names.place(name);
    case 'part':
      return name;
    case 'session':
      return words.asked.session(Number(name));
    case 'crew':
      return '';
    case 'instrument':
      return name;
  }
}

/** Who is on shift, and who sprays where. */
function peopleThere(telling: Telling, place: string | undefined): Card {
  const { asked, names } = telling.words;
  const { figures, shop } = telling;
  const sessions = openSessions(shop).filter((session) => place === undefined || session.place === place);
  const spraying = sessions.map((session) => {
    const people = [...session.sprayers, ...session.stays];
    return asked.sprayersAt(names.place(session.place), people, figures);
  });
  const onShift =
    place === undefined ? [...shop.crew.shifts.onShift].map(([who, since]) => asked.onShift(who, since, figures)) : [];
  const [first = asked.nobodyThere, ...others] = [...spraying, ...onShift];
  return makeCard(first, 'plain', { lines: [...others, asked.whereLastSaid] });
}
