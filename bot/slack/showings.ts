// What each message or home tab that changes in place has shown in the last moments.

import { type Place, type Showing, withShowing } from '../talk/pressed.ts';

export interface Showings {
  readonly of: (key: string) => readonly Showing[];
  /** On its way: some see it already. Nobody knows until Slack has answered. */
  readonly sending: (key: string, places: readonly Place[]) => OnItsWay;
}

export interface OnItsWay {
  readonly arrived: () => void;
  readonly lost: () => void;
}

/** Those changed longest ago go first: what a thumb may still be on its way to was changed just now. */
const kept = 200;

export function createShowings(now: () => number): Showings {
  const all = new Map<string, readonly Showing[]>();

  function set(key: string, showings: readonly Showing[]): void {
    all.delete(key);
    all.set(key, showings);
    for (const [other] of all) if (all.size > kept) all.delete(other);
  }

  return {
    of: (key) => all.get(key) ?? [],
    sending: (key, places) => {
      const before = all.get(key) ?? [];
      const show = () => set(key, withShowing(before, { since: now(), places }));
      show();
      return { arrived: show, lost: () => set(key, before) };
    },
  };
}
