// Who is in charge now, whom to call in need, and what rings next.

import { peopleWithRole } from '../../../core/crew/crew.ts';
import { onDuty } from '../../../core/crew/shifts.ts';
import { peopleFrom } from '../../../core/crew/who-may.ts';
import { firstUpper } from '../../language/first-upper.ts';
import { makeBoard } from '../board.ts';
import { makeCard } from '../card.ts';
import type { TopicCards } from './topic-asked.ts';

const mostRings = 5;

export const crewTopics: TopicCards<'next-ring' | 'in-charge' | 'emergency'> = {
  'next-ring': ({ telling }) => {
    const { topics } = telling.words;
    const [first, ...others] = makeBoard(telling).rings;
    if (first === undefined) return makeCard(topics.nothingRings, 'plain');
    return makeCard(topics.ringsNext(first.at, first.label), 'plain', {
      lines: [
        ...(first.to.length === 0 ? [] : [topics.timersGoTo(first.to, telling.figures)]),
        ...others.slice(0, mostRings).map(({ at, label }) => topics.ringsThen(at, label)),
      ],
    });
  },
  /** Where nobody says that they are on shift, those whom the crew's list names. */
  'in-charge': ({ telling }) => {
    const { topics, parts } = telling.words;
    const { crew } = telling.shop;
    const leading = peopleFrom(crew, 'lead');
    if (leading.length === 0) return makeCard(topics.noOneToAsk, 'warn');
    const here = onDuty(crew.shifts, leading).filter((name) => crew.shifts.onShift.has(name));
    const listed = (['lead', 'supervisor'] as const).flatMap((role) => {
      const people = peopleWithRole(crew, role);
      return people.length === 0 ? [] : [topics.ofRole(firstUpper(parts.roles[role]), people, telling.figures)];
    });
    const title = here.length > 0 ? topics.inCharge(here, telling.figures) : topics.nobodyInCharge;
    return makeCard(title, here.length > 0 ? 'plain' : 'warn', {
      lines: [...listed, telling.words.asked.whereLastSaid],
    });
  },
  emergency: ({ telling }) => {
    const { topics } = telling.words;
    const { call, ...others } = telling.shop.crew.spray.emergency;
    const lines = Object.values(others);
    if (call === undefined) return makeCard(topics.noEmergency, 'warn', { lines });
    return makeCard(topics.emergency(call), 'plain', { lines });
  },
};
