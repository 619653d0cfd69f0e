// A brief that is read: what nobody knows is never cut; of what is known the lines that matter most here, chemistry, place and
// people, fill up to five; what was answered this shift in this booth and has not changed is one line.

import { answeredBefore, areSame } from '../../core/session/answered-before.ts';
import { type Session, unacknowledged } from '../../core/session/session.ts';
import { notSummed } from '../../core/session/unknown-rules.ts';
import { potLines } from './before-spraying.ts';
import { breathingAirLines } from './breathing-air-card.ts';
import type { Telling } from './card-context.ts';
import { acknowledgedLines, airLines, breathingLines, dateLines, peopleLines } from './session-lines.ts';

const mostKnown = 5;

export interface BriefParts {
  readonly unknown: readonly string[];
  /** The likeliest to matter first. */
  readonly known: readonly string[];
}

/** `rest`: what is known of flush, spell and numbers to call, or that it is not. */
export function briefParts(telling: Telling, session: Session, rest: BriefParts): BriefParts {
  const words = telling.words.session;
  const { extraction, suppliedAir, sheet, stays, movedOut } = session;
  const [fan = '', supplied = ''] = airLines(telling, session);
  const isFanKnown = extraction !== undefined && (!extraction.running || extraction.faceMetresPerSecond !== undefined);
  const people = peopleLines(telling, session);
  const nobodyNamed = stays.length + movedOut.length === 0;
  const batch = session.batch === undefined ? undefined : telling.shop.batches.get(session.batch);
  const isOpen = (line: string) => line === words.sensitisersOpen;
  const breathing = breathingLines(telling, session);
  const fed = breathingAirLines(telling, session);
  const before = answeredBefore(telling.shop, session, telling.now);
  const asBefore = before !== undefined && areSame(before, session) ? before : undefined;
  const air = [...(isFanKnown ? [fan] : []), ...(suppliedAir === undefined ? [] : [supplied])];
  const left = unacknowledged(session).length;
  const acknowledged = acknowledgedLines(telling, session);
  const read = acknowledged.length > 1 ? [acknowledged.slice(0, -1).join('; ')] : [];
  return {
    unknown: [
      ...potLines(telling, session),
      ...(isFanKnown ? [] : [fan]),
      ...(suppliedAir === undefined ? [supplied] : []),
      ...fed.unknown,
      ...breathing.filter(isOpen),
      ...(sheet.spray !== undefined && notSummed({ session, batch })?.is === 'without-limit' ? [words.noSum] : []),
      ...(nobodyNamed ? [words.nobodyNear] : []),
      ...dateLines(telling, session),
      ...(left > 0 ? acknowledged.slice(-1) : []),
      ...rest.unknown,
    ],
    known: [
      ...breathing.filter((line) => !isOpen(line)),
      ...(asBefore === undefined
        ? air
        : [words.asAt(asBefore.extraction.at, airLines(telling, asBefore), telling.figures)]),
      ...people.slice(0, 1),
      ...fed.known,
      ...read,
      ...people.slice(1).filter((line) => line !== words.nobodyNear),
      ...rest.known,
    ],
  };
}

/** As many of the known as are read. */
export const briefLinesShown = ({ unknown, known }: BriefParts): readonly string[] => [
  ...unknown,
  ...known.slice(0, mostKnown),
];
