// What an earlier life took in may have been answered by it: those answers are looked for before they are posted again.

import type { Outbox } from './outbox.ts';

export interface FindBeforePosting {
  readonly outbox: Outbox;
  /** Taken in by an earlier life at that time, and worked off by this one. */
  readonly resumed: (id: string, since: number) => void;
}

export function findBeforePosting(outbox: Outbox): FindBeforePosting {
  const resumed = new Map<string, number>();

  const sinceWhen = (key: string): number | undefined => [...resumed].find(([id]) => key.includes(id))?.[1];

  return {
    resumed: (id, since) => {
      resumed.set(id, since);
    },
    outbox: {
      ...outbox,
      post: async (to, message, key) => {
        const since = sinceWhen(key);
        const search = since === undefined ? undefined : await outbox.find(to, key, since);
        return search?.kind === 'found' ? { kind: 'posted', ts: search.ts } : outbox.post(to, message, key);
      },
    },
  };
}
