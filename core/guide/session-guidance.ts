// What a session of spraying wants now of one person: whoever has not read its brief reads it before anything else.

import { type PersonName, sessionStream } from '../ids.ts';
import { unacknowledged } from '../session/session.ts';
import type { NextActId, SessionNow } from '../status.ts';
import { acting, firstAct, type Guidance, lastsBy } from './guidance.ts';

export function sessionGuidance({ session, phase, clocks, next }: SessionNow, name: PersonName): readonly Guidance[] {
  const { number } = session;
  const of = sessionStream(number);
  const first = (...ids: readonly NextActId[]) => firstAct(next(), ids);
  if (phase.is !== 'closed' && unacknowledged(session).includes(name)) {
    const command = { verb: 'ack', session: number } as const;
    const ack = { id: 'ack', of: String(number), command, stance: { is: 'asked' }, against: [] } as const;
    return acting(of, ack, { never: { is: 'spray-unbriefed' }, weight: 'danger' });
  }
  switch (phase.is) {
    case 'closed':
      return [];
    case 'briefed':
      return acting(of, first('ack-for', 'fan-on', 'supplied-yes', 'spray-on'), { never: { is: 'spray-unbriefed' } });
    case 'sprays': {
      const lasts = lastsBy(clocks.find(({ id }) => id === 'spell'));
      return acting(of, first('spray-off'), { never: { is: 'go-in-unprotected' }, lasts, weight: 'waits' });
    }
    case 'still':
      return acting(of, first('flush-step', 'flush', 'vessels', 'rags', 'close'), {
        ...{ never: { is: 'stop-extraction' }, weight: 'open' },
      });
  }
}
