// What nobody has said of the people round the gun: who else is near, and until when fit test, medical and training of who is
// exposed count. Asked once a session, of a crew that has told of such things before; whoever supervises may go on knowing it.

import type { PersonName } from '../ids.ts';
import type { Rule } from '../rules.ts';
import type { EpochMs } from '../units.ts';
import { exposedIn, type Session } from './session.ts';
import { qualifications } from './session-commands.ts';
import type { Undated } from './session-objections.ts';
import type { SprayCase } from './spray-case.ts';
import { datesAt, type SpraySettings } from './spray-settings.ts';
import { isAllowedIn } from './unknown-rules.ts';

export const peopleRules: readonly Rule<SprayCase>[] = [
  {
    code: 'near-not-named',
    source: 'employer',
    liftedBy: 'supervisor',
    since: 6,
    check: ({ session, settings: { namesNearSince } }) => {
      const isKept = namesNearSince !== undefined && namesNearSince < session.briefedAt;
      return !isKept || !isNearUnknown(session) || isAllowedIn(session, 'near-not-named')
        ? undefined
        : { code: 'near-not-named', session: session.number };
    },
  },
  {
    code: 'dates-not-known',
    source: 'employer',
    liftedBy: 'supervisor',
    since: 6,
    check: ({ session, settings, at }) => {
      const byLaw = asksDiisocyanateTraining(session, settings);
      const kept = qualifications.filter(
        (what) => (byLaw && what === 'training') || settings.dated.some((each) => each.what === what && each.at <= at),
      );
      const undated = undatedOf(settings, exposedIn(session), at).flatMap(({ person, what }) => {
        const asked = what.filter((each) => kept.includes(each));
        return asked.length === 0 ? [] : [{ person, what: asked }];
      });
      return undated.length === 0 || isAllowedIn(session, 'dates-not-known')
        ? undefined
        : { code: 'dates-not-known', undated, ...(byLaw && { forDiisocyanates: true }) };
    },
  },
];

/**
 * In the European Union nobody works with diisocyanates untrained: REACH, Regulation (EC) No 1907/2006, annex XVII, entry 74, from
 * memory. So its date is asked of a crew that has told of none.
 */
export const asksDiisocyanateTraining = (
  { sheet }: Pick<Session, 'sheet'>,
  { law }: Pick<SpraySettings, 'law'>,
): boolean => law.frame === 'eu' && (sheet.sensitisers?.named.some(({ kind }) => kind === 'isocyanates') ?? false);

/** Nobody was said to stay near or to have moved out. */
export const isNearUnknown = ({ stays, movedOut }: Pick<Session, 'stays' | 'movedOut'>): boolean =>
  stays.length + movedOut.length === 0;

/** Who has no date, by then, for what. */
export function undatedOf(
  settings: Pick<SpraySettings, 'dated'>,
  people: readonly PersonName[],
  at: EpochMs,
): readonly Undated[] {
  return people.flatMap((person) => {
    const dates = datesAt(settings, person, at);
    const what = qualifications.filter((each) => dates[each] === undefined);
    return what.length === 0 ? [] : [{ person, what }];
  });
}
