// What becomes of a part: by whoever may release, as of now. A concession lets it go with the customer's document on it.

import type { CommandOf } from '../commands.ts';
import { localDay } from '../crew/local-day.ts';
import { mayNotSettle, roleMissing } from '../crew/who-may.ts';
import { accepted, type Decision, type Said, unclear } from '../decision.ts';
import type { FactOf, NewEvent } from '../history.ts';
import { releaseRestsOn } from '../instrument/rests-on-readings.ts';
import { known } from '../known.ts';
import type { Shop } from '../shop.ts';
import { unlifted } from './failed-readings.ts';
import { filmSheet } from './film-rule.ts';
import { onParts } from './part-decide.ts';
import { askedForRelease, halfTold } from './release-asked.ts';
import { dispositionRules } from './release-rules.ts';

type Disposing = CommandOf<'rework' | 'concession' | 'scrap' | 'return'>;

export function decideDisposed(shop: Shop, said: Said<Disposing>): Decision {
  const { command } = said;
  const wanted = roleMissing(shop.crew, said.by, { say: command.verb });
  if (wanted !== undefined) return unclear(mayNotSettle(shop.crew, wanted));
  const given = { ...said, at: said.now };
  const disposed = disposedOf(command, localDay(shop.crew.zone, given.at));
  const decision = onParts(shop, given, command.parts, dispositionRules[command.verb], disposed, (part) => ({
    unlifted: unlifted(shop, part),
    by: said.by,
    asked: askedForRelease(shop, part, given.at),
    half: halfTold(part, filmSheet(shop, part, given.at)),
    ...releaseRestsOn(shop, part, given.at),
    disposed,
  }));
  if (decision.kind !== 'accepted' || command.verb !== 'concession') return decision;
  // What was lifted for it stands with the release, where it is asked about.
  return accepted(
    ...decision.events.flatMap((event): readonly NewEvent[] => [
      { ...event, saidWith: { despite: [] } },
      { ...event, body: { type: 'PartReleased' } },
    ]),
  );
}

/** No document is dated later than the day on which it is told of: such a date was not told. */
function disposedOf(command: Disposing, today: string): FactOf<'PartDisposed'> {
  const type = 'PartDisposed';
  switch (command.verb) {
    case 'rework':
    case 'scrap':
      return { type, as: command.verb, why: command.why ?? '' };
    case 'return':
      return { type, as: command.verb, why: command.why ?? '', ...known({ to: command.to }) };
    case 'concession': {
      const { person, document } = command;
      const date = command.date !== undefined && command.date <= today ? command.date : undefined;
      return { type, as: command.verb, why: '', ...known({ person, document, date }) };
    }
  }
}
