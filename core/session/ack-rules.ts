// Who acknowledges a brief for whom: whoever has no phone says it before a witness, but nobody says it for a sprayer who is
// there and can say it himself.

import type { Entry } from '../history.ts';
import type { PersonName } from '../ids.ts';
import type { Rule } from '../rules.ts';
import type { EpochMs } from '../units.ts';
import type { Session } from './session.ts';

export interface AckCase {
  readonly session: Session;
  readonly crew: { readonly entries: readonly Entry[] };
  readonly person: PersonName;
  /** Who says it for them; `undefined`: they say it themselves. */
  readonly witness: PersonName | undefined;
  readonly at: EpochMs;
}

export const ackRules: readonly Rule<AckCase>[] = [
  {
    code: 'ack-for-sprayer',
    source: 'employer',
    liftedBy: 'nobody',
    since: 4,
    check: (said) =>
      said.witness !== undefined && said.session.sprayers.includes(said.person) && isThere(said)
        ? { code: 'ack-for-sprayer', session: said.session.number, person: said.person }
        : undefined,
  },
];

/** On shift, or has told something of this session. */
function isThere({ session, crew, person, at }: AckCase): boolean {
  const theirs = (entry: Entry) => entry.by === person && entry.happenedAt <= at;
  const shift = crew.entries.findLast(
    (entry) => theirs(entry) && (entry.fact.type === 'ShiftBegun' || entry.fact.type === 'ShiftEnded'),
  );
  return shift?.fact.type === 'ShiftBegun' || session.entries.some(theirs);
}
