// The day's spray sessions, what was told in need, and the near misses: of the day's own entries.

import type { AlarmEvent } from '../crew/alarm-events.ts';
import type { Entry } from '../history.ts';
import { nounOf, numberIn } from '../ids.ts';
import type { Session } from '../session/session.ts';
import type { Shop } from '../shop.ts';
import type { EpochMs } from '../units.ts';

type Told = Extract<AlarmEvent, { type: 'AlarmRaised' | 'NearMissTold' }>;

export interface DaySpraying {
  readonly sessions: readonly Session[];
  readonly told: readonly { readonly at: EpochMs; readonly by: string; readonly fact: Told }[];
}

export function daySpraying(shop: Shop, entries: readonly Entry[]): DaySpraying {
  const streams = entries.flatMap(({ stream, alsoUnder }) => [stream, ...alsoUnder]);
  const numbers = new Set(streams.filter((stream) => nounOf(stream) === 'session').map((stream) => numberIn(stream)));
  return {
    sessions: [...numbers].sort((a, b) => a - b).flatMap((number) => shop.sessions.get(number) ?? []),
    told: entries.flatMap(({ fact, happenedAt, by }) =>
      fact.type === 'AlarmRaised' || fact.type === 'NearMissTold' ? [{ at: happenedAt, by, fact }] : [],
    ),
  };
}
