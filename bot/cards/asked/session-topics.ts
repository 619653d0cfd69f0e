// Of spraying: who stands outside, whether somebody may spray, whether the fan runs, what to wear.

import { peopleLeading } from '../../../core/crew/crew.ts';
import { localDay } from '../../../core/crew/local-day.ts';
import { onDuty } from '../../../core/crew/shifts.ts';
import { isFailed } from '../../../core/failed.ts';
import type { PersonName } from '../../../core/ids.ts';
import { exposedIn, type Session } from '../../../core/session/session.ts';
import { qualifications } from '../../../core/session/session-commands.ts';
import { openSessions, sheetFor } from '../../../core/shop.ts';
import type { StepSaid } from '../../../core/steps/steps-said.ts';
import { makeCard } from '../card.ts';
import type { Telling } from '../card-context.ts';
import { cautionLines } from '../caution.ts';
import { canICard } from './can-i-card.ts';
import type { TopicCards } from './topic-asked.ts';

export const sessionTopics: TopicCards<'watch' | 'may-spray' | 'fan' | 'worn'> = {
  watch: ({ telling }) => {
    const { topics, names, asked } = telling.words;
    const { figures, shop } = telling;
    const sessions = openSessions(shop);
    const leads = onDuty(shop.crew.shifts, peopleLeading(shop.crew));
    const told = sessions.flatMap(({ attendant, place, sprayers, movedOut }) => [
      attendant === undefined
        ? topics.nobodyWatches(names.place(place))
        : topics.watches(attendant, names.place(place)),
      ...(attendant === undefined ? [topics.timersGoTo(leads, figures)] : []),
      topics.spraysThere(sprayers, figures),
      ...(movedOut.length === 0 ? [] : [topics.staysOut(movedOut, figures)]),
    ]);
    const [first = topics.noSession, ...others] = told;
    return makeCard(first, sessions.some(({ attendant }) => attendant === undefined) ? 'warn' : 'plain', {
      lines: [...others, ...(sessions.length === 0 ? [topics.timersGoTo(leads, figures)] : [asked.whereLastSaid])],
    });
  },
  /** What stands against spraying for anybody, and what is known of the one who is asked of. */
  /** What stands against spraying for anybody, and what is known of the one who is asked of. */
  'may-spray': ({ telling, things, by }) => {
    const { topics, asked } = telling.words;
    const { sprayers } = telling.shop.crew.spray;
    const named = things.find((thing) => thing.is === 'person');
    const whoMay = sprayers.length === 0 ? topics.anybodySprays : topics.sprayedBy(sprayers, telling.figures);
    const hasSession = openSessions(telling.shop).length > 0;
    const card = hasSession
      ? canICard(telling, { ask: 'can-i', act: 'spray-on', of: [] }, [], named?.person ?? by)
      : undefined;
    const lines = card?.lines ?? [];
    if (named === undefined) return makeCard(whoMay, 'plain', { lines });
    const { against, known } = ofPerson(telling, named.person);
    const stands = card?.title === telling.words.replies.notClear ? known[0] : card?.title;
    const [first = stands ?? topics.noSession, ...others] = against;
    const title = against.length > 0 ? first : asked.titled(named.person, first);
    return makeCard(title, against.length > 0 ? 'warn' : (card?.tone ?? 'plain'), {
      facts: card?.facts ?? [],
      lines: [...others, ...(against.length > 0 && card !== undefined ? [card.title] : []), ...known, whoMay, ...lines],
    });
  },
  fan: ({ telling }) => {
    const { topics, names, asked } = telling.words;
    const sessions = openSessions(telling.shop);
    const [first, ...others] = sessions.map((session) =>
      asked.titled(names.place(session.place), fanSaid(telling, session)),
    );
    if (first === undefined) return makeCard(topics.fanFirst, 'plain');
    const isOn = sessions.every(({ extraction }) => extraction?.running === true);
    return makeCard(first, isOn ? 'plain' : 'warn', { lines: [...others, asked.whereLastSaid] });
  },
  worn: ({ telling }) => {
    const { topics, steps } = telling.words;
    const session = openSessions(telling.shop).at(-1);
    const sheet = session?.sheet ?? sheetFor(telling.shop);
    if (isFailed(sheet)) {
      return makeCard(telling.words.replies.notClear, 'warn', {
        lines: [telling.words.unclear(sheet.failed, telling.figures)],
      });
    }
    const { mixing, applying = [], cleaning } = sheet.steps?.protection ?? {};
    const of = (work: Extract<StepSaid, { step: 'protection' }>['work'], worn = mixing): readonly string[] =>
      worn === undefined ? [] : [steps.said({ step: 'protection', work, worn }, telling.figures)];
    const said = [
      ...of('mixing'),
      ...applying.flatMap(({ method, worn }) => of(method, worn)),
      ...(cleaning === undefined ? [] : of('cleaning', cleaning)),
    ];
    const [first, ...others] = said;
    const lines = [...others, topics.alsoSpray, ...cautionLines(telling)];
    const actions = [{ id: 'mask', label: topics.wornTap, line: 'mask' }];
    if (first === undefined) return makeCard(topics.notSaidWorn(sheet.name), 'warn', { lines, actions });
    return makeCard(topics.worn([first]), 'plain', { lines, actions });
  },
};

const fanSaid = ({ words: { session: words }, figures }: Telling, { extraction }: Session): string => {
  if (extraction === undefined) return words.extractionNotSaid;
  const { running, faceMetresPerSecond, by, at } = extraction;
  return running ? words.extractionOn(faceMetresPerSecond, by, at, figures) : words.extractionOff(by, at, figures);
};

/** By the setting of who may, by their dates, and by the open brief. */
function ofPerson(
  telling: Telling,
  who: PersonName,
): { readonly against: readonly string[]; readonly known: readonly string[] } {
  const { topics, session: words } = telling.words;
  const { figures, shop } = telling;
  const { sprayers, dates } = shop.crew.spray;
  const today = localDay(shop.crew.zone, telling.now);
  const mine = dates.get(who) ?? {};
  const past = qualifications.flatMap((what) => {
    const until = mine[what];
    return until !== undefined && until < today ? [words.outOfDate(who, what, until, figures)] : [];
  });
  const current = qualifications.flatMap((what) => {
    const until = mine[what];
    return until !== undefined && until >= today ? [words.qualified(who, what, until, figures)] : [];
  });
  const undated = qualifications.filter((what) => mine[what] === undefined);
  const isListed = sprayers.length === 0 || sprayers.includes(who);
  const briefs = openSessions(shop).map((session) => briefOf(telling, session, who));
  return {
    against: [
      ...(isListed ? [] : [topics.mayNot(who)]),
      ...past,
      ...briefs.flatMap(({ line, stands }) => (stands ? [] : [line])),
    ],
    known: [
      ...briefs.flatMap(({ line, stands }) => (stands ? [line] : [])),
      ...current,
      ...(undated.length === 0 ? [] : [words.undated(who, undated, figures)]),
    ],
  };
}

function briefOf({ words: { topics } }: Telling, session: Session, who: PersonName) {
  if (session.movedOut.includes(who)) return { line: topics.movedOut(who), stands: false };
  if (!exposedIn(session).includes(who)) return { line: topics.notBriefed(who), stands: false };
  return session.acknowledged.some(({ person }) => person === who)
    ? { line: topics.briefRead(who), stands: true }
    : { line: topics.briefNotRead(who), stands: false };
}
