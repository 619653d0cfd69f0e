// What was answered of a booth's air before this session, on the same day, and has not changed since: the same booth, product and
// people, in the same shift, the fan read within its time. Whether nobody is in a tank is asked at every session: it is none of this.

import { standing } from '../settled.ts';
import type { Shop } from '../shop.ts';
import { type EpochMs, minutesAfter } from '../units.ts';
import { type Extraction, exposedIn, type Session } from './session.ts';

export interface AnsweredBefore {
  /** In which it was answered first. */
  readonly session: Session;
  readonly extraction: Extraction;
  readonly suppliedAir: NonNullable<Session['suppliedAir']>;
}

/** `undefined` where nothing was, or something has changed since. */
export function answeredBefore(shop: Shop, session: Session, at: EpochMs): AnsweredBefore | undefined {
  let found: AnsweredBefore | undefined;
  let later = session;
  while (later.after !== undefined) {
    const earlier = shop.sessions.get(later.after);
    const { extraction, suppliedAir } = earlier ?? {};
    if (earlier === undefined || extraction === undefined || suppliedAir === undefined) break;
    if (!isAlike(shop, earlier, session) || (found !== undefined && !areSame(found, earlier))) break;
    found = { session: earlier, extraction, suppliedAir };
    later = earlier;
  }
  if (found?.extraction.faceMetresPerSecond === undefined || !found.extraction.running) return undefined;
  const serves = minutesAfter(found.extraction.at, standing(shop.crew, 'air-limit').minutes);
  return at <= serves ? found : undefined;
}

/** The later session has said the same. */
export const areSame = (
  { extraction, suppliedAir }: Pick<AnsweredBefore, 'extraction' | 'suppliedAir'>,
  later: Pick<Session, 'extraction' | 'suppliedAir'>,
): boolean =>
  extraction.running === later.extraction?.running &&
  extraction.faceMetresPerSecond === later.extraction.faceMetresPerSecond &&
  suppliedAir.supplied === later.suppliedAir?.supplied;

function isAlike({ crew }: Shop, earlier: Session, session: Session): boolean {
  const people = (of: Session) => exposedIn(of).toSorted().join();
  const shiftChanged = crew.spray.shiftChanges.some(
    ({ at, by }) =>
      at > earlier.briefedAt && at <= session.briefedAt && (by === undefined || exposedIn(session).includes(by)),
  );
  return (
    earlier.place === session.place &&
    earlier.sheet.id === session.sheet.id &&
    earlier.sheet.revision === session.sheet.revision &&
    people(earlier) === people(session) &&
    !shiftChanged
  );
}
